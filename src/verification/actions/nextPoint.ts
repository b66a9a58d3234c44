/** Test action `next-point`: a second charging point on the same service takes its share, and lets it go again. */
import { OFFER_RANGE } from '../../laws/pilotDuty.ts';
import type { Amps } from '../../laws/quantities.ts';
import { GREATEST_DUTY_CHANGE } from '../../laws/timing.ts';
import { knownLoad, unplug, untilOffered } from '../offer.ts';
import { PRACTICE } from '../sources.ts';
import { pilot, waitFor } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';

/** The pause before a new offer (Table A.6 sequence 9.2) on top of the time to follow, s. */
const AND_PAUSE = 4;
/** What a sensor may be out by and the least that can be offered, A: the next point is to leave so much, come what may. */
const LEFT_OVER: Amps = OFFER_RANGE.least + 1;

/** The house's known loads as stated, on its most loaded line. */
export const houseOf = (papers: Papers): Amps =>
  knownLoad(papers, { siteLoad: 0, nextPoint: 0 }).greatest / 1.1;
export const limitOf = ({ sheet }: Papers): Amps => sheet.serviceLimit ?? 0;

/** What the next point is made to draw: all that it may, or what leaves enough for an offer; whole amperes. */
export function drawnNext(papers: Papers): Amps {
  const leaves = Math.floor((limitOf(papers) - LEFT_OVER) / 1.1 - houseOf(papers));
  return Math.max(1, Math.min(papers.site.nextPoint?.ratedCurrent ?? 0, leaves));
}

const setNext = (amps: Amps) => [{ op: 'supply', nextPoint: amps } as const, waitFor(GREATEST_DUTY_CHANGE)];

export const nextPoint: Procedure = {
  id: 'next-point',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['pilot', 'coding'],
  applies: ({ site, sheet }) =>
    site.nextPoint !== undefined && sheet.serviceLimit !== null && sheet.permission !== 'held',
  steps: (papers) => [
    ...untilOffered(papers),
    ...setNext(0),
    waitFor(AND_PAUSE),
    pilot,
    ...setNext(drawnNext(papers)),
    pilot,
    ...setNext(0),
    waitFor(AND_PAUSE),
    pilot,
    ...((papers.site.nextPoint?.draws ?? 0) === 0 ? [] : setNext(papers.site.nextPoint?.draws ?? 0)),
    ...unplug,
  ],
  untold: () => [
    { id: 'next-gives-way', toldBy: [], ownOnly: true, source: PRACTICE },
    { id: 'intake-fuse', toldBy: [], of: 'circuit', source: PRACTICE },
  ],
};
