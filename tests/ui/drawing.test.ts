// The drawing as data: on every site, in every view and position, no label runs into another, over a terminal or out
// of the sheet; every terminal is on it once; arrow keys reach each of them.

import { describe, expect, test } from 'vitest';
import { terminalsOf } from '../../src/bench/terminals.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import type { Box, Figure, Label } from '../../src/ui/drawing/figure.ts';
import { boxOf, meet } from '../../src/ui/drawing/figure.ts';
import type { Shown, View } from '../../src/ui/drawing/layout.ts';
import { layoutOf, PART_HEIGHT, PARTS, partOf } from '../../src/ui/drawing/layout.ts';
import { INSTRUMENT_RADIUS, leadLines, readingLabels } from '../../src/ui/drawing/leadLines.ts';
import { planOf } from '../../src/ui/drawing/plan.ts';
import type { Scene } from '../../src/ui/drawing/scene.ts';
import { STRIP, stripFigure } from '../../src/ui/drawing/strip.ts';
import { ARROWS, nextTerminal } from '../../src/ui/drawing/terminalMoves.ts';
import { uprightFigure, uprightLayout } from '../../src/ui/drawing/upright.ts';
import type { Leads } from '../../src/ui/flow/leads.ts';
import { leadsOf } from '../../src/ui/flow/leads.ts';
import type { MeasurementDraft } from '../../src/ui/flow/measurement.ts';
import { INSTRUMENT_CHOICES, lastDraft } from '../../src/ui/flow/measurement.ts';
import type { Position } from '../../src/ui/flow/position.ts';
import { positionAtStart } from '../../src/ui/flow/position.ts';
import type { Papers } from '../../src/verification/testAction.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { sampleConfigurations } from '../verification/configurations.ts';

const VIEWS: readonly View[] = ['whole', ...PARTS];

const SITES: readonly (readonly [name: string, papers: Papers])[] = [
  ...scenarioIds.map((id) => [id, papersOf(scenarioNamed(id).scenario)] as const),
  ...[
    ...sampleConfigurations(30, 7),
    ...sampleConfigurations(10, 7, 'island'),
    ...sampleConfigurations(10, 7, 'pair'),
  ].map(({ site, sheet }, i) => [`random ${i}`, { site, sheet }] as const),
];

/** As found, in hand, and with everything out of the ordinary at once; before and after the lock. */
function scenesOf(papers: Papers, view: View): readonly Scene[] {
  const start = positionAtStart(papers.sheet);
  const positions: readonly Position[] = [
    start,
    { ...start, plugged: true, state: 'C' },
    { ...start, plugged: true, state: 'D', pilot: 'open', diode: 'shorted', earth: 'open', coding: null },
    { ...start, supply: 'off-line-locked', cover: 'open', unit: 'taken off', pilot: 'shorted-to-earth' },
    { ...start, supply: 'off-unlocked', main: 'off-unlocked', cover: 'open' },
    { ...start, main: 'off-locked' },
    { ...start, plugged: true, load: 32, leakage: { ac: 0.03, dc: 0.006, line: 'L1' } },
  ];
  return positions.flatMap((position) =>
    [position, start].map((now, i) => ({
      papers,
      position,
      now,
      removed: i === 0 ? [] : [papers.site.earthing === 'TT' ? 'electrode' : 'earthing-conductor'],
      links: i === 0 ? [] : position.main === 'off-locked' ? ['L1-N'] : ['L1-PE', 'L1-N'],
      switchedAt: i === 0 ? null : 5999,
      says: i === 0 ? null : 'connected',
      acts: i === 1,
      layout: layoutOf(papers, position, view),
    })),
  );
}

/** What is written, each with the room that it takes. */
const boxesOf = (written: readonly Label[]) =>
  written.map((label) => ({ text: `${label.text}${label.state?.text ?? ''}`, box: boxOf(label) }));

const round = (x: number, y: number, r: number): Box => ({
  left: x - r,
  right: x + r,
  top: y - r,
  bottom: y + r,
});

/** What is in each other's way, in words. */
function clashes(scene: Scene, leads: Leads): readonly string[] {
  const { layout } = scene;
  const lines = leadLines(layout, leads);
  const plan = planOf(scene);
  const words: readonly Label[] =
    lines.instrument === null ? [] : [{ ...lines.words, text: 'your leads', bold: true }];
  const besides = [words, ...READINGS.map((text) => readingLabels(layout, lines, text, BETWEEN))];
  const bodies = [
    ...[...layout.terminals].map(([text, { x, y }]) => ({ text, box: round(x, y, 4.5) })),
    ...(lines.instrument === null
      ? []
      : [{ text: 'the instrument', box: round(lines.instrument.x, lines.instrument.y, INSTRUMENT_RADIUS) }]),
  ];
  return besides.flatMap((beside) =>
    inTheWay(layout, plan, boxesOf([...plan.labels, ...lines.labels, ...beside]), bodies),
  );
}

