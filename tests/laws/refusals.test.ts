/** A law that is asked for what it cannot say names the figure, so that a wrong file or sheet is found by it. */
import { describe, expect, test } from 'vitest';
import { isPeakHour } from '../../src/laws/chargingHours.ts';
import { conductorResistance, resistancePerMetre, toTwenty } from '../../src/laws/conductor.ts';
import { greatestElectrode } from '../../src/laws/electrode.ts';
import { minimumInsulation } from '../../src/laws/insulationLimits.ts';
import { prospectiveCurrent } from '../../src/laws/loop.ts';
import { breakerTripTime, greatestLoopImpedance } from '../../src/laws/overcurrent.ts';
import { dutyForCurrent } from '../../src/laws/pilotDuty.ts';
import { sourceResistanceFrom } from '../../src/laws/pilotSourceResistance.ts';
import { directTripTime, residualTripTime } from '../../src/laws/residualCurves.ts';

const ROWS: readonly [string, () => unknown][] = [
  ['no minute 1440', () => isPeakHour('Monday', 1440)],
  ['3 mm²', () => resistancePerMetre(3, 2)],
  ['-5 m long', () => conductorResistance({ length: -5, area: 6, class: 2 })],
  ['-240 °C', () => toTwenty(-240)],
  ['rated -0.03 A', () => greatestElectrode(-0.03)],
  ['-230 V', () => minimumInsulation(-230)],
  ['-0.2 ohms', () => prospectiveCurrent(-0.2)],
  ['rated -32 A', () => greatestLoopImpedance('B', -32)],
  ['rated -16 A', () => breakerTripTime('B', -16, 100)],
  ['5.9 A', () => dutyForCurrent(5.9)],
  ['81 A', () => dutyForCurrent(81)],
  ['diode drop of 0.7 V', () => sourceResistanceFrom(12, 0.6)],
  ['-0.02 A', () => residualTripTime(0.03, -0.02)],
  ['-0.004 A', () => directTripTime(0.006, -0.004)],
];

describe('the message names it', () => {
  test.each(ROWS)('%s', (figure, asked) => {
    expect(asked).toThrow(RangeError);
    expect(asked).toThrow(figure);
  });
});
