/**
 * Record: whether each reading was written down with all that belongs to it, and whether the reason why a test was left
 * out is true.
 */
import type { EntryOf } from '../attempt.ts';
import { IN_WORDS } from '../attempt.ts';
import type { Run } from '../run.ts';
import { recordedFully, typedOf } from '../typed.ts';
import { countingEntries } from '../untimely.ts';
import type { Expected, PartMark } from './counted.ts';
import { mean } from './counted.ts';
import { isDone, occasionsOf, readingsToType } from './occasions.ts';

/** Any reason of the list; in format 1 any words but none. */
const isReason = ({ leftOut, words }: EntryOf<'record'>): boolean =>
  leftOut !== IN_WORDS || (words ?? '').trim() !== '';

export function recordMark(run: Run, { counted }: Expected): PartMark {
  const readings = counted.flatMap(({ action }) =>
    occasionsOf(run, action.id).flatMap((occasion) => {
      const typed = typedOf(run, occasion.span.told);
      return readingsToType(run, occasion, typed).map(({ index }) => {
        const [entry, taken] = [typed.get(index), run.readings[index]];
        return entry !== undefined && taken !== undefined && recordedFully(entry, taken);
      });
    }),
  );
  const leftOut = counted
    .filter(({ action }) => !isDone(run, action.id))
    .map(({ action }) => countingEntries(run, 'record', action.id).some((entry) => isReason(entry)));
  const all = [...readings, ...leftOut];
  const rightly = (list: readonly boolean[]) => list.filter(Boolean).length;
  return {
    share: all.length === 0 ? 0 : mean(all.map(Number)),
    sum: [
      readings.length === 0
        ? 'no reading written down'
        : `in full ${rightly(readings)} of ${readings.length}`,
      ...(leftOut.length === 0
        ? []
        : [`left out with a true reason ${rightly(leftOut)} of ${leftOut.length}`]),
    ].join(', '),
  };
}
