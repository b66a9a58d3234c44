/**
 * The one order in which plant and control act on each other: commands → plant → solve → sense → send, until neither
 * side changes; and how time passes, entry by entry.
 */
import { LIVES } from '../laws/conductors.ts';
import type { Amps, Microseconds, Seconds } from '../laws/quantities.ts';
import { microseconds } from '../laws/quantities.ts';
import { branchCurrent, difference } from '../network/potentials.ts';
import { linesOf } from '../site/site.ts';
import type { UnitDesign } from '../unit/design.ts';
import type { AtTheUnit } from '../unit/sense.ts';
import { isPowered, sense } from '../unit/sense.ts';
import type { Sensed, UnitEvent } from '../unit/sensed.ts';
import { sameSensed } from '../unit/sensed.ts';
import type { Commands } from '../unit/unitChart.ts';
import type { Plant } from './plant.ts';
import { plugPosition, poleClosed } from './plant.ts';
import type { TripTimes } from './sensors.ts';
import { tripTimes } from './sensors.ts';
import type { Solution } from './wiring.ts';
import { solve } from './wiring.ts';
import type { World } from './world.ts';
import { happen, mainsAcross, portOf } from './world.ts';

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
  const { trips: times } = felt(world);
  for (const device of ['residual', 'direct', 'upstream', 'breaker'] as const)
    world.trips[device].expose(times[device]);
  world.onlooker?.moved(world);
}

/** Lets commands, plant, network and control follow each other until nothing changes. */
export function settle(world: World): void {
  for (let round = 0; round < MOST_ROUNDS; round++) {
    obey(world, world.control.commands);
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
    settle(world);
    if (stop?.(world)) return;
  }
  timeline.moveTo(until);
}

export const pass = (world: World, time: Seconds): void =>
  advance(world, world.timeline.now + microseconds(time));

/** Puts the commands into effect: levels at once, moving things after their own time. */
function obey(world: World, commands: Commands): void {
  const { plant, timeline } = world;
  const { timing } = world.installation.design;
  world.indicator = commands.indicator;
  if (commands.coil !== plant.coil) {
    world.plant = { ...world.plant, coil: commands.coil };
    const delay = commands.coil ? timing.closing : timing.opening + stuckFor(world);
    timeline.at(timeline.now + microseconds(delay), 'plant', () => moveContactor(world, commands.coil));
  }
  if (commands.earthPole !== null && commands.earthPole !== (plant.earthPole === 'closed')) {
    const earthPole = commands.earthPole ? 'closed' : 'open';
    // Last to open and first to close: live conductors are never supplied without PE.
    const delay = commands.earthPole ? 0.001 : timing.opening + EARTH_LAST;
    timeline.at(timeline.now + microseconds(delay), 'plant', () => moveEarthPole(world, earthPole));
  }
  if (commands.lock !== null && commands.lock !== plant.lockDriven) {
    world.plant = { ...world.plant, lockDriven: commands.lock };
    const wanted = commands.lock;
    timeline.at(timeline.now + microseconds(timing.lock), 'plant', () => moveLock(world, wanted));
  }
  if (commands.pilot !== plant.pilot) move(world, { pilot: commands.pilot, duty: commands.duty });
  else if (commands.duty !== plant.duty) world.plant = { ...world.plant, duty: commands.duty };
}

