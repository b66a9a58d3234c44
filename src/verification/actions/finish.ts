/** Test action `finish`: how the unit is left, once more as it should be found. */
import { unplug } from '../offer.ts';
import { rulesFor } from '../rules/rules.ts';
import { pilot, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const finish: Procedure = {
  id: 'finish',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  restsOn: [],
  applies: () => true,
  steps: () => [...unplug, waitFor(2), { op: 'prove-dead', at: 'outlet' }, pilot],
  untold: (papers) => [
    {
      id: 'next-test',
      toldBy: [],
      source: rulesFor(papers).regulation('644'),
    },
  ],
};
