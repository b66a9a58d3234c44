/** Where things stand in a log: asked for every test and every line of it, so the log is gone through once. */
import type { Entry } from './attempt.ts';
import { oncePerRun } from './once.ts';
import type { Run } from './run.ts';

/** A list by test, each in its order. */
export function byTest<T extends { readonly test: string | null }>(
  list: readonly T[],
): ReadonlyMap<string | null, readonly T[]> {
  const lists = new Map<string | null, T[]>();
  for (const one of list) {
    const own = lists.get(one.test);
    if (own === undefined) lists.set(one.test, [one]);
    else own.push(one);
  }
  return lists;
}

const placesIn = oncePerRun(
  ({ attempt }: Run): ReadonlyMap<Entry, number> =>
    new Map(attempt.entries.map((entry, place) => [entry, place])),
);

/** The index of an entry; −1 where it is of another log. */
export const placeOf = (run: Run, entry: Entry): number => placesIn(run).get(entry) ?? -1;

const samplesByTest = oncePerRun(({ samples }: Run) => byTest(samples));

/** What was done in a test, in order. */
export const doneIn = (run: Run, test: string): Run['samples'] => samplesByTest(run).get(test) ?? [];

const readingsByTest = oncePerRun(({ readings }: Run) =>
  byTest(readings.map((taken, index) => ({ index, taken, test: taken.test }))),
);

/** What was read in a test, in order, each with its index among all of the attempt. */
export const takenIn = (run: Run, test: string) => readingsByTest(run).get(test) ?? [];

const predictionsByTest = oncePerRun(({ attempt }: Run) =>
  byTest(
    attempt.entries.flatMap((entry, place) =>
      entry.kind === 'prediction' ? [{ test: entry.test, place }] : [],
    ),
  ),
);

/** Where a test was predicted. */
export const predictedAt = (run: Run, test: string): readonly number[] =>
  (predictionsByTest(run).get(test) ?? []).map(({ place }) => place);
