/**
 * Shortest paths through the real chart, by xstate's own graph tools: every named state and latch is reached, and on no
 * path is a coil driven without its conditions; and on every event in every state the compiled chart, by which units
 * run, does what xstate does, down to the order in which timers are started and stopped. The whole chart has too many states to be walked at once, so it is
 * walked in themes, each with the events that it is about, on a sheet that has them.
 *
 * Given a list of events alone the tools never let time pass. So every timer that is running is among the events, and
 * any of them may be the next: more orders than real clocks allow, and the conditions have to hold in all of them.
 */
import { expect, test } from 'vitest';
import type { AnyStateNode } from 'xstate';
import { getShortestPaths } from 'xstate/graph';
import { askedOf } from '../../src/unit/asked.ts';
import type { Order } from '../../src/unit/chart/actions.ts';
import { compiledChart } from '../../src/unit/chart/compiled.ts';
import type { ChartEvent, Standing } from '../../src/unit/chart/standing.ts';
import { stepFrom } from '../../src/unit/chart/step.ts';
import type { UnitSheet } from '../../src/unit/design.ts';
import type { Button, Sensed, UnitEvent } from '../../src/unit/sensed.ts';
import type { UnitChart, UnitSnapshot } from '../../src/unit/unitChart.ts';
import { commandsOf, unitChart } from '../../src/unit/unitChart.ts';
import { designOf } from '../bench/build.ts';
import { leavesIn } from './harness.ts';

type Move = (at: UnitSnapshot) => UnitEvent;
const sensed =
  (change: Partial<Sensed>): Move =>
  ({ context }) => ({ type: 'sensed', sensed: { ...context.sensed, ...change } });
const pressed =
  (button: Button): Move =>
  () => ({ type: 'button', button });

const [inA, inB, inC, inD] = (['A', 'B', 'C', 'D'] as const).map((pilot) => sensed({ pilot })) as [
  Move,
  Move,
  Move,
  Move,
];
const soundHalf = sensed({ lowHalf: 'sound' });
const closes = sensed({ linkedContact: 'closed' });
const opens = sensed({ linkedContact: 'open' });
const charges = [inB, inC, soundHalf, closes];

interface Theme {
  readonly sheet?: Partial<UnitSheet>;
  readonly moves: readonly Move[];
}

const THEMES: Readonly<Record<string, Theme>> = {
  'a vehicle comes, asks and goes': { moves: [inA, ...charges, opens] },
  'a vehicle asks for ventilation': {
    sheet: { ventilation: true },
    moves: [inA, inB, inD, soundHalf, closes],
  },
  'a pilot that is none': {
    moves: [...(['E', 'invalid', 'F'] as const).map((pilot) => sensed({ pilot })), inA, inB, inC, soundHalf],
  },
  'a vehicle without a diode': {
    sheet: { diodeCheck: 'always' },
    moves: [inA, ...charges, sensed({ lowHalf: 'wrong' }), pressed('reset')],
  },
  'its devices trip': {
    moves: [...charges, () => ({ type: 'residual trip' }), () => ({ type: 'direct trip' }), pressed('reset')],
  },
  'a plug at a socket-outlet': {
    sheet: { outlet: 'socket' },
    moves: [
      sensed({ plug: 'in', proximity: 32 }),
      sensed({ plug: 'held' }),
      sensed({ plug: 'out', proximity: 'none', pilot: 'A' }),
      inA,
      inB,
      inC,
      soundHalf,
      sensed({ proximity: 'invalid' }),
    ],
  },
  'permission, hours and delay': {
    sheet: { permission: 'authorise', startDelay: 60, schedule: 'default-hours' },
    moves: [
      inA,
      inB,
      pressed('authorise'),
      pressed('override-delay'),
      sensed({ peak: true }),
      sensed({ peak: false }),
    ],
  },
  'a charge and its hours': {
    sheet: { startDelay: 60, schedule: 'default-hours', hoursEnd: 'delayed' },
    moves: [...charges, inA, sensed({ peak: true }), sensed({ peak: false })],
  },
  'more than the cable’s code': {
    moves: [inA, inC, soundHalf, sensed({ overCode: true }), sensed({ overCode: false })],
  },
  'permission held back': { sheet: { permission: 'held' }, moves: [inA, inB, inC, soundHalf] },
  'stopped by hand': { moves: [...charges, opens, pressed('stop'), pressed('emergency'), pressed('reset')] },
  'the site’s limit': {
    sheet: { loadLimit: 20 },
    moves: [...charges, sensed({ limit: 0 }), sensed({ limit: 10 })],
  },
  'the supply fails': {
    moves: [
      ...charges,
      sensed({ supply: 'low' }),
      sensed({ supply: 'high' }),
      sensed({ supply: 'within' }),
      sensed({ missing: ['L2'] }),
      sensed({ missing: [] }),
    ],
  },
  'an open PEN': {
    sheet: { openPen: 'voltage-window' },
    moves: [...charges, sensed({ pen: 'outside' }), sensed({ pen: 'within' }), pressed('reset')],
  },
  'a pole that stays closed': { moves: [...charges, opens, inA, pressed('reset')] },
};

/** Timers that are running: the delayed transitions of every state it is in. */
const due = ({ _nodes }: UnitSnapshot): readonly UnitEvent[] => {
  const names = _nodes.flatMap((node) => [...node.transitions.keys()]);
  return [...new Set(names)]
    .filter((name) => name.startsWith('xstate.after.'))
    .map((type) => ({ type }) as unknown as UnitEvent);
};

