/**
 * How long the outlet stays live after a change at the stand-in: from the change until no line is supplied any more,
 * to PE or to N.
 */
import { microseconds, seconds } from '../../laws/quantities.ts';
import { livesOf } from '../../site/site.ts';
import type { Truth } from '../reading.ts';
import type { Opening } from '../readings/choices.ts';
import { LONGEST } from '../readings/openingTime.ts';
import { advance, move, settle } from '../settle.ts';
import type { StandIn } from '../standIn.ts';
import type { Solution } from '../wiring.ts';
import type { World } from '../world.ts';
import { supplied } from './voltageTools.ts';

/** What is done to the stand-in to start the clock. */
export const OPENING_MOVES = {
  'C-to-B': { state: 'B' },
  'C-to-A': { state: 'A' },
  unplug: { plugged: false, state: 'A' },
  'pilot-short': { pilot: 'shorted-to-earth' },
  'pilot-open': { pilot: 'open' },
  'earth-open': { earth: 'open' },
  'proximity-lost': { coding: null },
} as const satisfies Record<Opening, Partial<StandIn>>;

/** Looked at often, and told by the solved network alone. */
const liveIn = new WeakMap<Solution, boolean>();

export function outletLive(world: World): boolean {
  const known = liveIn.get(world.solution);
  if (known !== undefined) return known;
  const live = livesOf(world.installation.site).some(
    (x) =>
      supplied(world, `outlet.${x}`, 'outlet.PE') ||
      (x !== 'N' && supplied(world, `outlet.${x}`, 'outlet.N')),
  );
  liveIn.set(world.solution, live);
  return live;
}

export function openingTime(world: World, of: Opening): Truth {
  const details = { of };
  if (!outletLive(world))
    return { quantity: 'opening-time', refused: { id: 'not-live', place: 'outlet' }, details };
  const began = world.timeline.now;
  const held = world.plant.plugLock === 'held' && of === 'unplug';
  if (held) return { quantity: 'opening-time', refused: { id: 'plug-held' }, details };
  move(world, { standIn: { ...world.plant.standIn, ...OPENING_MOVES[of] } });
  settle(world);
  advance(world, began + microseconds(LONGEST), (w) => !outletLive(w));
  const stillLive = outletLive(world);
  return {
    quantity: 'opening-time',
    value: stillLive ? Infinity : seconds(world.timeline.now - began),
    details,
  };
}
