/** Observation: the figures that were typed against those shown, over every reading that was to be taken. */
import type { VerifiedAction } from '../../scenario/verify.ts';
import type { Run } from '../run.ts';
import { readRightly, typedOf } from '../typed.ts';
import type { Expected, PartMark, Rate } from './counted.ts';
import { shareOf, summed } from './counted.ts';
import { occasionsOf, readingsToType } from './occasions.ts';

export function observationMark(run: Run, { counted }: Expected): PartMark<Rate> {
  const sum = summed(counted.flatMap((test) => talliesOf(run, test)));
  return { share: shareOf(sum), sum };
}

/** A test that was not done, or in which nothing was read, has the readings of a faultless trainee, none of them typed. */
function talliesOf(run: Run, due: VerifiedAction): readonly Rate[] {
  const occasions = occasionsOf(run, due.action.id);
  const missed = { right: 0, of: readingsDue(due) };
  if (occasions.length === 0) return [missed];
  return occasions.map((occasion) => {
    const typed = typedOf(run, occasion.span.told);
    const own = readingsToType(run, occasion, typed);
    if (own.length === 0) return missed;
    const right = own.filter(({ index }) => {
      const [entry, taken] = [typed.get(index), run.readings[index]];
      return entry !== undefined && taken !== undefined && readRightly(entry, taken);
    });
    return { right: right.length, of: own.length };
  });
}

/** Of the many pairs of one proving one is typed. */
export const readingsDue = ({ run }: VerifiedAction): number =>
  run.samples.reduce(
    (sum, { readings, operation }) =>
      sum + (operation.op === 'prove-dead' ? Math.min(1, readings.length) : readings.length),
    0,
  );
