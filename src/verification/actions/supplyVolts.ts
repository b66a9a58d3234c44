/** Test action `supply-volts`: voltages, earth potential and rotation on the live side of the origin. */
import type { Reading } from '../../bench/reading.ts';
import { ROOT_THREE } from '../../laws/loop.ts';
import type { Range, Volts } from '../../laws/quantities.ts';
import { pairsOf } from '../../site/part.ts';
import { linesOf } from '../../site/site.ts';
import { between, isInside, judgeAll, readingsOf, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT, PRACTICE } from '../sources.ts';
import { voltage } from '../steps.ts';
import type { Expectation, Finding, Papers, TestAction } from '../testAction.ts';

/** What load current may make of neutral or earth against true earth, V. Common practice, no source: a few volts. */
const FEW: Volts = 10;

/** A published limit of the true value, the last digit shown counted with the reading's uncertainty, V. */
const LAST_DIGIT: Volts = 1;
const withinLimits = (r: Reading, range: Range): boolean =>
  isInside({ ...r, uncertainty: (r.uncertainty ?? 0) + LAST_DIGIT }, range);

const undisturbed: When = ({ disturbed, removed }) => !disturbed && removed.length === 0;

const volts = (o: Observed): readonly Reading[] => readingsOf(o, 'voltage', undisturbed);

/** Met once every one of these pairs was read. */
function everyPair(
  o: Observed,
  pairs: readonly (readonly [string, string])[],
  isMet: (r: Reading) => boolean,
): Finding {
  const found = pairs.map(([a, b]) => between(volts(o), a, b));
  const finding = judgeAll(found.flat(), isMet);
  return finding === 'met' && found.some((readings) => readings.length === 0) ? 'not shown' : finding;
}

const incoming = (x: string) => `incoming.${x}`;
const toNeutral = ({ site }: Papers) => linesOf(site).map((line) => [incoming(line), incoming('N')] as const);
const toEarth = ({ site }: Papers) => linesOf(site).map((line) => [incoming(line), 'met'] as const);
const toLine = ({ site }: Papers) =>
  pairsOf(linesOf(site)).map(([x, y]) => [incoming(x), incoming(y)] as const);

const SEQUENCE = { op: 'measure', quantity: 'phase-sequence', at: 'incoming' } as const;

/** Each line's two readings within their uncertainties and what neutral or earth may stand at. */
function alike(papers: Papers, o: Observed): Finding {
  const pairs = linesOf(papers.site).flatMap((line) => {
    const neutral = between(volts(o), incoming(line), incoming('N')).at(-1);
    const earth = between(volts(o), incoming(line), 'met').at(-1);
    return neutral?.value != null && earth !== undefined ? [{ neutral, earth }] : [];
  });
  return pairs.length < linesOf(papers.site).length
    ? 'not shown'
    : judgeAll(pairs, ({ neutral, earth }) => {
        const margin = FEW + (neutral.uncertainty ?? 0);
        const value = neutral.value ?? 0;
        return isInside(earth, { least: value - margin, greatest: value + margin });
      });
}

function threePhaseLines(papers: Papers): readonly Expectation[] {
  if (papers.site.phases === 1) return [];
  const { supply, regulation } = rulesFor(papers);
  return [
    {
      id: 'line-to-line',
      should: true,
      text: `reads ${supply.lineToLine.least} to ${supply.lineToLine.greatest} V between lines`,
      why: 'Three lines a third of a turn apart, each within its limits.',
      source: supply.source,
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o) => {
        // Three lines at their own least make a little less than the round figure: that is no fault of theirs.
        const least = Math.min(supply.lineToLine.least, ROOT_THREE * supply.lineToNeutral.least);
        return everyPair(o, toLine(papers), (r) => withinLimits(r, { ...supply.lineToLine, least }));
      },
    },
    {
      id: 'rotation',
      should: true,
      text: 'rotates L1, L2, L3 as marked',
      why: 'What is documented here is to be kept to the outlet.',
      source: regulation('643.9'),
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o) =>
        judgeAll(
          readingsOf(o, 'phase-sequence', undisturbed).filter(({ place }) => place === 'incoming'),
          ({ value }) => value === 1,
        ),
    },
  ];
}

