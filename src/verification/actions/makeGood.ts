/** Test action `make-good`: everything that the dead tests moved is back before power. */
import { rulesFor } from '../rules/rules.ts';
import type { Procedure } from '../testAction.ts';

export const makeGood: Procedure = {
  id: 'make-good',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: [],
  cover: 'closed',
  applies: () => true,
  steps: () => [{ op: 'close-cover' }, { op: 'guard' }],
  untold: (papers) => [
    {
      id: 'right-way',
      toldBy: ['supply-volts', 'state-c', 'loop'],
      ownOnly: true,
      of: 'circuit',
      source: rulesFor(papers).remembered('643.1'),
    },
  ],
};
