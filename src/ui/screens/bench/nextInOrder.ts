/** Which test comes next where they are done in the usual order. */
import type { TestAction } from '../../../verification/testAction.ts';
import type { Bench } from '../../flow/bench.ts';

/** The first that was not begun after the last one begun; else the first never begun. It looks at what was done alone. */
export function nextInOrder(bench: Bench, actions: readonly TestAction[]): string | null {
  const begun = bench.run.attempt.entries.flatMap((entry) =>
    entry.kind === 'prediction' ? [entry.test] : [],
  );
  const open = actions.filter(({ id }) => !begun.includes(id));
  const last = actions.findIndex(({ id }) => id === begun.at(-1));
  return (open.find((action) => actions.indexOf(action) > last) ?? open[0])?.id ?? null;
}
