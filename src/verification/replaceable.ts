/** What of a job whoever sets it may replace: limits, and figures that lines state. */
import { onPapers } from './onPapers.ts';
import type { Expectation, Limit, Papers, StatedFigure, TestAction } from './testAction.ts';

/** A limit, or one end of what a line states, that whoever set the job may replace. */
export type Replaceable = { readonly name: string; readonly test: string } & (
  | { readonly limit: Limit }
  | { readonly line: Expectation; readonly figure: StatedFigure }
);

/** Those of a test, under the names that `own` has them by; a limit of several readings may stand there for each. */
export function replaceableIn(action: TestAction, papers: Papers): readonly Replaceable[] {
  const { limits, expectations } = onPapers(action, papers);
  const test = action.id;
  return [
    ...limits.map((limit) => ({ name: `${test}/${limit.id}`, test, limit })),
    ...expectations.flatMap((line) =>
      (line.states ?? []).map((figure) => ({ name: `${test}/${figure.id}`, test, line, figure })),
    ),
  ];
}

/** Which way a stated figure bounds. */
export const kindOf = ({ id }: StatedFigure): Limit['kind'] => (id.endsWith('-least') ? 'least' : 'most');

/** What is in force of it. */
export const inForce = ({ values = {} }: Expectation, { id, usual }: StatedFigure): number =>
  Number(values[id] ?? usual);
