/**
 * What a test action says on some papers, worked out once for both: a verification is judged again and again on the same
 * ones, with one thing wrong or another.
 */
import type { Operation } from '../bench/operation.ts';
import type { Advice, Expectation, Limit, Papers, TestAction } from './testAction.ts';
import { written } from './written.ts';

interface OnPapers {
  readonly steps: readonly Operation[];
  readonly expectations: readonly Expectation[];
  readonly limits: readonly Limit[];
  readonly advice: readonly Advice[];
}

/** With the value that whoever set the job puts in its place. */
function asSet({ id }: TestAction, limit: Limit, { own = [] }: Papers): Limit {
  const set = own.find((one) => one.limit === `${id}/${limit.id}`);
  if (set === undefined) return limit;
  const { value, source, why } = set;
  return { ...limit, limit: value, source: { basis: 'tutor', where: source }, own: { value, why } };
}

const known = new WeakMap<Papers, Map<TestAction, OnPapers>>();

export function onPapers(action: TestAction, papers: Papers): OnPapers {
  const ofPapers = known.get(papers) ?? new Map<TestAction, OnPapers>();
  known.set(papers, ofPapers);
  const before = ofPapers.get(action);
  if (before !== undefined) return before;
  const said = {
    steps: action.steps(papers).map(written),
    expectations: action.expectations(papers),
    limits: action.limits(papers).map((limit) => asSet(action, limit, papers)),
    advice: action.advice?.(papers) ?? [],
  };
  ofPapers.set(action, said);
  return said;
}
