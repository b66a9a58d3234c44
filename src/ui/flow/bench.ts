/**
 * An attempt as the screens hold it: the run, and for each operation what came of it. Pure steps from one to the
 * next; also where a kept attempt stands when it is taken up again.
 */
import type { Attempt, Entry, Noted } from '../../attempt/attempt.ts';
import type { Run } from '../../attempt/run.ts';
import { act, note, startRun } from '../../attempt/run.ts';
import type { Operation, OperationInput } from '../../bench/operation.ts';
import { operation } from '../../bench/operation.ts';
import type { Outcome } from '../../bench/perform.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { papersOf } from '../../scenario/scenario.ts';
import type { Position } from './position.ts';
import { positionAfter, positionAtStart } from './position.ts';

export interface Happened {
  /** Place in the attempt's log. */
  readonly entry: number;
  readonly test: string | null;
  readonly at: number;
  readonly operation: Operation;
  readonly outcome: Outcome;
}

export interface Bench {
  readonly run: Run;
  readonly happened: readonly Happened[];
  readonly position: Position;
}

/** What a person writes down, before the log gives it its time and its place in the chain. */
export type Note = Exclude<Noted, { kind: 'operation' }>;

/** A new attempt, by whom and on which rung. */
export function newBench(
  scenario: Scenario,
  file: unknown,
  { trainee, rung }: Pick<Attempt, 'trainee' | 'rung'> = {},
): Bench {
  const run = startRun(scenario, file, {
    ...(trainee === undefined ? {} : { trainee }),
    ...(rung === undefined ? {} : { rung }),
  });
  const before = run.handedOver?.steps ?? [];
  const position = before.reduce(
    (at, { sample, outcome }) => positionAfter(at, sample.operation, isRefused(outcome)),
    positionAtStart(papersOf(scenario).sheet),
  );
  return { run, happened: [], position };
}

const isRefused = ({ refused, readings }: Outcome): boolean =>
  refused !== null || readings.some(({ qualifier }) => qualifier === 'unable');

export function done(bench: Bench, test: string | null, input: OperationInput, wall: number): Bench {
  const what = operation(input);
  const { run, outcome } = act(bench.run, test, what, wall);
  const entry = run.attempt.entries.length - 1;
  return {
    run,
    happened: [...bench.happened, { entry, test, at: outcome.seen.at, operation: what, outcome }],
    position: positionAfter(bench.position, what, isRefused(outcome)),
  };
}

export const noted = (bench: Bench, entry: Note, wall: number): Bench => ({
  ...bench,
  run: note(bench.run, entry, wall),
});

/**
 * The same attempt once more: what came of each operation is worked out anew. The log itself stays as it was
 * written, so that a chain broken by somebody stays broken.
 */
export function takenUp(scenario: Scenario, attempt: Attempt): Bench {
  let bench = newBench(scenario, attempt.scenario);
  for (const entry of attempt.entries)
    bench =
      entry.kind === 'operation'
        ? done(bench, entry.test, entry.operation, entry.wall)
        : noted(bench, entry, entry.wall);
  return { ...bench, run: { ...bench.run, attempt } };
}

export type Standing =
  | { readonly at: 'choosing' }
  | { readonly at: 'observing'; readonly test: string; readonly since: number }
  | { readonly at: 'concluding' }
  | { readonly at: 'debrief' };

/** Where the attempt was left. A test that was locked and not yet judged is still open. */
export function standingOf({ entries }: Attempt): Standing {
  if (entries.some(({ kind }) => kind === 'conclusion')) return { at: 'debrief' };
  if (hasStopped(entries)) return { at: 'concluding' };
  const since = entries.findLastIndex(({ kind }) => kind === 'prediction');
  const prediction = entries[since];
  if (prediction?.kind !== 'prediction') return { at: 'choosing' };
  const judged = entries.slice(since).some(({ kind }) => kind === 'judgement');
  return judged ? { at: 'choosing' } : { at: 'observing', test: prediction.test, since };
}

export const hasStopped = (entries: readonly Entry[]): boolean =>
  entries.some((entry) => entry.kind === 'operation' && entry.operation.op === 'stop');
