/**
 * One step on one screen: what it is about, and below it the bar, always at the same place under the thumb. A list that
 * is too long scrolls in itself; page and bar stay where they are.
 */
import type { FormEvent, KeyboardEvent, ReactNode } from 'react';

interface Props {
  readonly children: ReactNode;
  readonly bar: ReactNode;
  /** Where the step is a form: its name, and what sending it does. */
  readonly form?: { readonly label: string; readonly onSubmit: () => void };
  /** Where it is read alone, with nothing to press on the way: what it is called, so that keys can scroll it. */
  readonly reads?: string;
  readonly onKeyDown?: (event: KeyboardEvent) => void;
}

export function StepFrame({ children, bar, form, reads, onKeyDown }: Props) {
  const inner = (
    <>
      {reads === undefined ? (
        <div className="step-body stack">{children}</div>
      ) : (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls in itself is reached by keys
        <section className="step-body stack" aria-label={reads} tabIndex={0}>
          {children}
        </section>
      )}
      <div className="bar">{bar}</div>
    </>
  );
  if (form === undefined)
    return (
      // biome-ignore lint/a11y/noStaticElementInteractions: a shortcut beside the buttons, active only with the focus inside
      <div className="step-frame" onKeyDown={onKeyDown}>
        {inner}
      </div>
    );
  const submit = (event: FormEvent) => {
    event.preventDefault();
    form.onSubmit();
  };
  return (
    <form className="step-frame" onSubmit={submit} noValidate aria-label={form.label}>
      {inner}
    </form>
  );
}
