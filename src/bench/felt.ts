/**
 * What the unit feels of the bench as it stands, and how soon each device would trip. What follows from the solved
 * network alone is worked out once: the bench comes back to most of its positions.
 */
import { LIVES } from '../laws/conductors.ts';
import type { Amps } from '../laws/quantities.ts';
import { branchCurrent, difference } from '../network/potentials.ts';
import { linesOf } from '../site/site.ts';
import type { UnitDesign } from '../unit/design.ts';
import type { AtTheUnit } from '../unit/sense.ts';
import type { Plant } from './plant.ts';
import { plugPosition, poleClosed } from './plant.ts';
import type { TripTimes } from './sensors.ts';
import { tripTimes } from './sensors.ts';
import type { Solution } from './wiring.ts';
import type { World } from './world.ts';
import { mainsAcross, portOf } from './world.ts';

/** What follows from the solved network alone. */
interface Felt {
  readonly atTheUnit: Pick<
    AtTheUnit,
    'supply' | 'pilotHigh' | 'pilotLow' | 'proximity' | 'earth' | 'throughSensor' | 'ownCurrent'
  >;
  readonly trips: TripTimes;
}

const feltIn = new WeakMap<Solution, Felt>();

/** Once a solution. */
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

/** How soon each device would trip from rest, as it all stands. */
export const tripTimesNow = (world: World): TripTimes => felt(world).trips;

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

/** What the unit's sensing circuits are connected to now. */
export function atTheUnit(world: World, peak: boolean): AtTheUnit {
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
    peak,
    limit: world.plant.loadLimit,
  };
}

/** The part through which the current flows that each place of the sensor feels. */
const SENSOR_PARTS: Readonly<Record<UnitDesign['serviceSensor'], string>> = {
  right: 'source',
  reversed: 'source',
  'own circuit': 'origin',
  'past parting': 'main',
};

/**
 * Currents that a unit knows: of its own lines, if it has a sensor on the service or a socket-outlet whose cables it has
 * to mind, and of the service's. Where the sensor sits is the design's.
 */
function serviceCurrents(world: World): Pick<AtTheUnit, 'throughSensor' | 'ownCurrent'> {
  const { design, site } = world.installation;
  const { serviceLimit, outlet } = design.sheet;
  const place = SENSOR_PARTS[design.serviceSensor];
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
