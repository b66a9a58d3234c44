/** The rule of a set: how many of its jobs are to be passed, and what none of them may have. */
import * as v from 'valibot';

export const ruleSchema = v.object({
  /** Jobs to be passed, of all in the set. */
  pass: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(20)),
  noCritical: v.boolean(),
  noUnsound: v.boolean(),
});
export type Rule = v.InferOutput<typeof ruleSchema>;

/** What came of one job of the set; null where it was not handed in. */
export interface JobOutcome {
  readonly passed: boolean;
  /** Critical acts that are not set aside. */
  readonly critical: number;
  readonly unsoundAccepted: boolean;
}

export interface SetOutcome {
  readonly passed: number;
  readonly of: number;
  readonly handedIn: number;
  readonly critical: number;
  readonly unsound: number;
  readonly met: boolean;
}

/** A job that was not handed in is none that was passed. */
export function setOutcome(rule: Rule, jobs: readonly (JobOutcome | null)[]): SetOutcome {
  const came = jobs.filter((job) => job !== null);
  const passed = came.filter((job) => job.passed).length;
  const critical = came.reduce((sum, job) => sum + job.critical, 0);
  const unsound = came.filter((job) => job.unsoundAccepted).length;
  const met = passed >= rule.pass && !(rule.noCritical && critical > 0) && !(rule.noUnsound && unsound > 0);
  return { passed, of: jobs.length, handedIn: came.length, critical, unsound, met };
}
