/** Shapes of IEC 60617 (from memory) that the drawing needs more than once, in the weight of the conductors. */
import type { Figure, Shape } from './figure.ts';
import { joint, label, labels, path, rect, shapes, together } from './figure.ts';

/** Earth: three lines of falling length under the conductor's end. */
export const earthSymbol = (x: number, y: number): Shape =>
  path('symbol', `M${x - 11} ${y}h22M${x - 7} ${y + 4.5}h14M${x - 3} ${y + 9}h6`);

/** A winding of the source, lying on its conductor. */
export function winding(from: number, to: number, y: number): Shape {
  const turn = (to - from) / 4;
  return path('symbol', `M${from} ${y}${`a${turn / 2} ${turn / 2} 0 0 1 ${turn} 0`.repeat(4)}`);
}

/** A resistor between two points of a row, with its value above or below. */
export function resistor(from: number, to: number, y: number, value: string, below = false): Figure {
  const middle = (from + to) / 2;
  return together(
    shapes(
      path('conductor', `M${from} ${y}H${middle - 13}M${middle + 13} ${y}H${to}`),
      rect('symbol', middle - 13, y - 5, 26, 10),
    ),
    value === '' ? labels() : labels(label(middle, below ? y + 18 : y - 9, value, { anchor: 'middle' })),
  );
}

/** A resistor between two rows. */
export const uprightResistor = (x: number, top: number, bottom: number): Figure => {
  const middle = (top + bottom) / 2;
  return shapes(
    path('conductor', `M${x} ${top}V${middle - 8}M${x} ${middle + 8}V${bottom}`),
    rect('symbol', x - 4.5, middle - 8, 9, 16),
    joint(x, top),
    joint(x, bottom),
  );
};

/** Diode: a triangle against a bar, 12 wide. */
export const diode = (x: number, y: number): Shape =>
  path('symbol', `M${x} ${y - 6}v12l12 -6zM${x + 12} ${y - 6}v12`);

/** A make contact in a row: the blade in line, or risen from it. */
export const contact = (from: number, to: number, y: number, closed: boolean): Shape =>
  path('contact', `M${from} ${y}${closed ? `H${to}` : `L${to - 3} ${y - 9}`}`);

/** The cross at a circuit-breaker's fixed contact. */
export const cross = (x: number, y: number): Shape =>
  path('conductor', `M${x - 4} ${y - 4}l8 8M${x - 4} ${y + 4}l8 -8`);

/** A dimension line with oblique end strokes. */
export const dimension = (from: number, to: number, y: number): Shape =>
  path('dimension', `M${from} ${y}H${to}M${from - 4} ${y + 4}l8 -8M${to - 4} ${y + 4}l8 -8`);

/** A lid with its four screws; taken off, the opening that it leaves. */
export const lid = (
  x: number,
  y: number,
  width: number,
  height: number,
  closed: boolean,
): readonly Shape[] =>
  closed
    ? [
        rect('symbol', x, y, width, height),
        ...[x + 8, x + width - 8].flatMap((at) => [screw(at, y + 8), screw(at, y + height - 8)]),
      ]
    : [rect('dimension', x, y, width, height)];

/** A slotted head. */
const screw = (x: number, y: number): Shape =>
  path('symbol', `M${x - 4} ${y}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0M${x - 2.5} ${y + 2.5}l5 -5`);
