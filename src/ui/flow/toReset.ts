/**
 * Reset and wait: what was heard to trip, or what the unit says of itself, each with its reset and the wait after it as one
 * press. It goes by what anybody at the bench hears and sees, never by what is behind it, and says nothing of what the sheet
 * asks for.
 */
import type { Operation } from '../../bench/operation.ts';
import type { Happening } from '../../bench/world.ts';
import { GREATEST_ON_AFTER_READY, LEAST_OSCILLATION_PAUSE } from '../../laws/timing.ts';
import type { Papers } from '../../verification/testAction.ts';
import type { Bench, Happened } from './bench.ts';
import type { ActRow } from './rows.ts';

type Reset = Extract<Operation, { op: 'reset' }>;

/** Words of the unit's display that a reset may take away. */
const STOPPED = ['tripped', 'fault'];

/** Whether it was heard to trip, and not reset since; a reset in which it trips again leaves it to be reset. */
function isOpen(happened: readonly Happened[], what: Happening['what'], by: Reset['what']): boolean {
  const heard = happened.findLastIndex(({ outcome }) => outcome.events.some((one) => one.what === what));
  const reset = happened.findLastIndex(({ operation }) => operation.op === 'reset' && operation.what === by);
  return heard >= 0 && heard >= reset;
}

/**
 * As long as a unit may take from its supply or its reset to a closed contactor, s: its start-up by the sheet and a second
 * more, then the pause and the time to close of IEC 61851-1:2017 (src/laws/timing.ts).
 */
const readyAfter = ({ sheet }: Papers): number =>
  sheet.startUp + 1 + LEAST_OSCILLATION_PAUSE + GREATEST_ON_AFTER_READY;

/**
 * Rows of a reset and a wait, one for each way; none where nothing was heard or seen to have tripped, nor while the circuit is
 * off by hand: no finger shall meet there what closes something.
 */
export function resetsAtHand({ run, happened, position }: Bench): readonly ActRow[] {
  if (position.supply !== 'on' || position.main !== 'on') return [];
  const says = STOPPED.includes(happened.at(-1)?.outcome.seen.indicator ?? '');
  const resets: readonly Reset[] = [
    ...(isOpen(happened, 'upstream device tripped', 'upstream') ? [reset('upstream')] : []),
    ...(says || isOpen(happened, 'unit breaker tripped', 'unit') ? [reset('unit')] : []),
  ];
  const ways = [...(resets.length === 0 ? [] : [resets]), ...(says ? [[reset('supply')]] : [])];
  return ways.map((way) => [...way, { op: 'wait', seconds: readyAfter(run.papers) }]);
}

const reset = (what: Reset['what']): Reset => ({ op: 'reset', what });
