/**
 * The only way in: one operation is judged, done, given its time, and answered with readings, what is seen, what
 * happened and what was unsafe about it.
 */
import type { Seconds } from '../laws/quantities.ts';
import { seconds } from '../laws/quantities.ts';
import type { Found } from '../site/part.ts';
import { pairsOf } from '../site/part.ts';
import { linesOf, livesOf } from '../site/site.ts';
import type { Indicator } from '../unit/unitChart.ts';
import { learn } from './deadTests.ts';
import { onKnownResistor } from './instruments/directTester.ts';
import { leadOf, showsProvingUnit, strain, voltage } from './instruments/voltageTools.ts';
import { measure } from './measure.ts';
import type { Operation } from './operation.ts';
import type { Link } from './plant.ts';
import { ISOLATORS, isIsolated, offAt, polesOpenedBy } from './plant.ts';
import { leadsOn } from './port.ts';
import { afterDark, afterProving, afterSwitchingOn, DARK, showDark, showDead, showLive } from './proofs.ts';
import { putRight } from './putRight.ts';
import type { Reading, Truth } from './reading.ts';
import { shown } from './reading.ts';
import type { Refusal } from './refusal.ts';
import { move, pass, resetTrip, send, settle } from './settle.ts';
import type { UnsafeAct } from './unsafe.ts';
import { unsafeIn } from './unsafe.ts';
import type { Happening, World } from './world.ts';
import { happen } from './world.ts';

/** How long what passes time takes, s. Fixed by us; `wait` and the residual and opening tests take their own. */
export const DURATIONS = {
  measure: 5,
  'prove-dead': 30,
  'check-instruments': 60,
  press: 1,
  'reset unit': 2,
  'reset upstream': 1,
  'reset supply': 10,
} as const satisfies Record<string, Seconds>;

/** Operations that leave every position as it was; of the measurements only the opening time does not. */
const PASSIVE: readonly Operation['op'][] = [
  'check-instruments',
  'discharge',
  'null-leads',
  'stop',
  'prove-dead',
  'wait',
  'measure',
];

/** Where an inspection sees nothing with the cover closed. */
const BEHIND_COVER: readonly Found['where'][] = ['terminals', 'protective devices'];

export interface Seen {
  readonly at: Seconds;
  readonly indicator: Indicator;
  readonly plug: 'out' | 'free' | 'held';
}

export interface Outcome {
  readonly readings: readonly Reading[];
  readonly seen: Seen;
  readonly events: readonly { readonly at: Seconds; readonly what: Happening['what'] }[];
  readonly unsafe: readonly UnsafeAct[];
  /** Why nothing was done, where the bench did not allow it. */
  readonly refused: Refusal | null;
  /** What an inspection found that should not be there, or is missing. */
  readonly found: readonly Found[];
}

export function perform(world: World, operation: Operation): Outcome {
  world.operations += 1;
  const key = String(world.operations);
  world.happenings = [];
  const unsafe = unsafeIn(world, operation);
  const { readings, refused, found } = act(world, operation, key);
  if (!PASSIVE.includes(operation.op) || changesState(operation)) world.changedAt = world.timeline.now;
  return {
    readings,
    seen: look(world),
    events: world.happenings.map(({ at, what }) => ({ at: seconds(at), what })),
    unsafe,
    refused,
    found,
  };
}

const changesState = (operation: Operation): boolean =>
  operation.op === 'measure' && operation.quantity === 'opening-time';

export function look(world: World): Seen {
  const { standIn, plugLock } = world.plant;
  return {
    at: seconds(world.timeline.now),
    indicator: world.indicator,
    plug: !standIn.plugged ? 'out' : plugLock === 'held' ? 'held' : 'free',
  };
}

interface Done {
  readonly readings: readonly Reading[];
  readonly refused: Refusal | null;
  readonly found: readonly Found[];
}
const DONE: Done = { readings: [], refused: null, found: [] };
const refuse = (refused: Refusal): Done => ({ ...DONE, refused });
const COVER_CLOSED = { id: 'cover-closed' } as const satisfies Refusal;
const shows = (...readings: readonly Reading[]): Done => ({ ...DONE, readings });

