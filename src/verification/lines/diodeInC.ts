/** What test action `diode-in-c` ought to show. */
import { PILOT_SOURCE, parallel, pilotLow, VEHICLE } from '../../laws/pilotLevels.ts';
import { GREATEST_OFF_AFTER_FAULT } from '../../laws/timing.ts';
import { isNumberInside, judgeAll, outletDead, readingsOf, type When } from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { CIRCUIT, pilotStandard, SHEET } from '../sources.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';

/** The low half with the diode shorted in C, for a nominal source, V (−5.62). */
const SHORTED_LOW = pilotLow({
  open: PILOT_SOURCE.open,
  sourceResistance: PILOT_SOURCE.resistance,
  vehicleResistance: parallel(VEHICLE.permanent, VEHICLE.stateC),
  diode: 'shorted',
});
/** Spread from the source's own tolerance of ±5 % and ±3 %, V (IEC 61851-1:2017 Table A.2). */
const SHORTED_SPREAD = 0.5;
const LOW_RANGE = { least: SHORTED_LOW - SHORTED_SPREAD, greatest: SHORTED_LOW + SHORTED_SPREAD };

const shortedInC: When = ({ supply, standIn }) =>
  supply === 'on' &&
  standIn.plugged &&
  standIn.state === 'C' &&
  standIn.diode === 'shorted' &&
  standIn.pilot === 'sound' &&
  standIn.earth === 'sound';

/** Whether the request was taken back and made again with the diode shorted all the while. */
function askedAgain(o: Observed, sample: Sample): boolean {
  const before = o.samples.slice(0, o.samples.indexOf(sample) + 1);
  const backInB = before.findLastIndex(
    ({ setUp }) => setUp.standIn.diode === 'shorted' && setUp.standIn.state === 'B',
  );
  return backInB >= 0 && before.slice(backInB).every(({ setUp }) => setUp.standIn.diode === 'shorted');
}

const always = (papers: Papers): Expectation => ({
  id: 'opens',
  should: true,
  source: SHEET,
  of: 'unit',
  points: ['pilot', 'switching'],
  judge: (o) =>
    outletDead(
      papers,
      o,
      (setUp, s) => shortedInC(setUp, s) && setUp.settled >= GREATEST_OFF_AFTER_FAULT && !askedAgain(o, s),
    ),
});

const lowHalf: Expectation = {
  id: 'low-half',
  should: true,
  values: { low: SHORTED_LOW, ...LOW_RANGE },
  source: CIRCUIT,
  of: 'circuit',
  points: ['pilot'],
  judge: (o) =>
    judgeAll(
      readingsOf(o, 'pilot', (setUp, s) => shortedInC(setUp, s) && !askedAgain(o, s)).filter(
        (r) => r.frequency !== null,
      ),
      (r) => isNumberInside(r.low ?? 0, r.uncertainty ?? 0, LOW_RANGE),
    ),
};

export const diodeInC: TestLines = {
  expectations: (papers) => [
    papers.sheet.diodeCheck === 'always' ? always(papers) : lowHalf,
    {
      id: 'supplies-again',
      should: false,
      source: pilotStandard('Table A.4 note c'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) =>
        outletDead(papers, o, (setUp, s) => shortedInC(setUp, s) && setUp.settled >= 3 && askedAgain(o, s)),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['supplies-again'],
};
