/**
 * The whole bench: installation, plant, statechart and clock, and the one order in which they act on each other:
 * commands → plant → solve → sense → send, until neither side changes. `operations` is the only way in.
 */
import type { Actor } from 'xstate';
import { createActor } from 'xstate';
import type { Parts } from '../faults/parts.ts';
import { LIVES } from '../laws/conductors.ts';
import type { Amps, Microseconds, Seconds } from '../laws/quantities.ts';
import { microseconds } from '../laws/quantities.ts';
import { difference, type Port } from '../network/potentials.ts';
import { linesOf } from '../site/site.ts';
import type { Draw } from '../unit/design.ts';
import type { AtTheUnit } from '../unit/sense.ts';
import { isPowered, sense } from '../unit/sense.ts';
import type { Sensed, UnitEvent } from '../unit/sensed.ts';
import { sameSensed } from '../unit/sensed.ts';
import type { Commands, Indicator } from '../unit/unitChart.ts';
import { commandsOf, unitChart } from '../unit/unitChart.ts';
import type { Seed } from './draw.ts';
import { drawer } from './draw.ts';
import type { Knowledge } from './knowledge.ts';
import { nothingKnown } from './knowledge.ts';
import type { Plant } from './plant.ts';
import { plantAtRest, plugPosition, poleClosed } from './plant.ts';
import { tripTimes } from './sensors.ts';
import { Timeline } from './timeline.ts';
import { TripIntegrator } from './tripIntegrator.ts';
import type { Solution, Wiring } from './wiring.ts';
import { solve, wire } from './wiring.ts';

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
] as const;

export interface Happening {
  readonly at: Microseconds;
  readonly what: (typeof HAPPENINGS)[number];
}

export interface World {
  readonly installation: Parts;
  readonly wiring: Wiring;
  readonly timeline: Timeline;
  readonly draw: Draw;
  readonly actor: Actor<typeof unitChart>;
  readonly trips: Readonly<Record<'residual' | 'direct' | 'upstream' | 'breaker', TripIntegrator>>;
  readonly upstreamPickup: Amps;
  plant: Plant;
  solution: Solution;
  indicator: Indicator;
  powered: boolean;
  lastSent: Sensed | null;
  happenings: Happening[];
  knowledge: Knowledge;
  /** When anything was last switched, set or moved by hand. */
  changedAt: Microseconds;
  /** Operations done so far: the key of a reading's error. */
  operations: number;
  readonly counts: { solves: number; chartEvents: number };
}

/** At t = 0 the unit has been powered for a minute. */
const POWERED_BEFORE: Seconds = 60;
const MOST_ROUNDS = 8;

export class Unsettled extends Error {
  constructor(at: Microseconds) {
    super(`plant and control did not settle in ${MOST_ROUNDS} rounds at ${at} µs`);
  }
}

/** An installation that has stood powered for a minute with nothing plugged in. */
export function assemble(installation: Parts, seed: Seed): World {
  const draw = drawer(seed);
  const counts = { solves: 0, chartEvents: 0 };
  const timeline = new Timeline(-microseconds(POWERED_BEFORE));
  const clock = timeline.asClock(() => {
    counts.chartEvents += 1;
  });
  const wiring = wire(installation);
  const plant = plantAtRest(installation.design);
  const rated = installation.site.circuit.residualDevice?.rated ?? 0.03;
  const world: World = {
    installation,
    wiring,
    timeline,
    draw,
    actor: createActor(unitChart, { input: { design: installation.design }, clock }),
    trips: {
      residual: new TripIntegrator(timeline, () => tripResidual(world)),
      direct: new TripIntegrator(timeline, () => tripDirect(world)),
      upstream: new TripIntegrator(timeline, () => {
        happen(world, 'upstream device tripped');
        move(world, { upstream: 'tripped' });
      }),
      breaker: new TripIntegrator(timeline, () => {
        happen(world, 'circuit breaker tripped');
        move(world, { breaker: 'tripped' });
      }),
    },
    // The same spread as a unit's own device (unit/design.ts).
    upstreamPickup: rated * (0.67 + 0.2 * draw('upstream pick-up')),
    plant,
    solution: solve(wiring, installation, plant),
    indicator: 'dark',
    powered: false,
    lastSent: null,
    happenings: [],
    knowledge: nothingKnown(),
    changedAt: 0,
    operations: 0,
    counts,
  };
  // A chart that throws only turns to 'error'; the sender must look (checkChart).
  world.actor.subscribe({ error: () => {} });
  world.actor.start();
  settle(world);
  advance(world, 0);
  world.happenings = [];
  counts.solves = 0;
  counts.chartEvents = 0;
  return world;
}

export function happen(world: World, what: Happening['what']): void {
  world.happenings.push({ at: world.timeline.now, what });
}

/** Changes positions of the plant and solves the network anew. */
export function move(world: World, change: Partial<Plant>): void {
  world.plant = { ...world.plant, ...change };
  world.solution = solve(world.wiring, world.installation, world.plant);
  world.counts.solves += 1;
  const times = tripTimes(
    world.wiring,
    world.solution,
    world.installation,
    world.plant,
    world.upstreamPickup,
  );
  for (const device of ['residual', 'direct', 'upstream', 'breaker'] as const)
    world.trips[device].expose(times[device]);
}

/** Lets commands, plant, network and control follow each other until nothing changes. */
export function settle(world: World): void {
  for (let round = 0; round < MOST_ROUNDS; round++) {
    obey(world, commandsOf(world.actor.getSnapshot()));
    rearm(world);
    if (!tell(world)) return;
  }
  throw new Unsettled(world.timeline.now);
}

