/** Test action `pilot-short`: the pilot shorted to PE while supplying. */
import type { When } from '../judging.ts';
import { cleared, unplug, untilSupplied } from '../offer.ts';
import { pilotStandard } from '../sources.ts';
import { pilot, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const shorted: When = ({ supply, standIn }) =>
  supply === 'on' && standIn.plugged && standIn.pilot === 'shorted-to-earth';

export const pilotShort: Procedure = {
  id: 'pilot-short',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot'],
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    { op: 'measure', quantity: 'opening-time', of: 'pilot-short' },
    waitFor(3),
    pilot,
    { op: 'prove-dead', at: 'outlet' },
    ...unplug,
    ...cleared(papers, 'E'),
  ],
  untold: () => [
    {
      id: 'pe-lost',
      toldBy: ['pe-open'],
      source: pilotStandard('A.4.8'),
    },
  ],
};
