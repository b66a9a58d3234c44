/** Test action `papers`: design data and the unit's sheet, read before anything is touched. */
import { rulesFor } from '../rules/rules.ts';
import { PRACTICE, pilotStandard } from '../sources.ts';
import { waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const papers: Procedure = {
  id: 'papers',
  stage: 'before power',
  from: 'energised',
  leaves: 'energised',
  restsOn: [],
  cover: 'as found',
  applies: () => true,
  steps: () => [waitFor(60)],
  untold: (p) => [
    {
      id: 'laid-so',
      toldBy: ['inspect'],
      of: 'circuit',
      source: rulesFor(p).remembered('642.3'),
    },
    {
      id: 'own-circuit',
      toldBy: ['isolate', 'inspect'],
      of: 'circuit',
      source: rulesFor(p).regulation('722.533.101'),
    },
    {
      id: 'as-fitted',
      toldBy: ['inspect'],
      of: 'circuit',
      source: PRACTICE,
    },
    {
      id: 'offer',
      toldBy: ['state-b', 'coding-sizes', 'state-c', 'c-to-b', 'state-d', 'limit'],
      source: pilotStandard('6.3.1.6'),
    },
  ],
};