/** Lets time pass, entry by entry, until a moment or until `stop` says so. */
export function advance(world: World, until: Microseconds, stop?: (world: World) => boolean): void {
  const { timeline } = world;
  for (let due = timeline.next(); due !== null && due <= until; due = timeline.next()) {
    timeline.fire();
    checkChart(world);
    settle(world);
    if (stop?.(world)) return;
  }
  timeline.moveTo(until);
}

export const pass = (world: World, time: Seconds): void =>
  advance(world, world.timeline.now + microseconds(time));

/** V across two nodes, r.m.s. of the mains plane. */
export function mainsAcross(world: World, a: string, b: string): number {
  const port = portOf(world, a, b);
  const { re, im } = world.solution.planes.mains;
  const x = difference(re, port);
  const y = difference(im, port);
  return Math.sqrt(x * x + y * y);
}

export const portOf = (world: World, a: string, b: string): Port => ({
  a: world.wiring.nodeAt(a),
  b: world.wiring.nodeAt(b),
});

/** Puts the commands into effect: levels at once, moving things after their own time. */
function obey(world: World, commands: Commands): void {
  const { plant, timeline } = world;
  const { timing } = world.installation.design;
  world.indicator = commands.indicator;
  if (commands.coil !== plant.coil) {
    world.plant = { ...world.plant, coil: commands.coil };
    const delay = commands.coil ? timing.closing : timing.opening;
    timeline.at(timeline.now + microseconds(delay), 'plant', () => moveContactor(world, commands.coil));
  }
  if (commands.lock !== null && commands.lock !== plant.lockDriven) {
    world.plant = { ...world.plant, lockDriven: commands.lock };
    const wanted = commands.lock;
    timeline.at(timeline.now + microseconds(timing.lock), 'plant', () => moveLock(world, wanted));
  }
  if (commands.pilot !== plant.pilot) move(world, { pilot: commands.pilot, duty: commands.duty });
  else if (commands.duty !== plant.duty) world.plant = { ...world.plant, duty: commands.duty };
}

function moveContactor(world: World, closed: boolean): void {
  // The coil may have been driven the other way since.
  if (closed !== world.plant.coil) return;
  const contactor = closed ? 'closed' : 'open';
  if (contactor === world.plant.contactor) return;
  happen(world, closed ? 'contactor closed' : 'contactor opened');
  move(world, { contactor });
}

function moveLock(world: World, held: boolean): void {
  if (held !== world.plant.lockDriven) return;
  if (held && !world.plant.standIn.plugged) return;
  const plugLock = held ? 'held' : 'free';
  if (plugLock === world.plant.plugLock) return;
  happen(world, held ? 'plug locked' : 'plug released');
  world.plant = { ...world.plant, plugLock };
}

/** Tells the control what changed since it was last told; false when nothing did. */
function tell(world: World): boolean {
  const at = atTheUnit(world);
  const powered = isPowered(at);
  const sensed = sense(world.installation.design, at);
  let told = false;
  if (powered !== world.powered) {
    world.powered = powered;
    send(world, { type: 'power', on: powered });
    told = true;
  }
  if (world.lastSent === null || !sameSensed(sensed, world.lastSent)) {
    world.lastSent = sensed;
    send(world, { type: 'sensed', sensed });
    told = true;
  }
  return told;
}

function atTheUnit(world: World): AtTheUnit {
  const { planes } = world.solution;
  const { design, site } = world.installation;
  const pilot = portOf(world, 'pilot', 'bar');
  return {
    supply: Object.fromEntries(
      linesOf(site).map((line) => [line, mainsAcross(world, `inner.${line}`, 'inner.N')]),
    ),
    pilotHigh: difference(planes.high, pilot),
    pilotLow: difference(planes.low, pilot),
    oscillating: world.plant.pilot === 'oscillating',
    proximity:
      design.sheet.outlet === 'socket' ? difference(planes.high, portOf(world, 'socket.PP', 'bar')) : 0,
    anyPoleClosed: LIVES.some(
      (pole) => (pole === 'N' || linesOf(site).includes(pole)) && poleClosed(world.plant, design, pole),
    ),
    // A tether has no plug at the unit: only a socket-outlet can feel one.
    plug: design.sheet.outlet === 'socket' ? plugPosition(world.plant) : 'out',
  };
}

/** Sends one event to the control and makes sure that it took it. */
export function send(world: World, event: UnitEvent): void {
  world.counts.chartEvents += 1;
  world.actor.send(event);
  checkChart(world);
}

function checkChart(world: World): void {
  const snapshot = world.actor.getSnapshot();
  if (snapshot.status === 'error') throw snapshot.error;
}

/** A sensor that acts through the control is ready again as soon as the control is. */
function rearm(world: World): void {
  const snapshot = world.actor.getSnapshot();
  const { sheet } = world.installation.design;
  const own = sheet.residual.by === 'breaker';
  if (!own && world.trips.residual.hasTripped && !snapshot.hasTag('residual tripped'))
    world.trips.residual.reset();
  const directOwn = own && sheet.residual.direct === 'protective';
  if (!directOwn && world.trips.direct.hasTripped && !snapshot.hasTag('direct tripped'))
    world.trips.direct.reset();
}

function tripResidual(world: World): void {
  if (world.installation.design.sheet.residual.by === 'breaker') openUnitBreaker(world);
  else send(world, { type: 'residual trip' });
}

function tripDirect(world: World): void {
  const { direct, by } = world.installation.design.sheet.residual;
  if (direct === 'protective' && by === 'breaker') openUnitBreaker(world);
  else send(world, { type: 'direct trip' });
}

function openUnitBreaker(world: World): void {
  happen(world, 'unit breaker tripped');
  move(world, { unitBreaker: 'tripped' });
}
