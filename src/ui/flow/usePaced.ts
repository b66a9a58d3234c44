/**
 * Lets a wait on the bench last, where somebody chose that: the wait is carried out when its time is over or skipped,
 * and not before. The log is the same either way. Time stands still behind another tab and beneath a sheet.
 */
import { useCallback, useEffect, useRef, useState } from 'react';
import type { Pace } from '../../store/choices.ts';
import { PACE } from '../../store/choices.ts';
import type { AttemptActor, AttemptState } from './attemptMachine.ts';

/** Seconds that one second of the bench takes. */
const LASTS: Readonly<Record<Pace, number>> = { 'at once': 0, 'as it lasts': 1, 'with extra time': 2 };
/** How often it is looked whether the time is over, ms; no more than a person notices. */
const LOOK_EVERY = 200;

export interface Waiting {
  /** Of the bench. */
  readonly seconds: number;
  /** Of the bench, rounded up. */
  readonly left: number;
  readonly skip: () => void;
}

type Send = AttemptActor['send'];

export function usePaced(
  state: AttemptState,
  send: Send,
  wall: () => number,
): { readonly send: Send; readonly waiting: Waiting | null } {
  const [wait, setWait] = useState<{ readonly seconds: number; readonly lasts: number } | null>(null);
  const [left, setLeft] = useState(0);
  const now = useRef({ state, send, wall });
  now.current = { state, send, wall };

  const paced: Send = useCallback((event) => {
    const { context } = now.current.state;
    const seconds =
      event.type === 'lock'
        ? context.draft.wait
        : event.type === 'do' && event.operation.op === 'wait'
          ? event.operation.seconds
          : 0;
    const lasts = LASTS[PACE.kept()];
    if (seconds === 0 || lasts === 0) return now.current.send(event);
    setLeft(Math.ceil(seconds));
    setWait({ seconds, lasts });
    if (event.type === 'lock') now.current.send({ ...event, waitsLater: true });
  }, []);

  const isObserving = state.matches({ working: 'observing' });
  const isOver = !isObserving && !state.matches('stopping');
  const finish = useCallback(() => {
    if (wait === null) return;
    setWait(null);
    now.current.send({
      type: 'do',
      operation: { op: 'wait', seconds: wait.seconds },
      wall: now.current.wall(),
    });
  }, [wait]);

  // What was set up came to harm, or the test was left: nobody waits any more.
  useEffect(() => {
    if (isOver) setWait(null);
  }, [isOver]);
  const passed = useRef(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another wait begins at nought
  useEffect(() => {
    passed.current = 0;
  }, [wait]);
  useEffect(() => {
    if (wait === null || !isObserving) return;
    let last = performance.now();
    const look = () => {
      const at = performance.now();
      if (document.visibilityState === 'visible') passed.current += (at - last) / 1000 / wait.lasts;
      last = at;
      if (passed.current >= wait.seconds) finish();
      else setLeft(Math.ceil(wait.seconds - passed.current));
    };
    const resume = () => {
      last = performance.now();
    };
    document.addEventListener('visibilitychange', resume);
    const timer = setInterval(look, LOOK_EVERY);
    return () => {
      document.removeEventListener('visibilitychange', resume);
      clearInterval(timer);
    };
  }, [wait, isObserving, finish]);

  return { send: paced, waiting: wait === null ? null : { seconds: wait.seconds, left, skip: finish } };
}
