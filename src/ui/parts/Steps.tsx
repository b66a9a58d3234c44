/** The four steps of one test as a dimension line: done carries ✓, the open one is the heavy stretch. */
export const STEPS = ['Set up', 'Predict', 'Observe', 'Judge'] as const;
export type Step = (typeof STEPS)[number];

export function Steps({ open, allDone = false }: { readonly open: Step; readonly allDone?: boolean }) {
  const place = STEPS.indexOf(open);
  return (
    <ol className="steps" aria-label="Steps of this test">
      {STEPS.map((step, i) => {
        const isDone = allDone || i < place;
        const isOpen = !allDone && i === place;
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
