/**
 * A circuit that is live where it should be dead: the schedule names another way of the board. Opening the cover after
 * isolating what the schedule names is right, going on after finding it live is not (EAWR 1989 regs 12 to 14, HSG85).
 */
import { describe, expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import type { OperationInput } from '../../src/bench/operation.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { benchWith, CHARGE, doing, MAKE_DEAD } from '../bench/build.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { faultlessAttempt } from '../helpers/trainee.ts';
import { scenarioOn } from './installations.ts';

const WRONG = { fault: 'schedule-names-other-way', values: {} };
const proved = (at: 'origin' | 'supply'): OperationInput => ({ op: 'prove-dead', at });
const volts = (outcome: ReturnType<typeof doing>[number] | undefined): number =>
  Math.max(...(outcome?.readings ?? []).map(({ value }) => value ?? 0));

test.each(['home', 'yard', 'rod'] as const)(
  '%s: dead at the board, live at the unit, and no further',
  (on) => {
    const { conclusion, stopped, actions } = verify(scenarioOn(on, [WRONG]), { everything: true });
    expect(conclusion).toBe('not sound');
    expect(stopped?.action).toBe('prove-dead');
    expect(actions.at(-1)?.action.id).toBe('prove-dead');
    expect(actions.flatMap(({ unsafe }) => unsafe)).toEqual([]);
  },
);

describe('on the bench', () => {
  test('the way in the schedule is dead at the board, the unit’s terminals are live until the main switch is off', () => {
    const world = benchWith({ faults: [WRONG] });
    const [, , origin, , supply] = doing(world, ...MAKE_DEAD);
    expect(volts(origin)).toBeLessThan(12);
    expect(volts(supply)).toBeGreaterThan(200);
    expect(supply?.seen.indicator).toBe('ready');
    const dead = doing(
      world,
      { op: 'isolate', at: 'main-switch' },
      { op: 'wait', seconds: 2 },
      proved('supply'),
    );
    expect(volts(dead.at(-1))).toBeLessThan(12);
  });

  test('opening the cover is no unsafe act, opening it again once it was found live is, and so is handling', () => {
    const world = benchWith({ faults: [WRONG] });
    expect(doing(world, ...MAKE_DEAD).flatMap(({ unsafe }) => unsafe)).toEqual([]);
    const on = doing(world, { op: 'close-cover' }, { op: 'open-cover' }, { op: 'disconnect', what: 'unit' });
    expect(on.map(({ unsafe }) => unsafe.map(({ id }) => id))).toEqual([
      [],
      ['cover-circuit-on'],
      ['conductor-not-proved-dead'],
    ]);
  });

  test('its devices are felt on the way that it really has: an overload trips its breaker', () => {
    const world = benchWith({ faults: [WRONG] });
    doing(world, ...CHARGE, { op: 'vehicle', load: 80 }, { op: 'wait', seconds: 1500 });
    expect(world.plant.breaker).toBe('tripped');
    expect(world.powered).toBe(false);
  });

  test('put right behind the main switch, the circuit’s own way makes it dead', () => {
    const world = benchWith({ faults: [WRONG] });
    const done = doing(
      world,
      { op: 'isolate', at: 'main-switch' },
      ...MAKE_DEAD,
      { op: 'put-right', what: WRONG.fault },
      { op: 'close-cover' },
      { op: 'energise', at: 'main-switch' },
    );
    expect(done.map(({ refused }) => refused)).toEqual(done.map(() => null));
    expect(world.powered).toBe(false);
  });
});

test('found live at the board already, the cover is not opened', () => {
  // The neutral of another circuit is the supply's line: through the unit it makes the dead way's terminals live.
  const both = [
    { fault: 'tails-crossed', values: {} },
    { fault: 'neutral-borrowed', values: {} },
  ];
  const { stopped, actions } = verify(scenarioOn('rod', both));
  expect(stopped?.action).toBe('prove-dead');
  expect(actions.flatMap(({ unsafe }) => unsafe)).toEqual([]);
  expect(actions.at(-1)?.run.samples.some(({ operation }) => operation.op === 'open-cover')).toBe(false);
});

test('who stops there and names it has everything', () => {
  const file = { ...(scenarioNamed('harbour-mews').file as object), faults: [{ fault: WRONG.fault }] };
  const result = readScenario(file);
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('\n'));
  const marks = mark(result.scenario, faultlessAttempt(result.scenario, file));
  expect(marks.gates).toEqual({ critical: [], verdict: true });
  expect(marks.total).toBe(100);
});