function act(world: World, operation: Operation, key: string): Done {
  switch (operation.op) {
    case 'isolate':
      return isolate(world, operation);
    case 'energise':
      return energise(world, operation);
    case 'open-cover':
      return set(world, { cover: 'open' });
    case 'close-cover':
      return set(world, { cover: 'closed' });
    case 'check-instruments':
      return checkInstruments(world, operation, key);
    // Nothing stored outlasts switching off in this model, and a guarded area changes nothing electrical: said here
    // so that a procedure may name these steps.
    case 'discharge':
    case 'guard':
    case 'stop':
      return DONE;
    case 'prove-dead':
      return proveDead(world, operation, key);
    case 'disconnect':
    case 'reconnect':
      return remove(world, operation);
    case 'put-right': {
      const refused = putRight(world, operation.what);
      return refused === null ? DONE : refuse(refused);
    }
    case 'link':
    case 'unlink':
      return link(world, operation);
    case 'vehicle':
      return setVehicle(world, operation);
    case 'wait':
      return wait(world, operation.seconds);
    case 'pull-plug':
      return setVehicle(world, { op: 'vehicle', plugged: false });
    case 'press':
      return press(world, operation.button);
    case 'inspect':
      return {
        ...DONE,
        found: world.installation.visible.filter(
          ({ where }) => world.plant.cover === 'open' || !BEHIND_COVER.includes(where),
        ),
      };
    case 'flex-cable':
      return set(world, { flexed: operation.on });
    case 'null-leads':
      world.plant = { ...world.plant, leadsNulled: operation.on };
      return DONE;
    case 'supply':
      return disturb(world, operation);
    case 'reset':
      return reset(world, operation.what);
    case 'measure': {
      const truth = measure(world, operation);
      world.onlooker?.met(world, truth);
      const reading = shown(truth, key, seconds(world.timeline.now), world.draw);
      world.knowledge = learn(world, operation, reading);
      if (!['residual', 'opening-time'].includes(operation.quantity)) pass(world, DURATIONS.measure);
      return shows(reading);
    }
  }
}

type OperationNamed<N extends Operation['op']> = Extract<Operation, { op: N }>;

function set(world: World, change: Parameters<typeof move>[1]): Done {
  const { plant } = world;
  const same = (Object.keys(change) as (keyof typeof change)[]).every((key) => change[key] === plant[key]);
  if (same) return DONE;
  move(world, change);
  settle(world);
  return DONE;
}

function wait(world: World, time: Seconds): Done {
  pass(world, time);
  return DONE;
}

function isolate(world: World, { at, poles, lock }: OperationNamed<'isolate'>): Done {
  const { site } = world.installation;
  // It has a pole for the neutral, which opens with the lines.
  if (at === 'main-switch') return set(world, { mainOff: livesOf(site), mainLocked: lock });
  const opened =
    poles === 'all'
      ? livesOf(site)
      : polesOpenedBy(site, Math.min(site.circuit.breaker.poles, livesOf(site).length));
  return set(world, { isolated: opened, locked: lock });
}

/** Closes what was opened there, at the origin a tripped breaker too. What was proved dead by it is so no longer. */
function energise(world: World, { at }: OperationNamed<'energise'>): Done {
  const on = at === undefined ? ISOLATORS : [at];
  const stays = offAt(world.plant).some((other) => !on.includes(other));
  world.knowledge = {
    ...world.knowledge,
    provedDead: afterSwitchingOn(world.knowledge.provedDead, on),
    foundLive: stays ? world.knowledge.foundLive : [],
  };
  const done = set(world, {
    ...(on.includes('main-switch') ? { mainOff: [], mainLocked: false } : {}),
    ...(on.includes('origin') ? { isolated: [], locked: false, breaker: 'closed' as const } : {}),
  });
  if (on.includes('origin')) resetTrip(world, 'breaker');
  return done;
}

function checkInstruments(world: World, { known }: OperationNamed<'check-instruments'>, key: string): Done {
  world.plant = { ...world.plant, testerFuse: 'sound' };
  tryDetector(world);
  const { plant, installation, timeline } = world;
  if (known !== true) return wait(world, DURATIONS['check-instruments']);
  const truth = onKnownResistor(plant.leadsNulled, installation.tester);
  world.onlooker?.met(world, truth);
  const reading = shown(truth, key, seconds(timeline.now), world.draw);
  pass(world, DURATIONS['check-instruments']);
  return shows(reading);
}

function proveDead(world: World, operation: OperationNamed<'prove-dead'>, key: string): Done {
  const { at, tool, proof } = operation;
  const outOfReach = at === 'supply' && world.plant.cover === 'closed';
  const tries = tool === 'two-pole' && proof !== 'none';
  if (tries) tryDetector(world);
  if (!outOfReach) strain(world, tool);
  const readings = pairsOf([...livesOf(world.installation.site), 'PE']).map(([x, y]) => {
    const between = [`${at}.${x}`, `${at}.${y}`] as const;
    const truth: Truth = outOfReach
      ? { quantity: 'voltage', refused: COVER_CLOSED, details: { between, tool } }
      : voltage(leadsOn(world, ...between), tool, world.plant.duty, { between }, leadOf(world, tool));
    world.onlooker?.met(world, truth);
    return shown(truth, `${key} ${x}-${y}`, seconds(world.timeline.now), world.draw);
  });
  if (tries && proof === 'both') tryDetector(world);
  learnProved(world, operation, readings);
  pass(world, DURATIONS['prove-dead']);
  return { ...shows(...readings), refused: outOfReach ? COVER_CLOSED : null };
}

/** The detector on its proving unit. Dark there it fails, and whoever holds it sees that. */
function tryDetector(world: World): void {
  if (showsProvingUnit(world)) return;
  if (!showDark(world.happenings)) happen(world, DARK);
  const { knowledge } = world;
  world.knowledge = { ...knowledge, detectorFailed: true, provedDead: afterDark(knowledge.provedDead) };
}

