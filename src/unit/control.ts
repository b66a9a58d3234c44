/**
 * The control of one unit: its chart at work, as plain data that nobody changes. Takes events; the timers it asks for
 * run on whatever clock its owner has, and come back as events.
 */
import type { Seconds } from '../laws/quantities.ts';
import { type Known, type KnownStep, knownBeginning } from './chart/known.ts';
import type { ChartEvent } from './chart/standing.ts';
import type { UnitDesign } from './design.ts';
import { TIMERS } from './timers.ts';

export interface Control {
  readonly design: UnitDesign;
  /** Where its chart stands, and what it drives there. */
  readonly snapshot: Known;
  /** Sessions since it began, and later starts and ends in this one: each draws its own random delay. */
  readonly session: number;
  readonly again: number;
}

/** A timer to be started, which ends in its event, or one to be stopped if it is running. */
export type TimerOrder =
  | { readonly start: string; readonly time: Seconds; readonly event: ChartEvent }
  | { readonly stop: string };

export interface Turn {
  readonly control: Control;
  /** To be followed in this order. */
  readonly orders: readonly TimerOrder[];
}

/** A unit without power. */
export const unpowered = (design: UnitDesign): Turn => turned(design, knownBeginning(design), 0, 0);

/** What an event makes of it. Throws what the chart throws. */
export const after = ({ design, snapshot, session, again }: Control, event: ChartEvent): Turn =>
  turned(design, snapshot.after(event), session, again);

function turned(design: UnitDesign, { to, orders: asked }: KnownStep, session: number, again: number): Turn {
  const counted = { session, again };
  const orders: TimerOrder[] = [];
  for (const order of asked)
    if (order === 'new session') {
      counted.session += 1;
      counted.again = 0;
    } else if (order === 'delay again') counted.again += 1;
    else if ('stop' in order) orders.push(order);
    else {
      const time = TIMERS[order.timer](design, counted.session, counted.again);
      orders.push({ start: order.start, time, event: order.event });
    }
  return { control: { design, snapshot: to, ...counted }, orders };
}
