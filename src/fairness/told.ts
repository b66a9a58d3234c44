/**
 * What each test told: the causes that were left after it, and which test would have left fewest; and the way of whoever
 * always does what tells most for its cost. By a dictionary, so that it holds for every seed's errors.
 *
 * A longer way to a cause is told and never marked: only hindsight knows the cheapest one, and a test more than need be
 * is no fault in the trade.
 */
import type { Seconds } from '../laws/quantities.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { allowedActions, papersOf } from '../scenario/scenario.ts';
import type { Cell } from './cell.ts';
import { difference } from './cell.ts';
import { lookingUp } from './dictionary.ts';
import { costOf } from './minutes.ts';
import { splits, toldBeforehand } from './relations.ts';
import type { Row } from './row.ts';
import { ownRowOf } from './row.ts';

/** A cause by its ids, several joined; the empty text: nothing is wrong. */
export const nameOf = ({ cause: { causes } }: Row): string => causes.join(' + ');

const namesOf = (rows: readonly Row[]): readonly string[] => [...new Set(rows.map(nameOf))];

/** Rows that papers and sheet leave possible before any test is done; the own one among them. */
export const possibleAtFirst = (own: Row, rows: readonly Row[]): readonly Row[] =>
  rows.filter((row) => row === own || !toldBeforehand(own, row));

export interface Told {
  readonly test: string;
  /** Names of the causes that were left after it. */
  readonly left: readonly string[];
  /** Of the tests not done by then the one that would have left fewest in its place, where that is fewer. */
  readonly better: { readonly test: string; readonly left: number } | null;
}

/** After each of these tests in their order, on a bench with what is wrong in `own`. */
export function toldBy(own: Row, rows: readonly Row[], path: readonly string[]): readonly Told[] {
  let left = possibleAtFirst(own, rows);
  return path.map((test, i) => {
    const before = left;
    left = leftAfter(own, before, test);
    const names = namesOf(left);
    const open = [...own.cells.keys()].filter((other) => !path.slice(0, i + 1).includes(other));
    const best = bestTest(own, before, open);
    return { test, left: names, better: best !== null && best.left < names.length ? best : null };
  });
}

export interface Telling {
  readonly tests: readonly Told[];
  /** What the tests cost that were done, and what they would have cost in the best order without hindsight. */
  readonly cost: Seconds;
  readonly best: Way;
}

/**
 * The same of a job, in pieces, with every cause at its usual size. Tests that a faultless trainee does not come to there
 * tell nothing, and are left out.
 */
export function* tellingOn(scenario: Scenario, path: readonly string[]): Generator<unknown, Telling> {
  const { rows } = yield* lookingUp(scenario, { usual: true });
  const own = ownRowOf(rows);
  const papers = papersOf(scenario);
  const costs = new Map(allowedActions(scenario).map((action) => [action.id, costOf(action, papers)]));
  const priceOf = (test: string): Seconds => costs.get(test) ?? 0;
  const done = [...new Set(path)].filter((test) => own.cells.has(test));
  return {
    tests: toldBy(own, rows, done),
    cost: done.reduce((sum, test) => sum + priceOf(test), 0),
    best: wayByTelling(own, possibleAtFirst(own, rows), priceOf),
  };
}

/** The rows that show what `own` shows in this test. */
export const leftAfter = (own: Row, rows: readonly Row[], test: string): readonly Row[] =>
  rows.filter((row) => !splits(own, row, test));

/** With hindsight: the test that leaves fewest causes; null where none tells anything. */
export function bestTest(
  own: Row,
  rows: readonly Row[],
  open: readonly string[],
): { readonly test: string; readonly left: number } | null {
  const all = namesOf(rows).length;
  let best: { test: string; left: number } | null = null;
  for (const test of open) {
    const left = namesOf(leftAfter(own, rows, test)).length;
    if (left < all && (best === null || left < best.left)) best = { test, left };
  }
  return best;
}

/**
 * Without hindsight: the test that leaves fewest causes in the mean, each cause as likely as the others, for what it
 * costs; null where none tells anything. What somebody would do next who knows all that was seen so far.
 */
export function nextTest(
  rows: readonly Row[],
  open: readonly string[],
  costOf: (test: string) => number,
): string | null {
  let best: { test: string; worth: number } | null = null;
  for (const test of open) {
    const ruledOut = toldApartBy(rows, test);
    const worth = ruledOut / costOf(test);
    if (ruledOut > 0 && (best === null || worth > best.worth)) best = { test, worth };
  }
  return best?.test ?? null;
}

export interface Way {
  readonly tests: readonly string[];
  /** The rows that none of its tests tells from the own one. */
  readonly left: readonly Row[];
  readonly cost: Seconds;
}

/** The way of one who always does the next test, and ends where nothing tells any more. Those in `done` are not done again. */
export function wayByTelling(
  own: Row,
  rows: readonly Row[],
  priceOf: (test: string) => Seconds,
  done: readonly string[] = [],
): Way {
  const tests: string[] = [];
  let left = rows;
  for (;;) {
    const open = [...own.cells.keys()].filter((test) => !done.includes(test) && !tests.includes(test));
    const next = nextTest(left, open, priceOf);
    if (next === null) break;
    tests.push(next);
    left = leftAfter(own, left, next);
  }
  return { tests, left, cost: tests.reduce((sum, test) => sum + priceOf(test), 0) };
}

/** How many rows the test rules out, summed over each row being the true one. */
function toldApartBy(rows: readonly Row[], test: string): number {
  const counts = new Map<Cell, number>();
  for (const { cells } of rows) {
    const cell = cells.get(test);
    if (cell !== undefined) counts.set(cell, (counts.get(cell) ?? 0) + 1);
  }
  const all = [...counts];
  const byFigures = all.reduce(
    (sum, [x, nx]) => sum + all.reduce((n, [y, ny]) => n + (difference(x, y) === null ? 0 : nx * ny), 0),
    0,
  );
  return byFigures + 2 * brokenAlone(rows, test);
}

/** How many break a line in it that nothing wrong keeps, with figures too close to its own to tell. */
function brokenAlone(rows: readonly Row[], test: string): number {
  const sound = rows.find(({ cause }) => cause.of === 'sound');
  const usual = sound?.cells.get(test);
  if (sound === undefined || usual === undefined) return 0;
  return rows.filter((row) => {
    const cell = row.cells.get(test);
    return cell !== undefined && difference(usual, cell) === null && splits(sound, row, test);
  }).length;
}
