/**
 * A tester that fails: found with both leads on one terminal, before anything rests on it. Nothing is then said of the
 * unit, until the tester is replaced.
 */
import { describe, expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import type { OperationInput } from '../../src/bench/operation.ts';
import type { FaultChoice } from '../../src/faults/catalogue.ts';
import { entryNamed } from '../../src/faults/catalogue.ts';
import { testerFaults } from '../../src/faults/testerFaults.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { benchOf } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { benchWith, doing, MAKE_DEAD, read } from '../bench/build.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { faultlessAttempt } from '../helpers/trainee.ts';
import { scenarioOn } from './installations.ts';

const CASES = testerFaults.flatMap(({ id }) => (['home', 'yard', 'rod'] as const).map((on) => ({ id, on })));
const choice = (fault: string): FaultChoice => ({
  fault,
  values: Object.fromEntries(entryNamed(fault)?.parameters.map((p) => [p.name, p.default]) ?? []),
});
const JOINED: OperationInput = { op: 'measure', quantity: 'continuity', between: ['met', 'met'] };
const LEAK = { fault: 'line-pe-insulation-low', values: { ohms: 50_000 } };

describe.each(CASES)('$id on $on', ({ id, on }) => {
  test('stops before anything is touched, with nothing said of the unit', () => {
    const { conclusion, stopped, actions } = verify(scenarioOn(on, [choice(id)]));
    expect(conclusion).toBe('could not finish');
    expect(stopped?.action).toBe('instruments');
    expect(actions.flatMap(({ unsafe }) => unsafe)).toEqual([]);
    expect(actions.at(-1)?.action.id).toBe('instruments');
  });

  test('replaced with the circuit on and the cover closed, it reads 0 Ω', () => {
    const world = benchOf(scenarioOn(on, [choice(id)]));
    const before = read(world, JOINED);
    expect(before.qualifier !== null || (before.value ?? 0) >= 0.05).toBe(true);
    const [{ refused, unsafe } = { refused: null, unsafe: [] }] = doing(world, { op: 'put-right', what: id });
    expect({ refused, unsafe, faults: world.faults }).toEqual({ refused: null, unsafe: [], faults: [] });
    expect(read(world, JOINED).value ?? 9).toBeLessThan(0.05);
    expect(world.powered).toBe(true);
  });
});

test.each(testerFaults)('$id: who stops, says so and names it has everything', ({ id }) => {
  const file = { ...(scenarioNamed('harbour-mews').file as object), faults: [{ fault: id }] };
  const result = readScenario(file);
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('\n'));
  const marks = mark(result.scenario, faultlessAttempt(result.scenario, file));
  expect(marks.gates).toEqual({ critical: [], verdict: true });
  expect(marks.total).toBe(100);
});

test('what it falsifies: through a broken lead a damaged cable reads as well as a sound one', () => {
  const measured = (faults: readonly FaultChoice[]) => {
    const world = benchWith({ faults });
    doing(world, ...MAKE_DEAD, { op: 'disconnect', what: 'unit' });
    return read(world, {
      op: 'measure',
      quantity: 'insulation',
      between: ['supply.L1', 'supply.PE'],
      volts: 500,
    });
  };
  expect(measured([LEAK]).value).toBeLessThan(60_000);
  expect(measured([LEAK, choice('tester-lead-broken')]).qualifier).toBe('>');
});

test('beside a fault of the unit, nothing is said until it is replaced', () => {
  const [own, tester] = [LEAK, choice('tester-does-not-null')];
  expect(verify(scenarioOn('home', [own, tester])).conclusion).toBe('could not finish');
  expect(verify(scenarioOn('home', [own, tester]), { faults: [own] }).conclusion).toBe('not sound');
});

test('a file that does not let it be found is refused', () => {
  const file = {
    ...(scenarioNamed('harbour-mews').file as object),
    faults: [{ fault: 'tester-lead-broken' }],
    allowed: ['papers', 'isolate', 'prove-dead', 'pe-circuit'],
  };
  const result = readScenario(file);
  expect(result.ok ? [] : result.problems.map(({ path }) => path)).toEqual(['faults[0]']);
});
