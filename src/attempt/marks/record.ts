/**
 * Record: whether each reading is written down with all that belongs to it, and whether the reason why a test was left
 * out is true. What was not written down is missing in the record too, so that reasons alone make none.
 */
import type { VerifiedAction } from '../../scenario/verify.ts';
import { isTrueReason } from '../leftOut.ts';
import type { Run } from '../run.ts';
import { recordedFully, typedOf } from '../typed.ts';
import { countingEntries } from '../untimely.ts';
import type { Expected, PartMark } from './counted.ts';
import { shareOf } from './counted.ts';
import { readingsDue } from './observation.ts';
import { isDone, occasionsOf, readingsToType } from './occasions.ts';

interface Tally {
  readonly right: number;
  readonly of: number;
}

export function recordMark(run: Run, { counted }: Expected): PartMark {
  const readings = summed(counted.flatMap((due) => readingsOf(run, due)));
  const reasons = summed(leftOutOf(run, counted));
  const all = summed([readings, reasons]);
  return {
    share: shareOf(all.right, all.of),
    sum: [
      readings.of === 0 ? 'nothing to write down' : `written in full ${readings.right} of ${readings.of}`,
      ...(reasons.of === 0 ? [] : [`left out with a true reason ${reasons.right} of ${reasons.of}`]),
    ].join(', '),
  };
}

const summed = (tallies: readonly Tally[]): Tally => ({
  right: tallies.reduce((sum, one) => sum + one.right, 0),
  of: tallies.reduce((sum, one) => sum + one.of, 0),
});

function readingsOf(run: Run, due: VerifiedAction): readonly Tally[] {
  const occasions = occasionsOf(run, due.action.id);
  if (occasions.length === 0) return [{ right: 0, of: readingsDue(due) }];
  return occasions.map((occasion) => {
    const typed = typedOf(run, occasion.span.told);
    const own = readingsToType(run, occasion, typed);
    const right = own.filter(({ index }) => {
      const [entry, taken] = [typed.get(index), run.readings[index]];
      return entry !== undefined && taken !== undefined && recordedFully(entry, taken);
    });
    return { right: right.length, of: own.length };
  });
}

/** Tests that count and were left out ask for a reason; where one was given of another test, it has to be true as well. */
function leftOutOf(run: Run, counted: readonly VerifiedAction[]): readonly Tally[] {
  const last = new Map(countingEntries(run, 'record').map((entry) => [entry.test, entry]));
  const asked = [...counted.map(({ action }) => action.id), ...last.keys()];
  return [...new Set(asked)]
    .filter((test) => !isDone(run, test))
    .map((test) => {
      const entry = last.get(test);
      return { right: entry !== undefined && isTrueReason(run, entry) ? 1 : 0, of: 1 };
    });
}
