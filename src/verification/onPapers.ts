/**
 * What a test action says on some papers, worked out once for both: a verification is judged again and again on the same
 * ones, with one thing wrong or another.
 */
import type { Operation } from '../bench/operation.ts';
import type { Advice, Expectation, Limit, Papers, TestAction } from './testAction.ts';
import { written } from './written.ts';

function onceOnPapers<T>(say: (action: TestAction, papers: Papers) => T) {
  const known = new WeakMap<Papers, Map<TestAction, T>>();
  return (action: TestAction, papers: Papers): T => {
    const ofPapers = known.get(papers) ?? new Map<TestAction, T>();
    known.set(papers, ofPapers);
    const said = ofPapers.get(action) ?? say(action, papers);
    ofPapers.set(action, said);
    return said;
  };
}

/** How it is done. */
export const stepsOn = onceOnPapers((action, papers): readonly Operation[] =>
  action.steps(papers).map(written),
);

/** What a correct unit gives, to be said beforehand. */
export const figuresOn = onceOnPapers((action, papers) => action.figures(papers));

interface OnPapers {
  readonly expectations: readonly Expectation[];
  readonly expectationById: ReadonlyMap<string, Expectation>;
  readonly limits: readonly Limit[];
  readonly advice: readonly Advice[];
}

/** What it ought to show. */
export const onPapers = onceOnPapers((action, papers): OnPapers => {
  const expectations = action.expectations(papers);
  return {
    expectations,
    expectationById: new Map(expectations.map((one) => [one.id, one])),
    limits: action.limits(papers).map((limit) => asSet(action, limit, papers)),
    advice: action.advice?.(papers) ?? [],
  };
});

/** With the value that whoever set the job puts in its place. */
function asSet({ id }: TestAction, limit: Limit, { own = [] }: Papers): Limit {
  const set = own.find((one) => one.limit === `${id}/${limit.id}`);
  if (set === undefined) return limit;
  const { value, source, why } = set;
  return { ...limit, limit: value, source: { basis: 'tutor', where: source }, own: { value, why } };
}
