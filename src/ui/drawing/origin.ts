/**
 * The origin of the circuit: the main switch and the circuit's breaker, drawn as the trainee has switched it, the
 * residual device's ring where there is one, the main earthing terminal, and the circuit as far as the unit.
 */

import { benchTime } from '../../words/benchTime.ts';
import type { Figure, Label, Shape } from './figure.ts';
import { dashedIf, EMPTY, joint, label, labels, path, rect, shapes, together } from './figure.ts';
import { handText, isChanged } from './hands.ts';
import type { Conductor } from './layout.ts';
import { heading } from './layout.ts';
import type { Scene } from './scene.ts';
import { amount } from './scene.ts';
import { contact, cross, dimension, earthSymbol } from './symbols.ts';

/** Under the origin's box the words of its two devices, each under its own contacts. */
const WORDS = { from: 25, step: 12.5, main: 24, breaker: 78 } as const;

/** A device's name over its state, a word a line: there is no more room than its contacts have. */
function deviceWords(hand: 'main-switch' | 'circuit', scene: Scene, x: number): readonly Label[] {
  const { thing, state } = handText(hand, scene.position);
  const lines = state.replace('no lock', 'no\u00a0lock').split(' ');
  const y = scene.layout.rows.N + WORDS.from;
  return [
    label(x, y, thing, { anchor: 'middle' }),
    ...lines.map((text, i) =>
      label(x, y + WORDS.step * (i + 1), '', { anchor: 'middle', state: { text, acts: scene.acts } }),
    ),
  ];
}

export function originFigure(scene: Scene): Figure {
  const { papers, layout, position, now } = scene;
  const { columns, lives, rows } = layout;
  const { breaker, residualDevice } = papers.site.circuit;
  const { incoming, origin, met, rod } = columns;
  const first = rows[lives[0] ?? 'N'];
  const rodY = layout.terminals.get('earth')?.y ?? rows.PE;
  const changes = isChanged('circuit', position, now) || isChanged('main-switch', position, now);
  const hasRoom = layout.lineYs.length > 0;
  const isOff = position.supply !== 'on' || position.main !== 'on';
  const mainWords = deviceWords('main-switch', scene, incoming + WORDS.main);
  const breakerWords = deviceWords('circuit', scene, incoming + WORDS.breaker);
  const under = rows.N + WORDS.from + WORDS.step * Math.max(mainWords.length, breakerWords.length);
  return together(
    heading(
      layout,
      incoming,
      'origin',
      `${breaker.type}${breaker.rating}, ${breaker.poles}-pole`,
      ...(residualDevice === null
        ? []
        : [
            `type ${residualDevice.type}${residualDevice.delay === 'S' ? ' S' : ''} ${amount(1000 * residualDevice.rated)} mA`,
          ]),
    ),
    labels(
      ...mainWords,
      ...breakerWords,
      // Who proves dead on the outgoing side has these beside the probes.
      ...[
        ...(isOff && !hasRoom ? [] : [changes ? 'at the lock' : switchedText(scene)]),
        ...(isOff ? ['live side stays live'] : []),
      ].map((text, i) => label(incoming, under + WORDS.step * i, text)),
      label(met, rows.PE - 9, 'MET', { anchor: 'middle' }),
    ),
    shapes(rect('box', incoming, first - 12, origin - incoming, rows.N - first + 24), ...poles(scene)),
    residualDevice === null ? EMPTY : shapes(...ring(scene)),
    shapes(path('conductor', `M${rod} ${rodY}v16`), earthSymbol(rod, rodY + 16)),
    labels(
      layout.view === 'whole'
        ? label(rod - 14, rodY + 10, 'remote rod', { anchor: 'end' })
        : label(layout.width - 2, rodY - 14, 'remote rod', { anchor: 'end' }),
    ),
    links(scene),
  );
}

const switchedText = ({ switchedAt }: Scene): string =>
  switchedAt === null ? 'as found' : benchTime(switchedAt);

/** How many of the live conductors the breaker opens; what it leaves closed is the neutral. */
const switchedPoles = ({ papers, layout }: Scene): number =>
  Math.min(papers.site.circuit.breaker.poles, layout.lives.length);

/** From the live side to the circuit: where the main switch, the sensor’s ring and the breaker’s contacts stand. */
const MAIN = { from: 14, to: 34 } as const;
const RING = 51;
const BREAKER = { from: 68, to: 88 } as const;

