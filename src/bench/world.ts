/**
 * What the bench is at one moment: installation, network, plant, control and clock, and what has been seen of it. How
 * it changes is settle.ts's business; a person changes it through perform.ts alone.
 */
import type { FaultChoice } from '../faults/catalogue.ts';
import type { Parts } from '../faults/parts.ts';
import type { Amps, Microseconds, Seconds } from '../laws/quantities.ts';
import { difference, type Port } from '../network/potentials.ts';
import type { Control } from '../unit/control.ts';
import type { Draw } from '../unit/design.ts';
import type { Sensed } from '../unit/sensed.ts';
import type { Indicator } from '../unit/unitChart.ts';
import type { Device, Due } from './due.ts';
import type { Hours } from './hours.ts';
import type { Knowledge } from './knowledge.ts';
import type { Plant } from './plant.ts';
import type { Truth } from './reading.ts';
import type { Timeline } from './timeline.ts';
import type { TripIntegrator } from './tripIntegrator.ts';
import type { Solution, Wiring } from './wiring.ts';

/** What can be seen or heard happening; nothing else of the inside shows. */
export const HAPPENINGS = [
  'contactor closed',
  'contactor opened',
  'plug locked',
  'plug released',
  'unit breaker tripped',
  'upstream device tripped',
  'circuit breaker tripped',
  'instrument fuse opened',
  'detector dark',
] as const;

export interface Happening {
  readonly at: Microseconds;
  readonly what: (typeof HAPPENINGS)[number];
}

/** Two sounds this far apart in time are told apart by ear, s. A design choice. */
export const BY_EAR: Seconds = 1;

/** Somebody who looks on from outside, for a replay that is to be shown opened: is told, and changes nothing. */
export interface Onlooker {
  /** The network has been solved anew. */
  readonly moved: (world: World) => void;
  /** An instrument has met this true value. */
  readonly met: (world: World, truth: Truth) => void;
}

/** All that what a unit senses follows from. */
export interface Told {
  readonly plant: Plant;
  readonly solution: Solution;
  readonly peak: boolean;
}

/** What changes is replaced, never changed in place, but for clock and counts: fork.ts rests on it. */
export interface World {
  /** The installation as it was meant, what is wrong with it, and what comes of both; a repair changes the last two. */
  readonly sound: Parts;
  faults: readonly FaultChoice[];
  installation: Parts;
  wiring: Wiring;
  upstreamPickup: Amps;
  control: Control;
  readonly timeline: Timeline<Due>;
  readonly draw: Draw;
  trips: Readonly<Record<Device, TripIntegrator>>;
  plant: Plant;
  solution: Solution;
  /** The default charging hours on this bench's calendar. */
  readonly hours: Hours;
  indicator: Indicator;
  powered: boolean;
  lastSent: Sensed | null;
  /** How everything stood when the control was last told: while it stands so there is nothing to tell. */
  told: Told | null;
  happenings: readonly Happening[];
  knowledge: Knowledge;
  /** When anything was last switched, set or moved by hand. */
  changedAt: Microseconds;
  /** Operations done so far: the key of a reading's error. */
  operations: number;
  onlooker: Onlooker | null;
  /** Positions whose solution was asked for, known ones too, and events that the control took. */
  readonly counts: { solves: number; chartEvents: number };
}

export const portOf = (world: World, a: string, b: string): Port => ({
  a: world.wiring.nodeAt(a),
  b: world.wiring.nodeAt(b),
});

/** V across two nodes, r.m.s. of the mains plane. */
export function mainsAcross(world: World, a: string, b: string): number {
  const port = portOf(world, a, b);
  const { re, im } = world.solution.planes.mains;
  const x = difference(re, port);
  const y = difference(im, port);
  return Math.sqrt(x * x + y * y);
}

export function happen(world: World, what: Happening['what']): void {
  world.happenings = [...world.happenings, { at: world.timeline.now, what }];
}
