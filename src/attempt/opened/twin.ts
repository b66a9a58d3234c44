/**
 * The correct twin: the same log acted out on the same scenario with nothing wrong, operation by operation beside the
 * unit itself. Not-faults stay, since they are in the papers. What differs between the two is told in differences.ts.
 */
import type { Operation } from '../../bench/operation.ts';

import { perform } from '../../bench/perform.ts';
import { LIVE } from '../../bench/port.ts';
import type { Reading, Truth } from '../../bench/reading.ts';
import { toItsEnd, within } from '../../bench/toItsEnd.ts';
import type { World } from '../../bench/world.ts';
import type { Parts } from '../../faults/parts.ts';
import type { Seconds, Volts } from '../../laws/quantities.ts';
import { seconds } from '../../laws/quantities.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { beginning } from '../../scenario/scenario.ts';
import { livesOf } from '../../site/site.ts';
import type { Attempt } from '../record/attempt.ts';
import { endOf } from '../record/untimely.ts';
import type { Look, Moment } from './moment.ts';
import { lookInside } from './moment.ts';
import type { Solved } from './potentials.ts';
import { detectorVolts, solvedNow } from './potentials.ts';

export const SIDES = ['unit', 'twin'] as const;
export type Side = (typeof SIDES)[number];

export interface Step {
  /** Index of the operation's entry in the log; null for the bench as it was found. */
  readonly entry: number | null;
  readonly test: string | null;
  readonly operation: Operation | null;
  readonly unit: Moment;
  readonly twin: Moment;
}

/** The greatest voltage from a live conductor to PE at the outlet, as a detector meets it, from a moment on. */
export interface Level {
  readonly at: Seconds;
  readonly volts: Volts;
  readonly live: boolean;
}

export interface Lockstep {
  readonly scenario: Scenario;
  readonly attempt: Attempt;
  /** The first is the bench as it was found. */
  readonly steps: readonly Step[];
  /** Over each side's own bench time; the last level stands to the end. */
  readonly levels: Readonly<Record<Side, readonly Level[]>>;
  /** What each side's installation was made of at each step: it changes only where something is put right. */
  readonly installations: Readonly<Record<Side, readonly Parts[]>>;
}

export interface Progress {
  readonly done: number;
  readonly of: number;
}

/** The whole log on both sides. */
export const lockstep = (scenario: Scenario, attempt: Attempt): Lockstep =>
  toItsEnd(followingLog(scenario, attempt));

/** The same in small pieces of work, an operation each, so that a page can go on meanwhile. */
export function* followingLog(scenario: Scenario, attempt: Attempt): Generator<Progress, Lockstep> {
  const operations = attempt.entries
    .slice(0, endOf(attempt))
    .flatMap((entry, index) =>
      entry.kind === 'operation' ? [{ index, test: entry.test, operation: entry.operation }] : [],
    );
  const start = { done: 0, of: operations.length };
  const unit = new Follower((yield* within(start, beginning(scenario))).world);
  const twin = new Follower((yield* within(start, beginning(scenario, []))).world);
  const steps: Step[] = [
    { entry: null, test: null, operation: null, unit: unit.asFound(), twin: twin.asFound() },
  ];
  const installations: Record<Side, Parts[]> = {
    unit: [unit.world.installation],
    twin: [twin.world.installation],
  };
  for (const { index, test, operation } of operations) {
    yield { done: steps.length - 1, of: operations.length };
    steps.push({ entry: index, test, operation, unit: unit.follow(operation), twin: twin.follow(operation) });
    installations.unit.push(unit.world.installation);
    installations.twin.push(twin.world.installation);
  }
  return { scenario, attempt, steps, levels: { unit: unit.levels, twin: twin.levels }, installations };
}

/** One side: does the operations and looks inside at each. */
class Follower {
  readonly world: World;
  readonly levels: Level[] = [];
  private met: Truth[] = [];
  private look: Look | null = null;
  private current: Operation | null = null;
  private known: { readonly solution: World['solution']; readonly solved: Solved } | null = null;

  constructor(world: World) {
    this.world = world;
    this.note();
    world.onlooker = {
      moved: () => this.note(),
      // What an instrument meets is shown together with the bench at that instant.
      met: (_, truth) => {
        this.met.push(truth);
        this.look ??= this.lookNow();
      },
    };
  }

  asFound(): Moment {
    return { ...this.lookNow(), met: [], heard: [], refused: null, found: [] };
  }

  follow(operation: Operation): Moment {
    this.met = [];
    this.look = null;
    this.current = operation;
    const began = this.world.timeline.now;
    const { readings, events, refused, found } = perform(this.world, operation);
    const look = this.look ?? this.lookNow();
    const heard = events.map(({ what, at }) => ({ what, after: at - seconds(began) }));
    return { ...look, met: paired(this.met, readings), heard, refused, found };
  }

  private lookNow(): Look {
    const { world, current } = this;
    const { solution } = world;
    if (current?.op === 'measure' && current.quantity === 'voltage')
      return lookInside(world, solvedNow(world, current));
    if (this.known?.solution !== solution) this.known = { solution, solved: solvedNow(world, null) };
    return lookInside(world, this.known.solved);
  }

  private note(): void {
    const level = levelOf(this.world);
    const last = this.levels.at(-1);
    if (last !== undefined && last.live === level.live && Math.abs(last.volts - level.volts) < SAME) return;
    // Several changes at one instant: only what they come to.
    if (last?.at === level.at) this.levels.pop();
    this.levels.push(level);
  }
}

/** Levels closer than this are one, V. */
const SAME: Volts = 1;

function levelOf(world: World): Level {
  const volts = Math.max(
    ...livesOf(world.installation.site).map((live) => detectorVolts(world, `outlet.${live}`, 'outlet.PE')),
  );
  return { at: seconds(world.timeline.now), volts, live: volts > LIVE.volts };
}

const paired = (truths: readonly Truth[], readings: readonly Reading[]): Moment['met'] =>
  readings.map((reading, i) => ({ reading, truth: truths[i] as Truth }));
