/**
 * The browser's *back* goes one step back within an attempt, and only from its first step to the page before. For that
 * one entry of the history stands above the attempt's own as long as there is a step to go back to; it is taken away by
 * *back*, and set up again where there is one more.
 */
import { useEffect, useLayoutEffect, useRef } from 'react';
import type { AttemptActor, AttemptState } from './attemptMachine.ts';
import { stepBack } from './stepBack.ts';

/** What marks that entry. */
const STEP = 'step of an attempt';

const isStep = (): boolean => (history.state as { readonly at?: unknown } | null)?.at === STEP;

export function useBrowserBack(state: AttemptState, send: AttemptActor['send']): void {
  const latest = useRef({ state, send });
  latest.current = { state, send };
  // With the picture: whoever sees the step can go back from it.
  useLayoutEffect(() => {
    if (stepBack(state) !== null && !isStep()) history.pushState({ at: STEP }, '');
  }, [state]);
  useEffect(() => {
    const own = location.hash;
    const onBack = () => {
      if (location.hash !== own || isStep()) return;
      const event = stepBack(latest.current.state);
      if (event === null) history.back();
      else latest.current.send(event);
    };
    addEventListener('popstate', onBack);
    return () => removeEventListener('popstate', onBack);
  }, []);
}
