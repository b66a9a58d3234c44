/**
 * Puts an installation on the bench: wires it, starts the control, connects the devices that trip, and lets it stand
 * powered for a minute.
 */
import type { FaultChoice } from '../faults/catalogue.ts';
import { withFaults } from '../faults/catalogue.ts';
import type { Parts } from '../faults/parts.ts';
import type { Amps, Seconds } from '../laws/quantities.ts';
import { microseconds } from '../laws/quantities.ts';
import { compiledChart } from '../unit/chart/compiled.ts';
import { Control } from '../unit/control.ts';
import type { Draw } from '../unit/design.ts';
import type { Seed } from './draw.ts';
import { drawer } from './draw.ts';
import { type Hours, hoursFrom } from './hours.ts';
import { nothingKnown } from './knowledge.ts';
import type { Freed, Plant } from './plant.ts';
import { plantAtRest } from './plant.ts';
import { Recent } from './recent.ts';
import { advance, move, send, settle } from './settle.ts';
import { Timeline } from './timeline.ts';
import { toItsEnd } from './toItsEnd.ts';
import { TripIntegrator } from './tripIntegrator.ts';
import { solve, type Wiring, wire } from './wiring.ts';
import type { World } from './world.ts';
import { happen } from './world.ts';

/** At t = 0 the unit has been powered for a minute. */
const POWERED_BEFORE: Seconds = 60;

/** An installation, with what is wrong with it, that has stood powered for a minute with nothing plugged in. */
export const assemble = (sound: Parts, faults: readonly FaultChoice[], seed: Seed, clock: string): World =>
  toItsEnd(assembling(sound, faults, seed, clock));

/** The same in pieces. */
export function* assembling(
  sound: Parts,
  faults: readonly FaultChoice[],
  seed: Seed,
  clock: string,
): Generator<null, World> {
  const draw = drawer(seed);
  const counts = { solves: 0, chartEvents: 0 };
  const timeline = new Timeline(-microseconds(POWERED_BEFORE));
  const hours = hoursFrom(clock);
  const { installation, wiring } = yield* wiringWith(sound, faults);
  yield null;
  const plant = plantAtRest(installation.site, installation.design);
  // In a piece of its own: a page makes it here for the first time.
  compiledChart();
  yield null;
  const world: World = {
    sound,
    faults,
    installation,
    wiring,
    upstreamPickup: upstreamPickupOf(installation, draw),
    control: controlOf(installation, timeline, counts),
    timeline,
    draw,
    trips: {
      residual: new TripIntegrator(timeline, () => tripResidual(world)),
      direct: new TripIntegrator(timeline, () => tripDirect(world)),
      upstream: new TripIntegrator(timeline, () => {
        happen(world, 'upstream device tripped');
        move(world, { upstream: 'tripped', ...freeing(world, 'upstream', installation.upstreamFirstLater) });
      }),
      breaker: new TripIntegrator(timeline, () => {
        happen(world, 'circuit breaker tripped');
        move(world, { breaker: 'tripped' });
      }),
    },
    plant,
    solution: solve(wiring, installation, plant),
    isPeak: () => hours.isPeak(timeline.now),
    indicator: 'dark',
    powered: false,
    lastSent: null,
    happenings: [],
    knowledge: nothingKnown(),
    changedAt: 0,
    operations: 0,
    onlooker: null,
    counts,
  };
  yield null;
  settle(world);
  yield null;
  if (installation.design.sheet.schedule !== null) watchHours(world, hours);
  advance(world, 0);
  letDry(world);
  world.happenings = [];
  counts.solves = 0;
  counts.chartEvents = 0;
  return world;
}

/**
 * The same bench with what is wrong now in place of what was: its parts are made anew, and all that stands as it was
 * left stays, from tripped devices to what wrong tests have destroyed. The control begins unpowered, as one that was
 * switched off does, so that the supply has to be off.
 */
export function reassemble(world: World, faults: readonly FaultChoice[]): void {
  world.faults = faults;
  const { installation, wiring } = toItsEnd(wiringWith(world.sound, faults));
  world.installation = installation;
  world.wiring = wiring;
  world.upstreamPickup = upstreamPickupOf(world.installation, world.draw);
  world.control.stop();
  world.control = controlOf(world.installation, world.timeline, world.counts);
  world.lastSent = null;
  // With no supply the lock's motor drives nothing: the control finds the lock where it stands.
  move(world, { lockDriven: world.plant.plugLock === 'held' });
  settle(world);
}

/** The same bench, as it stands, with another tester: what else is wrong is what it was. */
export function reequip(world: World, faults: readonly FaultChoice[]): void {
  world.faults = faults;
  const { installation, wiring } = toItsEnd(wiringWith(world.sound, faults));
  world.installation = installation;
  world.wiring = wiring;
  move(world, {});
  settle(world);
}

interface Wired {
  readonly installation: Parts;
  readonly wiring: Wiring;
}

/** By the sound parts and what is wrong: a job is acted out many times, and comes to the same positions each time. */
const wired = new WeakMap<Parts, Recent<string, Wired>>();
/** For each installation, with some hundred solutions of some ten kilobytes each. */
const MOST_WIRED = 4;

function* wiringWith(sound: Parts, faults: readonly FaultChoice[]): Generator<null, Wired> {
  const ofSound = wired.get(sound) ?? new Recent<string, Wired>(MOST_WIRED);
  wired.set(sound, ofSound);
  const key = JSON.stringify(faults);
  const before = ofSound.get(key);
  if (before !== undefined) return before;
  const installation = withFaults(sound, faults);
  yield null;
  return ofSound.set(key, { installation, wiring: wire(installation) });
}

/** The same spread as a unit's own device (unit/design.ts). */
function upstreamPickupOf({ site, upstreamDevice }: Parts, draw: Draw): Amps {
  const rated = site.circuit.residualDevice?.rated ?? 0.03;
  return upstreamDevice === 'dead' ? Infinity : rated * (0.67 + 0.2 * draw('upstream pick-up'));
}

/** The unit's control on this design, unpowered as yet. */
function controlOf({ design }: Parts, timeline: Timeline, counts: World['counts']): World['control'] {
  const clock = timeline.asClock(() => {
    counts.chartEvents += 1;
  });
  return new Control(design, clock);
}

/** A device that stuck has moved: from now on it moves freely. */
const freeing = ({ plant }: World, which: Freed, later: Seconds): Partial<Plant> =>
  later === 0 || plant.freed.includes(which) ? {} : { freed: [...plant.freed, which] };

function tripResidual(world: World): void {
  const freed = freeing(world, 'unit', world.installation.design.firstTripLater);
  world.plant = { ...world.plant, ...freed };
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
  if (!world.installation.design.tripOpens) return;
  move(world, { unitBreaker: 'tripped' });
}

/** An entry for each step of whatever is wet, from now on. */
function letDry(world: World): void {
  const dries = world.installation.parts.find((part) => part.dries !== undefined)?.dries;
  if (dries === undefined) return;
  const { timeline } = world;
  timeline.at(timeline.now + microseconds(dries.every), 'plant', () => {
    move(world, { dried: world.plant.dried + 1 });
    letDry(world);
  });
}

/** An entry at every edge of the hours, so that the control hears of it. */
function watchHours(world: World, hours: Hours): void {
  const { timeline } = world;
  timeline.at(hours.nextEdge(timeline.now), 'plant', () => watchHours(world, hours));
}
