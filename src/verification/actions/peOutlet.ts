/** Test action `pe-outlet`: the protective conductor from unit to outlet, and exposed metal. */
import type { Ohms } from '../../laws/quantities.ts';
import { CONTACT_ALLOWANCE, expectedCable } from '../../site/expected.ts';
import { isInside, judgeAll } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT, PRACTICE } from '../sources.ts';
import { continuity } from '../steps.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';
import { continuityOf, path } from './protectivePath.ts';

/** A PE pole of an open-PEN measure lies in the path: where it stands open, the supply may be why. */
const withPole =
  ({ site, sheet }: Papers) =>
  (expectation: Expectation): Expectation =>
    sheet.openPen === 'none' || site.earthing !== 'TN-C-S'
      ? expectation
      : { ...expectation, points: [...expectation.points, 'supply-wiring'] };

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

/** What the tether's PE may read while it is bent, Ω. */
const greatestFlexed = ({ sheet }: Papers): Ohms => expectedCable(sheet.cable) + CONTACT_ALLOWANCE;

export const peOutlet: TestAction = {
  id: 'pe-outlet',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['unit-earth', 'outlet'],
  applies: () => true,
  steps: ({ sheet }) => [
    { op: 'null-leads' },
    continuity('supply.PE', 'outlet.PE'),
    ...(sheet.outlet === 'tethered'
      ? ([
          { op: 'flex-cable' },
          continuity('supply.PE', 'outlet.PE'),
          { op: 'flex-cable', on: false },
        ] as const)
      : []),
    continuity('supply.PE', 'case'),
  ],
  expectations: (papers) => [
    ...outletPath(papers).expectations.map(withPole(papers)),
    ...(papers.sheet.outlet === 'tethered'
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
  ],
  untold: () => [
    {
      id: 'to-met',
      toldBy: ['inspect', 'pe-circuit', 'electrode', 'make-good', 'ze', 'state-c', 'loop'],
      of: 'circuit',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: (papers) => [outletPath(papers).limit],
  stops: ['near-sum', 'open', 'case'],
};
