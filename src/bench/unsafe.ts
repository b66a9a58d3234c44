/**
 * Unsafe acts: which there are, and which are critical; their words stand in src/words. The critical ones are published here, each a predicate
 * over what the bench knows; they are judged when the act is done, whatever comes of it.
 */
import { entryNamed } from '../faults/catalogue.ts';
import { COMPONENTS } from '../faults/components.ts';
import { livesOf } from '../site/site.ts';
import { opensEarthUnpowered } from '../unit/design.ts';
import { isThroughElectronics } from './deadTests.ts';
import type { Measurement, Operation } from './operation.ts';
import type { Isolator, Removable } from './plant.ts';
import { isIsolated, isLockedOff, isMainLockedOff, isNeutralOpened, offAt, polesOpenedBy } from './plant.ts';
import { liveBetween } from './port.ts';
import { isAt, onEarth, onPilot, terminalsBetween, terminalsIn } from './terminals.ts';
import type { World } from './world.ts';

export interface UnsafeAct {
  readonly id: UnsafeId;
  readonly critical: boolean;
}

/** Those that are critical, and those that are told and cost nothing. */
export const UNSAFE_ACTS = {
  'insulation-live': { critical: true },
  'continuity-live': { critical: true },
  'cover-circuit-on': { critical: true },
  'cover-without-lock': { critical: false },
  'conductor-not-proved-dead': { critical: true },
  'conductor-half-proved': { critical: false },
  'earth-off-supply-on': { critical: true },
  'energised-with-link': { critical: true },
  'energised-cover-open': { critical: true },
  'energised-earth-off': { critical: true },
  'energised-failed-test': { critical: true },
  'loop-earth-open': { critical: true },
  'residual-earth-open': { critical: true },
  'proved-with-meter': { critical: false },
  'detector-not-proved': { critical: false },
  'detector-failed': { critical: false },
  'isolated-without-lock': { critical: false },
  'neutral-not-isolated': { critical: false },
  'isolated-under-load': { critical: false },
  'energised-unit-off': { critical: false },
  'vehicle-left-plugged': { critical: false },
  'loop-earth-not-shown': { critical: false },
  'residual-earth-not-shown': { critical: false },
  'insulation-through-electronics': { critical: false },
  'insulation-over-sheet': { critical: false },
  'insulation-on-pilot': { critical: false },
} as const satisfies Record<string, { critical: boolean }>;
export type UnsafeId = keyof typeof UNSAFE_ACTS;

const actOf = (id: UnsafeId): UnsafeAct => ({ id, ...UNSAFE_ACTS[id] });

/** What is unsafe about doing this now. Looked at before the operation acts. */
export function unsafeIn(world: World, operation: Operation): readonly UnsafeAct[] {
  const ids: UnsafeId[] = [];
  const when = (condition: boolean, id: UnsafeId) => condition && ids.push(id);
  switch (operation.op) {
    case 'isolate':
      when(!operation.lock, 'isolated-without-lock');
      when(operation.at === 'origin' && leavesNeutral(world, operation.poles), 'neutral-not-isolated');
      when(isLoaded(world), 'isolated-under-load');
      break;
    case 'prove-dead':
      when(operation.tool === 'meter', 'proved-with-meter');
      when(operation.tool === 'two-pole' && operation.proof !== 'both', 'detector-not-proved');
      when(operation.tool === 'two-pole' && world.knowledge.detectorFailed, 'detector-failed');
      break;
    case 'open-cover':
      if (world.plant.cover === 'closed') ids.push(...unsafeOpening(world));
      break;
    case 'disconnect':
    case 'reconnect':
      when(operation.op === 'disconnect' && leavesUnearthed(world, operation.what), 'earth-off-supply-on');
      ids.push(...unsafeHandling(world, [PLACE_OF[operation.what]], operation.what === 'unit'));
      when(isVehicleThere(world), 'vehicle-left-plugged');
      break;
    case 'link':
    case 'unlink':
      ids.push(...unsafeHandling(world, ['origin'], operation.between.flat().includes('origin.N')));
      when(isVehicleThere(world), 'vehicle-left-plugged');
      break;
    case 'put-right':
      // Both places whatever the cause is, so that what has to be proved tells nothing of it. A tester is none of either.
      if (!isInHand(operation.what)) ids.push(...unsafeHandling(world, ['origin', 'supply'], true));
      break;
    case 'energise':
      ids.push(...unsafeEnergising(world, operation.at));
      break;
    case 'measure':
      ids.push(...unsafeMeasuring(world, operation));
      break;
    default:
      break;
  }
  return ids.map(actOf);
}

