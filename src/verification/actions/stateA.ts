/** Test action `state-a`: nothing connected. */
import { CIRCUIT } from '../sources.ts';
import { pilot, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const stateA: Procedure = {
  id: 'state-a',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot'],
  applies: () => true,
  steps: () => [waitFor(1), { op: 'prove-dead', at: 'outlet' }, pilot],
  untold: () => [
    {
      id: 'neutral-open',
      toldBy: ['poles-open'],
      ownOnly: true,
      source: CIRCUIT,
    },
  ],
};
