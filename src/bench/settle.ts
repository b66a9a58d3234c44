/**
 * The one order in which plant and control act on each other: commands → plant → solve → sense → send, until neither
 * side changes; and how time passes, entry by entry, with what comes of each.
 */
import type { Microseconds, Seconds } from '../laws/quantities.ts';
import { microseconds } from '../laws/quantities.ts';
import type { ChartEvent } from '../unit/chart/standing.ts';
import { after, type Turn } from '../unit/control.ts';
import { isPowered, sense } from '../unit/sense.ts';
import type { Sensed } from '../unit/sensed.ts';
import { sameSensed } from '../unit/sensed.ts';
import type { Commands } from '../unit/unitChart.ts';
import { DEVICES, type Device, type Due } from './due.ts';
import { atTheUnit, tripTimesNow } from './felt.ts';
import type { Plant } from './plant.ts';
import { follow } from './timers.ts';
import { exposed, reset, type TripIntegrator, tripped, tripsAt } from './tripIntegrator.ts';
import { solve } from './wiring.ts';
import type { World } from './world.ts';
import { happen } from './world.ts';

const MOST_ROUNDS = 8;
/** How much later than the live poles the PE pole opens, s. A design choice. */
const EARTH_LAST: Seconds = 0.03;

export class Unsettled extends Error {
  constructor(at: Microseconds) {
    super(`plant and control did not settle in ${MOST_ROUNDS} rounds at ${at} µs`);
  }
}

/** Changes positions of the plant and solves the network anew. */
export function move(world: World, change: Partial<Plant>): void {
  world.plant = { ...world.plant, ...change };
  world.solution = solve(world.wiring, world.installation, world.plant);
  world.counts.solves += 1;
  const times = tripTimesNow(world);
  for (const device of DEVICES)
    carries(world, device, exposed(world.trips[device], times[device], world.timeline.now));
  world.onlooker?.moved(world);
}

/** A device is ready again, and exposed to whatever flows now. */
export const resetTrip = (world: World, device: Device): void =>
  carries(world, device, reset(world.trips[device], world.timeline.now));

/** From now on a device stands so, and trips when it then does. */
function carries(world: World, device: Device, now: TripIntegrator): void {
  const { timeline } = world;
  const before = world.trips[device];
  if (now === before) return;
  world.trips = { ...world.trips, [device]: now };
  if (tripsAt(before) !== null) timeline.cancel((due) => due.what === 'trip' && due.device === device);
  const at = tripsAt(now);
  if (at !== null) timeline.enter(at, 'trips', { what: 'trip', device });
}

/** Lets commands, plant, network and control follow each other until nothing changes. */
export function settle(world: World): void {
  for (let round = 0; round < MOST_ROUNDS; round++) {
    obey(world, world.control.snapshot.commands);
    rearm(world);
    if (!tell(world)) return;
  }
  throw new Unsettled(world.timeline.now);
}

/** Lets time pass, entry by entry, until a moment or until `stop` says so. */
export function advance(world: World, until: Microseconds, stop?: (world: World) => boolean): void {
  const { timeline } = world;
  for (let due = timeline.next(); due !== null && due <= until; due = timeline.next()) {
    comesTo(world, timeline.take());
    settle(world);
    if (stop?.(world)) return;
  }
  timeline.moveTo(until);
}

export const pass = (world: World, time: Seconds): void =>
  advance(world, world.timeline.now + microseconds(time));

/** Puts the commands into effect: levels at once, moving things after their own time. */
function obey(world: World, commands: Commands): void {
  const { plant } = world;
  const { timing } = world.installation.design;
  world.indicator = commands.indicator;
  if (commands.coil !== plant.coil) {
    world.plant = { ...world.plant, coil: commands.coil };
    const delay = commands.coil ? timing.closing : timing.opening;
    enter(world, delay, { what: 'contactor', closed: commands.coil });
  }
  if (commands.earthPole !== null && commands.earthPole !== (plant.earthPole === 'closed')) {
    const earthPole = commands.earthPole ? 'closed' : 'open';
    // Last to open and first to close: live conductors are never supplied without PE.
    const delay = commands.earthPole ? 0.001 : timing.opening + EARTH_LAST;
    enter(world, delay, { what: 'earth pole', to: earthPole });
  }
  if (commands.lock !== null && commands.lock !== plant.lockDriven) {
    world.plant = { ...world.plant, lockDriven: commands.lock };
    enter(world, timing.lock, { what: 'lock', held: commands.lock });
  }
  if (commands.pilot !== plant.pilot) move(world, { pilot: commands.pilot, duty: commands.duty });
  else if (commands.duty !== plant.duty) world.plant = { ...world.plant, duty: commands.duty };
}

