/** Test action `energise`: watched and listened to from switch-on until the unit is ready. */
import { outletPairs } from '../judging.ts';
import { CIRCUIT } from '../sources.ts';
import { pilot, voltage, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const energise: Procedure = {
  id: 'energise',
  stage: 'with power',
  from: 'isolated',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot'],
  cover: 'closed',
  applies: () => true,
  steps: (papers) => [
    { op: 'energise' },
    pilot,
    ...outletPairs(papers).map(([a, b]) => voltage(a, b)),
    waitFor(papers.sheet.startUp + 2),
    { op: 'prove-dead', at: 'outlet' },
    pilot,
  ],
  untold: () => [
    {
      id: 'poles',
      toldBy: ['poles-open'],
      ownOnly: true,
      source: CIRCUIT,
    },
  ],
};
