/** The chart's actions: a change of what it has in mind, or an order to whoever runs it. */
import type { UnitContext } from '../regions/setup.ts';
import { TIMERS, type TimerName } from '../timers.ts';
import { unitChart } from '../unitChart.ts';
import type { ChartEvent } from './standing.ts';

/** To start a timer, to stop one, to count a session or a delay in it. */
export type Order =
  | { readonly start: string; readonly timer: TimerName; readonly event: ChartEvent }
  | { readonly stop: string }
  | 'new session'
  | 'delay again';

export type Change = (context: UnitContext, event: ChartEvent) => Partial<UnitContext>;

export type Action = { readonly change: Change } | { readonly order: Order };

type Assigned = (about: { context: UnitContext; event: ChartEvent }, params: unknown) => unknown;

/** What the library makes of an action: `assign`, and of a delayed transition `raise` and `cancel`. */
interface BuiltIn {
  readonly type?: string;
  readonly assignment?: Assigned | Readonly<Record<string, unknown>>;
  readonly event?: ChartEvent;
  readonly delay?: TimerName;
  readonly id?: string;
  readonly sendId?: string;
}

/** Throws Error for an action that nobody would carry out. */
export function actionOf(action: unknown): Action {
  if (typeof action === 'function') return builtIn(action as BuiltIn, undefined);
  const { type, params } = typeof action === 'string' ? { type: action } : (action as Named);
  if (type === 'new session' || type === 'delay again') return { order: type };
  const actions = unitChart().implementations.actions as unknown as Record<string, BuiltIn | undefined>;
  return builtIn(actions[type] ?? { type }, params);
}

interface Named {
  readonly type: string;
  readonly params?: unknown;
}

function builtIn(action: BuiltIn, params: unknown): Action {
  const { type, assignment, event, delay, id, sendId } = action;
  if (assignment !== undefined) return { change: changeOf(assignment, params) };
  if (type === 'xstate.cancel' && sendId !== undefined) return { order: { stop: sendId } };
  if (type === 'xstate.raise' && id !== undefined && event !== undefined && delay !== undefined)
    if (delay in TIMERS) return { order: { start: id, timer: delay, event } };
  throw new Error(`nobody carries out the chart's action "${type}"`);
}

function changeOf(assignment: NonNullable<BuiltIn['assignment']>, params: unknown): Change {
  if (typeof assignment === 'function')
    return (context, event) => assignment({ context, event }, params) as Partial<UnitContext>;
  const parts = Object.entries(assignment);
  return (context, event) =>
    Object.fromEntries(
      parts.map(([name, to]) => [
        name,
        typeof to === 'function' ? (to as Assigned)({ context, event }, params) : to,
      ]),
    );
}
