/** Test action `pe-outlet`: the protective conductor from unit to outlet, and exposed metal. */
import type { Reading } from '../../bench/reading.ts';
import { CONTACT_ALLOWANCE, expectedCable } from '../../site/expected.ts';
import { opensEarthUnpowered } from '../../unit/design.ts';
import { isInside, judgeAll } from '../judging.ts';
import { CIRCUIT, PRACTICE, SHEET, wiringRules } from '../sources.ts';
import { continuity } from '../steps.ts';
import type { Expectation, Limit, Papers, TestAction } from '../testAction.ts';
import { foundLockedOut } from './penHazard.ts';
import { continuityOf, ohms, path } from './protectivePath.ts';

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
const outletPath = ({ sheet }: Papers) => {
  const tethered = sheet.outlet === 'tethered';
  const sum = tethered ? expectedCable(sheet.cable) : 0;
  return path(
    'supply.PE',
    'outlet.PE',
    sum,
    sum,
    'unit',
    tethered ? `${sheet.cable.length} m of ${sheet.cable.area} mm² = ${ohms(sum)} Ω` : 'contacts alone, 0 Ω',
  );
};

/** An open-PEN measure whose PE pole a spring opens: only with power, or by the maker's own means, is the path whole. */
const poleOpen: Expectation = {
  id: 'pole-open',
  should: true,
  text: 'reads open from its supply terminal to the PE of its outlet',
  why: 'Its sheet says that the PE pole of its open-PEN measure stands open without power. That is no fault; a loop test with power shows the path.',
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
          text: 'jumps or opens while its cable is bent',
          why: 'A core that has parted inside still touches while the cable lies still.',
          source: PRACTICE,
          of: 'unit',
          points: ['protective-conductor'],
          judge: (o) =>
            judgeAll(
              continuityOf(o, 'supply.PE', 'outlet.PE', ({ flexed }) => flexed),
              (r) => isInside(r, { greatest: expectedCable(papers.sheet.cable) + CONTACT_ALLOWANCE }),
            ),
        } satisfies Expectation,
      ]
    : []),
  {
    id: 'case',
    should: true,
    text: 'joins its exposed metal to the protective conductor',
    why: 'A fault to the case is cleared only through that joint.',
    source: wiringRules('643.2.1'),
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

export const peOutlet: TestAction = {
  id: 'pe-outlet',
  title: 'Protective conductor, unit to outlet',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['unit-earth', 'outlet'],
  purpose: 'Show that the unit carries the protective conductor on to the outlet and to its exposed metal.',
  applies: () => true,
  steps: ({ sheet }) => [
    { op: 'null-leads' },
    continuity('supply.PE', 'outlet.PE'),
    ...(sheet.outlet === 'tethered' && !opensEarthUnpowered(sheet)
      ? ([
          { op: 'flex-cable' },
          continuity('supply.PE', 'outlet.PE'),
          { op: 'flex-cable', on: false },
        ] as const)
      : []),
    continuity('supply.PE', 'case'),
  ],
  expectations: (papers) =>
    lines(papers).map(opensEarthUnpowered(papers.sheet) ? (line) => line : withPole(papers)),
  untold: ({ sheet }) => [
    ...(opensEarthUnpowered(sheet)
      ? [
          {
            id: 'with-power',
            toldBy: ['state-c', 'loop'],
            text: 'carries its protective conductor on to the outlet when it has power',
            why: 'Its PE pole stands open now. With power the pole closes, and a loop test goes through it.',
            source: SHEET,
          },
        ]
      : []),
    {
      id: 'to-met',
      toldBy: ['inspect', 'pe-circuit', 'electrode', 'make-good', 'ze', 'state-c', 'loop'],
      of: 'circuit',
      text: 'is joined to the main earthing terminal',
      why: 'Both leads are at the unit: this is its own half of the path only.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: (papers) => (opensEarthUnpowered(papers.sheet) ? [] : [limitOf(papers)]),
  stops: {
    'near-sum': 'the protective conductor to the outlet failed: do not energise (BS 7671 643.1)',
    open: 'the protective conductor to the outlet is open: do not energise (BS 7671 643.1)',
    case: 'exposed metal is not earthed: do not energise (BS 7671 643.1)',
  },
};
