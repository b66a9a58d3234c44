/** What test action `diode` ought to show. */
import { PILOT_SOURCE, pilotLow, VEHICLE } from '../../laws/pilotLevels.ts';
import {
  isNumberInside,
  judgeAll,
  outletDead,
  readingsOf,
  samplesWhen,
  settledFor,
  type When,
} from '../judging.ts';
import { mayWait } from '../offer.ts';
import { CIRCUIT, pilotStandard, SHEET } from '../sources.ts';
import type { Expectation, TestLines } from '../testAction.ts';

const diodeShorted =
  (state: 'B' | 'C'): When =>
  ({ supply, standIn }) =>
    supply === 'on' &&
    standIn.plugged &&
    standIn.state === state &&
    standIn.diode === 'shorted' &&
    standIn.pilot === 'sound' &&
    standIn.earth === 'sound';

/** The low half with the diode shorted, for a nominal source, V (−8.79 in B). */
const SHORTED_LOW = pilotLow({
  open: PILOT_SOURCE.open,
  sourceResistance: PILOT_SOURCE.resistance,
  vehicleResistance: VEHICLE.permanent,
  diode: 'shorted',
});

/** Spread from the source's own tolerance of ±5 % and ±3 %, V (IEC 61851-1:2017 Table A.2). */
const SHORTED_SPREAD = 0.6;

const LOW_RANGE = { least: SHORTED_LOW - SHORTED_SPREAD, greatest: SHORTED_LOW + SHORTED_SPREAD };

const lowHalfRises: Expectation = {
  id: 'low-half',
  should: true,
  values: { low: SHORTED_LOW, ...LOW_RANGE },
  source: CIRCUIT,
  of: 'circuit',
  points: ['pilot'],
  judge: (o) =>
    judgeAll(
      readingsOf(o, 'pilot', diodeShorted('B')).filter((r) => r.frequency !== null),
      (r) => isNumberInside(r.low ?? 0, r.uncertainty ?? 0, LOW_RANGE),
    ),
};

export const diode: TestLines = {
  expectations: (papers) => [
    // A unit that looks at the low half all the time has stopped its offer before anybody can read it.
    ...(papers.sheet.diodeCheck === 'always' ? [] : [lowHalfRises]),
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