/** The longest that an instrument shows, and the most terminals that it can be on. */
const READINGS = ['> 200 MΩ', 'no reading: the instrument refuses'] as const;
const BETWEEN = 'L1 + L2 + L3 + N–PE at the unit’s supply terminals';

type Written = ReturnType<typeof boxesOf>;

function inTheWay(layout: Shown, plan: Figure, written: Written, bodies: Written): readonly string[] {
  const boxes = plan.shapes.flatMap((shape) =>
    shape.kind === 'rect' && (shape.look === 'box' || shape.look === 'enclosure') ? [shape] : [],
  );
  const found: string[] = [];
  for (const [i, one] of written.entries()) {
    for (const other of [...written.slice(i + 1), ...bodies])
      if (meet(one.box, other.box)) found.push(`“${one.text}” and “${other.text}”`);
    for (const { x, y, width, height } of boxes) {
      const inside = one.box.left >= x && one.box.right <= x + width;
      const besides = one.box.right <= x || one.box.left >= x + width;
      const beyond = one.box.bottom <= y || one.box.top >= y + height;
      if (!inside && !besides && !beyond) found.push(`“${one.text}” over the edge of a box`);
    }
    const { left, right, top, bottom } = one.box;
    if (left < 0 || top < 0 || right > layout.width || bottom > layout.height)
      found.push(`“${one.text}” out of the sheet`);
  }
  return found;
}

const leadSets = (papers: Papers): readonly Leads[] => {
  const draft: MeasurementDraft = lastDraft([]);
  return [
    [],
    ...INSTRUMENT_CHOICES.map(([instrument]) =>
      leadsOf({ ...draft, instrument, first: ['outlet.L1', 'outlet.N'], second: 'outlet.PE' }, papers.site),
    ),
    [['met'], ['supply.PE']],
    [['earth'], ['case']],
    [['origin.L1'], ['outlet.PE']],
  ];
};

describe.each(SITES)('%s', (_, papers) => {
  test('no label is in the way of anything', () => {
    const found = new Set<string>();
    for (const view of VIEWS)
      for (const [i, scene] of scenesOf(papers, view).entries())
        for (const leads of i < 2 ? leadSets(papers) : leadSets(papers).slice(0, 1))
          for (const clash of clashes(scene, leads)) found.add(`${view}, position ${i}: ${clash}`);
    expect([...found]).toEqual([]);
  });

  test('a part is no higher than a phone that lies has room for, its instrument with it', () => {
    const beyond: string[] = [];
    for (const view of PARTS)
      for (const { layout, position } of scenesOf(papers, view).slice(0, 4)) {
        expect(layout.height, view).toBeLessThanOrEqual(PART_HEIGHT);
        for (const leads of leadSets(papers)) {
          const { instrument } = leadLines(layout, leads);
          if (instrument === null) continue;
          const { x, y } = instrument;
          if (Math.min(x, layout.width - x, y, layout.height - y) < INSTRUMENT_RADIUS)
            beyond.push(`${view}, ${position.state}: ${x}, ${y}`);
        }
      }
    expect(beyond).toEqual([]);
  });

  test('nor on a phone’s whole bench, upright or in one row', () => {
    for (const scene of scenesOf(papers, 'whole'))
      for (const [layout, figure] of [
        [uprightLayout(scene), uprightFigure(scene)],
        [STRIP, stripFigure(scene)],
      ] as const)
        expect(inTheWay(layout, figure, boxesOf(figure.labels), [])).toEqual([]);
  });

  test('every terminal is in the whole drawing and in its part, far enough from the others, and arrows reach it', () => {
    for (const view of VIEWS)
      for (const { layout } of scenesOf(papers, view)) {
        const { terminals } = layout;
        const wanted = terminalsOf(papers.site).filter((t) => view === 'whole' || partOf(t) === view);
        expect([...terminals.keys()]).toEqual(expect.arrayContaining([...wanted]));
        const places = [...terminals.entries()];
        // Looked at in one go: to expect each of them takes longer than all the rest.
        const near = places.flatMap(([one, a], i) =>
          places
            .slice(i + 1)
            .filter(
              ([, b]) => Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y)) < (view === 'whole' ? 24 : 44),
            )
            .map(([other]) => `${one}, ${other}`),
        );
        expect(near, view).toEqual([]);
        const reached = new Set([places[0]?.[0] ?? '']);
        for (const terminal of reached)
          for (const arrow of Object.keys(ARROWS) as (keyof typeof ARROWS)[])
            reached.add(nextTerminal(terminals, terminal, arrow));
        expect(reached.size, view).toBe(terminals.size);
      }
  });
});