const isInHand = (what: string): boolean => {
  const component = entryNamed(what)?.component;
  return component !== undefined && COMPONENTS[component] === 'in hand';
};

/** A charge is drawn through what is about to be opened. */
const isLoaded = ({ plant }: World): boolean =>
  !isIsolated(plant) && plant.contactor === 'closed' && plant.standIn.plugged && plant.standIn.load > 0;

/** Plugged in as a vehicle is; in state A it is a lead to measure through. */
const isVehicleThere = ({ plant: { standIn } }: World): boolean => standIn.plugged && standIn.state !== 'A';

/** From live conductors to live conductors. At the outlet the open contactor and a declared bleed lie between. */
const isBetweenLives = (world: World, between: Between): boolean => {
  const lives = livesOf(world.installation.site) as readonly string[];
  const conductors = between.map((probe) => terminalsIn(probe).map((t) => t.split('.')[1] ?? t));
  return conductors.every((own) => own.every((conductor) => lives.includes(conductor)));
};

/**
 * Whether continuity was shown as far as a test current will flow through the protective conductor. Beyond a PE pole
 * that stands open without power no dead test can show it.
 */
const isEarthShown = ({ knowledge, installation }: World, terminals: readonly string[]): boolean =>
  (!terminals.some((t) => isAt(t, 'outlet') || isAt(t, 'supply') || t === 'case') ||
    knowledge.earthShown.includes('PE of the circuit')) &&
  (!terminals.some((t) => isAt(t, 'outlet')) ||
    opensEarthUnpowered(installation.design.sheet) ||
    knowledge.earthShown.includes('PE of the cable'));

/** On a TT site, by a device that has no pole for it. */
const leavesNeutral = ({ installation: { site }, plant }: World, poles: 'all' | 'line'): boolean =>
  site.earthing === 'TT' &&
  poles === 'line' &&
  !plant.mainOff.includes('N') &&
  !polesOpenedBy(site, Math.min(site.circuit.breaker.poles, livesOf(site).length)).includes('N');

/** Where the conductors are that come off. At the board other ways and the tails stay live beside them. */
const PLACE_OF: Readonly<Record<Removable, 'origin' | 'supply'>> = {
  unit: 'supply',
  arrester: 'supply',
  'earthing-conductor': 'origin',
  electrode: 'origin',
};

/**
 * Whatever is handled is locked off and proved dead at its place since it was last energised, by a detector tried before
 * and after. The outlet is no such place: the open contactor makes it dead whatever the supply does. A neutral may stay
 * joined where it is reliably at earth (BS 7671 461.2, from memory): not with an electrode of one’s own.
 */
function unsafeHandling(
  { plant, knowledge, installation: { site } }: World,
  places: readonly ('origin' | 'supply')[],
  withNeutral: boolean,
): readonly UnsafeId[] {
  const proofs = places.map((place) => knowledge.provedDead[place]);
  const leftJoined = withNeutral && site.earthing === 'TT' && !isNeutralOpened(plant);
  if (!isLockedOff(plant) || leftJoined || proofs.includes(undefined)) return ['conductor-not-proved-dead'];
  return proofs.every((proof) => proof?.isWhole) ? [] : ['conductor-half-proved'];
}

/** Every circuit of the house has this one earth, and not this circuit alone is to be off without it. */
const leavesUnearthed = ({ plant }: World, what: Removable): boolean =>
  (what === 'earthing-conductor' || what === 'electrode') && !isMainLockedOff(plant);

