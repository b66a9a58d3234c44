// What the trainee has set, folded from the operations; and the operations that bring about another position, in an
// order in which a person can do them.

import { describe, expect, test } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import type { Position } from '../../src/ui/flow/position.ts';
import { operationsBetween, positionAfter, positionAtStart } from '../../src/ui/flow/position.ts';
import type { UnitSheet } from '../../src/unit/design.ts';

const start = positionAtStart({ cable: { coding: 32 } } as UnitSheet);
const after = (from: Position, ...inputs: readonly OperationInput[]): Position =>
  inputs.reduce((position, input) => positionAfter(position, operation(input), false), from);
const named = (list: readonly OperationInput[]): readonly string[] => list.map(({ op }) => op);

const DEAD: Position = { ...start, supply: 'off-locked', cover: 'open', unit: 'taken off' };
const LIVE_C: Position = { ...start, plugged: true, state: 'C' };

describe('the operations between two positions lead from the one to the other', () => {
  test.each([
    ['isolating', start, { ...start, supply: 'off-locked' }, ['isolate']],
    ['to dead work', start, DEAD, ['isolate', 'open-cover', 'disconnect']],
    ['back to power', DEAD, start, ['reconnect', 'close-cover', 'energise']],
    ['plugging in at state C', start, LIVE_C, ['vehicle']],
    ['power, then the vehicle', DEAD, LIVE_C, ['reconnect', 'close-cover', 'energise', 'vehicle']],
    ['the vehicle, then no power', LIVE_C, DEAD, ['vehicle', 'isolate', 'open-cover', 'disconnect']],
    ['from all poles to line poles', DEAD, { ...DEAD, supply: 'off-line-locked' }, ['isolate']],
    ['the main switch off', start, { ...start, main: 'off-locked' }, ['isolate']],
    [
      'both off, the charge ended first',
      LIVE_C,
      { ...start, supply: 'off-locked', main: 'off-unlocked' },
      ['vehicle', 'isolate', 'isolate'],
    ],
    ['both on', { ...start, supply: 'off-locked', main: 'off-locked' }, start, ['energise']],
    ['the main switch on, the circuit still off', { ...DEAD, main: 'off-locked' }, DEAD, ['energise']],
    [
      'the circuit on behind the main switch that is off',
      { ...DEAD, main: 'off-locked' },
      { ...start, main: 'off-locked' },
      ['reconnect', 'close-cover', 'energise'],
    ],
    ['a load', start, { ...start, load: 20 }, ['vehicle']],
    [
      'a leakage taken away',
      { ...start, leakage: { ac: 0.004, dc: 0.006, line: 'L1' } },
      { ...start, leakage: null },
      ['vehicle'],
    ],
    [
      'the same leakage',
      { ...start, leakage: { ac: 0.004, dc: 0.006, line: 'L1' } },
      { ...start, leakage: { ac: 0.004, dc: 0.006, line: 'L1' } },
      [],
    ],
    ['nothing', start, start, []],
  ] as const)('%s', (_, from, to, ops) => {
    const list = operationsBetween(from, to, 0, 'tethered');
    expect(named(list)).toEqual(ops);
    expect(after(from, ...list)).toEqual(to);
  });
});

test('a held plug is let go before it is drawn: state A, a wait, then out', () => {
  const to = { ...start, state: 'A' } as const;
  const list = operationsBetween(LIVE_C, to, 0, 'socket');
  expect(list).toEqual([
    { op: 'vehicle', state: 'A' },
    { op: 'wait', seconds: 6 },
    { op: 'vehicle', plugged: false, state: 'A' },
  ]);
  expect(after(LIVE_C, ...list)).toEqual(to);
});

test('only what differs is named, and the wait comes last', () => {
  const list = operationsBetween(start, { ...start, diode: 'shorted' }, 4, 'tethered');
  expect(list).toEqual([
    { op: 'vehicle', diode: 'shorted' },
    { op: 'wait', seconds: 4 },
  ]);
});

test('what the bench refused has moved nothing, and a plug that was held is still in', () => {
  expect(positionAfter(start, operation({ op: 'disconnect', what: 'unit' }), true)).toEqual(start);
  expect(positionAfter(LIVE_C, operation({ op: 'vehicle', plugged: false }), true)).toEqual(LIVE_C);
});

test('timing the opening leaves the stand-in where the clock was started', () => {
  const timed: OperationInput = { op: 'measure', quantity: 'opening-time', of: 'C-to-B' };
  expect(after(LIVE_C, timed).state).toBe('B');
  expect(positionAfter(LIVE_C, operation(timed), true).state).toBe('C');
});
