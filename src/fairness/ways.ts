/**
 * The shortest way to a cause: tests that see it and tell it from every other cause that can be told from it. What the
 * dictionary promises is acted out before it is believed: a test may read otherwise when those before it are left out.
 */
import type { Seconds } from '../laws/quantities.ts';
import type { TestAction } from '../verification/testAction.ts';
import type { Cover } from './cover.ts';
import { cheapestCover, MOST_EXACT } from './cover.ts';
import { splits } from './relations.ts';
import type { Row } from './row.ts';
import type { Trials } from './trials.ts';

/** Another row, and the tests that tell it from the own one. */
export interface Demand {
  readonly row: Row;
  readonly by: readonly string[];
}

export interface Way {
  /** In the order in which they are done. */
  readonly tests: readonly string[];
  readonly by: Cover['by'];
  /** Of time and risk, as `costOf` has it (minutes.ts). */
  readonly cost: Seconds;
}

export interface Sought {
  readonly own: Row;
  /** The tests that let it be seen; null where nothing is wrong. */
  readonly seenBy: readonly string[] | null;
  readonly demands: readonly Demand[];
  readonly tests: readonly TestAction[];
  readonly costOf: (test: string) => Seconds;
}

/** Null where the cause cannot be seen. */
export function* shortestWay(
  { own, seenBy, demands, tests, costOf }: Sought,
  trials: Trials,
  fewest: 'tests' | 'cost',
): Generator<unknown, Way | null> {
  if (seenBy?.length === 0) return null;
  // One test fewer is worth any cost; of ways with as many tests the cheaper one.
  const weightOf = (test: string): number => (fewest === 'tests' ? 1e6 : 0) + costOf(test);
  const open = new Map(demands.map((demand) => [demand.row, new Set(demand.by)]));
  for (;;) {
    const all = [...(seenBy === null ? [] : [new Set(seenBy)]), ...open.values()];
    const cover = cheapestCover(all, weightOf, MOST_EXACT);
    if (cover === null) return null;
    const way = inOrder(cover.tests, own, tests);
    const fails = yield* failing(own, open, way, trials);
    if (fails.length === 0) {
      const cost = way.reduce((sum, { id }) => sum + costOf(id), 0);
      return { tests: way.map(({ id }) => id), by: cover.by, cost };
    }
    for (const row of fails) {
      const by = open.get(row) as Set<string>;
      for (const { id } of way) by.delete(id);
      // Only all of it together tells them apart.
      if (by.size === 0) open.delete(row);
    }
  }
}

/** Tests that are never come to in their usual order are done first. */
function inOrder(ids: readonly string[], own: Row, tests: readonly TestAction[]): readonly TestAction[] {
  const wanted = tests.filter(({ id }) => ids.includes(id));
  return [...wanted.filter(({ id }) => !own.cells.has(id)), ...wanted.filter(({ id }) => own.cells.has(id))];
}

/** The rows that these tests by themselves do not tell from the own one after all. */
function* failing(
  own: Row,
  demands: ReadonlyMap<Row, ReadonlySet<string>>,
  way: readonly TestAction[],
  trials: Trials,
): Generator<unknown, readonly Row[]> {
  const its = yield* trials.row(own.cause, way);
  const failed: Row[] = [];
  for (const row of demands.keys()) {
    const other = yield* trials.row(row.cause, way);
    if (!way.some(({ id }) => splits(its, other, id))) failed.push(row);
  }
  return failed;
}
