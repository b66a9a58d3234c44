/** Test action `c-to-b`: a vehicle that takes its request back. */
import { linesOf } from '../../site/site.ts';
import { unplug, untilSupplied } from '../offer.ts';
import { pilotStandard } from '../sources.ts';
import { pilot, voltage, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const cToB: Procedure = {
  id: 'c-to-b',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    { op: 'measure', quantity: 'opening-time', of: 'C-to-B' },
    waitFor(1),
    { op: 'prove-dead', at: 'outlet' },
    pilot,
    { op: 'vehicle', state: 'C' },
    waitFor(3),
    ...linesOf(papers.site).map((x) => voltage(`outlet.${x}`, 'outlet.N')),
    ...unplug,
  ],
  untold: () => [
    {
      id: 'unplugged',
      toldBy: ['unplug', 'release'],
      source: pilotStandard('Table A.6 sequence 2.2'),
    },
  ],
};
