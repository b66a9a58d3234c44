/** The bench in one row, as a phone shows it above the lines of a prediction: where everything stands, no targets. */
import type { Figure } from './figure.ts';
import { dashedIf, EMPTY, label, labels, path, rect, shapes, together } from './figure.ts';
import type { Hand } from './hands.ts';
import { handText, isChanged } from './hands.ts';
import type { Shown } from './layout.ts';
import { oddWords } from './oddWords.ts';
import type { BenchScene } from './scene.ts';
import { contact, cross, resistor } from './symbols.ts';

export const STRIP: Shown = { view: 'strip', width: 320, height: 97, terminals: new Map() };

/** The row of the conductors, the boxes round it, and the two lines of words under them. */
const ROW = 44;
const TOP = 22;
const HEIGHT = 44;
const LID = 56;
const UNDER = [80, 93] as const;

export const stripFigure = (scene: BenchScene): Figure =>
  together(origin(scene), unit(scene), plug(scene), standIn(scene));

/** Without what is said of locks: there is no room, and the strip above says it. */
function words(scene: BenchScene, hand: Hand, x: number, line: 0 | 1, anchor: 'start' | 'middle' | 'end') {
  const { thing, state } = handText(hand, scene.position);
  const [short = state] = state.split(',');
  return label(x, UNDER[line], `${thing} `, { anchor, state: { text: short, acts: false } });
}

function origin(scene: BenchScene): Figure {
  const { position, now } = scene;
  return together(
    shapes(
      rect('box', 2, TOP, 102, HEIGHT),
      path('conductor', `M2 ${ROW}H14M34 ${ROW}H62M82 ${ROW}H124M110 ${ROW + 4}l8 -8`),
      ...dashedIf(isChanged('main-switch', position, now), contact(14, 34, ROW, position.main === 'on')),
      ...dashedIf(isChanged('circuit', position, now), contact(62, 82, ROW, position.supply === 'on')),
      cross(82, ROW),
    ),
    labels(
      label(2, 14, 'origin', { bold: true }),
      words(scene, 'circuit', 2, 0, 'start'),
      words(scene, 'main-switch', 2, 1, 'start'),
    ),
  );
}

function unit(scene: BenchScene): Figure {
  const { position, now, says } = scene;
  const changes = isChanged('cover', position, now) || isChanged('conductors', position, now);
  return together(
    shapes(
      rect('enclosure', 124, TOP - 2, 96, HEIGHT + 4),
      ...dashedIf(changes, path('conductor', `M126 ${LID}H218`)),
    ),
    says === null ? EMPTY : labels(label(172, ROW + 3, says, { anchor: 'middle', bold: true, size: 14 })),
    labels(
      label(124, 14, 'unit', { bold: true }),
      words(scene, 'cover', 172, 0, 'middle'),
      ...(position.unit === 'connected' ? [] : [words(scene, 'conductors', 206, 1, 'end')]),
    ),
  );
}

function plug(scene: BenchScene): Figure {
  const { papers, position, now } = scene;
  const isTether = papers.sheet.outlet === 'tethered';
  const [from, to] = [220, 250];
  const body = 10;
  const x = isTether ? (position.plugged ? to - body : from + 4) : position.plugged ? from : to - body - 4;
  const [a, b] = isTether ? [from, x] : [x + body, to];
  return together(
    shapes(
      path('conductor', `M${a} ${ROW - 4}H${b}M${a} ${ROW + 4}H${b}`),
      ...dashedIf(isChanged('plug', position, now), rect('symbol', x, ROW - 12, body, 24)),
    ),
    labels(words(scene, 'plug', 234, 1, 'middle')),
  );
}

function standIn(scene: BenchScene): Figure {
  const { position, now } = scene;
  const isAsking = position.state === 'C' || position.state === 'D';
  return together(
    shapes(
      rect('box', 250, TOP, 68, HEIGHT),
      path('conductor', `M250 ${ROW}H258M277 ${ROW}h6`),
      ...dashedIf(isChanged('request', position, now), contact(258, 277, ROW, isAsking)),
    ),
    resistor(283, 316, ROW, ''),
    labels(
      label(318, 14, `stand-in, ${position.state}`, { anchor: 'end', bold: true }),
      words(scene, 'request', 284, 0, 'middle'),
      ...(oddWords(position).length === 0 ? [] : [label(318, UNDER[1], 'more set', { anchor: 'end' })]),
    ),
  );
}
