/**
 * What a mark is counted over: the tests that a faultless trainee would do here, up to where that trainee stops, on
 * the unit as it was met and further once something was put right.
 */
import type { Verified, VerifiedAction } from '../../scenario/verify.ts';
import type { Run } from '../record/run.ts';
import { isDone } from './occasions.ts';

export interface Expected {
  readonly asMet: Verified;
  /** The unit as it is at the end; the same where nothing was put right. */
  readonly asNow: Verified;
  /** The tests of either, each as the later of the two finds it; an optional one only where it was done. */
  readonly counted: readonly VerifiedAction[];
}

/** One part of the marks: its share of what it is out of, 0 to 1, and the figures that it comes about by. */
export interface PartMark<Sum> {
  readonly share: number;
  readonly sum: Sum;
}

export interface Rate {
  readonly right: number;
  readonly of: number;
}

export const summed = (rates: readonly Rate[]): Rate => ({
  right: rates.reduce((sum, one) => sum + one.right, 0),
  of: rates.reduce((sum, one) => sum + one.of, 0),
});
/** 1 where there is nothing. */
export const shareOf = ({ right, of }: Rate): number => (of === 0 ? 1 : right / of);

/** The tests that count, and those of them that were done. */
export function doneOf(run: Run, { counted }: Expected): Rate {
  const due = counted.filter(({ action }) => action.optional !== true);
  return { right: due.filter(({ action }) => isDone(run, action.id)).length, of: due.length };
}

export const mean = (xs: readonly number[]): number =>
  xs.length === 0 ? 1 : xs.reduce((sum, x) => sum + x, 0) / xs.length;
