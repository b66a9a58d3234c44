/**
 * One moment of the bench as it truly was, opened: positions, what is driven, the pilot, latches, and the potential
 * of every place that a drawing shows. Plain data; it looks and changes nothing.
 */

import type { Damage } from '../../bench/damages.ts';
import type { Outcome } from '../../bench/perform.ts';
import { contactsOf, poleClosed } from '../../bench/plant.ts';
import { leadsOn } from '../../bench/port.ts';
import type { Reading, Truth } from '../../bench/reading.ts';
import type { Refusal } from '../../bench/refusal.ts';
import type { StandIn } from '../../bench/standIn.ts';
import type { Happening, World } from '../../bench/world.ts';
import { portOf } from '../../bench/world.ts';
import type { Live } from '../../laws/conductors.ts';
import type { Duty, Seconds, Volts } from '../../laws/quantities.ts';
import { seconds } from '../../laws/quantities.ts';
import { difference } from '../../network/potentials.ts';
import { livesOf } from '../../site/site.ts';
import type { Sensed } from '../../unit/sensed.ts';
import type { Commands } from '../../unit/unitChart.ts';
import type { Solved } from './potentials.ts';

export type Position = 'open' | 'closed';

export interface Halves {
  readonly high: Volts;
  readonly low: Volts;
}

/** What an instrument met, and what it showed of it. */
export interface Met {
  readonly truth: Truth;
  readonly reading: Reading;
}

/** Latches and other standing states of the control, by the chart's own tags. */
const LATCHES = [
  'fault',
  'residual tripped',
  'direct tripped',
  'not available',
  'earth opened',
  'stopped',
] as const;
export type Latch = (typeof LATCHES)[number];

/** Everything that stands still between two operations. */
export interface Look extends Solved {
  /** This world's own bench time. */
  readonly at: Seconds;
  readonly origin: Readonly<Partial<Record<Live, Position>>>;
  readonly breaker: 'closed' | 'tripped';
  /** Null where there is none. */
  readonly upstream: 'closed' | 'tripped' | null;
  readonly unitBreaker: 'closed' | 'tripped' | null;
  readonly unit: 'connected' | 'taken-off';
  /** The contactor's poles as they truly are. */
  readonly poles: Readonly<Partial<Record<Live, Position>>>;
  readonly coil: 'driven' | 'not-driven';
  readonly earthPole: Position | null;
  readonly pilot: {
    readonly drive: Commands['pilot'];
    readonly duty: Duty;
    readonly atUnit: Halves;
    readonly atOutlet: Halves;
    readonly band: Sensed['pilot'] | null;
  };
  readonly lock: 'driven' | 'not-driven' | null;
  readonly plug: 'out' | 'free' | 'held';
  /** What the stand-in presents. */
  readonly standIn: Pick<StandIn, 'state' | 'pilot' | 'diode' | 'earth'>;
  readonly indicator: Commands['indicator'];
  readonly latches: readonly Latch[];
  readonly damaged: readonly Damage[];
  /** When anything was last switched, set or moved by hand. */
  readonly changedAt: Seconds;
}

export interface Moment extends Look {
  readonly met: readonly Met[];
  /** What could be heard, and how long after the operation began. */
  readonly heard: readonly { readonly what: Happening['what']; readonly after: Seconds }[];
  readonly refused: Refusal | null;
  readonly found: Outcome['found'];
}

/** The bench as it stands now. */
export function lookInside(world: World, solved: Solved): Look {
  const { plant, installation, control, lastSent } = world;
  const { site, design } = installation;
  const { sheet } = design;
  const lives = livesOf(site);
  const { snapshot } = control;
  const byLive = <T>(of: (live: Live) => T) =>
    Object.fromEntries(lives.map((live) => [live, of(live)])) as Partial<Record<Live, T>>;
  const contacts = contactsOf(site, design);
  return {
    at: seconds(world.timeline.now),
    origin: byLive((live) => (contacts.get(`origin.${live}`)?.(plant) === true ? 'closed' : 'open')),
    breaker: plant.breaker,
    upstream: site.circuit.residualDevice === null ? null : plant.upstream,
    unitBreaker: sheet.residual.by === 'breaker' ? plant.unitBreaker : null,
    unit: plant.removed.includes('unit') ? 'taken-off' : 'connected',
    poles: byLive((live) => (poleClosed(plant, design, live) ? 'closed' : 'open')),
    coil: plant.coil ? 'driven' : 'not-driven',
    earthPole: sheet.openPen === 'none' ? null : plant.earthPole,
    pilot: {
      drive: plant.pilot,
      duty: plant.duty,
      atUnit: halves(world, 'pilot', 'bar'),
      atOutlet: halvesAtOutlet(world),
      band: world.powered ? (lastSent?.pilot ?? null) : null,
    },
    lock: sheet.outlet === 'socket' ? (plant.lockDriven ? 'driven' : 'not-driven') : null,
    plug: !plant.standIn.plugged ? 'out' : plant.plugLock === 'held' ? 'held' : 'free',
    standIn: presented(plant.standIn),
    indicator: world.indicator,
    latches: LATCHES.filter((tag) => snapshot.hasTag(tag)),
    damaged: plant.damaged,
    ...solved,
    changedAt: seconds(world.changedAt),
  };
}

const presented = ({ state, pilot, diode, earth }: StandIn): Look['standIn'] => ({
  state,
  pilot,
  diode,
  earth,
});

function halves(world: World, a: string, b: string): Halves {
  const { high, low } = world.solution.planes;
  const port = portOf(world, a, b);
  return { high: difference(high, port), low: difference(low, port) };
}

function halvesAtOutlet(world: World): Halves {
  const { port } = leadsOn(world, 'outlet.CP', 'outlet.PE');
  const { high, low } = world.solution.planes;
  return { high: difference(high, port), low: difference(low, port) };
}
