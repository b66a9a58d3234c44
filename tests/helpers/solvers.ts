/**
 * Two that solve a job by its dictionary alone: one who always does the test that tells most for its cost, and one who
 * does tests at random and names a cause at random. Neither sees which row is the true one but by what its tests show.
 */
import { drawer } from '../../src/bench/draw.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { testsOf } from '../../src/fairness/dictionary.ts';
import type { Fairness } from '../../src/fairness/fairness.ts';
import { holds } from '../../src/fairness/fairness.ts';
import { costOf } from '../../src/fairness/minutes.ts';
import type { Row } from '../../src/fairness/row.ts';
import { ownRowOf } from '../../src/fairness/row.ts';
import { leftAfter, nameOf, nextTest, possibleAtFirst } from '../../src/fairness/told.ts';
import { Trials } from '../../src/fairness/trials.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import type { TestAction } from '../../src/verification/testAction.ts';

export interface Solution {
  readonly path: readonly string[];
  /** Causes that are left at the end, by name. */
  readonly left: readonly string[];
  readonly cost: number;
}

export const ownRow = ({ dictionary: { rows } }: Fairness): Row => ownRowOf(rows);

export function greedily(fairness: Fairness): Solution {
  const { scenario, rows } = fairness.dictionary;
  const papers = papersOf(scenario);
  const priceOf = (test: string) => costOf(actionNamed(test) as TestAction, papers);
  const path: string[] = [];
  const goOn = (own: Row, from: readonly Row[]): readonly Row[] => {
    let left = from;
    for (;;) {
      const open = [...own.cells.keys()].filter((test) => !path.includes(test));
      const next = nextTest(left, open, priceOf);
      if (next === null) return left;
      path.push(next);
      left = leftAfter(own, left, next);
    }
  };
  const own = ownRow(fairness);
  let left = goOn(own, possibleAtFirst(own, rows));
  if (left.some((row) => nameOf(row) !== nameOf(own))) {
    // Where the tests of one of them end early, what the rest would show decides: that one would have stopped, or not.
    const trials = new Trials(scenario);
    const tests = testsOf(scenario);
    const whole = (row: Row): Row => toItsEnd(trials.rowBeyond(row.cause, tests));
    const ownWhole = whole(own);
    left = left.map(whole);
    for (const test of path) left = leftAfter(ownWhole, left, test);
    left = goOn(ownWhole, left);
  }
  return {
    path,
    left: [...new Set(left.map(nameOf))],
    cost: path.reduce((sum, test) => sum + priceOf(test), 0),
  };
}

/** Names of what counts as found: what is wrong, and what reads the same. */
export const rightNames = (fairness: Fairness): readonly string[] => [
  nameOf(ownRow(fairness)),
  ...fairness.lookalikes.map(({ causes }) => causes.join(' + ')),
];

/** Names of all that is wrong with something more, which nothing may have shown. */
export function namesWithMore(fairness: Fairness): readonly string[] {
  const own = ownRow(fairness).cause;
  const { rows } = fairness.dictionary;
  return own.causes.length === 0 ? [] : rows.filter(({ cause }) => holds(cause, own)).map(nameOf);
}

/** The cause that somebody names who draws it from all that could be there. */
export function atRandom({ dictionary: { rows } }: Fairness, seed: number): string {
  const names = [...new Set(rows.map(nameOf))];
  return names[Math.floor(names.length * drawer(seed)('named at random'))] as string;
}
