/** Test action `hold`: pulling at the plug of a socket-outlet, in B and while it is live. */
import { inState, judgeAll, samplesWhen, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { unplug, untilOffered } from '../offer.ts';
import { CIRCUIT, pilotStandard, SHEET } from '../sources.ts';
import { waitFor } from '../steps.ts';
import type { Finding, TestAction } from '../testAction.ts';

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

export const hold: TestAction = {
  id: 'hold',
  title: 'Pulling at the plug',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['lock'],
  purpose: 'Show that the plug is locked before the outlet is live, and stays locked while it is.',
  applies: ({ sheet }) => sheet.outlet === 'socket',
  steps: (papers) => [
    ...untilOffered(papers),
    ...(papers.sheet.holdInB ? [{ op: 'pull-plug' } as const] : []),
    { op: 'vehicle', state: 'C' },
    waitFor(3),
    { op: 'pull-plug' },
    ...unplug,
  ],
  expectations: ({ sheet }) => [
    {
      id: 'let-out-live',
      should: false,
      text: 'lets the plug out while a vehicle is supplied',
      why: 'Live contacts would part under load, in somebody’s hand.',
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
      text: 'locks the plug before its contactor closes',
      why: 'The lock is heard before the contactor.',
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
            text: 'holds the plug as soon as a vehicle is connected',
            why: 'The unit’s sheet says so.',
            source: SHEET,
            of: 'unit',
            points: ['proximity-retention'],
            judge: (o: Observed) => judgeAll(pulls(o, inState('B')), ({ seen }) => seen.plug !== 'out'),
          } as const,
        ]
      : []),
  ],
  untold: () => [
    {
      id: 'worn',
      toldBy: [],
      text: 'holds the plug after years of use as well',
      why: 'One pull shows today’s lock, not its wear.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: { 'let-out-live': 'the plug comes out live: isolate and keep people away' },
};
