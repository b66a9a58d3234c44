/** Observation: the figures that were typed against those shown, over every reading that was to be taken. */
import type { VerifiedAction } from '../../scenario/verify.ts';
import type { Run } from '../run.ts';
import { readRightly, typedOf } from '../typed.ts';
import type { Expected, PartMark } from './counted.ts';
import { shareOf } from './counted.ts';
import { occasionsOf, readingsToType } from './occasions.ts';

export function observationMark(run: Run, { counted }: Expected): PartMark {
  const tallies = counted.flatMap((test) => talliesOf(run, test));
  const right = tallies.reduce((sum, one) => sum + one.right, 0);
  const of = tallies.reduce((sum, one) => sum + one.of, 0);
  return {
    share: shareOf(right, of),
    sum: of === 0 ? 'nothing to read' : `typed as shown ${right} of ${of}`,
  };
}

/** A test that was not done, or in which nothing was read, has the readings of a faultless trainee, none of them typed. */
function talliesOf(run: Run, due: VerifiedAction): readonly { right: number; of: number }[] {
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