/** How much later this opening comes, s: one of every so many sticks, and the seed says which. */
function stuckFor(world: World): Seconds {
  const { sticks } = world.installation.design;
  if (sticks === null) return 0;
  const { openings } = world.plant;
  world.plant = { ...world.plant, openings: openings + 1 };
  const inTurn = openings % sticks.oneIn;
  const drawn = Math.floor(sticks.oneIn * world.draw(`sticks ${openings - inTurn}`));
  return inTurn === drawn ? sticks.seconds : 0;
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

/** Tells the control what changed since it was last told; false when nothing did. */
function tell(world: World): boolean {
  const at = atTheUnit(world);
  const powered = isPowered(at) && !world.plant.damaged.includes('electronics');
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

/** What follows from the solved network alone. */
interface Felt {
  readonly atTheUnit: Pick<
    AtTheUnit,
    'supply' | 'pilotHigh' | 'pilotLow' | 'proximity' | 'earth' | 'throughSensor' | 'ownCurrent'
  >;
  readonly trips: TripTimes;
}

/** The bench comes back to most of its positions: what is felt in one is worked out once. */
const feltIn = new WeakMap<Solution, Felt>();

function felt(world: World): Felt {
  const known = feltIn.get(world.solution);
  if (known !== undefined) return known;
  const { wiring, solution, installation, plant, upstreamPickup } = world;
  const now = {
    atTheUnit: electricalAtTheUnit(world),
    trips: tripTimes(wiring, solution, installation, plant, upstreamPickup),
  };
  feltIn.set(solution, now);
  return now;
}

function electricalAtTheUnit(world: World): Felt['atTheUnit'] {
  const { planes } = world.solution;
  const { design, site } = world.installation;
  const pilot = portOf(world, 'pilot', 'bar');
  return {
    supply: Object.fromEntries(
      linesOf(site).map((line) => [line, mainsAcross(world, `inner.${line}`, 'inner.N')]),
    ),
    pilotHigh: difference(planes.high, pilot),
    pilotLow: difference(planes.low, pilot),
    proximity:
      design.sheet.outlet === 'socket' ? difference(planes.high, portOf(world, 'socket.PP', 'bar')) : 0,
    earth:
      design.sheet.openPen === 'earth-sensing' || design.sheet.openPen === 'other'
        ? mainsAcross(world, 'supply.PE', 'sensing')
        : 0,
    ...serviceCurrents(world),
  };
}

function atTheUnit(world: World): AtTheUnit {
  const { design, site } = world.installation;
  const { supply, pilotHigh, pilotLow, proximity, earth, throughSensor, ownCurrent } = felt(world).atTheUnit;
  // Named one by one: this is made at every look, and a spread costs more than all the rest.
  return {
    supply,
    pilotHigh,
    pilotLow,
    proximity,
    earth,
    throughSensor,
    ownCurrent,
    oscillating: world.plant.pilot === 'oscillating',
    anyPoleClosed: LIVES.some(
      (pole) => (pole === 'N' || linesOf(site).includes(pole)) && poleClosed(world.plant, design, pole),
    ),
    // A tether has no plug at the unit: only a socket-outlet can feel one.
    plug: design.sheet.outlet === 'socket' ? plugFelt(world.plant, design) : 'out',
    peak: world.isPeak(),
    limit: world.plant.loadLimit,
  };
}

/**
 * Currents that a unit knows: of its own lines, if it has a sensor on the service or a socket-outlet whose cables it has
 * to mind, and of the service's. Where the sensor sits is the design's.
 */
function serviceCurrents(world: World): Pick<AtTheUnit, 'throughSensor' | 'ownCurrent'> {
  const { design, site } = world.installation;
  const { serviceLimit, outlet } = design.sheet;
  const place = design.serviceSensor === 'own circuit' ? 'origin' : 'source';
  const through = (part: string) =>
    Object.fromEntries(
      linesOf(site).map((line) => [line, activeCurrent(world, `${part}.${line}`, `inner.${line}`)]),
    );
  return {
    throughSensor: serviceLimit === null ? {} : through(place),
    ownCurrent: serviceLimit === null && outlet !== 'socket' ? {} : through('unit'),
  };
}

/** The part of a branch's current that is in phase with its line's voltage at the unit, A; negative: the other way. */
function activeCurrent({ solution, wiring }: World, part: string, line: string): Amps {
  const { reduced, planes, emfs } = solution;
  const branch = wiring.branchOf(part);
  const { mains } = branchCurrent(
    reduced,
    planes,
    branch,
    emfs.find((emf) => emf.branch === branch),
  );
  const port = { a: wiring.nodeAt(line), b: wiring.nodeAt('inner.N') };
  const re = difference(planes.mains.re, port);
  const im = difference(planes.mains.im, port);
  const volts = Math.sqrt(re * re + im * im);
  return volts === 0 ? 0 : (mains.re * re + mains.im * im) / volts;
}

/** What the lock's feedback says; one that is stuck says home as soon as the motor has been driven. */
const plugFelt = (plant: Plant, { lock }: UnitDesign) =>
  lock.feedback === 'always held' && plant.lockDriven && plant.standIn.plugged ? 'held' : plugPosition(plant);

export function send(world: World, event: UnitEvent): void {
  world.counts.chartEvents += 1;
  world.control.send(event);
}

/** A sensor that acts through the control is ready again as soon as the control is. */
function rearm(world: World): void {
  const { snapshot } = world.control;
  const { sheet } = world.installation.design;
  const own = sheet.residual.by === 'breaker';
  if (!own && world.trips.residual.hasTripped && !snapshot.hasTag('residual tripped'))
    world.trips.residual.reset();
  const directOwn = own && sheet.residual.direct === 'protective';
  if (!directOwn && world.trips.direct.hasTripped && !snapshot.hasTag('direct tripped'))
    world.trips.direct.reset();
}
