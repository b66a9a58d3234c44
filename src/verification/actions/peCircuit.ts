/** Test action `pe-circuit`: the circuit's protective conductor. */
import { CIRCUIT, PRACTICE } from '../sources.ts';
import { continuity } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const peCircuit: Procedure = {
  id: 'pe-circuit',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['circuit'],
  applies: () => true,
  steps: () => [{ op: 'null-leads' }, continuity('met', 'supply.PE')],
  untold: ({ site }) => [
    ...(site.circuit.parallelEarth === null
      ? []
      : [{ id: 'own-whole', toldBy: [], of: 'circuit', source: PRACTICE } as const]),
    {
      id: 'to-outlet',
      toldBy: ['pe-outlet', 'state-c', 'loop'],
      of: 'circuit',
      source: CIRCUIT,
    },
  ],
};
