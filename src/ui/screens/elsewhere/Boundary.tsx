/** Keeps a failure to the screen in which it happened: what fails while it is drawn, or is not loaded, is told in its place. */
import type { ReactNode } from 'react';
import { Component } from 'react';
import type { OpenAttempt } from '../../flow/useOpenAttempt.ts';
import { Failed } from './Failed.tsx';

interface Props {
  /** The screen within, as the beginning of a sentence. */
  readonly what: string;
  readonly openAttempt: OpenAttempt | null;
  /** Whether there are other screens to go to. */
  readonly hasOthers: boolean;
  readonly children: ReactNode;
}

interface State {
  readonly failed: { readonly error: unknown } | null;
}

/** With another `key` it begins anew. */
export class Boundary extends Component<Props, State> {
  override state: State = { failed: null };

  static getDerivedStateFromError(error: unknown): State {
    return { failed: { error } };
  }

  override render(): ReactNode {
    const { failed } = this.state;
    const { what, openAttempt, hasOthers, children } = this.props;
    return failed === null ? (
      children
    ) : (
      <Failed error={failed.error} what={what} openAttempt={openAttempt} hasOthers={hasOthers} />
    );
  }
}