/**
 * To open it isolated and locked is right, since only then the terminals can be proved dead; even where the papers name
 * the wrong circuit. To open it after it was found live is not.
 */
function unsafeOpening({ plant, knowledge }: World): readonly UnsafeId[] {
  if (!isIsolated(plant) || knowledge.foundLive.length > 0) return ['cover-circuit-on'];
  return isLockedOff(plant) ? [] : ['cover-without-lock'];
}

/**
 * What is wrong with the circuit counts when the circuit goes on: with the other of the two still off it does not. An
 * earth off counts as soon as anything of the house goes on.
 */
function unsafeEnergising(world: World, at: Isolator | undefined): readonly UnsafeId[] {
  const { plant, knowledge } = world;
  const goesOn = offAt(plant).filter((one) => at === undefined || one === at);
  const stays = offAt(plant).filter((one) => !goesOn.includes(one));
  if (goesOn.length === 0 || stays.includes('main-switch')) return [];
  const isEarthOff = plant.removed.includes('earthing-conductor') || plant.removed.includes('electrode');
  const ofEarth = isEarthOff ? (['energised-earth-off'] as const) : [];
  if (stays.includes('origin')) return ofEarth;
  return [
    ...(plant.links.length > 0 ? (['energised-with-link'] as const) : []),
    ...ofEarth,
    ...(plant.removed.includes('unit') ? (['energised-unit-off'] as const) : []),
    ...(knowledge.failedTests.length > 0 ? (['energised-failed-test'] as const) : []),
    ...(plant.cover === 'open' ? (['energised-cover-open'] as const) : []),
  ];
}

function unsafeMeasuring(world: World, measurement: Measurement): readonly UnsafeId[] {
  // Behind the cover nothing is reached, so nothing is done.
  if ('between' in measurement && !terminalsBetween(measurement.between).every((t) => reachable(world, t)))
    return [];
  const earthOpen = world.knowledge.failedTests.some(({ isOpen }) => isOpen);
  switch (measurement.quantity) {
    case 'continuity':
      return touchesLive(world, measurement.between) ? ['continuity-live'] : [];
    case 'insulation':
      return [
        ...(touchesLive(world, measurement.between) ? (['insulation-live'] as const) : []),
        ...(onPilot(measurement.between) ? (['insulation-on-pilot'] as const) : []),
        ...(isVehicleThere(world) ? (['vehicle-left-plugged'] as const) : []),
        ...(isBetweenLives(world, measurement.between) &&
        isThroughElectronics(world, measurement.between) &&
        !terminalsBetween(measurement.between).every((t) => isAt(t, 'outlet'))
          ? (['insulation-through-electronics'] as const)
          : []),
        ...(measurement.volts > world.installation.design.sheet.insulationTestVoltageMax &&
        reachesUnit(world, measurement.between)
          ? (['insulation-over-sheet'] as const)
          : []),
      ];
    case 'loop':
      if (!onEarth(measurement.between)) return [];
      if (earthOpen) return ['loop-earth-open'];
      return isEarthShown(world, terminalsBetween(measurement.between)) ? [] : ['loop-earth-not-shown'];
    case 'residual':
      if (earthOpen) return ['residual-earth-open'];
      return isEarthShown(world, [`${measurement.at}.PE`]) ? [] : ['residual-earth-not-shown'];
    default:
      return [];
  }
}

type Between = Extract<Measurement, { quantity: 'insulation' }>['between'];

const reachable = (world: World, terminal: string): boolean =>
  world.plant.cover === 'open' || !isAt(terminal, 'supply');

/** Live to each other or to the main earthing terminal, through the stated load. */
const touchesLive = (world: World, between: Between): boolean =>
  liveBetween(world, between[0], between[1]) ||
  terminalsBetween(between).some((t) => liveBetween(world, t, 'met'));

const reachesUnit = (world: World, between: Between): boolean =>
  terminalsBetween(between).some((t) => isAt(t, 'outlet')) || !world.plant.removed.includes('unit');
