/** What test action `sharing` ought to show. */
import { isOf } from '../../bench/reading.ts';
import { offeredReadings, oscillating } from '../actions/pilotLines.ts';
import { inState, judgeAll, outletDead, settledFor } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { isAuthorised, mayWait } from '../offer.ts';
import { pilotStandard, published, SHEET } from '../sources.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';

const keepsWaiting = (papers: Papers): readonly Expectation[] => [
  {
    id: 'unasked-offer',
    should: false,
    source: pilotStandard('A.3'),
    of: 'unit',
    points: ['pilot'],
    judge: (o) =>
      judgeAll(
        o.samples
          .filter((s) => settledFor(inState('B', 'C'), 1)(s.setUp, s) && !isAuthorised(papers, o, s))
          .flatMap(({ readings }) => readings.filter((r) => isOf(r, 'pilot'))),
        (r) => !oscillating(r),
      ),
  },
  {
    id: 'unasked-supply',
    should: false,
    source: pilotStandard('A.3'),
    of: 'unit',
    points: ['switching', 'pilot'],
    judge: (o) => outletDead(papers, o, (setUp, s) => inState('C')(setUp, s) && !isAuthorised(papers, o, s)),
  },
];

export const sharing: TestLines = {
  expectations: (papers) => [
    ...(papers.sheet.permission === 'open' ? [] : keepsWaiting(papers)),
    {
      id: 'fault',
      should: false,
      source: SHEET,
      of: 'unit',
      points: ['pilot', 'switching'],
      judge: (o) =>
        judgeAll(
          o.samples.filter((s) => inState('B', 'C')(s.setUp, s) && mayWait(papers, o, s)),
          ({ seen }) => seen.indicator !== 'fault',
        ),
    },
    ...(papers.sheet.permission === 'held'
      ? []
      : [
          {
            id: 'offers-then',
            should: true,
            source: published('SI 2021/1467 regs 10 and 11; IEC 61851-1:2017 A.3'),
            of: 'unit',
            points: ['pilot'],
            judge: (o: Observed) => judgeAll(offeredReadings(papers, o, inState('B')), oscillating),
          } as const,
        ]),
  ],
  figures: () => [],
  limits: () => [],
  stops: ['unasked-supply'],
};
