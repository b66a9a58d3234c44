/**
 * What the chart makes of an event in a state: microstep after microstep until nothing is left to do, as SCXML has it
 * (W3C 2015) and the library's actor does it. Pure.
 */
import type { AskedDesign } from '../asked.ts';
import type { UnitTag } from '../regions/setup.ts';
import { beginningContext } from '../unitChart.ts';
import type { Action, Order } from './actions.ts';
import { compiledChart, type Node, type Transition } from './compiled.ts';
import type { Question } from './guards.ts';
import type { ChartEvent, Standing } from './standing.ts';

export interface Step {
  readonly to: Standing;
  /** What is asked of whoever runs the chart, in this order. */
  readonly orders: readonly Order[];
}

const BEGIN = { type: 'xstate.after.nothing' } as const;

/** A unit of this design without power. */
export function beginning(design: AskedDesign): Step {
  const { nodes, initial } = compiledChart();
  const context = beginningContext(design);
  const orders: Order[] = [];
  const nowhere = { active: new Uint8Array(nodes.length), context };
  const first = { guard: null, actions: [], way: { from: 0, to: 0, enters: initial } };
  return atRest(microstep(nowhere, BEGIN, [first], orders), BEGIN, orders);
}

/** Throws what a guard throws, and Error where the chart runs in a circle. */
export function stepFrom(at: Standing, event: ChartEvent): Step {
  const orders: Order[] = [];
  return atRest(microstep(at, event, chosen(at, event), orders), event, orders);
}

/** Whether it is in a state of this tag. */
export const hasTag = ({ active }: Standing, tag: UnitTag): boolean =>
  (compiledChart().tagged.get(tag) ?? []).some((node) => active[node] === 1);

export type StateValue = string | { readonly [key: string]: StateValue };

/** The names of the states that it is in, as the library writes them. */
export function stateValueOf(
  { active }: Standing,
  node: Node = compiledChart().nodes[0] as Node,
): StateValue {
  const { nodes } = compiledChart();
  const below = node.children.filter((child) => active[child] === 1).map((child) => nodes[child] as Node);
  const [only] = below;
  if (only !== undefined && !node.isParallel && only.children.length === 0) return only.key;
  return Object.fromEntries(below.map((child) => [child.key, stateValueOf({ active } as Standing, child)]));
}

function atRest(start: Standing, event: ChartEvent, orders: Order[]): Step {
  const { mostMicrosteps } = compiledChart();
  let at = start;
  for (let taken = 0; taken < mostMicrosteps; taken++) {
    const next = unasked(at, event);
    if (next.length === 0) return { to: at, orders };
    at = microstep(at, event, next, orders);
  }
  throw new Error(`the chart runs in a circle: more than ${mostMicrosteps} microsteps on "${event.type}"`);
}

/** In each region the innermost way out that takes the event; around them only where none does. */
function chosen(at: Standing, event: ChartEvent): readonly Transition[] {
  const question: Question = { active: at.active, context: at.context, event };
  const found: Transition[] = [];
  /** The first node in which one was found: whatever holds it has its answer. */
  let first = Infinity;
  for (const { index, end, ways } of compiledChart().takers.get(event.type) ?? []) {
    if (at.active[index] === 0 || (first > index && first < end)) continue;
    const way = openAmong(ways, question);
    if (way === undefined) continue;
    found.unshift(way);
    first = index;
  }
  return found;
}

/** The ways out that wait for no event, one at most of each innermost state. */
function unasked(at: Standing, event: ChartEvent): readonly Transition[] {
  const { innermost } = compiledChart();
  const question: Question = { active: at.active, context: at.context, event };
  const found: Transition[] = [];
  for (const { index, always } of innermost) {
    if (at.active[index] === 0) continue;
    const way = openAmong(always, question);
    if (way !== undefined && !found.includes(way)) found.push(way);
  }
  return found;
}

function openAmong(ways: readonly Transition[], question: Question): Transition | undefined {
  for (const way of ways) if (way.guard === null || way.guard(question)) return way;
  return undefined;
}

/** All at once: whatever is left, from the last node to the first, then the ways' own actions, then what is entered. */
function microstep(
  at: Standing,
  event: ChartEvent,
  transitions: readonly Transition[],
  orders: Order[],
): Standing {
  if (transitions.length === 0) return at;
  const { nodes } = compiledChart();
  const active = at.active.slice();
  let { context } = at;
  const act = (actions: readonly Action[]): void => {
    for (const action of actions)
      if ('order' in action) orders.push(action.order);
      else context = { ...context, ...action.change(context, event) };
  };
  for (let i = transitions.length - 1; i >= 0; i--) {
    const { way } = transitions[i] as Transition;
    if (way === null) continue;
    for (let node = way.to - 1; node >= way.from; node--)
      if (active[node] === 1) {
        active[node] = 0;
        act((nodes[node] as Node).exit);
      }
  }
  for (const { actions } of transitions) act(actions);
  for (const { way } of transitions)
    for (const node of way?.enters ?? []) {
      active[node] = 1;
      act((nodes[node] as Node).entry);
    }
  return { active, context };
}
