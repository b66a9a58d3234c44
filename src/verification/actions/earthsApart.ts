/** Test action `earths-apart`: the circuit's own earth against the house's, which meet in the ground alone. */
import { CIRCUIT } from '../sources.ts';
import { continuity } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const earthsApart: Procedure = {
  id: 'earths-apart',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['earthing'],
  applies: ({ site }) => site.house !== undefined,
  steps: () => [{ op: 'null-leads' }, continuity('met', 'house')],
  untold: () => [
    {
      id: 'own-ohms',
      toldBy: ['electrode'],
      of: 'circuit',
      source: CIRCUIT,
    },
  ],
};
