/**
 * Lets a wait on the bench last, where somebody chose that: the wait is carried out when its time is over or skipped,
 * and not before. The log of a wait that was not cut short is the same either way. Time stands still behind another tab
 * and beneath a sheet.
 *
 * What is heard in it is told when its moment comes: the wait is carried out beforehand on a second bench, made by
 * replay. Whoever stops the work meanwhile has waited for as long as was told until then.
 */
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { OperationInput } from '../../bench/operation.ts';
import type { Pace } from '../../store/choices.ts';
import { PACE } from '../../store/choices.ts';
import type { AttemptActor, AttemptState } from './attemptMachine.ts';
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

interface Lasting {
  readonly seconds: number;
  readonly lasts: number;
  /** What comes after it in the same row of acts. */
  readonly after: readonly OperationInput[];
}

export function usePaced(
  state: AttemptState,
  send: Send,
  wall: () => number,
): { readonly send: Send; readonly waiting: Waiting | null } {
  const [wait, setWait] = useState<Lasting | null>(null);
  const [left, setLeft] = useState(0);
  /** Seconds of the bench that have passed of the wait. */
  const passed = useRef(0);
  const told = wait === null ? 0 : wait.seconds - left;
  const now = useRef({ state, send, wall, told });
  now.current = { state, send, wall, told };

  const paced: Send = useCallback((event) => {
    const { state: at, told: waited } = now.current;
    if (event.type === 'stopped' && waited > 0) return now.current.send({ ...event, waited });
    const row = event.type === 'do in a row' ? event.operations : [];
    const atWait = row.findIndex(({ op }) => op === 'wait');
    const waitInRow = row[atWait];
    const seconds =
      waitInRow?.op === 'wait'
        ? waitInRow.seconds
        : event.type === 'lock'
          ? at.context.draft.wait
          : event.type === 'do' && event.operation.op === 'wait'
            ? event.operation.seconds
            : 0;
    const lasts = LASTS[PACE.kept()];
    if (seconds === 0 || lasts === 0) return now.current.send(event);
    passed.current = 0;
    setLeft(Math.ceil(seconds));
    setWait({ seconds, lasts, after: row.slice(atWait + 1) });
    if (event.type === 'do in a row' && atWait > 0)
      now.current.send({ ...event, operations: row.slice(0, atWait) });
    if (event.type === 'lock') now.current.send({ ...event, waitsLater: true });
  }, []);

  const { bench } = state.context;
  const isObserving = state.matches({ working: 'observing' });
  const isOver = !isObserving && !state.matches('stopping');
  const comes = useSliced(
    useMemo(
      () => (wait === null || isOver ? null : () => foreseeing(bench, wait.seconds)),
      [wait, isOver, bench],
    ),
  );
  const finish = useCallback(() => {
    if (wait === null) return;
    setWait(null);
    now.current.send({
      type: 'do',
      operation: { op: 'wait', seconds: wait.seconds },
      wall: now.current.wall(),
    });
    const isRefused = now.current.state.context.bench.happened.at(-1)?.outcome.refused != null;
    if (wait.after.length > 0 && !isRefused)
      paced({ type: 'do in a row', operations: wait.after, wall: now.current.wall() });
  }, [wait, paced]);

  // What was set up came to harm, or the test was left: nobody waits any more. Looked at whenever the flow has gone on:
  // a lock that does harm goes from one such state to another.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the flow's going on is the very occasion
  useEffect(() => {
    if (isOver) setWait(null);
  }, [state, isOver]);
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

  if (wait === null) return { send: paced, waiting: null };
  const from = bench.run.times.at(-1) ?? bench.run.began;
  const heard = (comes.result ?? []).filter(({ at }) => at >= from && at <= from + told);
  return { send: paced, waiting: { seconds: wait.seconds, left, heard, skip: finish } };
}
