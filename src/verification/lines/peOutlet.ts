/** What test action `pe-outlet` ought to show. */
import type { Reading } from '../../bench/reading.ts';
import type { Ohms } from '../../laws/quantities.ts';
import { CONTACT_ALLOWANCE, expectedCable } from '../../site/expected.ts';
import { opensEarthUnpowered } from '../../unit/design.ts';
import { foundLockedOut } from '../actions/penHazard.ts';
import { isInside, judgeAll } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import { PRACTICE, SHEET } from '../sources.ts';
import type { Expectation, Limit, Papers, TestLines } from '../testAction.ts';
import { continuityOf, path } from './protectivePath.ts';

/** As good as open on the continuity tester's ranges, Ω. A design choice. */
const AS_GOOD_AS_OPEN = 100;

const isOpen = (r: Reading): boolean => r.qualifier === '>' || (r.value ?? 0) >= AS_GOOD_AS_OPEN;

/**
 * A PE pole of an open-PEN measure lies in the path. Where the unit was found locked out and the path reads open, the
 * measure may have opened on a supply that is wrong, and rightly: that is looked at next, and this shows nothing.
 */
const withPole =
  (papers: Papers) =>
  (expectation: Expectation): Expectation =>
    papers.sheet.openPen === 'none'
      ? expectation
      : {
          ...expectation,
          points:
            papers.site.earthing === 'TN-C-S' ? [...expectation.points, 'supply-wiring'] : expectation.points,
          judge: (o) =>
            foundLockedOut(papers, o) &&
            [...continuityOf(o, 'supply.PE', 'outlet.PE'), ...continuityOf(o, 'supply.PE', 'case')].some(
              isOpen,
            )
              ? 'not shown'
              : expectation.judge(o),
        };

/** The tether belongs to the path; a bare socket-outlet has contacts alone. */
const outletPath = (papers: Papers) => {
  const { sheet } = papers;
  const tethered = sheet.outlet === 'tethered';
  const sum = tethered ? expectedCable(sheet.cable) : 0;
  return path(
    papers,
    ['supply.PE', 'outlet.PE'],
    sum,
    sum,
    'unit',
    tethered ? { tethered, length: sheet.cable.length, area: sheet.cable.area } : { tethered },
  );
};

/** An open-PEN measure whose PE pole a spring opens: only with power, or by the maker's own means, is the path whole. */
const poleOpen: Expectation = {
  id: 'pole-open',
  should: true,
  source: SHEET,
  of: 'unit',
  points: ['supply-wiring', 'protective-conductor'],
  judge: (o) => judgeAll(continuityOf(o, 'supply.PE', 'outlet.PE'), isOpen),
};

const lines = (papers: Papers): readonly Expectation[] => [
  ...(opensEarthUnpowered(papers.sheet)
    ? // Metal of the building beside the circuit bridges the pole.
      papers.site.circuit.parallelEarth === null
      ? [poleOpen]
      : []
    : outletPath(papers).expectations),
  ...(papers.sheet.outlet === 'tethered' && !opensEarthUnpowered(papers.sheet)
    ? [
        {
          id: 'jumps',
          should: false,
          values: { greatest: greatestFlexed(papers) },
          source: PRACTICE,
          of: 'unit',
          points: ['protective-conductor'],
          judge: (o) =>
            judgeAll(
              continuityOf(o, 'supply.PE', 'outlet.PE', ({ flexed }) => flexed),
              (r) => isInside(r, { greatest: greatestFlexed(papers) }),
            ),
        } satisfies Expectation,
      ]
    : []),
  {
    id: 'case',
    should: true,
    values: { allowance: CONTACT_ALLOWANCE },
    source: rulesFor(papers).regulation('643.2.1'),
    of: 'unit',
    points: ['protective-conductor'],
    judge: (o) =>
      judgeAll(continuityOf(o, 'supply.PE', 'case'), (r) => isInside(r, { greatest: CONTACT_ALLOWANCE })),
  },
];

/** A pole that may have opened on a supply that is wrong says nothing of the length. */
function limitOf(papers: Papers): Limit {
  const { limit } = outletPath(papers);
  return {
    ...limit,
    applies: (r, o) => limit.applies(r) && !(o !== undefined && isOpen(r) && foundLockedOut(papers, o)),
  };
}
/** What the tether's PE may read while it is bent, Ω. */
const greatestFlexed = ({ sheet }: Papers): Ohms => expectedCable(sheet.cable) + CONTACT_ALLOWANCE;

export const peOutlet: TestLines = {
  expectations: (papers) =>
    lines(papers).map(opensEarthUnpowered(papers.sheet) ? (line) => line : withPole(papers)),
  figures: () => [],
  limits: (papers) => (opensEarthUnpowered(papers.sheet) ? [] : [limitOf(papers)]),
  stops: ['near-sum', 'open', 'case'],
};
