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
import { unpowered } from '../unit/control.ts';
import type { Draw } from '../unit/design.ts';
import type { Seed } from './draw.ts';
import { drawer } from './draw.ts';
import { DEVICES, type Due } from './due.ts';
import { hoursFrom } from './hours.ts';
import { nothingKnown } from './knowledge.ts';
import { plantAtRest } from './plant.ts';
import { Recent } from './recent.ts';
import { advance, move, settle, turn, watchHours } from './settle.ts';
import { Timeline } from './timeline.ts';
import { toItsEnd } from './toItsEnd.ts';
import { EMPTY } from './tripIntegrator.ts';
import { solve, type Wiring, wire } from './wiring.ts';
import type { World } from './world.ts';

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
  const timeline = new Timeline<Due>(-microseconds(POWERED_BEFORE));
  const { installation, wiring } = yield* wiringWith(sound, faults);
  yield null;
  const plant = plantAtRest(installation.site, installation.design);
  // In a piece of its own: a page makes it here for the first time.
  compiledChart();
  yield null;
  const atFirst = unpowered(installation.design);
  const world: World = {
    sound,
    faults,
    installation,
    wiring,
    upstreamPickup: upstreamPickupOf(installation, draw),
    control: atFirst.control,
    timeline,
    draw,
    trips: Object.fromEntries(DEVICES.map((device) => [device, EMPTY])) as World['trips'],
    plant,
    solution: solve(wiring, installation, plant),
    hours: hoursFrom(clock),
    indicator: 'dark',
    powered: false,
    lastSent: null,
    told: null,
    happenings: [],
    knowledge: nothingKnown(),
    changedAt: 0,
    operations: 0,
    onlooker: null,
    counts,
  };
  turn(world, atFirst);
  yield null;
  settle(world);
  yield null;
  if (installation.design.sheet.schedule !== null) watchHours(world);
  advance(world, 0);
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
  world.timeline.cancel(({ what }) => what === 'timer');
  turn(world, unpowered(installation.design));
  world.lastSent = null;
  world.told = null;
  // With no supply the lock's motor drives nothing: the control finds the lock where it stands.
  move(world, { lockDriven: world.plant.plugLock === 'held' });
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
