/** Test action `pe-circuit`: the circuit's protective conductor. */
import { CONTACT_ALLOWANCE, expectedCircuitProtective, leastCircuitProtective } from '../../site/expected.ts';
import { CIRCUIT, wiringRules } from '../sources.ts';
import { continuity } from '../steps.ts';
import type { Papers, TestAction } from '../testAction.ts';
import { ohms, path } from './protectivePath.ts';

const circuitPath = ({ site }: Papers) => {
  const sum = expectedCircuitProtective(site);
  const { length } = site.circuit;
  return path(
    'met',
    'supply.PE',
    sum,
    leastCircuitProtective(site),
    'circuit',
    `${length} m × ${((1000 * sum) / length).toFixed(2)} mΩ/m = ${ohms(sum)} Ω`,
  );
};

export const peCircuit: TestAction = {
  id: 'pe-circuit',
  title: 'Protective conductor, earthing terminal to unit',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['circuit'],
  purpose: 'Show that the circuit’s own protective conductor is there and sound as far as the unit.',
  applies: () => true,
  steps: () => [{ op: 'null-leads' }, continuity('met', 'supply.PE')],
  expectations: (papers) => circuitPath(papers).expectations,
  untold: () => [
    {
      id: 'to-outlet',
      toldBy: ['pe-outlet', 'state-c', 'loop'],
      of: 'circuit',
      text: 'is continuous as far as the outlet',
      why: 'The leads end at the unit’s terminal; the unit and its outlet come beyond.',
      source: CIRCUIT,
    },
  ],
  figures: ({ site }) => [
    {
      id: 'sum',
      text: 'reads about',
      unit: 'Ω',
      value: expectedCircuitProtective(site),
      tolerance: CONTACT_ALLOWANCE,
      why: 'Length × mΩ/m for its area, at 20 °C.',
      source: wiringRules('643.2.1, with IEC 60228'),
    },
  ],
  limits: (papers) => [circuitPath(papers).limit],
  stops: {
    'near-sum': 'the circuit’s protective conductor failed: do not energise (BS 7671 643.1, EAWR reg. 4)',
    open: 'the circuit’s protective conductor is open: do not energise (BS 7671 643.1, EAWR reg. 4)',
  },
};
