/** Small tables: insulation, electrodes, loops, disconnection, supply, stored energy. */

import { expect, test } from 'vitest';
import { disconnectionTime } from '../../src/laws/disconnection.ts';
import { greatestElectrode, STABLE_ELECTRODE } from '../../src/laws/electrode.ts';
import {
  EQUIPMENT_MINIMUM,
  EQUIPMENT_TEST_VOLTAGE,
  minimumInsulation,
} from '../../src/laws/insulationLimits.ts';
import { lineAndProtectiveFrom, loopImpedance, prospectiveCurrent, ROOT_THREE } from '../../src/laws/loop.ts';
import { isDischarged, storedEnergy } from '../../src/laws/storedEnergy.ts';
import {
  LINE_TO_LINE,
  OPEN_PEN_IGNORED,
  OPEN_PEN_TIME,
  OPEN_PEN_WINDOW,
  SUPPLY_FREQUENCY,
  SUPPLY_VOLTAGE,
  TOUCH_LIMIT,
} from '../../src/laws/supplyLimits.ts';

const TABLE_64 = 'BS 7671:2018+A2:2022, Table 64';

test.each([
  { volts: 12, circuit: 'SELV or PELV', testVoltage: 250, minimum: 0.5e6, source: TABLE_64 },
  { volts: 50, circuit: 'other', testVoltage: 500, minimum: 1e6, source: TABLE_64 },
  { volts: 230, circuit: 'other', testVoltage: 500, minimum: 1e6, source: TABLE_64 },
  { volts: 400, circuit: 'other', testVoltage: 500, minimum: 1e6, source: TABLE_64 },
  { volts: 500, circuit: 'other', testVoltage: 500, minimum: 1e6, source: TABLE_64 },
  { volts: 501, circuit: 'other', testVoltage: 1000, minimum: 1e6, source: TABLE_64 },
] as const)('$volts V $circuit: $testVoltage V, $minimum ohms ($source)', (row) => {
  const { testVoltage, minimum } = row;
  expect(minimumInsulation(row.volts, row.circuit)).toEqual({ testVoltage, minimum });
});

test('equipment left connected: 250 V, still 1 MΩ (BS 7671:2018+A2:2022, 643.3.3)', () => {
  expect([EQUIPMENT_TEST_VOLTAGE, EQUIPMENT_MINIMUM]).toEqual([250, 1e6]);
  expect(() => minimumInsulation(0)).toThrow(RangeError);
});

test.each([
  { rated: 0.03, ohms: 1667 },
  { rated: 0.1, ohms: 500 },
  { rated: 0.3, ohms: 167 },
  { rated: 0.5, ohms: 100 },
])('$rated A: $ohms ohms at most (BS 7671:2018+A2:2022, Table 41.5)', ({ rated, ohms }) => {
  expect(Math.round(greatestElectrode(rated))).toBe(ohms);
});

test('an electrode: no rating, and the stable one', () => {
  expect(() => greatestElectrode(0)).toThrow(RangeError);
  expect(STABLE_ELECTRODE).toBe(200);
});

test('a loop and its parts', () => {
  const loop = loopImpedance(0.35, 0.3);
  expect(lineAndProtectiveFrom(loop, 0.35)).toBeCloseTo(0.3, 12);
  expect(prospectiveCurrent(0)).toBe(Infinity);
  expect(prospectiveCurrent(1, 240)).toBe(240);
  expect(() => prospectiveCurrent(-0.1)).toThrow(RangeError);
  expect(() => prospectiveCurrent(Number.NaN)).toThrow(RangeError);
  expect(ROOT_THREE).toBe(Math.sqrt(3));
});

test.each([
  { family: 'TN', purpose: 'final', time: 0.4 },
  { family: 'TN', purpose: 'distribution', time: 5 },
  { family: 'TT', purpose: 'final', time: 0.2 },
  { family: 'TT', purpose: 'distribution', time: 1 },
] as const)('$family $purpose: $time s (BS 7671:2018+A2:2022, Table 41.1)', ({ family, purpose, time }) => {
  expect(disconnectionTime(family, purpose)).toBe(time);
});

test('supply limits are the nominal values with +10 % and -6 % (SI 1994/3021)', () => {
  for (const { least, nominal, greatest } of [SUPPLY_VOLTAGE, LINE_TO_LINE]) {
    expect(least).toBeCloseTo(nominal * 0.94, 9);
    expect(greatest).toBeCloseTo(nominal * 1.1, 9);
  }
  expect(SUPPLY_FREQUENCY.least).toBeCloseTo(50 * 0.99, 9);
  expect(SUPPLY_FREQUENCY.greatest).toBeCloseTo(50 * 1.01, 9);
});

test('the open-PEN figures are ±10 % of 230 V, 70 V, 5 s and 4 s (BS 7671:2018+A1:2020, 722.411.4.1)', () => {
  expect(OPEN_PEN_WINDOW.least).toBeCloseTo(230 * 0.9, 9);
  expect(OPEN_PEN_WINDOW.greatest).toBeCloseTo(230 * 1.1, 9);
  expect([TOUCH_LIMIT, OPEN_PEN_TIME, OPEN_PEN_IGNORED]).toEqual([70, 5, 4]);
});

test.each([
  { farads: 1e-3, volts: 60, discharged: true },
  { farads: 1e-3, volts: -60, discharged: true },
  { farads: 1e-3, volts: 60.1, discharged: false },
  // 40 µF · (100 V)² / 2 is 0.2 J, the limit itself.
  { farads: 40e-6, volts: 100, discharged: true },
  { farads: 4e-6, volts: 316, discharged: true },
  { farads: 4e-6, volts: 317, discharged: false },
  { farads: 4e-6, volts: -317, discharged: false },
])('$farads F at $volts V: within the limit $discharged (IEC 61851-1:2017, 8.2.2)', (row) => {
  expect(isDischarged(row.farads, row.volts)).toBe(row.discharged);
});

test('energy of 1 F at 2 V is 2 J', () => {
  expect(storedEnergy(1, 2)).toBe(2);
});
