/**
 * Every named state can be reached, and whatever is done a closed contactor stands on a sound pilot: a breadth-first
 * search over the real chart, with waiting (and so every timer) among the events.
 */
import { expect, test } from 'vitest';
import type { AnyStateNode } from 'xstate';
import { unitChart } from '../../src/unit/unitChart.ts';
import { type Rig, running } from './harness.ts';

type Move = readonly [name: string, (unit: Rig) => void];

const MOVES: readonly Move[] = [
  ...(['A', 'B', 'C', 'D', 'E', 'invalid', 'F'] as const).map(
    (pilot): Move => [pilot, (u) => u.sense({ pilot })],
  ),
  ['low half wrong', (u) => u.sense({ lowHalf: 'wrong' })],
  ['low half sound', (u) => u.sense({ lowHalf: 'sound' })],
  ['supply low', (u) => u.sense({ supply: 'low' })],
  ['line missing', (u) => u.sense({ missing: ['L2'] })],
  ['contact closed', (u) => u.sense({ linkedContact: 'closed' })],
  ['contact open', (u) => u.sense({ linkedContact: 'open' })],
  ['plug held', (u) => u.sense({ plug: 'held' })],
  ['residual trip', (u) => u.trip('residual')],
  ['direct trip', (u) => u.trip('direct')],
  ['authorise', (u) => u.press('authorise')],
  ['override', (u) => u.press('override-delay')],
  ['reset', (u) => u.press('reset')],
  ['stop', (u) => u.press('stop')],
  ['emergency', (u) => u.press('emergency')],
  ['PEN outside', (u) => u.sense({ pen: 'outside' })],
  ['PEN within', (u) => u.sense({ pen: 'within' })],
  ['peak', (u) => u.sense({ peak: true })],
  ['limit 10 A', (u) => u.sense({ limit: 10 })],
  ['limit 0 A', (u) => u.sense({ limit: 0 })],
  ['wait 25 ms', (u) => u.pass(25)],
  ['wait 0.7 s', (u) => u.pass(700)],
  ['wait 4 s', (u) => u.pass(4000)],
  ['wait 7 s', (u) => u.pass(7000)],
  ['power off', (u) => u.power(false)],
  ['power on', (u) => u.power(true)],
];

const SHEETS = [
  {},
  { outlet: 'socket', startUp: 1 },
  { permission: 'authorise', startDelay: 60, diodeCheck: 'always' },
  { permission: 'held' },
  { schedule: 'default-hours', outlet: 'socket' },
] as const;

/** Names of the chart's states that hold no others, as the rig says them. */
function leavesOf(node: AnyStateNode, path: string): readonly string[] {
  const below = Object.values(node.states);
  const name = (key: string) => (path === '' ? key : `${path}.${key}`);
  return below.length === 0 ? [path] : below.flatMap((child) => leavesOf(child, name(child.key)));
}
const NAMED = leavesOf(unitChart.root, '').map((name) => name.replace('powered.running.', ''));

/** Passed through within one event: permission is asked for and answered at once. */
const NEVER_RESTED_IN = ['permission.asked'];
/** Ways that all searches begin with: nothing plugged in, plugged in, asking, supplying. */
const BEGINNINGS = [
  [],
  ['B', 'low half sound', 'wait 25 ms'],
  ['B', 'plug held', 'authorise', 'override', 'C', 'wait 0.7 s'],
  ['B', 'plug held', 'authorise', 'override', 'C', 'wait 0.7 s', 'contact closed'],
  ['PEN outside', 'wait 7 s'],
  ['peak', 'B', 'wait 25 ms'],
  ...['D', 'E', 'invalid', 'F'].map((band) => [band, 'wait 25 ms']),
];
/** Moves in a row after that, and configurations of one sheet that are looked at. */
const DEEPEST = 4;
const MOST = 900;

const replay = (sheet: (typeof SHEETS)[number], path: readonly Move[]): Rig => {
  const unit = running({ ...sheet, startUp: 1 }, { follows: false });
  unit.sense({ plug: 'in', proximity: 32 });
  for (const [, move] of path) move(unit);
  return unit;
};

/** Where a unit is, as far as what comes next depends on it. */
const keyOf = (unit: Rig): string => JSON.stringify([unit.states(), unit.actor.getSnapshot().context.sensed]);

/** A driven coil without one of these would be a fault of the logic (IEC 61851-1:2017 6.3.1). */
function complaint(unit: Rig): string | null {
  const { coil, pilot } = unit.commands();
  if (!coil) return null;
  // An offer that was withdrawn leaves the vehicle its time before supply opens under load (Table A.6, 10.2).
  const draining = unit.is('contactor.draining');
  const needed = [
    'supply.within',
    ...(draining ? [] : ['oscillation.on']),
    'residual.ready',
    'direct.ready',
    'permission.allowed',
  ];
  const lacking = needed.filter((state) => !unit.is(state));
  if (pilot !== 'oscillating' && !draining) lacking.push('an oscillating pilot');
  if (!unit.states().some((state) => /^level\.C/.test(state))) lacking.push('a request');
  return lacking.length === 0 ? null : lacking.join(', ');
}

function search(sheet: (typeof SHEETS)[number], reached: Set<string>): readonly string[] {
  const seen = new Set<string>();
  let frontier: readonly (readonly Move[])[] = BEGINNINGS.map((names) =>
    names.map((name) => MOVES.find((move) => move[0] === name) as Move),
  );
  const complaints: string[] = [];
  for (let depth = 0; depth <= DEEPEST && seen.size < MOST; depth++) {
    const next: (readonly Move[])[] = [];
    for (const path of frontier) {
      if (seen.size >= MOST) break;
      const unit = replay(sheet, path);
      const key = keyOf(unit);
      if (seen.has(key)) continue;
      seen.add(key);
      for (const state of unit.states()) reached.add(state);
      const wrong = complaint(unit);
      if (wrong !== null) complaints.push(`${path.map(([name]) => name).join(', ')}: ${wrong}`);
      next.push(...MOVES.map((move) => [...path, move]));
    }
    frontier = next;
  }
  return complaints;
}

test('every named state is reached, and no coil is driven without its conditions', {
  timeout: 60_000,
}, () => {
  const reached = new Set<string>();
  expect(SHEETS.flatMap((sheet) => search(sheet, reached))).toEqual([]);
  expect([...reached].sort()).toEqual(NAMED.filter((name) => !NEVER_RESTED_IN.includes(name)).sort());
});
