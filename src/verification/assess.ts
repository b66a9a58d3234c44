/**
 * What one test action's observations come to: expectations broken, limits passed or failed, and whether a
 * faultless trainee goes on.
 */
import type { Reading } from '../bench/reading.ts';
import { TIME_UNCERTAINTY } from '../bench/readings/openingTime.ts';
import type { Observed } from './observed.ts';
import { onPapers } from './onPapers.ts';
import type { Advice, Expectation, Finding, Limit, Papers, TestAction } from './testAction.ts';

export interface JudgedExpectation {
  readonly expectation: Expectation;
  readonly finding: Finding;
}

export interface JudgedLimit {
  readonly limit: Limit;
  readonly reading: Reading;
  /** What is compared: the shown value, or the end of the range where it was passed. */
  readonly value: number | null;
  readonly pass: boolean;
  /** The instrument's uncertainty spans the limit. */
  readonly tooClose: boolean;
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

/** Every reading that a limit of this action applies to. A test that the instrument refused has no value to judge. */
export function judgeLimits(action: TestAction, papers: Papers, observed: Observed): readonly JudgedLimit[] {
  const readings = observed.samples
    .flatMap((sample) => sample.readings)
    .filter(({ qualifier }) => qualifier !== 'unable');
  return onPapers(action, papers).limits.flatMap((limit) =>
    readings
      .filter((reading) => limit.applies(reading, observed))
      .map((reading) => judgeLimit(limit, reading)),
  );
}

export function judgeLimit(limit: Limit, reading: Reading): JudgedLimit {
  const { value, uncertainty, qualifier } = compared(limit, reading);
  if (value === null) {
    // Beyond the range: above every least value, and never below a greatest one.
    const pass = limit.kind === 'least' && qualifier === '>';
    const end = limit.compares === 'trip time' ? null : (reading.limit ?? null);
    return { limit, reading, value: end, pass, tooClose: false };
  }
  const pass = limit.kind === 'most' ? value <= limit.limit : value >= limit.limit;
  const tooClose = Math.abs(value - limit.limit) < (uncertainty ?? 0);
  return { limit, reading, value, pass, tooClose };
}

/** The part of the reading that the limit is about. A time is shown to the millisecond; nothing tripped is no time. */
function compared(limit: Limit, reading: Reading): Pick<Reading, 'value' | 'uncertainty' | 'qualifier'> {
  if (limit.compares !== 'trip time') return reading;
  const { qualifier } = reading;
  const tripMs = reading.quantity === 'residual' ? (reading.tripMs ?? null) : null;
  return {
    value: tripMs === null ? null : tripMs / 1000,
    uncertainty: TIME_UNCERTAINTY,
    qualifier,
  };
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
