/** What test action `diode-in-c` ought to show. */
import { parallel, VEHICLE } from '../../laws/pilotLevels.ts';
import { GREATEST_OFF_AFTER_FAULT } from '../../laws/timing.ts';
import { outletDead } from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';
import { diodeShorted, lowHalfRises } from './diode.ts';

const shortedInC = diodeShorted('C');

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

/** −5.62 V for a nominal source. */
const lowHalf = lowHalfRises({
  vehicleResistance: parallel(VEHICLE.permanent, VEHICLE.stateC),
  spread: 0.5,
  when: (o) => (setUp, s) => shortedInC(setUp, s) && !askedAgain(o, s),
});

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