/** What one proving at a place has shown: dead only by a detector that was tried before and after, live by any tool. */
function learnProved(
  world: World,
  operation: OperationNamed<'prove-dead'>,
  readings: readonly Reading[],
): void {
  const { knowledge, timeline, plant } = world;
  if (!isIsolated(plant)) return;
  const { at, tool, proof } = operation;
  const others = knowledge.foundLive.filter((place) => place !== at);
  const wasDark = showDark(world.happenings);
  const isDead = showDead(readings) && tool === 'two-pole' && proof === 'both' && !wasDark;
  world.knowledge = {
    ...knowledge,
    provedDead: afterProving(knowledge.provedDead, { ...operation, wasDark }, readings, {
      at: timeline.now,
      off: offAt(plant),
    }),
    foundLive: showLive(readings) ? [...others, at] : isDead ? others : knowledge.foundLive,
  };
}

function remove(world: World, { op, what }: OperationNamed<'disconnect' | 'reconnect'>): Done {
  const { removed, cover } = world.plant;
  const { site, design } = world.installation;
  if ((what === 'unit' || what === 'arrester') && cover === 'closed') return refuse(COVER_CLOSED);
  if (what === 'electrode' && site.earthing !== 'TT') return refuse({ id: 'no-electrode' });
  if (what === 'earthing-conductor' && site.earthing === 'TT') return refuse({ id: 'no-earthing-conductor' });
  if (what === 'arrester' && !design.sheet.surgeArrester) return refuse({ id: 'no-arrester' });
  const others = removed.filter((x) => x !== what);
  return set(world, { removed: op === 'disconnect' ? [...others, what] : others });
}

function link(world: World, { op, between }: OperationNamed<'link' | 'unlink'>): Done {
  const ends = between.map((probe) => (typeof probe === 'string' ? probe : '')).sort();
  const wanted = linesOf(world.installation.site)
    .flatMap((x): Link[] => [`${x}-PE`, `${x}-N`])
    .find(
      (x) =>
        ends.join() ===
        x
          .split('-')
          .map((end) => `origin.${end}`)
          .sort()
          .join(),
    );
  if (wanted === undefined) return refuse({ id: 'no-such-link' });
  const others = world.plant.links.filter((x) => x !== wanted);
  return set(world, { links: op === 'link' ? [...others, wanted] : others });
}

function setVehicle(world: World, { op: _, ...settings }: OperationNamed<'vehicle'>): Done {
  const { standIn, plugLock } = world.plant;
  const heldFast = settings.plugged === false && standIn.plugged && plugLock === 'held';
  const named = Object.fromEntries(Object.entries(settings).filter(([, value]) => value !== undefined));
  const done = set(world, {
    standIn: { ...standIn, ...named, ...(heldFast ? { plugged: true } : {}) },
  });
  return heldFast ? refuse({ id: 'plug-held' }) : done;
}

/** The test button is a resistor across the sensor while it is held down; the others are signals to the control. */
function press(world: World, button: OperationNamed<'press'>['button']): Done {
  if (button !== 'residual-test') {
    send(world, { type: 'button', button });
    settle(world);
    return wait(world, DURATIONS.press);
  }
  set(world, { testButton: true });
  pass(world, DURATIONS.press);
  return set(world, { testButton: false });
}

/** What is not named stays; voltage and neighbours go back to what the site has of itself, which nobody need know. */
function disturb(world: World, { op: _, voltage, neighbours, ...others }: OperationNamed<'supply'>): Done {
  const { site } = world.installation;
  if (others.nextPoint !== undefined && site.nextPoint === undefined) return refuse({ id: 'no-next-point' });
  const settings = {
    ...others,
    voltage: voltage === null ? site.voltage : voltage,
    neighbours: neighbours === null ? site.neighbours : neighbours,
  };
  return set(world, Object.fromEntries(Object.entries(settings).filter(([, value]) => value !== undefined)));
}

function reset(world: World, what: OperationNamed<'reset'>['what']): Done {
  switch (what) {
    case 'unit':
      if (world.plant.unitBreaker === 'tripped') {
        move(world, { unitBreaker: 'closed' });
        resetTrip(world, 'residual');
        resetTrip(world, 'direct');
        settle(world);
      }
      send(world, { type: 'button', button: 'reset' });
      settle(world);
      return wait(world, DURATIONS['reset unit']);
    case 'upstream':
      move(world, { upstream: 'closed' });
      resetTrip(world, 'upstream');
      settle(world);
      return wait(world, DURATIONS['reset upstream']);
    case 'supply': {
      if (isIsolated(world.plant)) return refuse({ id: 'supply-off' });
      const { isolated } = world.plant;
      set(world, { isolated: livesOf(world.installation.site) });
      pass(world, DURATIONS['reset supply']);
      world.knowledge = { ...world.knowledge, provedDead: {} };
      return set(world, { isolated });
    }
  }
}
