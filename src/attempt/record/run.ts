/**
 * An attempt in progress, and its replay: the bench that its operations have led to, and everything read, seen and
 * unsafe on the way. A screen shows this and hands in operations and notes; it keeps nothing of its own.
 */

import type { Operation } from '../../bench/operation.ts';
import type { Outcome, Seen } from '../../bench/perform.ts';
import { look } from '../../bench/perform.ts';
import type { Reading } from '../../bench/reading.ts';
import { toItsEnd } from '../../bench/toItsEnd.ts';
import type { UnsafeAct } from '../../bench/unsafe.ts';
import type { World } from '../../bench/world.ts';
import type { FaultChoice } from '../../faults/catalogue.ts';
import type { Seconds } from '../../laws/quantities.ts';
import { seconds } from '../../laws/quantities.ts';
import type { HandedOver } from '../../scenario/handover.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { beginning, papersOf } from '../../scenario/scenario.ts';
import type { Sample } from '../../verification/observed.ts';
import { observe } from '../../verification/observed.ts';
import type { Papers } from '../../verification/testAction.ts';
import type { Attempt, Entry, EntryOf, Noted } from './attempt.ts';
import { appended, ENGINE, FORMAT } from './attempt.ts';

export interface Taken {
  readonly reading: Reading;
  /** The test in which it was taken, or null between tests. */
  readonly test: string | null;
  /** Index of the operation's entry in the log. */
  readonly entry: number;
}

export interface Run {
  readonly scenario: Scenario;
  readonly papers: Papers;
  readonly attempt: Attempt;
  /** Changed by act() alone; a Run shares it with the Run that it came from. */
  readonly world: World;
  /** Bench time at which the attempt began, s: what was handed over took its own. */
  readonly began: Seconds;
  /** What was done before the attempt, with its sheet. */
  readonly handedOver: HandedOver | null;
  readonly samples: readonly {
    readonly test: string | null;
    readonly entry: number;
    readonly sample: Sample;
  }[];
  readonly readings: readonly Taken[];
  readonly unsafe: readonly (UnsafeAct & { readonly entry: number })[];
  /** What was put right, by the index of its entry; what the bench refused is not among them. */
  readonly repairs: readonly { readonly entry: number; readonly what: string }[];
  readonly seen: Seen;
  /** Bench time of each entry, recomputed. */
  readonly times: readonly number[];
}

type Labels = Pick<Attempt, 'trainee' | 'word' | 'rung' | 'given'>;

/** A new attempt. `file` is the scenario file's own object, kept whole in the attempt. */
export const startRun = (scenario: Scenario, file: unknown, labels: Labels = {}): Run =>
  toItsEnd(startingRun(scenario, file, labels));

/** The same in pieces, one an operation that was done before. */
export const startingRun = (scenario: Scenario, file: unknown, labels: Labels = {}): Generator<null, Run> =>
  bareRun(scenario, { format: FORMAT, engine: ENGINE, scenario: file, ...labels, entries: [] });

function* bareRun(
  scenario: Scenario,
  attempt: Attempt,
  faults?: readonly FaultChoice[],
): Generator<null, Run> {
  const { world, handedOver } = yield* beginning(scenario, faults);
  return {
    scenario,
    papers: papersOf(scenario),
    attempt: { ...attempt, entries: [] },
    world,
    began: seconds(world.timeline.now),
    handedOver,
    samples: [],
    readings: [],
    unsafe: [],
    repairs: [],
    seen: look(world),
    times: [],
  };
}

/** The same attempt again, from its log alone; with other faults, what the same actions would have met. */
export const replay = (scenario: Scenario, attempt: Attempt, faults?: readonly FaultChoice[]): Run =>
  toItsEnd(replaying(scenario, attempt, faults));

/** An operation of a log, and what came of it when it was done again. */
export interface Again {
  /** Index of its entry. */
  readonly entry: number;
  readonly test: string | null;
  readonly operation: Operation;
  readonly outcome: Outcome;
}

/** The same in pieces, one an entry; `told` hears of each operation. The log is not written a second time. */
export function* replaying(
  scenario: Scenario,
  attempt: Attempt,
  faults?: readonly FaultChoice[],
  told?: (again: Again) => void,
): Generator<null, Run> {
  const bare = yield* bareRun(scenario, attempt, faults);
  const grown: Grown = { samples: [], readings: [], unsafe: [], repairs: [] };
  const times: number[] = [];
  let { seen } = bare;
  for (const [entry, one] of attempt.entries.entries()) {
    yield null;
    if (one.kind === 'operation') {
      const { test, operation } = one;
      const outcome = performed(bare.world, grown, test, operation, entry);
      seen = outcome.seen;
      told?.({ entry, test, operation, outcome });
    }
    times.push(timeOf(bare));
  }
  return { ...bare, ...grown, seen, times, attempt };
}

const timeOf = ({ world }: Run): number => seconds(world.timeline.now);

/** Does an operation at the bench and logs it. */
export function act(
  run: Run,
  test: string | null,
  operation: Operation,
  wall: number,
): { readonly run: Run; readonly outcome: Outcome } {
  const { samples, readings, unsafe, repairs } = run;
  const grown = {
    samples: [...samples],
    readings: [...readings],
    unsafe: [...unsafe],
    repairs: [...repairs],
  };
  const outcome = performed(run.world, grown, test, operation, run.attempt.entries.length);
  const done = { ...run, ...grown, seen: outcome.seen };
  return { run: logged(done, { kind: 'operation', test, operation }, wall), outcome };
}

/** Logs anything that is not an operation: what was predicted, typed, judged, left out, concluded. */
export const note = (run: Run, entry: Exclude<Noted, { kind: 'operation' }>, wall: number): Run =>
  logged(run, entry, wall);

function logged(run: Run, entry: Noted, wall: number): Run {
  const at = timeOf(run);
  return { ...run, attempt: appended(run.attempt, entry, at, wall), times: [...run.times, at] };
}

/** What a run grows by. In a replay it grows in place: nobody has it before it is whole. */
type Grown = {
  readonly [List in 'samples' | 'readings' | 'unsafe' | 'repairs']: Run[List][number][];
};

function performed(
  world: World,
  grown: Grown,
  test: string | null,
  operation: Operation,
  entry: number,
): Outcome {
  const { outcome, sample } = observe(world, operation);
  grown.samples.push({ test, entry, sample });
  for (const reading of outcome.readings) grown.readings.push({ reading, test, entry });
  for (const one of outcome.unsafe) grown.unsafe.push({ ...one, entry });
  if (operation.op === 'put-right' && outcome.refused === null)
    grown.repairs.push({ entry, what: operation.what });
  return outcome;
}

/** The last entry of a kind about a test, or the first. */
export function entriesAbout<K extends Entry['kind']>(
  attempt: Attempt,
  kind: K,
  test?: string,
): readonly EntryOf<K>[] {
  const found = attempt.entries.filter(
    (entry) => entry.kind === kind && (test === undefined || ('test' in entry && entry.test === test)),
  );
  return found as unknown as readonly EntryOf<K>[];
}
