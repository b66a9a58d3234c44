/**
 * The four steps of one test as a dimension line: done carries ✓, the one that is open is the heavy stretch.
 */
export const STEPS = ['Set up', 'Predict', 'Measure', 'Judge'] as const;
export type Step = (typeof STEPS)[number];

/** None open: all are done. */
export function Steps({ open }: { readonly open: Step | null }) {
  const place = open === null ? -1 : STEPS.indexOf(open);
  return (
    <ol className="steps" aria-label="Steps of this test">
      {STEPS.map((step, i) => {
        const isOpen = step === open;
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
