/**
 * An attempt as the screens hold it: the run, and for each operation what came of it. Pure steps from one to the
 * next; also where a kept attempt stands when it is taken up again.
 */
import type { Attempt, Entry, Noted } from '../../attempt/record/attempt.ts';
import type { Run } from '../../attempt/record/run.ts';
import { act, note, replaying, startingRun } from '../../attempt/record/run.ts';
import type { Operation, OperationInput } from '../../bench/operation.ts';
import { operation } from '../../bench/operation.ts';
import type { Outcome } from '../../bench/perform.ts';
import { toItsEnd } from '../../bench/toItsEnd.ts';
import type { Scenario } from '../../scenario/scenario.ts';
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

type Labels = Pick<Attempt, 'trainee' | 'rung' | 'word' | 'given'>;

/** A new attempt, by whom and on which rung. */
export const newBench = (scenario: Scenario, file: unknown, labels: Labels = {}): Bench =>
  toItsEnd(makingBench(scenario, file, labels));

/** The same in pieces, one an operation that was done before. */
export function* makingBench(
  scenario: Scenario,
  file: unknown,
  { trainee, rung, word, given }: Labels = {},
): Generator<null, Bench> {
  const run = yield* startingRun(scenario, file, {
    ...(trainee === undefined ? {} : { trainee }),
    ...(rung === undefined ? {} : { rung }),
    ...(word === undefined ? {} : { word }),
    ...(given === undefined ? {} : { given }),
  });
  return { run, happened: [], position: positionAsFound(run) };
}

/** As the bench was found or handed over. */
const positionAsFound = ({ handedOver, papers }: Run): Position =>
  (handedOver?.steps ?? []).reduce(
    (at, { sample, outcome }) => positionAfter(at, sample.operation, isRefused(outcome)),
    positionAtStart(papers.sheet),
  );

/** How everything stood before each of its operations. */
export function positionsBefore({ run, happened }: Bench): readonly Position[] {
  let stands = positionAsFound(run);
  return happened.map(({ operation: what, outcome }) => {
    const before = stands;
    stands = positionAfter(stands, what, isRefused(outcome));
    return before;
  });
}

/** What was done and set up to one of its operations; what was written down is that of the whole. */
export function upTo(bench: Bench, count: number): Bench {
  const happened = bench.happened.slice(0, count);
  const position = happened.reduce(
    (at, { operation: what, outcome }) => positionAfter(at, what, isRefused(outcome)),
    positionAsFound(bench.run),
  );
  return { ...bench, happened, position };
}

const isRefused = ({ refused, readings }: Outcome): boolean =>
  refused !== null || readings.some(({ qualifier }) => qualifier === 'unable');

export function done(bench: Bench, test: string | null, input: OperationInput, wall: number): Bench {
  const what = operation(input);
  const { run, outcome } = act(bench.run, test, what, wall);
  return happening(bench, run, { test, operation: what, outcome });
}

/** After an operation that is the last of the run. */
const happening = (
  bench: Bench,
  run: Run,
  { test, operation: what, outcome }: Pick<Happened, 'test' | 'operation' | 'outcome'>,
): Bench => ({
  run,
  happened: [
    ...bench.happened,
    { entry: run.times.length - 1, test, at: outcome.seen.at, operation: what, outcome },
  ],
  position: positionAfter(bench.position, what, isRefused(outcome)),
});

export const noted = (bench: Bench, entry: Note, wall: number): Bench => ({
  ...bench,
  run: note(bench.run, entry, wall),
});

/**
 * The same attempt once more: what came of each operation is worked out anew. The log itself stays as it was
 * written, so that a chain broken by somebody stays broken.
 */
export const takenUp = (scenario: Scenario, attempt: Attempt): Bench => toItsEnd(takingUp(scenario, attempt));

/** The same in pieces, one an entry. */
export function* takingUp(scenario: Scenario, attempt: Attempt): Generator<null, Bench> {
  const happened: Happened[] = [];
  const run = yield* replaying(scenario, attempt, undefined, (again) =>
    happened.push({ ...again, at: again.outcome.seen.at }),
  );
  return upTo({ run, happened, position: positionAsFound(run) }, happened.length);
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
