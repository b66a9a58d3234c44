/** Test action `release`: the plug of a socket-outlet is let go, after a vehicle has gone and after a fault. */
import { GREATEST_UNLOCK_AFTER_FAULT, GREATEST_UNLOCK_AFTER_UNPLUGGING } from '../../laws/timing.ts';
import { cleared, unplug, untilSupplied } from '../offer.ts';
import { SHEET } from '../sources.ts';
import { waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const release: Procedure = {
  id: 'release',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['lock'],
  applies: ({ sheet }) => sheet.outlet === 'socket',
  steps: (papers) => [
    ...untilSupplied(papers),
    { op: 'vehicle', state: 'B' },
    waitFor(1),
    { op: 'vehicle', state: 'A' },
    waitFor(GREATEST_UNLOCK_AFTER_UNPLUGGING),
    { op: 'pull-plug' },
    ...untilSupplied(papers),
    { op: 'vehicle', pilot: 'shorted-to-earth' },
    waitFor(GREATEST_UNLOCK_AFTER_FAULT),
    ...unplug,
    ...cleared(papers, 'E'),
  ],
  untold: () => [
    {
      id: 'no-power',
      toldBy: ['supply-return'],
      source: SHEET,
    },
  ],
};
