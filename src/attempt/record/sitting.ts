/**
 * One sitting of a test: from the lock of its prediction to the next, or to a repair after which it was observed
 * further. A test that was done twice was done on the unit as it then was, and is judged by that.
 */
import type { Sample } from '../../verification/observed.ts';
import { oncePerRun } from './once.ts';
import { doneIn, predictedAt, takenIn } from './places.ts';
import type { Run } from './run.ts';
import { endOf } from './untimely.ts';

/** Of one test: what was done in it after one entry of the log and up to another. */
export interface Sitting {
  readonly test: string;
  readonly after: number;
  readonly upTo: number;
  /** What was typed after this entry does not count; left out, all of it does. */
  readonly told?: number;
}

export const keyOfSitting = ({ test, after, upTo, told }: Sitting): string =>
  `${test} ${after} ${upTo} ${told}`;

const isIn = ({ test, after, upTo }: Sitting, of: { readonly test: string | null; readonly entry: number }) =>
  of.test === test && of.entry > after && of.entry <= upTo;

const observes = ({ readings, operation }: Sample): boolean =>
  readings.length > 0 || operation.op === 'inspect';

/** Every sitting of a test, in order. */
export const sittingsOf = oncePerRun((run: Run, test: string): readonly Sitting[] => {
  const own = doneIn(run, test);
  const end = endOf(run.attempt);
  const locks = predictedAt(run, test).filter((place) => place < end);
  // A log may hold a test that was never predicted.
  const starts = own.some(({ entry }) => entry < (locks[0] ?? Infinity)) ? [-1, ...locks] : locks;
  return starts.flatMap((start, i) => {
    const end = starts[i + 1] ?? Infinity;
    const cuts = run.repairs.flatMap(({ entry: cut }) =>
      cut > start && own.some(({ entry, sample }) => entry > cut && entry <= end && observes(sample))
        ? [cut]
        : [],
    );
    const bounds = [start, ...cuts, end];
    return bounds.slice(1).map((upTo, k) => ({ test, after: bounds[k] ?? start, upTo }));
  });
});

const nothing = (test: string): Sitting => ({ test, after: -1, upTo: -1 });

/** The last sitting, judged or not: the one at hand. */
export const lastSitting = (run: Run, test: string): Sitting => sittingsOf(run, test).at(-1) ?? nothing(test);

/** The entry of the last thing done in it. */
export const lastEntryIn = (run: Run, sitting: Sitting): number =>
  doneIn(run, sitting.test).findLast((sample) => isIn(sitting, sample))?.entry ?? sitting.after;

export const samplesIn = oncePerRun((run: Run, sitting: Sitting): readonly Sample[] =>
  doneIn(run, sitting.test)
    .filter((sample) => isIn(sitting, sample))
    .map(({ sample }) => sample),
);

/** Everything that was done before it, in whichever test. */
export const samplesBefore = (run: Run, { after }: Sitting): readonly Sample[] =>
  run.samples.filter(({ entry }) => entry <= after).map(({ sample }) => sample);

/** Readings of a sitting, each with its place among all of the attempt. */
export const readingsIn = oncePerRun((run: Run, sitting: Sitting) =>
  takenIn(run, sitting.test)
    .filter(({ taken }) => isIn(sitting, taken))
    .map(({ index, taken }) => ({ index, reading: taken.reading })),
);