const whereOf = ({ value, context }: UnitSnapshot): string =>
  JSON.stringify([
    value,
    context.sensed,
    context.candidate,
    context.limit,
    context.kept,
    context.authorised,
    context.overridden,
  ]);

/** A driven coil without one of these would be a fault of the logic (IEC 61851-1:2017 6.3.1). */
function lacking(at: UnitSnapshot): readonly string[] {
  const { coil, pilot } = commandsOf(at);
  if (!coil) return [];
  const states = leavesIn(at.value);
  // D asks as C does where ventilation is declared (6.3.1.4).
  const asks = at.context.design.sheet.ventilation ? /^level\.[CD]/ : /^level\.C/;
  // An offer that was withdrawn leaves the vehicle its time before supply opens under load (Table A.6, 10.2).
  const draining = states.includes('contactor.draining');
  const needed = [
    'supply.within',
    ...(draining ? [] : ['oscillation.on']),
    'residual.ready',
    'direct.ready',
    ...(draining || states.some((state) => state.startsWith('permission.allowed.')) ? [] : ['permission']),
  ];
  return [
    ...needed.filter((state) => !states.includes(state)),
    ...(pilot !== 'oscillating' && !draining ? ['an oscillating pilot'] : []),
    ...(states.some((state) => asks.test(state)) ? [] : ['a request']),
  ];
}

const standingOf = ({ _nodes, context }: UnitSnapshot): Standing => {
  const active = new Uint8Array(compiledChart().nodes.length);
  for (const { order } of _nodes) active[order] = 1;
  return { active, context };
};

/** An action of xstate's as the order that it is; a change of the context is none. */
function ordersIn(action: { readonly type: string; readonly params?: unknown }): readonly string[] {
  const { id, sendId } = (action.params ?? {}) as { readonly id?: string; readonly sendId?: string };
  if (action.type === 'xstate.raise') return [`start ${id}`];
  return [action.type === 'xstate.cancel' ? `stop ${sendId}` : action.type];
}
const said = (order: Order): string =>
  typeof order === 'string' ? order : 'stop' in order ? `stop ${order.stop}` : `start ${order.start}`;

interface Done extends Standing {
  readonly asked: readonly string[];
}

/** The same in everything: asked so often that a matcher for each would take minutes. */
const alike = (x: Done, y: Done): boolean =>
  x.active.every((is, node) => is === y.active[node]) &&
  x.asked.join() === y.asked.join() &&
  Object.entries(x.context).every(([name, value]) => {
    const other = y.context[name as keyof typeof y.context];
    return value === other || JSON.stringify(value) === JSON.stringify(other);
  });

let compared = 0;

/** The real chart, of which every step is held against the compiled one. */
function comparedChart(): UnitChart {
  const chart = unitChart();
  const transition: UnitChart['transition'] = (at, event, around) => {
    const asked: string[] = [];
    const next = chart.transition(at, event, {
      ...around,
      actionExecutor: (action) => asked.push(...ordersIn(action)),
    });
    const { to, orders } = stepFrom(standingOf(at), event as ChartEvent);
    const here = { active: to.active, context: to.context, asked: orders.map(said) };
    const there = { ...standingOf(next), asked };
    if (!alike(here, there)) expect(here, `${whereOf(at)} on ${JSON.stringify(event)}`).toEqual(there);
    compared += 1;
    return next;
  };
  return Object.assign(Object.create(chart) as UnitChart, { transition });
}

const pathsThrough = ({ sheet = {}, moves }: Theme) =>
  getShortestPaths(comparedChart(), {
    input: { design: askedOf(designOf(sheet)) },
    events: (at): readonly UnitEvent[] => [
      { type: 'power', on: true },
      { type: 'power', on: false },
      ...moves.map((move) => move(at)),
      ...due(at),
    ],
    serializeState: whereOf,
    serializeEvent: (event) => JSON.stringify(event),
  });

/** Names of the chart's states that hold no others, as the harness says them. */
function leavesOf(node: AnyStateNode, path: string): readonly string[] {
  const below = Object.values(node.states);
  const name = (key: string) => (path === '' ? key : `${path}.${key}`);
  return below.length === 0 ? [path] : below.flatMap((child) => leavesOf(child, name(child.key)));
}
const NAMED = leavesOf(unitChart().root, '').map((name) => name.replace('powered.running.', ''));

/** Passed through within one event: permission is asked for and answered at once. */
const NEVER_RESTED_IN = ['permission.asked'];

test('every named state is reached, and no coil is driven without its conditions', {
  timeout: 180_000,
}, () => {
  const reached = new Set<string>();
  for (const [theme, how] of Object.entries(THEMES)) {
    const paths = pathsThrough(how);
    expect(paths.length, theme).toBeGreaterThan(20);
    let driven = 0;
    for (const { state, steps } of paths) {
      for (const name of leavesIn(state.value)) reached.add(name);
      if (commandsOf(state).coil) driven++;
      const missing = lacking(state);
      // The way there is put into words only where it is told: there are as many ways as states.
      const words = () => steps.map(({ event }) => JSON.stringify(event)).join(' ');
      if (missing.length > 0) expect(missing, `${theme}: ${words()}`).toEqual([]);
    }
    console.log(`${theme}: ${paths.length} states, a coil driven in ${driven}`);
  }
  console.log(`${compared} steps`);
  expect(compared).toBeGreaterThan(200_000);
  expect([...reached].sort()).toEqual(NAMED.filter((name) => !NEVER_RESTED_IN.includes(name)).sort());
});
