/** The unit's statechart as a picture in text (Mermaid), a region at a time, made from the chart itself. */
import type { AnyStateNode, AnyTransitionDefinition } from 'xstate';
import type { BuiltIn } from '../unit/chart/guards.ts';
import { AND, NOT, OR, STATE_IN } from '../unit/chart/guards.ts';
import * as conditions from '../unit/regions/conditions.ts';
import { unitChart } from '../unit/unitChart.ts';

const CONDITIONS = new Map<unknown, string>(
  Object.entries(conditions).map(([name, guard]) => [guard, spaced(name)]),
);

/** `mayOffer` as "may offer". */
function spaced(name: string): string {
  return name.replaceAll(/(?<=.)[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

function guardText(guard: unknown): string {
  const named = CONDITIONS.get(guard);
  if (named !== undefined) return named;
  if (typeof guard === 'string') return guard;
  if (typeof guard === 'object') {
    const { type, params } = guard as { type: string; params?: Readonly<Record<string, unknown>> };
    return params === undefined ? type : `${type} ${Object.values(params).join(' ')}`;
  }
  const { check, guards = [], stateValue = '' } = guard as BuiltIn;
  if (check === STATE_IN) return stateValue.replace('#', 'in ');
  const parts = guards.map(guardText);
  if (check === NOT) return parts.map((part) => `not ${/ (and|or) /.test(part) ? `(${part})` : part}`).join();
  if (check === AND) return parts.map((part) => (part.includes(' or ') ? `(${part})` : part)).join(' and ');
  if (check === OR) return parts.map((part) => (part.includes(' and ') ? `(${part})` : part)).join(' or ');
  throw new Error('a guard of the chart is of no known kind');
}

const AFTER = 'xstate.after.';

function wayText({ eventType, guard, source }: AnyTransitionDefinition): string {
  const isAfter = source.after.some((way) => way.eventType === eventType);
  // The library's name of the event that a timer sends is made of the timer's and the state's.
  const event = isAfter ? `after ${eventType.slice(AFTER.length, -source.id.length - 1)}` : eventType;
  const condition = guard === undefined ? '' : `[${guardText(guard)}]`;
  return [event, condition].filter((text) => text !== '').join(' ');
}

/** Setting and stopping its timers is the library's own; what a state takes down has no name. */
const actionsText = (actions: readonly unknown[]): string =>
  actions
    .map((action) => (typeof action === 'string' ? action : (action as { type: string }).type))
    .filter((name) => name !== 'xstate.raise' && name !== 'xstate.cancel')
    .map((name) => (name === 'xstate.assign' ? 'keep in mind' : name))
    .join(', ');

/** Unique in its diagram: the last two names on the way to it. */
const nameOf = ({ path }: AnyStateNode): string => path.slice(-2).join('_').replaceAll(/\W/g, '_');

const waysOf = (state: AnyStateNode): readonly AnyTransitionDefinition[] => [
  ...(state.always ?? []),
  ...[...state.transitions.values()].flat(),
];

/** Arrows to other states. */
const waysOut = (state: AnyStateNode): readonly string[] =>
  waysOf(state).flatMap((way) =>
    (way.target ?? []).map((target) => {
      const done = actionsText(way.actions);
      return `${nameOf(state)} --> ${nameOf(target)}: ${wayText(way) || 'at once'}${done === '' ? '' : ` / ${done}`}`;
    }),
  );

/** What is done on coming and going, and in staying. */
function doneIn(state: AnyStateNode): readonly string[] {
  const stays = waysOf(state).filter(({ target }) => target === undefined);
  const done: readonly (readonly [string, readonly unknown[]])[] = [
    ['on coming', state.entry],
    ['on going', state.exit],
    ...stays.map((way) => [wayText(way), way.actions] as const),
  ];
  return done.flatMap(([when, actions]) => {
    const text = actionsText(actions);
    if (text === '') return [];
    // A state with others inside has no lines of its own.
    const place = Object.keys(state.states).length > 0 ? `note right of ${nameOf(state)} ` : nameOf(state);
    return [`${place}: ${when} / ${text}`];
  });
}

/** What is inside a state, by lines; one that stands in diagrams of its own is drawn closed. */
function linesOf(state: AnyStateNode, isApart: (state: AnyStateNode) => boolean): readonly string[] {
  const inner = Object.values(state.states);
  const first =
    state.type === 'compound' ? (state.initial.target ?? []).map((one) => `[*] --> ${nameOf(one)}`) : [];
  const each = inner.flatMap((one) => {
    const named = `state "${spaced(one.key)}" as ${nameOf(one)}`;
    if (Object.keys(one.states).length === 0 || isApart(one)) return [named];
    return [`${named} {`, ...linesOf(one, isApart).map((line) => `  ${line}`), '}'];
  });
  return [...first, ...each, ...inner.flatMap(doneIn), ...inner.flatMap(waysOut)];
}

/** A region of one state says what is done in it. */
const regionLines = (region: AnyStateNode): readonly string[] =>
  Object.keys(region.states).length > 0
    ? [...doneIn(region), ...linesOf(region, () => false)]
    : [`state "${spaced(region.key)}" as ${nameOf(region)}`, ...doneIn(region)];

const diagram = (title: string, lines: readonly string[]): string =>
  [
    '',
    `## ${title}`,
    '',
    '```mermaid',
    'stateDiagram-v2',
    ...lines.map((line) => `  ${line}`),
    '```',
    '',
  ].join('\n');

/** The whole of `src/unit/unitChart.md`. */
export function chartPicture(): string {
  const { root } = unitChart();
  const running = unitChart().getStateNodeById('unit.powered.running');
  const regions = Object.values(running.states);
  return [
    '# The unit’s control logic, drawn\n',
    '\nMade from the chart itself by `npm run chart`. In a label stands what happens, then in brackets what has to be true;',
    '\nwithout either, the chart goes on at once.\n',
    diagram(
      'Supply',
      linesOf(root, (state) => state === running),
    ),
    ...regions.map((region) => diagram(`While it runs: ${spaced(region.key)}`, regionLines(region))),
  ].join('');
}
