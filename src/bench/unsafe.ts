/**
 * Unsafe acts: what each is, whether it is critical, and why. The critical ones are published here, each a predicate
 * over what the bench knows; they are judged when the act is done, whatever comes of it.
 */
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
  readonly act: string;
  readonly why: string;
}

/** Sources: EAWR 1989 regs 4, 12–14; HSG85; GS38; BS 7671 643.1, 643.3.3; IEC 61851-1:2017 8.6. */
export const UNSAFE_ACTS = {
  'insulation-live': {
    critical: true,
    act: 'insulation test on a live circuit',
    why: 'The tester and its leads are not made for it: arc or shock. Prove dead comes first (EAWR reg. 14, GS38).',
  },
  'continuity-live': {
    critical: true,
    act: 'continuity test on a live part',
    why: 'The tester meets mains: its fuse opens, or worse. Prove dead comes first (EAWR reg. 14, GS38).',
  },
  'cover-circuit-on': {
    critical: true,
    act: 'cover opened with the circuit on',
    why: 'The terminals behind it are live, and every live reading can be had with the cover on (EAWR reg. 14).',
  },
  'cover-without-lock': {
    critical: false,
    act: 'cover opened with the isolation not locked',
    why: 'Somebody else can switch it on while you are at the terminals (EAWR regs 12 and 13).',
  },
  'conductor-not-proved-dead': {
    critical: true,
    act: 'conductor handled that was not locked off and proved dead where it is',
    why: 'Dead at the board is not dead at the unit, nor the other way round: another way, a second source, a borrowed neutral. Lock it off and prove it at the very terminals (EAWR regs 13 and 14, HSG85).',
  },
  'conductor-half-proved': {
    critical: false,
    act: 'conductor handled on a detector that was proved before the test and not after it',
    why: 'The detector may have failed during the test, and a failed detector shows every live part as dead. Prove it again at once, before you touch anything (GS38).',
  },
  'earth-off-supply-on': {
    critical: true,
    act: 'earthing conductor or electrode taken off with the main switch not locked off',
    why: 'The whole house stays supplied with no earth: a fault in any circuit puts mains voltage on every case and pipe, and on the two ends that you hold apart (EAWR reg. 8, Guidance Note 3).',
  },
  'energised-with-link': {
    critical: true,
    act: 'energised with a temporary link in',
    why: 'The first switch-on is a dead short from line to the conductor that it is linked to.',
  },
  'energised-cover-open': {
    critical: true,
    act: 'energised with the cover open',
    why: 'Live terminals are within reach, and nothing asks for it: every live reading can be had with the cover on (EAWR reg. 14).',
  },
  'energised-earth-off': {
    critical: true,
    act: 'energised with an earth off',
    why: 'Nothing would clear a fault: every exposed part could stand at mains voltage (EAWR reg. 8).',
  },
  'energised-failed-test': {
    critical: true,
    act: 'energised with a failed dead test standing',
    why: 'A dead test that failed is put right and repeated before power (BS 7671 643.1; EAWR reg. 4).',
  },
  'loop-earth-open': {
    critical: true,
    act: 'loop test with the protective conductor known open',
    why: 'The test current would put mains voltage on every part joined to that conductor.',
  },
  'residual-earth-open': {
    critical: true,
    act: 'residual-current test with the protective conductor known open',
    why: 'The test current would put mains voltage on every part joined to that conductor.',
  },
  'proved-with-meter': {
    critical: false,
    act: 'proved dead with a meter',
    why: 'A meter on a wrong range or with a broken lead shows nothing on a live part; only a proved two-pole detector proves dead (GS38).',
  },
  'detector-not-proved': {
    critical: false,
    act: 'tested for dead with a detector that was not proved before and after',
    why: 'A detector with a flat battery or a broken lead shows nothing on a live part. Try it on a proving unit, test every pair, and try it again (GS38).',
  },
  'isolated-without-lock': {
    critical: false,
    act: 'isolated without a lock',
    why: 'Somebody else can switch it on again (EAWR reg. 12, HSG85).',
  },
  'neutral-not-isolated': {
    critical: false,
    act: 'isolated with the neutral left joined',
    why: 'With an earth of its own the neutral can stand at a voltage here: it is opened with the lines (BS 7671 461.2, from memory).',
  },
  'isolated-under-load': {
    critical: false,
    act: 'isolated under load',
    why: 'End the charge first: an isolator that is not made to break a load can burn, and contacts wear (BS 7671 Table 537.4, from memory).',
  },
  'energised-unit-off': {
    critical: false,
    act: 'energised with the unit’s conductors off',
    why: 'Their ends are live and bare (EAWR reg. 14).',
  },
  'vehicle-left-plugged': {
    critical: false,
    act: 'dead work with the vehicle plugged in',
    why: 'A vehicle is a source and a load of its own: unplug it before dead work, or it suffers the test and falsifies it (EAWR reg. 12(2)).',
  },
  'loop-earth-not-shown': {
    critical: false,
    act: 'loop test before the protective conductor was shown to be continuous',
    why: 'Were it open, the test current would put mains voltage on the case and the vehicle: continuity comes first (BS 7671 643.1, 643.2).',
  },
  'residual-earth-not-shown': {
    critical: false,
    act: 'residual-current test before the protective conductor was shown to be continuous',
    why: 'Were it open, the test current would put mains voltage on the case and the vehicle: continuity comes first (BS 7671 643.1, 643.2).',
  },
  'insulation-through-electronics': {
    critical: false,
    act: 'insulation test from line to neutral through the electronics',
    why: 'The reading tells nothing and the electronics may suffer: join the lives and test them to earth, or take the unit’s conductors off (BS 7671 643.3.3).',
  },
  'insulation-over-sheet': {
    critical: false,
    act: 'insulation test above the voltage that the unit’s sheet allows',
    why: 'The electronics may be damaged; 250 V or less is used with equipment connected (BS 7671 643.3.3).',
  },
  'insulation-on-pilot': {
    critical: false,
    act: 'insulation test on the control pilot or proximity contact',
    why: 'These are extra-low-voltage circuits of the electronics and can be destroyed (IEC 61851-1:2017 8.6).',
  },
} as const satisfies Record<string, { critical: boolean; act: string; why: string }>;
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
      // Both places whatever the cause is, so that what has to be proved tells nothing of it.
      ids.push(...unsafeHandling(world, ['origin', 'supply'], true));
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
