/**
 * Every named state can be reached, and whatever is done a coil is driven only on its conditions: the shortest paths
 * to every state of the real chart, found by xstate's own graph tools. Given a list of events those tools never take a
 * timer: here the timers of the states that are active stand among the events, each of which may run out first. Time
 * itself, and which timer is the shorter, is timing.test.ts's business.
 */
import { describe, expect, test } from 'vitest';
import type { AnyStateNode } from 'xstate';
import { getShortestPaths } from 'xstate/graph';
import type { UnitSheet } from '../../src/unit/design.ts';
import type { Button, PilotBand, Sensed, UnitEvent } from '../../src/unit/sensed.ts';
import type { UnitSnapshot } from '../../src/unit/unitChart.ts';
import { commandsOf, unitChart } from '../../src/unit/unitChart.ts';
import { designOf } from '../bench/build.ts';
import { statesIn, TIMING } from './harness.ts';

/** One kind of unit and what may happen to it: all that can come of that is looked at, to the last state. */
interface Space {
  readonly about: string;
  readonly sheet: Partial<UnitSheet>;
  readonly sensed: readonly Partial<Sensed>[];
  readonly events: readonly UnitEvent[];
}

const pilots = (...bands: readonly PilotBand[]) => bands.map((pilot) => ({ pilot }));
const press = (...buttons: readonly Button[]) =>
  buttons.map((button): UnitEvent => ({ type: 'button', button }));

/** A vehicle that comes, asks and goes, and contacts that follow the coil or do not. */
const CHARGING: readonly Partial<Sensed>[] = [
  ...pilots('A', 'B', 'C'),
  { linkedContact: 'closed' },
  { linkedContact: 'open' },
];
const LOW_HALVES: readonly Partial<Sensed>[] = [{ lowHalf: 'sound' }, { lowHalf: 'wrong' }];
const LOCK: readonly Partial<Sensed>[] = [
  { plug: 'in', proximity: 32 },
  { plug: 'held' },
  { plug: 'out', proximity: 'none' },
];

const SPACES: readonly Space[] = [
  {
    about: 'every band of the pilot',
    sheet: { ventilation: true },
    sensed: [...CHARGING, ...pilots('D', 'E', 'invalid', 'F')],
    events: press('reset'),
  },
  {
    about: 'the diode, looked at before closing',
    sheet: {},
    sensed: [...CHARGING, ...LOW_HALVES],
    events: [],
  },
  {
    about: 'the diode, always watched',
    sheet: { diodeCheck: 'always' },
    sensed: [...CHARGING, ...LOW_HALVES],
    events: press('reset'),
  },
  {
    about: 'the supply',
    sheet: {},
    sensed: [...CHARGING, { supply: 'low' }, { supply: 'within' }, { missing: ['L2'] }, { missing: [] }],
    events: [],
  },
  {
    about: 'an open PEN',
    sheet: { openPen: 'earth-sensing' },
    sensed: [...CHARGING, { pen: 'outside' }, { pen: 'within' }],
    events: press('reset'),
  },
  {
    about: 'stops by hand',
    sheet: {},
    sensed: CHARGING,
    events: press('stop', 'emergency', 'reset'),
  },
  {
    about: 'trips',
    sheet: {},
    sensed: CHARGING,
    events: [{ type: 'residual trip' }, { type: 'direct trip' }, ...press('reset')],
  },
  { about: 'the load limit', sheet: {}, sensed: [...CHARGING, { limit: 10 }, { limit: 0 }], events: [] },
  {
    about: 'permission, hours and random delay',
    sheet: { permission: 'authorise', schedule: 'default-hours', startDelay: 60 },
    sensed: [...CHARGING, { peak: true }, { peak: false }],
    events: press('authorise', 'override-delay'),
  },
  { about: 'permission withheld', sheet: { permission: 'held' }, sensed: CHARGING, events: [] },
  {
    about: 'a socket-outlet that holds in B',
    sheet: { outlet: 'socket', holdInB: true },
    sensed: [...CHARGING, ...LOCK],
    events: press('emergency', 'reset'),
  },
  {
    about: 'a socket-outlet that holds in C',
    sheet: { outlet: 'socket', holdInB: false },
    sensed: [...CHARGING, ...LOCK],
    events: press('reset'),
  },
];

