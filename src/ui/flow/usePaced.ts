/**
 * Real time for the waits on the bench that last, where somebody chose that: that there is one, and what follows, is the
 * flow's business (attemptMachine.ts). The log of a wait that was not cut short is the same either way. Time stands still
 * behind another tab and beneath a sheet.
 *
 * What is heard in it is told when its moment comes: the wait is carried out beforehand on a second bench, made by
 * replay. Whoever stops the work meanwhile has waited for as long as was told until then.
 */
import { useCallback, useEffect, useMemo, useRef } from 'react';
import type { Pace } from '../../store/choices.ts';
import { PACE } from '../../store/choices.ts';
import type { AttemptActor, AttemptState, Wait } from './attemptMachine.ts';
import type { Bench } from './bench.ts';
import { done, takingUp } from './bench.ts';
import { useSliced } from './useSliced.ts';
import type { Perceived } from './whatIsKnown.ts';
import { perceived } from './whatIsKnown.ts';

/** Seconds that one second of the bench takes. */
const LASTS: Readonly<Record<Pace, number>> = { 'at once': 0, 'as it lasts': 1, 'with extra time': 2 };
/** How often it is looked whether the time is over, ms; no more than a person notices. */
const LOOK_EVERY = 200;

export interface Waiting {
  /** Of the bench. */
  readonly seconds: number;
  /** Of the bench, rounded up. */
  readonly left: number;
  /** What was heard in it up to now; what is seen and felt is told at its end. */
  readonly heard: readonly Perceived[];
  readonly skip: () => void;
}

/** What a wait would bring, on a bench of its own: the one in hand stays as it is. */
function* foreseeing({ run }: Bench, seconds: number): Generator<null, readonly Perceived[]> {
  const second = yield* takingUp(run.scenario, run.attempt);
  return perceived(done(second, null, { op: 'wait', seconds }, 0).happened, second.happened.length);
}

type Send = AttemptActor['send'];

/** Acts of which a wait lasts, where somebody chose that. */
type Paced = Extract<Parameters<Send>[0], { pace?: number }>;
const isPaced = (event: Parameters<Send>[0]): event is Paced =>
  event.type === 'lock' || event.type === 'do' || event.type === 'do in a row';

const paceNow = (): { readonly pace?: number } => {
  const pace = LASTS[PACE.kept()];
  return pace === 0 ? {} : { pace };
};

export function usePaced(
  state: AttemptState,
  send: Send,
  wall: () => number,
): { readonly send: Send; readonly waiting: Waiting | null } {
  const { bench, wait, left } = state.context;
  const paced: Send = useCallback(
    (event) => send(isPaced(event) ? { ...event, ...paceNow() } : event),
    [send],
  );
  const skip = useCallback(() => send({ type: 'waited', wall: wall(), ...paceNow() }), [send, wall]);
  const comes = useSliced(
    useMemo(() => (wait === null ? null : () => foreseeing(bench, wait.seconds)), [wait, bench]),
  );
  usePassing(wait, state.matches({ working: { observing: 'waiting' } }), send, skip);

  if (wait === null) return { send: paced, waiting: null };
  const from = bench.run.times.at(-1) ?? bench.run.began;
  const heard = (comes.result ?? []).filter(({ at }) => at >= from && at <= from + wait.seconds - left);
  return { send: paced, waiting: { seconds: wait.seconds, left, heard, skip } };
}

/** Tells the flow how much of a wait is left, and when it is over. */
function usePassing(wait: Wait | null, isWaiting: boolean, send: Send, end: () => void): void {
  /** Seconds of the bench that have passed of this wait; a sheet over it takes nothing away. */
  const passed = useRef({ of: wait, seconds: 0 });
  if (passed.current.of !== wait) passed.current = { of: wait, seconds: 0 };
  useEffect(() => {
    if (wait === null || !isWaiting) return;
    let last = performance.now();
    let left = Math.ceil(wait.seconds - passed.current.seconds);
    const look = () => {
      const at = performance.now();
      if (document.visibilityState === 'visible') passed.current.seconds += (at - last) / 1000 / wait.pace;
      last = at;
      const now = Math.ceil(wait.seconds - passed.current.seconds);
      if (now <= 0) end();
      else if (now !== left) send({ type: 'pass', left: now });
      left = now;
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
  }, [wait, isWaiting, send, end]);
}
