/** Why something could not be kept or read; in words in words/keeping.ts. */

/** Why nothing was kept; the last two are thrown by whoever finds them. */
export const KEEP_PROBLEMS = ['refused', 'full', 'other version', 'newer', 'taken over', 'deleted'] as const;
export type KeepProblem = (typeof KEEP_PROBLEMS)[number];

class NotKept extends Error {
  readonly problem: KeepProblem;
  constructor(problem: KeepProblem) {
    super(`not kept: ${problem}`);
    this.problem = problem;
  }
}

export const notKept = (problem: KeepProblem): Error => new NotKept(problem);

export function problemOf(error: unknown): KeepProblem {
  if (error instanceof NotKept) return error.problem;
  const name = error instanceof Error ? error.name : '';
  return name === 'QuotaExceededError' ? 'full' : name === 'VersionError' ? 'newer' : 'refused';
}
