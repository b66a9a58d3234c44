/**
 * What a class makes of one line: how many got it right, with how far that may be off for so few, and, from thirty up,
 * whether those who did well otherwise got it right more often. Plain item analysis.
 */

/** From how many on it is said whether a line tells the good from the weak. */
export const ENOUGH_TO_TELL = 30;
/** 1.96 standard errors: nineteen in twenty. */
const Z = 1.959964;

export interface Share {
  readonly right: number;
  readonly of: number;
  /** Nineteen in twenty such intervals hold the true share; 0 to 1. */
  readonly from: number;
  readonly to: number;
}

/** Wilson's score interval without correction (E. B. Wilson 1927); of none at all 0 to 1. */
export function shareOf(right: number, of: number): Share {
  if (of === 0) return { right, of, from: 0, to: 1 };
  const p = right / of;
  const z2 = Z * Z;
  const middle = (p + z2 / (2 * of)) / (1 + z2 / of);
  const half = (Z * Math.sqrt((p * (1 - p)) / of + z2 / (4 * of * of))) / (1 + z2 / of);
  return { right, of, from: Math.max(0, middle - half), to: Math.min(1, middle + half) };
}

/** One learner on one line: right or not, and the score on everything else. */
export interface Answered {
  readonly right: boolean;
  readonly rest: number;
}

/**
 * Correlation (Pearson's, which for right and wrong is the point-biserial one) of the line with the rest, −1 to 1. Null
 * where there are too few, or all are alike in one of the two.
 */
export function discrimination(answers: readonly Answered[], enough = ENOUGH_TO_TELL): number | null {
  const n = answers.length;
  if (n < enough) return null;
  const meanOf = (of: (one: Answered) => number) => answers.reduce((sum, one) => sum + of(one), 0) / n;
  const x = ({ right }: Answered) => (right ? 1 : 0);
  const y = ({ rest }: Answered) => rest;
  const [mx, my] = [meanOf(x), meanOf(y)];
  const xy = meanOf((one) => (x(one) - mx) * (y(one) - my));
  const xx = meanOf((one) => (x(one) - mx) * (x(one) - mx));
  const yy = meanOf((one) => (y(one) - my) * (y(one) - my));
  return xx === 0 || yy === 0 ? null : xy / Math.sqrt(xx * yy);
}
