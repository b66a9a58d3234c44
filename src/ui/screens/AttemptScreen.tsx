/**
 * One attempt from its first test to its debrief: holds the flow machine, keeps the log on the device after every
 * change, and shows the screen that belongs to where the attempt is.
 */
import { useMachine } from '@xstate/react';
import { useEffect, useRef, useState } from 'react';
import { makeAttemptText } from '../../attempt/file.ts';
import { keepAttempt } from '../../store/keptAttempt.ts';
import { attemptMachine } from '../flow/attemptMachine.ts';
import type { Bench } from '../flow/bench.ts';
import { BenchScreen } from './bench/BenchScreen.tsx';
import { Conclude } from './conclude/Conclude.tsx';
import { Debrief } from './debrief/Debrief.tsx';

interface Props {
  readonly bench: Bench;
  readonly onAgain: (bench: Bench) => void;
  /** Tells whoever offers to go on with it how far it is. */
  readonly onChange: (bench: Bench) => void;
}

export function AttemptScreen({ bench, onAgain, onChange }: Props) {
  const [state, send] = useMachine(attemptMachine, { input: { bench } });
  const { attempt } = state.context.bench.run;
  const wall = useWall(bench.run.attempt.entries.at(-1)?.wall ?? 0);
  const keepFailed = useKeeping(makeAttemptText, attempt);
  useEffect(() => onChange(state.context.bench), [state.context.bench, onChange]);
  if (state.matches('debrief'))
    return <Debrief bench={state.context.bench} keepFailed={keepFailed} onAgain={onAgain} />;
  if (state.matches('concluding'))
    return <Conclude bench={state.context.bench} send={send} wall={wall} keepFailed={keepFailed} />;
  return <BenchScreen state={state} send={send} wall={wall} keepFailed={keepFailed} />;
}

/** Milliseconds of thinking since the attempt began; what was thought before a reload counts on. */
function useWall(before: number): () => number {
  const began = useRef(performance.now() - before);
  return () => Math.round(performance.now() - began.current);
}

/** Keeps every change; true while the last one could not be kept. */
function useKeeping<T>(textOf: (value: T) => string, value: T): boolean {
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    keepAttempt(textOf(value)).then(
      () => setFailed(false),
      () => setFailed(true),
    );
  }, [textOf, value]);
  return failed;
}