export const supplyVolts: TestAction = {
  id: 'supply-volts',
  title: 'Supply voltage and rotation at the origin',
  stage: 'with power',
  from: 'isolated',
  leaves: 'isolated',
  cover: 'closed',
  purpose: 'Know the supply before the unit is held to account for it.',
  applies: () => true,
  steps: (papers) => [
    ...[...toNeutral(papers), ...toEarth(papers), ...toLine(papers)].map(([a, b]) => voltage(a, b)),
    voltage('incoming.N', 'met'),
    { op: 'measure', quantity: 'voltage', between: ['met', 'earth'], tool: 'meter' },
    ...(papers.site.phases === 3 ? [SEQUENCE] : []),
  ],
  expectations: (papers) => {
    const { supply } = rulesFor(papers);
    const { earthing } = papers.site;
    return [
      {
        id: 'line-to-neutral',
        should: true,
        text: `reads ${supply.lineToNeutral.least} to ${supply.lineToNeutral.greatest} V from line to neutral`,
        why: '230 V + 10 % − 6 % at the supply terminals.',
        source: supply.source,
        of: 'circuit',
        points: ['supply-wiring'],
        judge: (o) => everyPair(o, toNeutral(papers), (r) => withinLimits(r, supply.lineToNeutral)),
      },
      {
        id: 'line-to-earth',
        should: true,
        text: 'reads the same from line to earth as from line to neutral, within some volts',
        why: 'The source’s star point is earthed.',
        source: CIRCUIT,
        of: 'circuit',
        points: ['supply-wiring', 'protective-conductor'],
        judge: (o) => alike(papers, o),
      },
      {
        id: 'neutral-lifted',
        should: false,
        text: `has more than ${earthing === 'TN-C-S' ? 'nothing' : `${FEW} V`} between neutral and earth`,
        why:
          earthing === 'TN-C-S'
            ? 'They are joined here.'
            : 'Load current in the neutral makes some volts; line voltage there would be a crossed or a broken conductor.',
        source: earthing === 'TN-C-S' ? CIRCUIT : PRACTICE,
        of: 'circuit',
        points: ['supply-wiring', 'protective-conductor'],
        judge: (o) =>
          everyPair(o, [['incoming.N', 'met']], (r) =>
            isInside(r, { greatest: earthing === 'TN-C-S' ? 1 : FEW }),
          ),
      },
      {
        id: 'earth-lifted',
        should: false,
        text: `has more than ${FEW} V between its main earthing terminal and true earth`,
        why: 'Whoever stands on the ground and touches the vehicle has that across them.',
        source: PRACTICE,
        of: 'circuit',
        points: ['supply-wiring', 'protective-conductor'],
        judge: (o) => everyPair(o, [['met', 'earth']], (r) => isInside(r, { greatest: FEW })),
      },
      ...threePhaseLines(papers),
    ];
  },
  untold: ({ site }) => [
    ...(site.earthing === 'TN-C-S'
      ? [
          {
            id: 'pen-whole',
            of: 'circuit' as const,
            text: 'shows a whole PEN conductor by the nought between neutral and earth',
            why: 'They are joined here: it stays nought with the PEN open.',
            source: CIRCUIT,
          },
        ]
      : []),
    {
      id: 'under-load',
      of: 'circuit' as const,
      text: 'keeps its voltage as loads switch',
      why: 'It was read once, with what was on.',
      source: PRACTICE,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: {
    'neutral-lifted': 'the neutral is not where it should be: do not energise, tell the distributor',
    'earth-lifted': 'the earthing terminal stands at a voltage: do not energise, tell the distributor',
  },
};
