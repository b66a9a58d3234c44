/** What test action `pe-circuit` ought to show. */
import { CONTACT_ALLOWANCE, expectedCircuitProtective, leastCircuitProtective } from '../../site/expected.ts';
import { isInside, judgeAll } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import { PRACTICE } from '../sources.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';
import { continuityOf, path } from './protectivePath.ts';

const circuitPath = (papers: Papers) => {
  const { site } = papers;
  const sum = expectedCircuitProtective(site);
  const { length } = site.circuit;
  return path(papers, ['met', 'supply.PE'], sum, leastCircuitProtective(site), 'circuit', { length });
};

/** Real copper reads a little less than its greatest value by IEC 60228. Common practice, no source. */
const LITTLE_LESS = 0.9;

/** A reading that the conductor alone cannot give, where the papers name nothing beside it. */
function besideAnother({ site }: Papers): Expectation {
  const sum = expectedCircuitProtective(site);
  return {
    id: 'beside-another',
    should: false,
    values: { sum },
    source: PRACTICE,
    of: 'circuit',
    points: ['protective-conductor'],
    judge: (o) =>
      judgeAll(continuityOf(o, 'met', 'supply.PE'), (r) => isInside(r, { least: LITTLE_LESS * sum })),
  };
}

export const peCircuit: TestLines = {
  expectations: (papers) => [
    ...circuitPath(papers).expectations,
    ...(papers.site.circuit.parallelEarth === null ? [besideAnother(papers)] : []),
  ],
  figures: (papers) => [
    {
      id: 'sum',
      values: { length: papers.site.circuit.length, sum: expectedCircuitProtective(papers.site) },
      unit: 'Ω',
      value: expectedCircuitProtective(papers.site),
      tolerance: CONTACT_ALLOWANCE,
      source: rulesFor(papers).regulation('643.2.1', 'with-iec-60228'),
    },
  ],
  limits: (papers) => [circuitPath(papers).limit],
  stops: ['near-sum', 'open'],
};
