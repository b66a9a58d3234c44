/** Test action `supply-volts`: voltages, earth potential and rotation on the live side of the origin. */

import type { Reading } from '../../bench/reading.ts';
import type { Amps, Volts } from '../../laws/quantities.ts';
import { OPEN_PEN_WINDOW } from '../../laws/supplyLimits.ts';
import { linesOf, type Site } from '../../site/site.ts';
import { between, isInside, judgeAll, readingsOf, samplesWhen, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT, PRACTICE } from '../sources.ts';
import { stating } from '../stated.ts';
import { voltage } from '../steps.ts';
import type { Expectation, Finding, Papers, TestAction } from '../testAction.ts';
import { foundLockedOut } from './penHazard.ts';
import { everyPair, LAST_DIGIT, threeLineSteps, threeLines, withinLimits } from './threeLines.ts';

/** What load current may make of neutral or earth against true earth, V. Common practice, no source: a few volts. */
const FEW: Volts = 10;

/** Switched on for a moment to see what follows it, A per line. A design choice: a kettle or two. */
const SWITCHED: Amps = 10;

const undisturbed: When = ({ disturbed, removed }) => !disturbed && removed.length === 0;
const asFound: When = (setUp, sample) => undisturbed(setUp, sample) && setUp.siteLoad === 0;
const loaded: When = (setUp, sample) => undisturbed(setUp, sample) && setUp.siteLoad > 0;

const volts = (o: Observed): readonly Reading[] => readingsOf(o, 'voltage', asFound);

const incoming = (x: string) => `incoming.${x}`;
const toNeutral = ({ site }: Papers) => linesOf(site).map((line) => [incoming(line), incoming('N')] as const);
const toEarth = ({ site }: Papers) => linesOf(site).map((line) => [incoming(line), 'met'] as const);
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

/** What a load may take away, V: it is stated at 230 V, and its loop is known to 0.05 Ω. */
const mostDropped = ({ neutralImpedance }: Site, amps: Amps): Volts => 1.1 * amps * (neutralImpedance + 0.05);

/** What a load that is switched on may take away: its current through the line–neutral loop of the papers. */
function swings(papers: Papers, o: Observed): Finding {
  const { site } = papers;
  const before = readingsOf(o, 'voltage', asFound);
  const during = samplesWhen(o, loaded);
  const pairs = during.flatMap(({ readings, setUp }) =>
    toNeutral(papers).flatMap(([a, b]) => {
      const off = between(before, a, b).at(-1);
      return off === undefined
        ? []
        : between(readings, a, b).map((on) => ({ off, on, amps: setUp.siteLoad }));
    }),
  );
  return judgeAll(pairs, ({ off, on, amps }) => {
    const margin = (off.uncertainty ?? 0) + (on.uncertainty ?? 0);
    const change = (off.value ?? 0) - (on.value ?? 0);
    return change <= mostDropped(site, amps) + margin && change >= -margin;
  });
}

const { least: LEAST, greatest: GREATEST } = OPEN_PEN_WINDOW;

/**
 * A measure that goes by line to neutral opens outside its window, and rightly: what is wrong is the supply. A reading
 * that leaves it open counts as outside where the unit was found locked out, and below, where the distributor's limits
 * end well before.
 */
const unitWindow = (papers: Papers): readonly Expectation[] =>
  papers.sheet.openPen !== 'voltage-window'
    ? []
    : [
        {
          id: 'unit-window',
          should: true,
          values: { ...OPEN_PEN_WINDOW },
          source: rulesFor(papers).remembered('722.411.4.1'),
          of: 'circuit',
          points: ['supply-wiring'],
          judge: (o) =>
            everyPair(volts(o), toNeutral(papers), (r) => {
              const [value, uncertainty] = [r.value ?? 0, r.uncertainty ?? 0];
              const margin = foundLockedOut(papers, o) ? uncertainty : -uncertainty;
              return value - uncertainty >= LEAST && value + margin <= GREATEST;
            }),
        },
      ];

export const supplyVolts: TestAction = {
  id: 'supply-volts',
  stage: 'with power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['supply'],
  cover: 'closed',
  applies: () => true,
  steps: (papers) => [
    ...[...toNeutral(papers), ...toEarth(papers)].map(([a, b]) => voltage(a, b)),
    voltage('incoming.N', 'met'),
    { op: 'measure', quantity: 'voltage', between: ['met', 'earth'], tool: 'meter' },
    ...threeLineSteps(papers, 'incoming'),
    { op: 'supply', siteLoad: SWITCHED },
    ...toNeutral(papers).map(([a, b]) => voltage(a, b)),
    { op: 'supply', siteLoad: 0 },
  ],
  expectations: (papers) => {
    const { supply } = rulesFor(papers);
    const { least, greatest } = supply.lineToNeutral;
    const lineToNeutral = stating(papers, 'supply-volts', supply.source, {
      'line-to-neutral': { unit: 'V', least, greatest },
    });
    const { earthing } = papers.site;
    const mostLifted = earthing === 'TN-C-S' ? LAST_DIGIT : FEW;
    return [
      {
        id: 'line-to-neutral',
        should: true,
        ...lineToNeutral.line,
        of: 'circuit',
        points: ['supply-wiring'],
        judge: (o) =>
          everyPair(volts(o), toNeutral(papers), (r) =>
            withinLimits(r, lineToNeutral.ranges['line-to-neutral']),
          ),
      },
      ...unitWindow(papers),
      {
        id: 'line-to-earth',
        should: true,
        values: { few: FEW },
        source: CIRCUIT,
        of: 'circuit',
        points: ['supply-wiring', 'protective-conductor'],
        judge: (o) => alike(papers, o),
      },
      {
        id: 'neutral-lifted',
        should: false,
        values: { joined: earthing === 'TN-C-S', most: mostLifted },
        source: earthing === 'TN-C-S' ? CIRCUIT : PRACTICE,
        of: 'circuit',
        points: ['supply-wiring', 'protective-conductor'],
        judge: (o) =>
          everyPair(volts(o), [['incoming.N', 'met']], (r) => isInside(r, { greatest: mostLifted })),
      },
      {
        id: 'earth-lifted',
        should: false,
        values: { few: FEW },
        source: PRACTICE,
        of: 'circuit',
        points: ['supply-wiring', 'protective-conductor'],
        judge: (o) => everyPair(volts(o), [['met', 'earth']], (r) => isInside(r, { greatest: FEW })),
      },
      {
        id: 'swings',
        should: false,
        values: { amps: SWITCHED, most: mostDropped(papers.site, SWITCHED) },
        source: PRACTICE,
        of: 'circuit',
        points: ['supply-wiring'],
        judge: (o) => swings(papers, o),
      },
      ...threeLines(papers, 'incoming', asFound),
    ];
  },
  untold: ({ site }) => [
    ...(site.earthing === 'TN-C-S'
      ? [
          {
            id: 'pen-whole',
            toldBy: [],
            ownOnly: true,
            of: 'circuit' as const,
            source: CIRCUIT,
          },
        ]
      : []),
    {
      id: 'all-loads',
      toldBy: ['volt-drop'],
      of: 'circuit' as const,
      source: PRACTICE,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['unit-window', 'neutral-lifted', 'earth-lifted'],
};
