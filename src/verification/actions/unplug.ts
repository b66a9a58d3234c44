/** Test action `unplug`: the vehicle goes away, from C and then from B. */
import { linesOf } from '../../site/site.ts';
import { unplug as away, untilOffered, untilSupplied } from '../offer.ts';
import { pilotStandard } from '../sources.ts';
import { outletVoltages, pilot, voltage, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const unplug: Procedure = {
  id: 'unplug',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot'],
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    // A held plug cannot be pulled: there the pilot is let go at the vehicle's end.
    { op: 'measure', quantity: 'opening-time', of: papers.sheet.outlet === 'socket' ? 'C-to-A' : 'unplug' },
    waitFor(1),
    ...outletVoltages(papers),
    ...away,
    ...untilOffered(papers),
    ...away,
    waitFor(1),
    pilot,
    ...linesOf(papers.site).map((x) => voltage(`outlet.${x}`, 'outlet.PE')),
  ],
  untold: () => [
    {
      id: 'earth-lost',
      toldBy: ['pe-open'],
      ownOnly: true,
      source: pilotStandard('A.4.8'),
    },
  ],
};