/** Something of the plant that moves after a time of its own. */
const enter = ({ timeline }: World, delay: Seconds, due: Due): void =>
  timeline.enter(timeline.now + microseconds(delay), 'plant', due);

/** What comes of something that has fallen due. */
function comesTo(world: World, due: Due): void {
  switch (due.what) {
    case 'contactor':
      moveContactor(world, due.closed);
      break;
    case 'earth pole':
      moveEarthPole(world, due.to);
      break;
    case 'lock':
      moveLock(world, due.held);
      break;
    case 'trip':
      trip(world, due.device);
      break;
    case 'timer':
      send(world, due.event);
      break;
    case 'hours':
      watchHours(world);
      break;
  }
}

function moveContactor(world: World, closed: boolean): void {
  // The coil may have been driven the other way since.
  if (closed !== world.plant.coil) return;
  const contactor = closed ? 'closed' : 'open';
  if (contactor === world.plant.contactor) return;
  happen(world, closed ? 'contactor closed' : 'contactor opened');
  move(world, { contactor });
}

function moveEarthPole(world: World, earthPole: 'closed' | 'open'): void {
  if (earthPole === world.plant.earthPole) return;
  move(world, { earthPole });
}

function moveLock(world: World, held: boolean): void {
  if (held !== world.plant.lockDriven) return;
  const { lock } = world.installation.design;
  if (held && (!world.plant.standIn.plugged || !lock.engages)) return;
  if (!held && !lock.releases) return;
  const plugLock = held ? 'held' : 'free';
  if (plugLock === world.plant.plugLock) return;
  happen(world, held ? 'plug locked' : 'plug released');
  world.plant = { ...world.plant, plugLock };
}

/** A device opens what it opens, or tells the control. */
function trip(world: World, device: Device): void {
  world.trips = { ...world.trips, [device]: tripped(world.trips[device]) };
  const { direct, by } = world.installation.design.sheet.residual;
  switch (device) {
    case 'residual':
      if (by === 'breaker') openUnitBreaker(world);
      else send(world, { type: 'residual trip' });
      break;
    case 'direct':
      if (direct === 'protective' && by === 'breaker') openUnitBreaker(world);
      else send(world, { type: 'direct trip' });
      break;
    case 'upstream':
      happen(world, 'upstream device tripped');
      move(world, { upstream: 'tripped' });
      break;
    case 'breaker':
      happen(world, 'circuit breaker tripped');
      move(world, { breaker: 'tripped' });
      break;
  }
}

function openUnitBreaker(world: World): void {
  happen(world, 'unit breaker tripped');
  if (world.installation.design.tripOpens) move(world, { unitBreaker: 'tripped' });
}

/** An entry at the next edge of the hours, and so at every one, so that the control hears of it. */
export function watchHours({ timeline, hours }: World): void {
  timeline.enter(hours.nextEdge(timeline.now), 'plant', { what: 'hours' });
}

/** Tells the control what changed since it was last told; false when nothing did. */
function tell(world: World): boolean {
  const { plant, solution } = world;
  const peak = world.hours.isPeak(world.timeline.now);
  const { told: last } = world;
  if (last?.plant === plant && last.solution === solution && last.peak === peak) return false;
  world.told = { plant, solution, peak };
  const at = atTheUnit(world, peak);
  const powered = isPowered(at) && !plant.damaged.includes('electronics');
  const sensed = keepingLowHalf(world, sense(world.installation.design, at));
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

/** While the pilot is steady there is no low half to look at: what was last seen of it stays. */
function keepingLowHalf({ lastSent }: World, sensed: Sensed): Sensed {
  return sensed.lowHalf === 'none' && lastSent !== null ? { ...sensed, lowHalf: lastSent.lowHalf } : sensed;
}

/** The control takes an event. Throws what the chart throws. */
export function send(world: World, event: ChartEvent): void {
  world.counts.chartEvents += 1;
  turn(world, after(world.control, event));
}

/** The control stands as it now does, and its timers are started and stopped. */
export function turn(world: World, { control, orders }: Turn): void {
  world.control = control;
  follow(world.timeline, orders);
}

/** A sensor that acts through the control is ready again as soon as the control is. */
function rearm(world: World): void {
  const { snapshot } = world.control;
  const { sheet } = world.installation.design;
  const own = sheet.residual.by === 'breaker';
  if (!own && world.trips.residual.hasTripped && !snapshot.hasTag('residual tripped'))
    resetTrip(world, 'residual');
  const directOwn = own && sheet.residual.direct === 'protective';
  if (!directOwn && world.trips.direct.hasTripped && !snapshot.hasTag('direct tripped'))
    resetTrip(world, 'direct');
}
