// What a hand can move on the drawing: targets a finger wide, names that say how it is drawn, dashes only where the
// lock changes something, and nothing that nobody has seen.
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import type { Figure } from '../../src/ui/drawing/figure.ts';
import { boxOf, meet } from '../../src/ui/drawing/figure.ts';
import type { Hand } from '../../src/ui/drawing/hands.ts';
import { HANDS, handName, handText, isChanged } from '../../src/ui/drawing/hands.ts';
import { handsOf } from '../../src/ui/drawing/handTargets.ts';
import type { Shown } from '../../src/ui/drawing/layout.ts';
import { layoutOf, PARTS } from '../../src/ui/drawing/layout.ts';
import { planOf } from '../../src/ui/drawing/plan.ts';
import { Sheet } from '../../src/ui/drawing/Sheet.tsx';
import type { BenchScene } from '../../src/ui/drawing/scene.ts';
import { benchScene } from '../../src/ui/drawing/scene.ts';
import { STRIP, stripFigure } from '../../src/ui/drawing/strip.ts';
import { uprightFigure, uprightLayout } from '../../src/ui/drawing/upright.ts';
import { done, newBench } from '../../src/ui/flow/bench.ts';
import type { Position } from '../../src/ui/flow/position.ts';
import { positionAtStart } from '../../src/ui/flow/position.ts';
import { useMeasuring } from '../../src/ui/flow/useMeasuring.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

/** One phase with a tether, three with a socket-outlet, TT with a residual device, a next point on the service. */
const SITES = ['harbour-mews', 'foundry-yard', 'weir-cottage', 'granary-mews'] as const;
const VIEWS = ['whole', ...PARTS, 'upright'] as const;
type View = (typeof VIEWS)[number] | 'strip';

/** So wide is a phone's drawing; the whole sheet has its own width at least. */
const PHONE = 340;
/** WCAG 2.2, 2.5.5 asks for 44 CSS pixels. */
const FINGER = 44;

const MOVED: Readonly<Record<Hand, Partial<Position>>> = {
  'main-switch': { main: 'off-unlocked' },
  circuit: { supply: 'off-line-locked' },
  conductors: { unit: 'taken off' },
  cover: { cover: 'open' },
  plug: { plugged: true },
  request: { state: 'C' },
};

function drawn(scene: BenchScene, view: View): { layout: Shown; figure: Figure } {
  if (view === 'strip') return { layout: STRIP, figure: stripFigure(scene) };
  if (view === 'upright') return { layout: uprightLayout(scene), figure: uprightFigure(scene) };
  const layout = layoutOf(scene.papers, scene.position, view);
  return { layout, figure: planOf({ ...scene, layout }) };
}

const sceneOn = (id: string, change: Partial<Position> = {}): BenchScene => {
  const { scenario } = scenarioNamed(id);
  const papers = papersOf(scenario);
  const now = positionAtStart(papers.sheet);
  const position = { ...now, ...change };
  return { papers, position, now, removed: [], links: [], switchedAt: null, says: null, acts: true };
};

const targetBox = ({
  left,
  top,
  width,
  height,
}: {
  left: number;
  top: number;
  width: number;
  height: number;
}) => ({
  left,
  top,
  right: left + width,
  bottom: top + height,
});

