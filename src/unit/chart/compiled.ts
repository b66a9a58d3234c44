/**
 * The unit's statechart as flat lists, made once of what the library makes of its definition: states in document order,
 * each way out with all that it leaves and enters, guards and changes as functions. step.ts goes by them as the
 * library's own actor goes by the chart; tests hold the two against each other.
 */
import type { AnyStateNode, AnyTransitionDefinition } from 'xstate';
import type { UnitTag } from '../regions/setup.ts';
import { unitChart } from '../unitChart.ts';
import { type Action, actionOf } from './actions.ts';
import { type Guard, guardOf } from './guards.ts';

export interface Transition {
  readonly guard: Guard | null;
  readonly actions: readonly Action[];
  /** Null: it does its actions, and the chart stays where it is. */
  readonly way: Way | null;
}

export interface Way {
  /** All nodes that may be left, from one to before another: the chart leaves those of them that it is in. */
  readonly from: number;
  readonly to: number;
  readonly enters: readonly number[];
}

export interface Node {
  readonly key: string;
  readonly children: readonly number[];
  readonly isParallel: boolean;
  readonly entry: readonly Action[];
  readonly exit: readonly Action[];
}

export interface Taker {
  readonly index: number;
  /** What is inside it ends before this node. */
  readonly end: number;
  readonly ways: readonly Transition[];
}

export interface Compiled {
  /** In document order: what is inside a node follows it without a gap. */
  readonly nodes: readonly Node[];
  readonly initial: readonly number[];
  /** Nodes with nothing inside and ways out that wait for no event: their own, then those of the nodes round them. */
  readonly innermost: readonly { readonly index: number; readonly always: readonly Transition[] }[];
  /** Nodes with ways out on an event, the last first: whatever is inside a node comes before it. */
  readonly takers: ReadonlyMap<string, readonly Taker[]>;
  readonly tagged: ReadonlyMap<UnitTag, readonly number[]>;
  readonly mostMicrosteps: number;
}

let made: Compiled | null = null;

/** The unit's chart in this form, made when it is first asked for. Throws Error for what the form has no place for. */
export const compiledChart = (): Compiled => {
  made ??= compile();
  return made;
};

function compile(): Compiled {
  const { root, options } = unitChart();
  const states = [root, ...inside(root)];
  const always = new Map(states.map((state) => [state, (state.always ?? []).map(transitionOf)]));
  const tags = new Set(states.flatMap((state) => state.tags as UnitTag[]));
  return {
    nodes: states.map((state) => ({
      key: state.key,
      children: childrenOf(state).map(({ order }) => order),
      isParallel: state.type === 'parallel',
      entry: state.entry.map(actionOf),
      exit: state.exit.map(actionOf),
    })),
    initial: [root, ...atFirstIn(root)].map(({ order }) => order),
    innermost: states
      .filter(({ type }) => type === 'atomic')
      .map((state) => ({
        index: state.order,
        always: [state, ...ancestorsOf(state)].flatMap((one) => always.get(one) ?? []),
      })),
    takers: takersIn(states),
    tagged: new Map(
      [...tags].map((tag) => [
        tag,
        states.filter((state) => state.tags.includes(tag)).map(({ order }) => order),
      ]),
    ),
    mostMicrosteps: options.maxIterations ?? Infinity,
  };
}

function takersIn(states: readonly AnyStateNode[]): Compiled['takers'] {
  const takers = new Map<string, Taker[]>();
  for (const state of states.toReversed())
    for (const [event, ways] of state.transitions) {
      const taker = { index: state.order, end: endOf(state), ways: ways.map(transitionOf) };
      takers.set(event, [...(takers.get(event) ?? []), taker]);
    }
  return takers;
}

const endOf = (state: AnyStateNode): number => state.order + 1 + inside(state).length;

const childrenOf = (state: AnyStateNode): readonly AnyStateNode[] => Object.values(state.states);

const inside = (state: AnyStateNode): readonly AnyStateNode[] =>
  childrenOf(state).flatMap((child) => [child, ...inside(child)]);

/** What is entered with a state that is entered itself. */
function atFirstIn(state: AnyStateNode): readonly AnyStateNode[] {
  const first = state.type === 'parallel' ? childrenOf(state) : (state.initial.target ?? []);
  return first.flatMap((child) => [child, ...atFirstIn(child)]);
}

const ancestorsOf = ({ parent }: AnyStateNode): readonly AnyStateNode[] =>
  parent === undefined ? [] : [parent, ...ancestorsOf(parent)];

function transitionOf(transition: AnyTransitionDefinition): Transition {
  const { guard, actions, eventType, source } = transition;
  const way = wayOf(transition);
  if (way === null && eventType === '') throw new Error(`"${source.id}" would go nowhere without end`);
  return { guard: guard === undefined ? null : guardOf(guard), actions: actions.map(actionOf), way };
}

function wayOf({ source, target: targets, reenter }: AnyTransitionDefinition): Way | null {
  if (targets === undefined) return null;
  const [target, ...more] = targets;
  const around = ancestorsOf(source);
  // The least node that holds both stays: everything in it is left.
  const domain = around.find((node) => target !== undefined && ancestorsOf(target).includes(node));
  if (target === undefined || domain === undefined || more.length > 0)
    throw new Error(`"${source.id}" leads to no one place`);
  if (!reenter && (target === source || ancestorsOf(target).includes(source)))
    throw new Error(`"${source.id}" leads into itself`);
  const between = ancestorsOf(target).slice(0, ancestorsOf(target).indexOf(domain)).reverse();
  // Regions side by side never get in each other's way.
  const region = around.findIndex(({ type }) => type === 'parallel');
  const leavesRegion = region >= 0 && around.indexOf(domain) >= region;
  if (leavesRegion || [domain, ...between].some(({ type }) => type === 'parallel'))
    throw new Error(`"${source.id}" leads out of its region`);
  return {
    from: domain.order + 1,
    to: endOf(domain),
    enters: [...between, target, ...atFirstIn(target)].map(({ order }) => order),
  };
}
