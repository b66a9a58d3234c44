/** Test action `pe-circuit`: the circuit's protective conductor. */
import { CONTACT_ALLOWANCE, expectedCircuitProtective, leastCircuitProtective } from '../../site/expected.ts';
import { CIRCUIT, wiringRules } from '../sources.ts';
import { continuity } from '../steps.ts';
import type { Papers, TestAction } from '../testAction.ts';
import { path } from './protectivePath.ts';

const circuitPath = ({ site }: Papers) => {
  const sum = expectedCircuitProtective(site);
  const { length } = site.circuit;
  return path('met', 'supply.PE', sum, leastCircuitProtective(site), 'circuit', { length });
};

export const peCircuit: TestAction = {
  id: 'pe-circuit',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['circuit'],
  applies: () => true,
  steps: () => [{ op: 'null-leads' }, continuity('met', 'supply.PE')],
  expectations: (papers) => circuitPath(papers).expectations,
  untold: () => [
    {
      id: 'to-outlet',
      toldBy: ['pe-outlet', 'state-c', 'loop'],
      of: 'circuit',
      source: CIRCUIT,
    },
  ],
  figures: ({ site }) => [
    {
      id: 'sum',
      unit: 'Ω',
      value: expectedCircuitProtective(site),
      tolerance: CONTACT_ALLOWANCE,
      source: wiringRules('643.2.1, with IEC 60228'),
    },
  ],
  limits: (papers) => [circuitPath(papers).limit],
  stops: ['near-sum', 'open'],
};
