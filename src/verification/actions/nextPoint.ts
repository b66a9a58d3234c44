/** Test action `next-point`: a second charging point on the same service takes its share, and lets it go again. */
import { OFFER_RANGE } from '../../laws/pilotDuty.ts';
import type { Amps } from '../../laws/quantities.ts';
import { GREATEST_DUTY_CHANGE } from '../../laws/timing.ts';
import { inState, judgeAll, type When } from '../judging.ts';
import { knownLoad, offerRange, unplug, untilOffered } from '../offer.ts';
import { rulesFor } from '../rules/rules.ts';
import { PRACTICE, pilotStandard } from '../sources.ts';
import { pilot, waitFor } from '../steps.ts';
import type { Papers, TestAction } from '../testAction.ts';
import { isDue, isTooLittle, isTooMuch, offersShown } from './pilotLines.ts';

/** The pause before a new offer (Table A.6 sequence 9.2) on top of the time to follow, s. */
const AND_PAUSE = 4;
/** What a sensor may be out by and the least that can be offered, A: the next point is to leave so much, come what may. */
const LEFT_OVER: Amps = OFFER_RANGE.least + 1;

/** The house's known loads as stated, on its most loaded line. */
const houseOf = (papers: Papers): Amps => knownLoad(papers, { siteLoad: 0, nextPoint: 0 }).greatest / 1.1;
const limitOf = ({ sheet }: Papers): Amps => sheet.serviceLimit ?? 0;

/** What the next point is made to draw: all that it may, or what leaves enough for an offer; whole amperes. */
function drawnNext(papers: Papers): Amps {
  const leaves = Math.floor((limitOf(papers) - LEFT_OVER) / 1.1 - houseOf(papers));
  return Math.max(1, Math.min(papers.site.nextPoint?.ratedCurrent ?? 0, leaves));
}

/** What is left of the limit by the figures as stated, A. */
const leftBeside = (papers: Papers): Amps => limitOf(papers) - houseOf(papers) - drawnNext(papers);

const setNext = (amps: Amps) => [{ op: 'supply', nextPoint: amps } as const, waitFor(GREATEST_DUTY_CHANGE)];

const inB = inState('B');
const idle: When = (setUp, sample) => inB(setUp, sample) && setUp.nextPoint === 0;
const charging: When = (setUp, sample) => inB(setUp, sample) && setUp.nextPoint > 0;

/** The offer that is due while the next point draws that, and how far off it may be, A. */
function dueBeside(papers: Papers): { readonly value: Amps; readonly tolerance: Amps } {
  const { least, greatest } = offerRange(papers, {
    loadLimit: papers.sheet.loadLimit,
    siteLoad: 0,
    nextPoint: drawnNext(papers),
    standIn: { coding: papers.sheet.cable.coding },
  });
  const value = Math.min(greatest, Math.max(least, leftBeside(papers)));
  return { value, tolerance: Math.max(0.5, value - least, greatest - value) };
}

export const nextPoint: TestAction = {
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
  expectations: (papers) => {
    const values = {
      limit: limitOf(papers),
      house: houseOf(papers),
      next: drawnNext(papers),
      left: leftBeside(papers),
    };
    return [
      {
        id: 'beside-idle',
        should: true,
        values,
        source: pilotStandard('6.3.1.6, Table A.7'),
        of: 'unit',
        points: ['pilot'],
        judge: (o) => judgeAll(offersShown(papers, o, idle), isDue),
      },
      {
        id: 'over-service',
        should: false,
        values,
        source: rulesFor(papers).regulation('722.311; IEC 61851-1:2017 Table A.6 sequence 6'),
        of: 'unit',
        points: ['pilot'],
        judge: (o) => judgeAll(offersShown(papers, o, charging), (one) => !isTooMuch(one)),
      },
      {
        id: 'keeps-offering',
        should: true,
        values,
        source: pilotStandard('Table A.6 sequence 6, Table A.7'),
        of: 'unit',
        points: ['pilot'],
        judge: (o) => judgeAll(offersShown(papers, o, charging), (one) => !isTooLittle(one)),
      },
    ];
  },
  untold: () => [
    { id: 'next-gives-way', toldBy: [], ownOnly: true, source: PRACTICE },
    { id: 'intake-fuse', toldBy: [], of: 'circuit', source: PRACTICE },
  ],
  figures: (papers) => [
    {
      id: 'left',
      values: { next: drawnNext(papers) },
      unit: 'A',
      ...dueBeside(papers),
      source: rulesFor(papers).regulation('722.311'),
    },
  ],
  limits: () => [],
  stops: [],
};
