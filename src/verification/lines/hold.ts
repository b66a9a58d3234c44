/** What test action `hold` ought to show. */
import { inState, judgeAll, samplesWhen, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import type { Finding, TestLines } from '../testAction.ts';

/** Pulls at the plug, each with the set-up it began in. */
const pulls = (o: Observed, when: When) =>
  o.samples.flatMap((sample, i) => {
    const before = o.samples[i - 1];
    return sample.operation.op === 'pull-plug' && before !== undefined && when(before.setUp, before)
      ? [{ ...sample, before }]
      : [];
  });

/** Every closing of the contactor that was heard came after the plug was locked. */
function lockedFirst(o: Observed): Finding {
  let locked = false;
  const closings: boolean[] = [];
  for (const { seen, events } of samplesWhen(o, () => true)) {
    for (const { what } of events) {
      if (what === 'plug locked') locked = true;
      if (what === 'plug released') locked = false;
      if (what === 'contactor closed') closings.push(locked);
    }
    // Locked before anything was listened to.
    locked ||= seen.plug === 'held';
  }
  return judgeAll(closings, (wasLocked) => wasLocked);
}

export const hold: TestLines = {
  expectations: ({ sheet }) => [
    {
      id: 'let-out-live',
      should: false,
      source: pilotStandard('6.3.2, Table A.6'),
      of: 'unit',
      points: ['proximity-retention'],
      judge: (o) =>
        judgeAll(
          pulls(o, inState('C')).filter(({ before }) => before.seen.indicator === 'charging'),
          ({ seen }) => seen.plug !== 'out',
        ),
    },
    {
      id: 'lock-first',
      should: true,
      source: pilotStandard('Table A.6'),
      of: 'unit',
      points: ['proximity-retention', 'switching'],
      judge: lockedFirst,
    },
    ...(sheet.holdInB
      ? [
          {
            id: 'held-in-b',
            should: true,
            source: SHEET,
            of: 'unit',
            points: ['proximity-retention'],
            judge: (o: Observed) => judgeAll(pulls(o, inState('B')), ({ seen }) => seen.plug !== 'out'),
          } as const,
        ]
      : []),
  ],
  figures: () => [],
  limits: () => [],
  stops: ['let-out-live'],
};
