/** What test action `diode` ought to show. */
import { PILOT_SOURCE, pilotLow, VEHICLE } from '../../laws/pilotLevels.ts';
import type { Ohms, Volts } from '../../laws/quantities.ts';
import {
  isNumberInside,
  judgeAll,
  outletDead,
  readingsOf,
  samplesWhen,
  settledFor,
  type When,
} from '../judging.ts';
import type { Observed } from '../observed.ts';
import { mayWait } from '../offer.ts';
import { CIRCUIT, pilotStandard, SHEET } from '../sources.ts';
import type { Expectation, TestLines } from '../testAction.ts';

export const diodeShorted =
  (state: 'B' | 'C'): When =>
  ({ supply, standIn }) =>
    supply === 'on' &&
    standIn.plugged &&
    standIn.state === state &&
    standIn.diode === 'shorted' &&
    standIn.pilot === 'sound' &&
    standIn.earth === 'sound';

interface Shorted {
  readonly vehicleResistance: Ohms;
  /** From the source's own tolerance of ±5 % and ±3 %, V (IEC 61851-1:2017 Table A.2). */
  readonly spread: Volts;
  readonly when: (observed: Observed) => When;
}

/** The low half rises with the diode shorted to what the vehicle's resistance makes of a nominal source. */
export function lowHalfRises({ vehicleResistance, spread, when }: Shorted): Expectation {
  const low = pilotLow({
    open: PILOT_SOURCE.open,
    sourceResistance: PILOT_SOURCE.resistance,
    vehicleResistance,
    diode: 'shorted',
  });
  const range = { least: low - spread, greatest: low + spread };
  return {
    id: 'low-half',
    should: true,
    values: { low, ...range },
    source: CIRCUIT,
    of: 'circuit',
    points: ['pilot'],
    judge: (o) =>
      judgeAll(
        readingsOf(o, 'pilot', when(o)).filter((r) => r.frequency !== null),
        (r) => isNumberInside(r.low ?? 0, r.uncertainty ?? 0, range),
      ),
  };
}

/** −8.79 V for a nominal source. */
const LOW_IN_B = lowHalfRises({
  vehicleResistance: VEHICLE.permanent,
  spread: 0.6,
  when: () => diodeShorted('B'),
});

export const diode: TestLines = {
  expectations: (papers) => [
    // A unit that looks at the low half all the time has stopped its offer before anybody can read it.
    ...(papers.sheet.diodeCheck === 'always' ? [] : [LOW_IN_B]),
    {
      id: 'voltage',
      should: false,
      source: pilotStandard('Table A.4 note c'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) => outletDead(papers, o, settledFor(diodeShorted('C'), 3)),
    },
    {
      id: 'fault',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['pilot'],
      // Without an offer the pilot is steady: it has no low half to look at.
      judge: (o) =>
        judgeAll(
          samplesWhen(o, settledFor(diodeShorted('C'), 3)).filter((sample) => !mayWait(papers, o, sample)),
          ({ seen }) => seen.indicator === 'fault',
        ),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['voltage'],
};
