/**
 * What failed beside the drawing of screens: in a press, while something was loaded or worked out, or a style sheet that
 * did not come. Without it a press would do nothing and nobody would know why.
 */
import { useCallback, useEffect, useState } from 'react';
import { NotLoaded } from './loading.ts';

export interface Failure {
  readonly error: unknown;
}

export function useFailure() {
  const [failure, setFailure] = useState<Failure | null>(null);
  const fail = useCallback((error: unknown) => setFailure({ error }), []);
  const forget = useCallback(() => setFailure(null), []);
  useEffect(() => {
    const over = new AbortController();
    const { signal } = over;
    // What a browser reports without an error object is its own affair, or of a script from elsewhere.
    const onError = ({ error }: ErrorEvent) => {
      if (error instanceof Error) fail(error);
    };
    const onRejection = ({ reason }: PromiseRejectionEvent) => fail(reason);
    addEventListener('error', onError, { signal });
    addEventListener('unhandledrejection', onRejection, { signal });
    const lookForStyles = () => {
      const paper = getComputedStyle(document.documentElement).getPropertyValue('--paper');
      if (paper === '') fail(new NotLoaded('the style sheet'));
    };
    if (document.readyState === 'complete') lookForStyles();
    else addEventListener('load', lookForStyles, { once: true, signal });
    return () => over.abort();
  }, [fail]);
  return { failure, fail, forget };
}
