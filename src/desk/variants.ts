/** Equal variants, proved by weighing each as any job is weighed. */
import type { Compared } from '../fairness/fairness.ts';
import { comparing } from '../fairness/fairness.ts';
import { readingScenario } from '../scenario/readScenario.ts';
import { nthVariant } from './variantOf.ts';

/** Minutes of two that are held to be equal differ by no more, as a share. */
const MINUTES_APART = 0.15;

/** By what two jobs are held to be equal. */
export interface Weight {
  readonly revealedBy: readonly string[];
  /** Causes that nothing allowed tells from what is wrong. */
  readonly left: number;
  readonly minutes: number;
  readonly solvable: boolean;
}

export const weightOf = ({ revealedBy, lookalikes, minutes, solvable }: Compared): Weight => ({
  revealedBy,
  left: lookalikes.length,
  minutes: minutes.practice,
  solvable,
});

/** The same tests see it, the same number of causes is left, and it takes about as long. */
export const areEqual = (x: Weight, y: Weight): boolean =>
  x.solvable === y.solvable &&
  x.left === y.left &&
  x.revealedBy.length === y.revealedBy.length &&
  x.revealedBy.every((test) => y.revealedBy.includes(test)) &&
  Math.abs(x.minutes - y.minutes) <= MINUTES_APART * x.minutes;

/** Whether every job of one variant is equal to that of the other; what could not stand is equal to nothing. */
export const allEqual = (x: readonly Weight[] | null, y: readonly Weight[] | null): boolean =>
  x !== null && y !== null && x.every((one, i) => areEqual(one, y[i] as Weight));

/** The jobs of the nth variant weightOf, or with null the jobs themselves; null where one of them could not be given out. */
export function* weighingVariant(
  jobs: readonly object[],
  word: string,
  n: number | null,
): Generator<unknown, readonly Weight[] | null> {
  const all: Weight[] = [];
  for (const job of jobs) {
    const read = yield* readingScenario(n === null ? job : nthVariant(job, word, n));
    if (!read.ok) return null;
    all.push(weightOf(yield* comparing(read.scenario)));
  }
  return all;
}