describe.each(SITES)('%s', (id) => {
  test.each(VIEWS)('%s: every target is a finger wide, on the sheet and clear of the others', (view) => {
    for (const change of [{}, ...Object.values(MOVED)]) {
      const { layout } = drawn(sceneOn(id, change), view);
      const scale = Math.max(1, PHONE / layout.width);
      const targets = [...handsOf(layout)];
      for (const [hand, { left, top, width, height }] of targets) {
        expect(width * scale, hand).toBeGreaterThanOrEqual(FINGER);
        expect(height * scale, hand).toBeGreaterThanOrEqual(FINGER);
        expect(Math.min(left, top), hand).toBeGreaterThanOrEqual(0);
        expect(left + width, hand).toBeLessThanOrEqual(layout.width);
        expect(top + height, hand).toBeLessThanOrEqual(layout.height);
      }
      for (const [i, [one, a]] of targets.entries())
        for (const [other, b] of targets.slice(i + 1))
          expect(meet(targetBox(a), targetBox(b)), `${one} and ${other}`).toBe(false);
    }
  });

  test.each(VIEWS)('%s: the word of each state is within its own target', (view) => {
    for (const change of [{}, ...Object.values(MOVED)]) {
      const scene = sceneOn(id, change);
      const { layout, figure } = drawn(scene, view);
      const acting = figure.labels.filter(({ state }) => state?.acts === true);
      for (const [hand, target] of handsOf(layout)) {
        const { state } = handText(hand, scene.position);
        const own = acting.filter((label) => meet(boxOf(label), targetBox(target)));
        expect(own.map((label) => label.state?.text.replace('\u00a0', ' ')).join(' '), hand).toContain(state);
      }
    }
  });

  test.each([...VIEWS, 'strip'] as const)('%s: dashed is what the lock changes, and nothing else', (view) => {
    const isDashed = (scene: BenchScene) => drawn(scene, view).figure.shapes.some((s) => s.changed === true);
    expect(isDashed(sceneOn(id))).toBe(false);
    const shown: readonly Hand[] =
      view === 'strip' ? HANDS : [...handsOf(drawn(sceneOn(id), view).layout).keys()];
    for (const hand of shown) {
      expect(isDashed(sceneOn(id, MOVED[hand])), hand).toBe(true);
      const moved = sceneOn(id, MOVED[hand]);
      expect(isDashed({ ...moved, now: moved.position }), hand).toBe(false);
    }
  });
});

test('which hands there are: all on the whole bench, each in one part, none in a strip', () => {
  const hands = (view: View) => [...handsOf(drawn(sceneOn('harbour-mews'), view).layout).keys()];
  expect(hands('whole')).toEqual([...HANDS]);
  expect(hands('upright')).toEqual([...HANDS]);
  expect(PARTS.flatMap(hands)).toEqual([...HANDS]);
  expect(hands('strip')).toEqual([]);
});

test('the next point is named where there is one, the phone’s bench too, and no hand takes its name for a thing of its own', () => {
  const named = (id: string, view: View) =>
    drawn(sceneOn(id), view).figure.labels.filter(({ text }) => text === 'next point');
  for (const view of ['whole', 'origin', 'upright'] as const) {
    expect(named('harbour-mews', view), view).toEqual([]);
    expect(named('granary-mews', view), view).toHaveLength(1);
  }
  const [name] = named('granary-mews', 'upright');
  const { layout } = drawn(sceneOn('granary-mews'), 'upright');
  for (const [hand, target] of handsOf(layout))
    expect(name && meet(boxOf(name), targetBox(target)), hand).toBe(false);
});

test('a phone’s bench is as high as it may be: upright 340, in a strip 104', () => {
  const height = ({ height: high, width }: Shown) => (high * PHONE) / width;
  for (const id of SITES) expect(height(drawn(sceneOn(id), 'upright').layout)).toBeLessThanOrEqual(340);
  expect(height(STRIP)).toBeLessThanOrEqual(104);
});

describe('in words', () => {
  const { position: now } = sceneOn('harbour-mews');

  test('as it is, and as it comes at the lock', () => {
    expect(handName('circuit', now, now)).toBe('circuit breaker at the origin: on');
    expect(handName('circuit', { ...now, supply: 'off-locked' }, now)).toBe(
      'circuit breaker at the origin: off, locked; changes at the lock',
    );
    expect(handName('main-switch', { ...now, main: 'off-unlocked' }, now)).toMatch(/off, no lock; changes/);
    expect(handName('cover', now, now)).toBe('unit’s cover: closed');
    expect(handName('plug', now, now)).toBe('plug: out');
    expect(handName('conductors', { ...now, unit: 'taken off' }, now)).toMatch(/: off; changes/);
  });

  test.each([
    ['A', 'S2', 'open'],
    ['B', 'S2', 'open'],
    ['C', 'S2', 'closed'],
    ['D', 'state', 'D'],
  ] as const)('state %s: %s %s', (state, thing, word) => {
    expect(handText('request', { ...now, state })).toEqual({ thing, state: word });
  });

  test('A to B is a change, though S2 stays open', () => {
    expect(isChanged('request', { ...now, state: 'B' }, now)).toBe(true);
    expect(handName('request', { ...now, state: 'B' }, now)).toBe(
      'vehicle stand-in: S2 open, state B; changes at the lock',
    );
  });
});

