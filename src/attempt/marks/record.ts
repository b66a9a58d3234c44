/**
 * Record: whether each reading is written down with all that belongs to it, and whether the reason why a test was left
 * out is true. What was not written down is missing in the record too, so that reasons alone make none.
 */
import type { VerifiedAction } from '../../scenario/verify.ts';
import { isTrueReason } from '../record/leftOut.ts';
import type { Run } from '../record/run.ts';
import { recordedFully, typedBefore } from '../record/typed.ts';
import { countingEntries } from '../record/untimely.ts';
import type { Expected, PartMark, Rate } from './counted.ts';
import { shareOf, summed } from './counted.ts';
import { readingsDue } from './observation.ts';
import { isDone, occasionsOf, readingsToType } from './occasions.ts';
import { asksLeftOut } from './verdict.ts';

export interface RecordSum {
  readonly written: Rate;
  readonly leftOut: Rate;
}

export function recordMark(run: Run, { counted }: Expected): PartMark<RecordSum> {
  const written = summed(counted.flatMap((due) => readingsOf(run, due)));
  const leftOut = summed(leftOutOf(run, counted));
  return { share: shareOf(summed([written, leftOut])), sum: { written, leftOut } };
}

function readingsOf(run: Run, due: VerifiedAction): readonly Rate[] {
  const occasions = occasionsOf(run, due.action.id);
  if (occasions.length === 0) return [{ right: 0, of: readingsDue(due) }];
  return occasions.map((occasion) => {
    const typed = typedBefore(run, occasion.span.told);
    const own = readingsToType(run, occasion, typed);
    const right = own.filter(({ index }) => {
      const [entry, taken] = [typed.get(index), run.readings[index]];
      return entry !== undefined && taken !== undefined && recordedFully(entry, taken);
    });
    return { right: right.length, of: own.length };
  });
}

/** Tests that count and were left out ask for a reason; where one was given of another test, it has to be true as well. */
function leftOutOf(run: Run, counted: readonly VerifiedAction[]): readonly Rate[] {
  const last = new Map(countingEntries(run, 'record').map((entry) => [entry.test, entry]));
  const due = asksLeftOut(run.scenario) ? counted.map(({ action }) => action.id) : [];
  const asked = [...due, ...last.keys()];
  return [...new Set(asked)]
    .filter((test) => !isDone(run, test))
    .map((test) => {
      const entry = last.get(test);
      return { right: entry !== undefined && isTrueReason(run, entry) ? 1 : 0, of: 1 };
    });
}
