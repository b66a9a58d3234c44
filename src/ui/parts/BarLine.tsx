/** The line above a bar's buttons: a note, or in its place why the last press came to nothing. */
import type { ReactNode } from 'react';

interface Props {
  /** `id`: for the field that it is said of. */
  readonly refused: { readonly what: string; readonly why: string; readonly id?: string } | null;
  readonly children: ReactNode;
}

export function BarLine({ refused, children }: Props) {
  return refused === null ? (
    <p className="bar-line note">{children}</p>
  ) : (
    <p className="bar-line error" id={refused.id} role="alert">
      <strong>{refused.what}</strong>
      {refused.why}
    </p>
  );
}
