/**
 * How the time line is laid out in a width: bench time to the right, tests stacked where they would cover each other,
 * ticks at round times. Says nothing of what is drawn.
 */
import type { TestMark, Timeline } from '../../../attempt/opened/timeline.ts';
import type { Level } from '../../../attempt/opened/twin.ts';

/** Side of a numbered square, and what is between two. */
export const SQUARE = 20;
const GAP = 2;

/** Bench times between two ticks, s. */
const ROUND = [10, 30, 60, 120, 300, 600, 1200, 1800, 3600, 7200, 14_400, 36_000, 86_400];
const TICK_WIDTH = 56;

export interface Course {
  readonly left: number;
  readonly right: number;
  readonly x: (seconds: number) => number;
  readonly squares: readonly { readonly mark: TestMark; readonly x: number; readonly row: number }[];
  readonly rows: number;
  readonly ticks: readonly number[];
}

export function courseOf(timeline: Timeline, left: number, right: number): Course {
  const end = Math.max(1, timeline.end);
  const x = (seconds: number) => left + ((right - left) * Math.min(end, Math.max(0, seconds))) / end;
  const { squares, rows } = placed(timeline.tests, x, left, right);
  const most = Math.max(1, Math.floor((right - left) / TICK_WIDTH));
  const every = ROUND.find((step) => end / step <= most) ?? end;
  const ticks = Array.from({ length: Math.floor(end / every) + 1 }, (_, i) => i * every);
  return { left, right, x, squares, rows, ticks };
}

/** Rows of squares, where so many suffice; a square may stand this far from its time, px: its stem leads there. */
const FEW_ROWS = 3;
const FAR = 60;

/** In as few rows as keep every square near its time, three where nothing does, more only where three are full. */
function placed(tests: readonly TestMark[], x: Course['x'], left: number, right: number) {
  const aRow = Math.max(1, Math.floor((right - left + GAP) / (SQUARE + GAP)));
  const needed = Math.max(1, Math.ceil(tests.length / aRow));
  for (let rows = needed; ; rows++) {
    const squares = inRows(tests, x, left, right, rows);
    const off = Math.max(0, ...squares.map((square) => Math.abs(square.x + SQUARE / 2 - x(square.mark.at))));
    if (off <= FAR || rows >= Math.max(FEW_ROWS, needed)) return { squares, rows };
  }
}

function inRows(tests: readonly TestMark[], x: Course['x'], left: number, right: number, rows: number) {
  const last = right - SQUARE;
  // Each where it stands least far to the right of its time.
  const ends: number[] = Array.from({ length: rows }, () => left);
  const squares = tests.map((mark) => {
    const wanted = Math.min(last, Math.max(left, x(mark.at) - SQUARE / 2));
    const at = ends.map((end) => Math.max(end, wanted));
    const row = at.indexOf(Math.min(...at));
    ends[row] = (at[row] as number) + SQUARE + GAP;
    return { mark, x: at[row] as number, row };
  });
  // What was pushed over the right edge moves back, and what stands before it.
  const limits: number[] = Array.from({ length: rows }, () => last);
  return squares
    .toReversed()
    .map((square) => {
      const limit = limits[square.row] as number;
      const moved = { ...square, x: Math.min(square.x, limit) };
      limits[square.row] = moved.x - SQUARE - GAP;
      return moved;
    })
    .toReversed();
}

export interface Span {
  readonly from: number;
  readonly to: number;
  readonly volts: number;
  readonly live: boolean;
}

/** Levels as spans of bench time; neighbours that are live, or dead, alike become one, at its highest. */
export function spansOf(levels: readonly Level[], end: number): readonly Span[] {
  const spans: Span[] = [];
  for (const [i, { at, volts, live }] of levels.entries()) {
    const from = Math.max(0, at);
    const to = Math.max(from, levels[i + 1]?.at ?? end);
    const last = spans.at(-1);
    if (last !== undefined && last.live === live)
      spans[spans.length - 1] = { ...last, to, volts: Math.max(last.volts, volts) };
    else spans.push({ from, to, volts, live });
  }
  return spans.filter(({ from, to }) => to > 0 || from > 0);
}

/** Level at a bench time. */
export const levelAt = (levels: readonly Level[], time: number): Level | undefined =>
  levels.findLast(({ at }) => at <= time) ?? levels[0];
