/**
 * What one test action's observations come to: expectations broken, limits passed or failed, and whether a
 * faultless trainee goes on.
 */
import type { JudgedLimit } from './judgeLimit.ts';
import { judgeLimit } from './judgeLimit.ts';
import type { Observed } from './observed.ts';
import { onPapers } from './onPapers.ts';
import type { Advice, Expectation, Finding, Limit, Papers, TestAction } from './testAction.ts';

export interface JudgedExpectation {
  readonly expectation: Expectation;
  readonly finding: Finding;
}

export const judgeExpectations = (
  action: TestAction,
  papers: Papers,
  observed: Observed,
): readonly JudgedExpectation[] =>
  onPapers(action, papers).expectations.map((expectation) => ({
    expectation,
    finding: expectation.judge(observed),
  }));

export const judgeLimits = (action: TestAction, papers: Papers, observed: Observed): readonly JudgedLimit[] =>
  judgeEachLimit(onPapers(action, papers).limits, observed);

/** Every reading that one of the limits applies to. A test that the instrument refused has no value to judge. */
export function judgeEachLimit(limits: readonly Limit[], observed: Observed): readonly JudgedLimit[] {
  const readings = observed.samples
    .flatMap((sample) => sample.readings)
    .filter(({ qualifier }) => qualifier !== 'unable');
  return limits.flatMap((limit) =>
    readings
      .filter((reading) => limit.applies(reading, observed))
      .map((reading) => judgeLimit(limit, reading)),
  );
}

/** What was observed that a verifier writes down and advises on. */
export const adviceDue = (action: TestAction, papers: Papers, observed: Observed): readonly Advice[] =>
  onPapers(action, papers).advice.filter(({ isDue }) => isDue(observed));

/** The broken expectation after which a faultless trainee goes no further, by its id, or null. */
export function reasonToStop(action: TestAction, expectations: readonly JudgedExpectation[]): string | null {
  const broken = expectations.find(
    ({ expectation, finding }) => finding === 'broken' && action.stops.includes(expectation.id),
  );
  return broken?.expectation.id ?? null;
}
