/**
 * What a mark is counted over: the tests that a faultless trainee would do here, up to where that trainee stops, on
 * the unit as it was met and further once something was put right.
 */
import type { Verified, VerifiedAction } from '../../scenario/verify.ts';
import type { Run } from '../run.ts';
import { isDone } from './occasions.ts';

export interface Expected {
  readonly asMet: Verified;
  /** The unit as it is at the end; the same where nothing was put right. */
  readonly asNow: Verified;
  /** The tests of either, each as the later of the two finds it; an optional one only where it was done. */
  readonly counted: readonly VerifiedAction[];
}

/** One part of the marks: its share of what it is out of, 0 to 1, and how that comes about, in words and figures. */
export interface PartMark {
  readonly share: number;
  readonly sum: string;
}

/** The share of the tests that count which were done, 0 to 1; 1 where there are none. */
export function doneOf(run: Run, { counted }: Expected): { readonly done: number; readonly of: number } {
  const due = counted.filter(({ action }) => action.optional !== true);
  return { done: due.filter(({ action }) => isDone(run, action.id)).length, of: due.length };
}

export const shareOf = (done: number, of: number): number => (of === 0 ? 1 : done / of);
export const mean = (xs: readonly number[]): number =>
  xs.length === 0 ? 1 : xs.reduce((sum, x) => sum + x, 0) / xs.length;