function poles(scene: Scene): readonly Shape[] {
  const { layout, position, now } = scene;
  const { columns, lives, rows } = layout;
  const { incoming, origin } = columns;
  const mainChanged = isChanged('main-switch', position, now);
  const breakerChanged = isChanged('circuit', position, now);
  const switched = switchedPoles(scene);
  const isClosed = (x: string) =>
    position.supply === 'on' || (position.supply === 'off-line-locked' && x === 'N');
  const [main, breaker] = [MAIN, BREAKER].map(({ from, to }) => ({
    from: incoming + from,
    to: incoming + to,
  })) as [Span, Span];
  return [
    ...lives.flatMap((x, i) => [
      path('conductor', `M${incoming} ${rows[x]}H${main.from}`),
      ...dashedIf(mainChanged, contact(main.from, main.to, rows[x], position.main === 'on')),
      ...(i < switched
        ? [
            path('conductor', `M${main.to} ${rows[x]}H${breaker.from}M${breaker.to} ${rows[x]}H${origin}`),
            ...dashedIf(breakerChanged, contact(breaker.from, breaker.to, rows[x], isClosed(x))),
            cross(breaker.to, rows[x]),
          ]
        : [path('conductor', `M${main.to} ${rows[x]}H${origin}`)]),
    ]),
    ...linkage(
      main,
      lives.map((x) => rows[x]),
    ),
    ...linkage(
      breaker,
      lives.slice(0, switched).map((x) => rows[x]),
    ),
  ];
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/** Poles that move together. */
const linkage = ({ from, to }: Span, ys: readonly number[]): readonly Shape[] =>
  ys.length > 1 ? [path('linkage', `M${(from + to) / 2} ${Math.min(...ys) - 5}V${Math.max(...ys)}`)] : [];

/** The residual device's sensor: a ring round every live conductor. */
function ring({ layout }: Scene): readonly Shape[] {
  const { columns, lives, rows } = layout;
  const x = columns.incoming + RING;
  const top = rows[lives[0] ?? 'N'] - 10;
  const bottom = rows.N + 10;
  return [path('ring', `M${x - 6} ${top + 6}a6 6 0 0 1 12 0V${bottom - 6}a6 6 0 0 1 -12 0z`)];
}

/** Temporary links from a line to PE, for R1 + R2, or to N. */
function links({ layout, links: linked }: Scene): Figure {
  const { columns, rows } = layout;
  if (linked.length === 0) return EMPTY;
  const x = columns.origin + 12;
  const ends = linked.flatMap((link) => link.split('-').map((end) => rows[end as Conductor]));
  return together(
    shapes(
      path('conductor', `M${x} ${Math.min(...ends)}V${Math.max(...ends)}`),
      ...[...new Set(ends)].map((y) => joint(x, y)),
    ),
    labels(label(x + 12, rows.N + 58, 'link')),
  );
}

/** The circuit from the origin to the unit: names at both ends, length and areas by the papers. */
export function circuitFigure(scene: Scene): Figure {
  const { papers, layout, position, now } = scene;
  const { columns, lives, rows, supplyX, view } = layout;
  const { parallelEarth, protectiveArea } = papers.site.circuit;
  const from = view === 'unit' ? 0 : columns.origin;
  const to = view === 'origin' ? columns.width : supplyX;
  const beginsAt = view === 'unit' ? 0 : columns.met;
  const protective = layout.lineYs.length === 0 ? 'PE' : `PE ${amount(protectiveArea)} mm²`;
  return together(
    shapes(
      ...lives.map((x) => path('conductor', `M${from} ${rows[x]}H${to}`)),
      path('earth', `M${beginsAt} ${rows.PE}H${to}`),
      ...(view === 'origin' || !isChanged('conductors', position, now)
        ? []
        : [...lives, 'PE' as const].map((x) => lastBit(layout, rows[x]))),
    ),
    labels(
      ...(view === 'unit'
        ? [label(4, rows.PE - 9, protective)]
        : [
            ...lives.map((x) => label(from + 10, rows[x] - 4, x)),
            view === 'origin'
              ? label(to - 2, rows.PE - 9, protective, { anchor: 'end' })
              : label(from + 10, rows.PE - 9, protective),
          ]),
      ...(view === 'origin' ? [] : lives.map((x) => label(to - 10, rows[x] - 4, x, { anchor: 'end' }))),
    ),
    lengths(scene, from, to),
    view === 'origin' ? EMPTY : endWords(scene),
    parallelEarth === null ? EMPTY : armour(scene, beginsAt),
  );
}

/** The bit that is put on or taken off at the lock. */
const lastBit = ({ columns }: Scene['layout'], y: number): Shape => ({
  ...path('contact', `M${columns.unitLeft - 24} ${y}H${columns.unitLeft}`),
  changed: true,
});

/** Whether the circuit's conductors are on the unit's terminals. */
function endWords({ layout, position, acts }: Scene): Figure {
  const { columns, rows } = layout;
  const { thing, state } = handText('conductors', position);
  const x = columns.unitLeft - 6;
  return labels(
    label(x, rows.PE - 36, thing, { anchor: 'end' }),
    label(x, rows.PE - 22, '', { anchor: 'end', state: { text: state, acts } }),
  );
}

/** In the whole drawing a dimension line; in a part, of which the circuit is cut, words at its head. */
function lengths({ papers, layout }: Scene, from: number, to: number): Figure {
  const { length, lineArea } = papers.site.circuit;
  const { columns, rows, view } = layout;
  const metres = `${amount(length)} m`;
  const area = `${amount(lineArea)} mm²`;
  if (view === 'whole')
    return together(
      shapes(dimension(from + 10, to, rows.N + 25)),
      labels(
        label((from + columns.unitLeft) / 2, rows.N + 19, metres, { anchor: 'middle' }),
        label((from + columns.unitLeft) / 2, rows.N + 36, area, { anchor: 'middle' }),
      ),
    );
  // Beside the origin there is room behind what is said of its devices.
  return view === 'unit'
    ? heading(layout, 4, 'circuit', metres, area)
    : heading(layout, columns.origin + 14, 'to unit', metres, area);
}

/** Armour, steel or tray beside the protective conductor, onto the unit's exposed metal. */
function armour({ layout }: Scene, from: number): Figure {
  const { columns, rows, view } = layout;
  const y = rows.PE + (layout.lineYs.length === 0 ? 8 : 12);
  const to = view === 'origin' ? columns.width : columns.unitLeft;
  const start = view === 'unit' ? 0 : from;
  return together(
    shapes(path('earth', view === 'unit' ? `M${start} ${y}H${to}` : `M${start} ${rows.PE}V${y}H${to}`)),
    labels(
      view === 'unit'
        ? label(4, layout.bottom + 10 + (layout.lineYs.length === 0 ? 0 : 2), 'armour or steel')
        : label(to - 8, y + 13, 'armour or steel', { anchor: 'end' }),
    ),
  );
}
