/**
 * What in a log came too late or too early to show what its trainee knew: a prediction locked once the test had been
 * read, a figure written before its reading, a judgement before anything was done, anything after the conclusion. It
 * is told, and earns nothing. The page lets none of it happen; a file may hold it.
 */
import type { Attempt, Entry, EntryOf } from './attempt.ts';
import { oncePerRun } from './once.ts';
import { byTest, doneIn, placeOf, predictedAt, takenIn } from './places.ts';
import type { Run } from './run.ts';
import { entriesAbout } from './run.ts';

/** After the end, a prediction after a reading, a figure before its reading, a judgement before its test. */
type WhyUntimely = 'ended' | 'predicted' | 'written' | 'judged';

export interface Untimely {
  /** Index in the log. */
  readonly entry: number;
  readonly why: WhyUntimely;
}

/** Index of the conclusion, the first one: with it the attempt ends. Infinity where there is none. */
export function endOf({ entries }: Pick<Attempt, 'entries'>): number {
  const end = entries.findIndex(({ kind }) => kind === 'conclusion');
  return end < 0 ? Infinity : end;
}

const found = new WeakMap<Run, readonly Untimely[]>();

/** In the order of the log. */
export function untimelyIn(run: Run): readonly Untimely[] {
  const before = found.get(run);
  if (before !== undefined) return before;
  const end = endOf(run.attempt);
  const predicted = new Set<string>();
  const untimely = run.attempt.entries.flatMap((entry, i): Untimely[] => {
    const why = i > end ? 'ended' : whyUntimely(run, entry, i, predicted);
    if (entry.kind === 'prediction') predicted.add(entry.test);
    return why === null ? [] : [{ entry: i, why }];
  });
  found.set(run, untimely);
  return untimely;
}

/** Only the first prediction of a test is marked, so only that can come too late. */
function whyUntimely(
  run: Run,
  entry: Entry,
  at: number,
  predicted: ReadonlySet<string>,
): Untimely['why'] | null {
  switch (entry.kind) {
    case 'prediction': {
      const isLate = takenIn(run, entry.test).some(({ taken }) => taken.entry < at);
      return isLate && !predicted.has(entry.test) && entry.given !== true ? 'predicted' : null;
    }
    case 'observation':
      return (run.readings[entry.reading]?.entry ?? Infinity) < at ? null : 'written';
    case 'judgement': {
      const first = doneIn(run, entry.test)[0]?.entry;
      return first !== undefined && first > at ? 'judged' : null;
    }
    default:
      return null;
  }
}

const countingOf = oncePerRun((run: Run, kind: Entry['kind']): Counting => {
  const untimely = new Set(untimelyIn(run).map(({ entry }) => run.attempt.entries[entry]));
  const all = entriesAbout(run.attempt, kind).filter((entry) => !untimely.has(entry as Entry)) as Entry[];
  return { all, ofTest: byTest(all.filter((entry) => 'test' in entry)) };
});

interface Counting {
  readonly all: readonly Entry[];
  readonly ofTest: ReadonlyMap<string | null, readonly Entry[]>;
}

/** The entries of a kind that count, in order; about one test or all. Of its predictions only the first is marked. */
export const countingEntries = <K extends Entry['kind']>(
  run: Run,
  kind: K,
  test?: string,
): readonly EntryOf<K>[] => {
  const { all, ofTest } = countingOf(run, kind);
  return (test === undefined ? all : (ofTest.get(test) ?? [])) as unknown as readonly EntryOf<K>[];
};

/** What was said of a test before it was done; undefined where nothing was, or too late. */
export const firstPrediction = oncePerRun((run: Run, test: string): EntryOf<'prediction'> | undefined => {
  const [first] = predictedAt(run, test);
  return countingEntries(run, 'prediction', test).find((entry) => placeOf(run, entry) === first);
});