/** What may happen next in a state: all that the space names, and any timer that runs. */
const nextEvents =
  ({ sensed, events }: Space) =>
  ({ context, _nodes }: UnitSnapshot): readonly UnitEvent[] => [
    { type: 'power', on: true },
    { type: 'power', on: false },
    ...sensed.map((change): UnitEvent => ({ type: 'sensed', sensed: { ...context.sensed, ...change } })),
    ...events,
    // The chart's own events, which are no part of its public ones.
    ..._nodes.flatMap(({ after }) =>
      after.map(({ eventType }) => ({ type: eventType }) as unknown as UnitEvent),
    ),
  ];

/** A state is what decides what comes next. Sessions are counted without end and only spread random delays. */
const keyOf = ({ value, context: { sensed, candidate, limit } }: UnitSnapshot): string =>
  JSON.stringify([value, sensed, candidate, limit]);

const searched = new Map<Space, ReturnType<typeof search>>();

const search = (space: Space) =>
  getShortestPaths(unitChart, {
    input: { design: { ...designOf(space.sheet), timing: TIMING } },
    events: nextEvents(space),
    serializeState: keyOf,
  });

/** The shortest path to every state of a space; each space is searched once. */
function pathsIn(space: Space): ReturnType<typeof search> {
  const paths = searched.get(space) ?? search(space);
  searched.set(space, paths);
  return paths;
}

/** A driven coil without one of these would be a fault of the logic (IEC 61851-1:2017 6.3.1). */
function lacking(snapshot: UnitSnapshot): readonly string[] {
  const { coil, pilot } = commandsOf(snapshot);
  if (!coil) return [];
  const states = statesIn(snapshot);
  const { sheet } = snapshot.context.design;
  // An offer that was withdrawn leaves the vehicle its time before supply opens under load (Table A.6, 10.2).
  const draining = states.includes('contactor.draining');
  const asks = sheet.ventilation ? /^level\.[CD]/ : /^level\.C/;
  return [
    ...['supply.within', 'residual.ready', 'direct.ready', 'permission.allowed'].filter(
      (state) => !states.includes(state),
    ),
    ...(draining || (states.includes('oscillation.on') && pilot === 'oscillating') ? [] : ['an offer']),
    ...(states.some((state) => asks.test(state)) ? [] : ['a request']),
    ...(sheet.outlet === 'tethered' || snapshot.context.sensed.plug === 'held'
      ? []
      : ['a plug that is held']),
  ];
}

const told = (steps: ReturnType<typeof search>[number]['steps']): string =>
  steps.map(({ event }) => JSON.stringify(event)).join(', ');

describe('no coil is driven without its conditions', () => {
  test.each(SPACES)('$about', { timeout: 60_000 }, (space) => {
    const paths = pathsIn(space);
    console.log(`${space.about}: ${paths.length} states`);
    expect(paths.some(({ state }) => commandsOf(state).coil)).toBe(space.sheet.permission !== 'held');
    const wrong = paths.flatMap(({ state, steps }) =>
      lacking(state).map((what) => `${told(steps)}: ${what}`),
    );
    expect(wrong.slice(0, 3)).toEqual([]);
  });
});

/** Names of the chart's states that hold no others. */
function leavesOf(node: AnyStateNode, path: string): readonly string[] {
  const below = Object.values(node.states);
  const name = (key: string) => (path === '' ? key : `${path}.${key}`);
  return below.length === 0 ? [path] : below.flatMap((child) => leavesOf(child, name(child.key)));
}
const NAMED = leavesOf(unitChart.root, '').map((name) => name.replace('powered.running.', ''));

/** Passed through within one event: permission is asked for and answered at once. */
const NEVER_RESTED_IN = ['permission.asked'];

/** What stays until something is done about it. */
const LATCHES = [
  'supervision.latched.E',
  'supervision.latched.diode',
  'supervision.latched.F',
  'openPen.lockedOut.hazard',
  'openPen.lockedOut.over',
  'residual.tripped',
  'direct.tripped',
  'stopping.stopped',
  'stopping.emergency',
  'contactor.failedToOpen',
  'contactor.failedToClose',
  'retention.jammed',
];

describe('reached', { timeout: 60_000 }, () => {
  const reached = (name: string): boolean =>
    SPACES.some((space) => pathsIn(space).some(({ state }) => statesIn(state).includes(name)));

  test.each(NAMED)('%s', (name) => {
    expect(reached(name)).toBe(!NEVER_RESTED_IN.includes(name));
  });

  test('every latch is one of these states', () => {
    expect(NAMED).toEqual(expect.arrayContaining(LATCHES));
  });
});
