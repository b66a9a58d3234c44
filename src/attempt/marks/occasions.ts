/**
 * The occasions on which a test counts. What one was told of a test cannot be shown to be known any more, so it counts
 * as it stood when it was first told: at its first judgement, or in an assessment, where nothing is told, as it stands
 * at the conclusion. After something was truly put right the unit is another one, and a test done then counts afresh,
 * beside what was judged before.
 */
import { faultsAmong } from '../../faults/catalogue.ts';
import type { EntryOf } from '../record/attempt.ts';
import { oncePerRun } from '../record/once.ts';
import { doneIn, placeOf } from '../record/places.ts';
import type { Run } from '../record/run.ts';
import { rungOf } from '../record/rung.ts';
import type { Sitting } from '../record/sitting.ts';
import { readingsIn, sittingsOf } from '../record/sitting.ts';
import { countingEntries } from '../record/untimely.ts';

export interface Occasion {
  readonly test: string;
  /** What was done in it: after one entry of the log and up to another. */
  readonly span: Sitting;
  /** The judgement that counts; undefined where none was made. */
  readonly judgement: EntryOf<'judgement'> | undefined;
  /** The sitting that it is about. */
  readonly sitting: Sitting;
  /** Before anything was put right. */
  readonly isAsMet: boolean;
}

/** Those of one test, in order; none where it was not done. */
export const occasionsOf = oncePerRun((run: Run, test: string): readonly Occasion[] => {
  const bounds = [-1, ...madeRight(run), Infinity];
  return bounds.slice(1).flatMap((end, i): readonly Occasion[] => {
    const after = bounds[i] ?? -1;
    const isDone = doneIn(run, test).some(({ entry }) => entry > after && entry < end);
    return isDone ? [occasionIn(run, { test, after, upTo: end }, i === 0)] : [];
  });
});

export const isDone = (run: Run, test: string): boolean => doneIn(run, test).length > 0;

/** The last of them: what a debrief tells of. */
export const lastOccasion = (run: Run, test: string): Occasion | undefined => occasionsOf(run, test).at(-1);

/** Entries with which a cause went that was there: putting right what is not wrong makes nothing new. */
const madeRight = ({ scenario, repairs }: Run): readonly number[] =>
  faultsAmong(scenario.faults)
    .flatMap(({ id }) => repairs.find(({ what }) => what === id)?.entry ?? [])
    .sort((x, y) => x - y);

function occasionIn(run: Run, span: Sitting, isAsMet: boolean): Occasion {
  const { test, after, upTo } = span;
  const judgements = countingEntries(run, 'judgement', test).filter((entry) => {
    const at = placeOf(run, entry);
    return at > after && at < upTo;
  });
  const isTold = rungOf(run.scenario.support, run.attempt) < 4;
  const judgement = isTold ? judgements[0] : judgements.at(-1);
  const judgedAt = judgement === undefined ? upTo : placeOf(run, judgement);
  const told = isTold ? judgedAt : upTo;
  const sitting = sittingsOf(run, test).findLast((one) => one.after < judgedAt) ?? span;
  return {
    test,
    span: { ...span, upTo: told, told },
    judgement,
    sitting: {
      ...sitting,
      after: Math.max(sitting.after, after),
      upTo: Math.min(sitting.upTo, told),
      told,
    },
    isAsMet,
  };
}

/** Readings of an occasion that are to be typed: of the many pairs of one proving any one stands for all. */
export function readingsToType(
  run: Run,
  { span }: Occasion,
  typed: Pick<ReadonlyMap<number, unknown>, 'has'>,
) {
  const own = readingsIn(run, span);
  return own.filter(({ index }) => {
    const entry = run.readings[index]?.entry ?? -1;
    if (!isProving(run, entry)) return true;
    const pairs = own.filter((other) => run.readings[other.index]?.entry === entry);
    const written = pairs.find((other) => typed.has(other.index)) ?? pairs[0];
    return typed.has(index) || written?.index === index;
  });
}

function isProving({ attempt }: Run, at: number): boolean {
  const entry = attempt.entries[at];
  return entry?.kind === 'operation' && entry.operation.op === 'prove-dead';
}
