/** Test action `hold`: pulling at the plug of a socket-outlet, in B and while it is live. */
import { unplug, untilOffered } from '../offer.ts';
import { CIRCUIT } from '../sources.ts';
import { waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const hold: Procedure = {
  id: 'hold',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['lock'],
  applies: ({ sheet }) => sheet.outlet === 'socket',
  steps: (papers) => [
    ...untilOffered(papers),
    ...(papers.sheet.holdInB ? [{ op: 'pull-plug' } as const] : []),
    { op: 'vehicle', state: 'C' },
    waitFor(3),
    { op: 'pull-plug' },
    ...unplug,
  ],
  untold: () => [
    {
      id: 'worn',
      toldBy: [],
      source: CIRCUIT,
    },
  ],
};
