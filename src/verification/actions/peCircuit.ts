/** Test action `pe-circuit`: the circuit's protective conductor. */
import { CONTACT_ALLOWANCE, expectedCircuitProtective, leastCircuitProtective } from '../../site/expected.ts';
import { isInside, judgeAll } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT, PRACTICE } from '../sources.ts';
import { continuity } from '../steps.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';
import { continuityOf, ohms, path } from './protectivePath.ts';

const circuitPath = (papers: Papers) => {
  const { site } = papers;
  const sum = expectedCircuitProtective(site);
  const { length } = site.circuit;
  return path(
    papers,
    ['met', 'supply.PE'],
    sum,
    leastCircuitProtective(site),
    'circuit',
    `${length} m × ${((1000 * sum) / length).toFixed(2)} mΩ/m = ${ohms(sum)} Ω`,
  );
};

/** Real copper reads a little less than its greatest value by IEC 60228. Common practice, no source. */
const LITTLE_LESS = 0.9;

/** A reading that the conductor alone cannot give, where the papers name nothing beside it. */
function besideAnother({ site }: Papers): Expectation {
  const sum = expectedCircuitProtective(site);
  return {
    id: 'beside-another',
    should: false,
    text: 'reads below its own length × mΩ/m',
    why: `The conductor alone is ${ohms(sum)} Ω; a lower reading means that metal in parallel carries part of the current. Free its far end and repeat.`,
    source: PRACTICE,
    of: 'circuit',
    points: ['protective-conductor'],
    judge: (o) =>
      judgeAll(continuityOf(o, 'met', 'supply.PE'), (r) => isInside(r, { least: LITTLE_LESS * sum })),
  };
}

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
  expectations: (papers) => [
    ...circuitPath(papers).expectations,
    ...(papers.site.circuit.parallelEarth === null ? [besideAnother(papers)] : []),
  ],
  untold: ({ site }) => [
    ...(site.circuit.parallelEarth === null
      ? []
      : [
          {
            id: 'own-whole',
            toldBy: [],
            of: 'circuit',
            text: 'has a protective conductor of its own that is whole',
            why: 'Armour or steel lies in parallel, and current takes that way round a break. Free the conductor’s far end and repeat.',
            source: PRACTICE,
          } as const,
        ]),
    {
      id: 'to-outlet',
      toldBy: ['pe-outlet', 'state-c', 'loop'],
      of: 'circuit',
      text: 'is continuous as far as the outlet',
      why: 'The leads end at the unit’s terminal; the unit and its outlet come beyond.',
      source: CIRCUIT,
    },
  ],
  figures: (papers) => [
    {
      id: 'sum',
      text: 'reads about',
      unit: 'Ω',
      value: expectedCircuitProtective(papers.site),
      tolerance: CONTACT_ALLOWANCE,
      why: 'Length × mΩ/m for its area, at 20 °C.',
      source: rulesFor(papers).regulation('643.2.1, with IEC 60228'),
    },
  ],
  limits: (papers) => [circuitPath(papers).limit],
  stops: {
    'near-sum': 'the circuit’s protective conductor failed: do not energise (BS 7671 643.1, EAWR reg. 4)',
    open: 'the circuit’s protective conductor is open: do not energise (BS 7671 643.1, EAWR reg. 4)',
  },
};
