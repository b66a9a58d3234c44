/** Test action `isolate`: every live pole open at the origin, and locked. */
import { published } from '../sources.ts';
import type { Procedure } from '../testAction.ts';

export const isolate: Procedure = {
  id: 'isolate',
  stage: 'before power',
  from: 'energised',
  leaves: 'isolated',
  restsOn: [],
  applies: () => true,
  steps: () => [{ op: 'isolate' }, { op: 'wait', seconds: 2 }],
  untold: () => [
    {
      id: 'terminals-dead',
      toldBy: ['prove-dead'],
      ownOnly: true,
      source: published('HSE GS38, 4th edition 2015'),
    },
  ],
};
