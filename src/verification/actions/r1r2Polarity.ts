/** Test action `r1r2-polarity`: line and PE linked at the origin, line by line, measured at the supply terminals. */
import type { OperationInput } from '../../bench/operation.ts';
import type { Reading } from '../../bench/reading.ts';
import type { Line } from '../../laws/conductors.ts';
import type { Ohms } from '../../laws/quantities.ts';
import {
  CONTACT_ALLOWANCE,
  expectedCircuitLine,
  expectedCircuitProtective,
  leastCircuitProtective,
} from '../../site/expected.ts';
import { linesOf, livesOf } from '../../site/site.ts';
import { between, isInside, judgeAll, off, readingsOf } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import { continuity } from '../steps.ts';
import type { Papers, TestAction } from '../testAction.ts';
import { ohms } from './protectivePath.ts';

const sumOf = ({ site }: Papers): Ohms => expectedCircuitLine(site) + expectedCircuitProtective(site);

function sumText({ site }: Papers): string {
  const { length } = site.circuit;
  const milliohms = (r: Ohms) => ((1000 * r) / length).toFixed(2);
  const [line, protective] = [expectedCircuitLine(site), expectedCircuitProtective(site)];
  return `${length} m × (${milliohms(line)} + ${milliohms(protective)}) mΩ/m = ${ohms(line + protective)} Ω`;
}

/** Readings from a conductor of the supply terminals to PE there, beside the lines that were linked at the origin. */
const toEarth = (
  papers: Papers,
  o: Observed,
  when: (x: string, links: readonly Line[]) => boolean,
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
    readingsOf(o, 'continuity', (setUp, sample) => off(setUp, sample) && setUp.neutral === 'open'),
    'supply.N',
    'supply.PE',
  ).filter(({ qualifier }) => qualifier !== 'unable');

export const r1r2Polarity: TestAction = {
  id: 'r1r2-polarity',
  title: 'R1 + R2 and polarity at the supply terminals',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['circuit'],
  purpose:
    'Show that every line arrives where it belongs, and what line and protective conductor come to together.',
  applies: () => true,
  steps: ({ site }) => [
    { op: 'null-leads' },
    ...linesOf(site).flatMap((x): OperationInput[] => [
      { op: 'link', between: [`origin.${x}`, 'origin.PE'] },
      ...livesOf(site).map((y) => continuity(`supply.${y}`, 'supply.PE')),
      { op: 'unlink', between: [`origin.${x}`, 'origin.PE'] },
      continuity(`supply.${x}`, 'supply.PE'),
    ]),
  ],
  expectations: (papers) => [
    {
      id: 'near-sum',
      should: true,
      text: `reads within ${CONTACT_ALLOWANCE} Ω of R1 + R2 from each line that is linked`,
      why: `By the papers ${sumText(papers)}; open means that another conductor is there, or none.`,
      source: rulesFor(papers).regulation(
        '643.2.1, with the sum from IEC 60228; the 0.05 Ω is common practice',
      ),
      of: 'circuit',
      points: ['supply-wiring', 'protective-conductor'],
      judge: (o) => {
        const sum = sumOf(papers);
        const parallel = expectedCircuitProtective(papers.site) - leastCircuitProtective(papers.site);
        return judgeAll(
          toEarth(papers, o, (x, links) => links.includes(x as Line)),
          (r) =>
            isInside(r, { least: sum - parallel - CONTACT_ALLOWANCE, greatest: sum + CONTACT_ALLOWANCE }),
        );
      },
    },
    {
      id: 'other-conductor',
      should: false,
      text: 'reads to PE from any conductor that is not linked',
      why: 'Line at line, neutral at neutral: the link is found on its own conductor alone.',
      source: rulesFor(papers).regulation('643.6'),
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o) =>
        judgeAll(
          toEarth(
            papers,
            o,
            (x, links) => links.length > 0 && x !== 'N' && !links.includes(x as Line),
          ).concat(neutralToEarth(o)),
          isOpen,
        ),
    },
    {
      id: 'link-off',
      should: true,
      text: 'reads open again from each line once its link is off',
      why: 'A link that is left in is a dead short at the first switch-on.',
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
  untold: () => [
    {
      id: 'to-outlet',
      toldBy: ['state-c', 'state-d', 'loop', 'volt-drop'],
      text: 'has line and neutral the right way round at its outlet',
      why: 'The open contactor stands between; that is read with the outlet supplied.',
      source: CIRCUIT,
    },
    {
      id: 'neutral-arrives',
      toldBy: ['energise', 'state-c', 'loop'],
      ownOnly: true,
      of: 'circuit',
      text: 'has a neutral that arrives at the unit',
      why: 'Line and PE alone are linked: a neutral that reads open may be broken or merely not linked.',
      source: CIRCUIT,
    },
  ],
  figures: (papers) => [
    {
      id: 'sum',
      text: 'reads from a linked line to PE about',
      unit: 'Ω',
      value: sumOf(papers),
      tolerance: CONTACT_ALLOWANCE,
      why: `Length × mΩ/m for both areas, at 20 °C: ${sumText(papers)}.`,
      source: rulesFor(papers).regulation('643.2.1, with IEC 60228'),
    },
  ],
  limits: () => [],
  stops: {
    'near-sum': 'R1 + R2 or polarity failed: do not energise (BS 7671 643.1)',
    'other-conductor': 'polarity failed: do not energise (BS 7671 643.1)',
    'link-off': 'a line is joined to PE: do not energise (BS 7671 643.1)',
  },
};
