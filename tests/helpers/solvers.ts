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
import type { Way } from '../../src/fairness/told.ts';
import { leftAfter, nameOf, possibleAtFirst, wayByTelling } from '../../src/fairness/told.ts';
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
  const own = ownRow(fairness);
  const first = wayByTelling(own, possibleAtFirst(own, rows), priceOf);
  if (first.left.every((row) => nameOf(row) === nameOf(own))) return solutionOf([first]);
  // Where the tests of one of them end early, what the rest would show decides: that one would have stopped, or not.
  const trials = new Trials(scenario);
  const tests = testsOf(scenario);
  const whole = (row: Row): Row => toItsEnd(trials.rowBeyond(row.cause, tests));
  const ownWhole = whole(own);
  const left = first.tests.reduce<readonly Row[]>(
    (rest, test) => leftAfter(ownWhole, rest, test),
    first.left.map(whole),
  );
  return solutionOf([first, wayByTelling(ownWhole, left, priceOf, first.tests)]);
}

/** Of one way that goes on where the other ended. */
const solutionOf = (ways: readonly Way[]): Solution => ({
  path: ways.flatMap(({ tests }) => tests),
  left: [...new Set((ways.at(-1) as Way).left.map(nameOf))],
  cost: ways.reduce((sum, { cost }) => sum + cost, 0),
});

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
