/** What test action `r1r2-polarity` ought to show. */
import type { Link } from '../../bench/plant.ts';
import type { Reading } from '../../bench/reading.ts';
import type { Ohms } from '../../laws/quantities.ts';
import {
  CONTACT_ALLOWANCE,
  expectedCircuitLine,
  expectedCircuitProtective,
  leastCircuitProtective,
} from '../../site/expected.ts';
import { livesOf } from '../../site/site.ts';
import { between, isInside, judgeAll, off, readingsOf } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import type { Papers, TestLines } from '../testAction.ts';

const sumOf = ({ site }: Papers): Ohms => expectedCircuitLine(site) + expectedCircuitProtective(site);

/** The least that may be read: declared steelwork in parallel lowers it. */
const leastSum = (papers: Papers): Ohms =>
  sumOf(papers) -
  (expectedCircuitProtective(papers.site) - leastCircuitProtective(papers.site)) -
  CONTACT_ALLOWANCE;

/** What the sum is made of: m, and Ω each. */
const conductorsOf = ({ site }: Papers) => ({
  length: site.circuit.length,
  line: expectedCircuitLine(site),
  protective: expectedCircuitProtective(site),
});

/** Readings from a conductor of the supply terminals to PE there, beside what was linked at the origin. */
const toEarth = (
  papers: Papers,
  o: Observed,
  when: (x: string, links: readonly Link[]) => boolean,
): readonly Reading[] =>
  livesOf(papers.site).flatMap((x) =>
    between(
      readingsOf(o, 'continuity', (setUp, sample) => off(setUp, sample) && when(x, setUp.links)),
      `supply.${x}`,
      'supply.PE',
    ).filter(({ qualifier }) => qualifier !== 'unable'),
  );

/** As good as open on the continuity tester's ranges, Ω. A design choice. */
const OPEN: Ohms = 100;
const isOpen = ({ qualifier, value }: Reading): boolean => qualifier === '>' || (value ?? 0) >= OPEN;

/** Only with the neutral open at the origin does it say anything of the cable. */
const neutralToEarth = (o: Observed): readonly Reading[] =>
  between(
    readingsOf(
      o,
      'continuity',
      (setUp, sample) =>
        off(setUp, sample) &&
        setUp.neutral === 'open' &&
        // Linked to a line it is joined to whatever that line is joined to.
        !setUp.links.some((link) => link.endsWith('-N')),
    ),
    'supply.N',
    'supply.PE',
  ).filter(({ qualifier }) => qualifier !== 'unable');

export const r1r2Polarity: TestLines = {
  expectations: (papers) => [
    {
      id: 'near-sum',
      should: true,
      values: { ...conductorsOf(papers), least: leastSum(papers), allowance: CONTACT_ALLOWANCE },
      source: rulesFor(papers).regulation('643.2.1', 'sum-with-contacts'),
      of: 'circuit',
      points: ['supply-wiring', 'protective-conductor'],
      judge: (o) => {
        const range = { least: leastSum(papers), greatest: sumOf(papers) + CONTACT_ALLOWANCE };
        return judgeAll(
          toEarth(papers, o, (x, links) => links.includes(`${x}-PE` as Link)),
          (r) => isInside(r, range),
        );
      },
    },
    {
      id: 'other-conductor',
      should: false,
      values: { open: OPEN },
      source: rulesFor(papers).regulation('643.6'),
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o) =>
        judgeAll(
          toEarth(
            papers,
            o,
            (x, links) =>
              links.length > 0 &&
              links.every((link) => link.endsWith('-PE') && link !== `${x}-PE`) &&
              x !== 'N',
          ).concat(neutralToEarth(o)),
          isOpen,
        ),
    },
    {
      id: 'link-off',
      should: true,
      source: CIRCUIT,
      of: 'circuit',
      points: ['supply-wiring', 'insulation'],
      judge: (o) =>
        judgeAll(
          toEarth(papers, o, (x, links) => links.length === 0 && x !== 'N'),
          isOpen,
        ),
    },
  ],
  figures: (papers) => [
    {
      id: 'sum',
      values: conductorsOf(papers),
      unit: 'Ω',
      value: sumOf(papers),
      tolerance: CONTACT_ALLOWANCE,
      source: rulesFor(papers).regulation('643.2.1', 'with-iec-60228'),
    },
  ],
  limits: () => [],
  stops: ['near-sum', 'other-conductor', 'link-off'],
};