describe('the unit’s face', () => {
  const PLUGGED: OperationInput = { op: 'vehicle', plugged: true, state: 'B' };
  const UNPLUGGED: OperationInput = { op: 'vehicle', plugged: false, state: 'A' };
  const OFF: OperationInput = { op: 'isolate', poles: 'all', lock: true };
  const WAIT: OperationInput = { op: 'wait', seconds: 5 };
  const saysAfter = (...inputs: readonly OperationInput[]) => {
    const bench = inputs.reduce((at, input) => done(at, null, input, 0), newBench(mews, mewsFile));
    return benchScene({ ...bench, papers: bench.run.papers }, bench.position, false).says;
  };

  test('says what was last seen, and nothing before anybody looked', () => {
    expect(saysAfter()).toBeNull();
    expect(saysAfter(PLUGGED, WAIT)).toBe('connected');
    expect(saysAfter(PLUGGED, WAIT, UNPLUGGED, WAIT)).toBe('ready');
  });

  test('a dark unit says nothing', () => {
    expect(saysAfter(PLUGGED, WAIT, OFF, WAIT)).toBeNull();
  });

  test('has no contact in it, whatever it says', () => {
    const looks = (change: Partial<Position>) => {
      const scene = { ...sceneOn('harbour-mews', change), says: 'charging' };
      return drawn({ ...scene, now: scene.position }, 'unit').figure.shapes.map(({ look }) => look);
    };
    for (const change of [{}, ...Object.values(MOVED)])
      for (const look of ['contact', 'linkage', 'ring']) expect(looks(change)).not.toContain(look);
  });
});

const { scenario: mews, file: mewsFile } = scenarioNamed('harbour-mews');
const begun = newBench(mews, mewsFile);
const drawnUp: Position = { ...begun.position, supply: 'off-locked' };

function Here(props: Partial<Parameters<typeof Sheet>[0]>) {
  const measuring = useMeasuring(begun, null);
  return (
    <Sheet
      bench={begun}
      position={drawnUp}
      measuring={measuring}
      test={null}
      stage="with power"
      isOpen={false}
      isSettingUp
      view="part"
      standing=""
      {...props}
    />
  );
}

describe('the sheet', () => {
  const hands = { now: begun.position, onHand: () => undefined, open: 'circuit' as Hand, acts: false };
  const namesIn = (page: string) =>
    [...page.matchAll(/class="hand-button"[^>]*aria-label="([^"]*)"/g)].map((m) => m[1]);

  test.each(['whole', 'upright'] as const)('%s: every hand is a button; the open one says so', (view) => {
    const page = renderToStaticMarkup(<Here view={view} hands={hands} />);
    expect(namesIn(page)).toEqual(HANDS.map((hand) => handName(hand, drawnUp, begun.position)));
    const open = /<button[^>]*circuit breaker[^>]*>/.exec(page)?.[0];
    expect(open).toContain('aria-expanded="true"');
    expect(page.match(/aria-expanded="true"/g)).toHaveLength(1);
    expect(page).toContain('bold acts');
  });

  test('without hands nothing is underlined and nothing can be pressed', () => {
    for (const view of ['whole', 'part', 'upright', 'strip'] as const) {
      const page = renderToStaticMarkup(<Here view={view} />);
      expect(namesIn(page)).toEqual([]);
      expect(page).not.toContain('bold acts');
    }
  });

  test('in a strip dashes are kept and hands are none', () => {
    const page = renderToStaticMarkup(<Here view="strip" hands={hands} />);
    expect(namesIn(page)).toEqual([]);
    expect(page).toContain('changed');
  });
});
