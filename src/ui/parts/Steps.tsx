/**
 * The four steps of one test as a dimension line: done carries ✓, what is open is the heavy stretch. Two are open at a
 * time: set up and predict until the lock, observe and judge after it.
 */
export const STEPS = ['Set up', 'Predict', 'Observe', 'Judge'] as const;
export type Step = (typeof STEPS)[number];

/** None open: all are done. */
export function Steps({ open }: { readonly open: readonly Step[] }) {
  const place = STEPS.findIndex((step) => open.includes(step));
  return (
    <ol className="steps" aria-label="Steps of this test">
      {STEPS.map((step, i) => {
        const isOpen = open.includes(step);
        const isDone = !isOpen && (place < 0 || i < place);
        return (
          <li
            key={step}
            className={isDone ? 'done' : isOpen ? 'open' : ''}
            aria-current={isOpen ? 'step' : undefined}
          >
            {step}
            {isDone ? ' ✓' : ''}
            {isDone ? <span className="unseen"> done</span> : null}
            <span className="end" />
          </li>
        );
      })}
    </ol>
  );
}
