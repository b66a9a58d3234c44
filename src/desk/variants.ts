/** Equal variants, proved by weighing each as any job is weighed: which seeds make one of a job. */
import { digestOf } from '../attempt/record/attempt.ts';
import type { Progress } from '../fairness/dictionary.ts';
import type { Fairness } from '../fairness/fairness.ts';
import { weighing } from '../fairness/fairness.ts';
import { readingScenario } from '../scenario/readScenario.ts';
import { plainWord } from './heldBy.ts';
import { variantOf } from './variantOf.ts';

/** Minutes of two that are held to be equal differ by no more, as a share. */
const MINUTES_APART = 0.15;

/** The seed that is tried as the nth of a giving-out. */
const seedOf = (word: string, n: number): number =>
  Number.parseInt(digestOf(['variant', plainWord(word), n]).slice(0, 8), 16) & 0x7fffffff;

/** By what two jobs are held to be equal. */
export interface Weighed {
  readonly revealedBy: readonly string[];
  /** Causes that nothing allowed tells from what is wrong. */
  readonly left: number;
  readonly minutes: number;
  readonly solvable: boolean;
}

export const weighed = ({ revealedBy, lookalikes, minutes, solvable }: Fairness): Weighed => ({
  revealedBy,
  left: lookalikes.length,
  minutes: minutes.practice,
  solvable,
});

/** The same tests see it, the same number of causes is left, and it takes about as long. */
export const areEqual = (x: Weighed, y: Weighed): boolean =>
  x.solvable === y.solvable &&
  x.left === y.left &&
  x.revealedBy.length === y.revealedBy.length &&
  x.revealedBy.every((test) => y.revealedBy.includes(test)) &&
  Math.abs(x.minutes - y.minutes) <= MINUTES_APART * x.minutes;

export interface Proving {
  /** Variants proved so far, of how many. */
  readonly proved: number;
  readonly of: number;
  /** What is being weighed. */
  readonly weighing: Progress | null;
}

/** How many seeds are tried for each that is wanted. */
const TRIES = 3;

/**
 * Seeds of variants in which every one of these jobs is equal to itself, up to so many; fewer where the job has no more.
 * The job itself is not among them.
 */
export function* provingVariants(
  jobs: readonly object[],
  word: string,
  wanted: number,
): Generator<Proving, readonly number[]> {
  const seeds: number[] = [];
  const told = (weighing: Progress | null): Proving => ({ proved: seeds.length, of: wanted, weighing });
  const own: Weighed[] = [];
  for (const job of jobs) {
    const weight = yield* weighedIn(job, told);
    if (weight === null) return [];
    own.push(weight);
  }
  for (let n = 0; n < TRIES * wanted && seeds.length < wanted; n += 1) {
    const seed = seedOf(word, n);
    let equal = true;
    for (const [i, job] of jobs.entries()) {
      const weight = yield* weighedIn(variantOf(job, seed), told);
      equal = weight !== null && areEqual(own[i] as Weighed, weight);
      if (!equal) break;
    }
    if (equal) seeds.push(seed);
  }
  return seeds;
}

/** Null where it is no job that could be given out. */
function* weighedIn(
  file: object,
  told: (weighing: Progress | null) => Proving,
): Generator<Proving, Weighed | null> {
  const reading = readingScenario(file);
  let read = reading.next();
  while (read.done !== true) {
    yield told(null);
    read = reading.next();
  }
  if (!read.value.ok) return null;
  const weights = weighing(read.value.scenario);
  let next = weights.next();
  while (next.done !== true) {
    yield told(next.value);
    next = weights.next();
  }
  return weighed(next.value);
}
