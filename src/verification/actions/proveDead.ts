/** Test action `prove-dead`: with a proved detector, at the origin and at the supply terminals. */

import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import type { Procedure } from '../testAction.ts';

export const proveDead: Procedure = {
  id: 'prove-dead',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['detector'],
  applies: () => true,
  steps: () => [
    { op: 'check-instruments' },
    { op: 'prove-dead', at: 'origin' },
    { op: 'open-cover' },
    { op: 'discharge' },
    { op: 'prove-dead', at: 'supply' },
  ],
  untold: (papers) => [
    {
      id: 'outlet-side',
      toldBy: ['poles-open'],
      ownOnly: true,
      source: CIRCUIT,
    },
    {
      id: 'insulated',
      toldBy: ['insulation-circuit', 'insulation-unit', 'insulation-outlet'],
      of: 'circuit',
      source: rulesFor(papers).remembered('643.3'),
    },
  ],
};
