/** Which terminal an arrow key leads to: the nearest one in that direction, nearer along it than across. */
import type { Terminal } from '../../bench/terminals.ts';
import type { Point } from './figure.ts';

export const ARROWS = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowDown: [0, 1],
  ArrowUp: [0, -1],
} as const;
export type Arrow = keyof typeof ARROWS;

/** A step across counts as so many along. */
const ACROSS = 2;
/** Nearer than this it is the same column or row. */
const SAME = 4;

export function nextTerminal(
  terminals: ReadonlyMap<Terminal, Point>,
  from: Terminal,
  arrow: Arrow,
): Terminal {
  const start = terminals.get(from);
  if (start === undefined) return from;
  const [dx, dy] = ARROWS[arrow];
  let best: { terminal: Terminal; cost: number } | null = null;
  for (const [terminal, { x, y }] of terminals) {
    const along = (x - start.x) * dx + (y - start.y) * dy;
    const across = Math.abs((x - start.x) * dy) + Math.abs((y - start.y) * dx);
    if (along <= SAME) continue;
    const cost = along + ACROSS * across;
    if (best === null || cost < best.cost) best = { terminal, cost };
  }
  return best?.terminal ?? from;
}
