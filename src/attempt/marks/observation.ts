/** Observation: the figures that were typed against those shown, over every reading that was to be taken. */
import type { Reading } from '../../bench/reading.ts';
import type { VerifiedAction } from '../../scenario/verify.ts';
import type { Run } from '../record/run.ts';
import { readRightly, shownFigure, typedBefore } from '../record/typed.ts';
import type { Expected, PartMark, Rate } from './counted.ts';
import { shareOf, summed } from './counted.ts';
import { occasionsOf, readingsToType } from './occasions.ts';

/** Every reading, and those among them with a figure: 0 and no reading are typed as shown without looking closely. */
export interface ObservationSum extends Rate {
  readonly figures: Rate;
}

export interface ObservationMark extends PartMark<ObservationSum> {
  /** Share of the readings with a figure, 0 to 1. */
  readonly ofFigures: number;
}

export function observationMark(run: Run, { counted }: Expected): ObservationMark {
  const tallies = counted.flatMap((test) => talliesOf(run, test));
  const all = summed(tallies);
  const figures = summed(tallies.map((tally) => tally.figures));
  return { share: shareOf(all), ofFigures: shareOf(figures), sum: { ...all, figures } };
}

/** A test that was not done, or in which nothing was read, has the readings of a faultless trainee, none of them typed. */
function talliesOf(run: Run, due: VerifiedAction): readonly ObservationSum[] {
  const occasions = occasionsOf(run, due.action.id);
  const missed = { right: 0, of: readingsDue(due), figures: { right: 0, of: figuresDue(due) } };
  if (occasions.length === 0) return [missed];
  return occasions.map((occasion) => {
    const typed = typedBefore(run, occasion.span.told);
    const own = readingsToType(run, occasion, typed);
    if (own.length === 0) return missed;
    const right = own.filter(({ index }) => {
      const [entry, taken] = [typed.get(index), run.readings[index]];
      return entry !== undefined && taken !== undefined && readRightly(entry, taken);
    });
    const withFigure = (some: typeof own) => some.filter(({ reading }) => hasFigure(reading)).length;
    return {
      right: right.length,
      of: own.length,
      figures: { right: withFigure(right), of: withFigure(own) },
    };
  });
}

const hasFigure = (reading: Reading): boolean =>
  (reading.quantity === 'residual' && reading.tripMs != null) || (shownFigure(reading) ?? 0) !== 0;

/** Of the many pairs of one proving one is typed. */
const dueOf = ({ run }: VerifiedAction): readonly Reading[] =>
  run.samples.flatMap(({ readings, operation }) =>
    operation.op === 'prove-dead' ? readings.slice(0, 1) : readings,
  );
export const readingsDue = (test: VerifiedAction): number => dueOf(test).length;
const figuresDue = (test: VerifiedAction): number => dueOf(test).filter(hasFigure).length;
