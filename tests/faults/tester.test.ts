/**
 * A tester that fails: found with both leads on one terminal, before anything rests on it. Nothing is then said of the
 * unit, until the tester is replaced.
 */
import { describe, expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import type { OperationInput } from '../../src/bench/operation.ts';
import type { Reading } from '../../src/bench/reading.ts';
import type { World } from '../../src/bench/world.ts';
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
/** The tester on its known resistors. */
const readKnown = (world: World): readonly Reading[] =>
  doing(world, { op: 'check-instruments', known: true })[0]?.readings ?? [];
const LEAK = { fault: 'line-pe-insulation-low', values: { ohms: 50_000 } };

describe.each(CASES)('$id on $on', ({ id, on }) => {
  test('stops before anything is touched, with nothing said of the unit', () => {
    const { conclusion, stopped, actions } = verify(scenarioOn(on, [choice(id)]));
    expect(conclusion).toBe('could not finish');
    expect(stopped?.action).toBe('instruments');
    expect(actions.flatMap(({ unsafe }) => unsafe)).toEqual([]);
    expect(actions.at(-1)?.action.id).toBe('instruments');
  });

  test('replaced with the circuit on and the cover closed, it reads 0 Ω and what is known', () => {
    const world = benchOf(scenarioOn(on, [choice(id)]));
    const [known] = readKnown(world);
    const before = id === 'tester-out-of-calibration' ? known : read(world, JOINED);
    expect(
      before?.qualifier !== null || Math.abs((before.value ?? 0) - (before === known ? 1 : 0)) >= 0.05,
    ).toBe(true);
    const [{ refused, unsafe } = { refused: null, unsafe: [] }] = doing(world, { op: 'put-right', what: id });
    expect({ refused, unsafe, faults: world.faults }).toEqual({ refused: null, unsafe: [], faults: [] });
    expect(read(world, JOINED).value ?? 9).toBeLessThan(0.05);
    expect(readKnown(world).map(({ value }) => value ?? 0)).toEqual([
      expect.closeTo(1, 1),
      expect.closeTo(1e6, -5),
    ]);
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

describe('out of calibration', () => {
  const TIMES = { fault: 'tester-out-of-calibration', values: { times: 1.5 } };

  /** 0.7 MΩ is under the 1 MΩ of BS 7671 Table 64; 1.5 × 0.7 = 1.05 MΩ is not. The leak alone is what is measured. */
  test('it passes a damaged cable, and reads a sound conductor half as much again', () => {
    const measured = (faults: readonly FaultChoice[]) => {
      const world = benchWith({
        faults: [{ fault: 'line-pe-insulation-low', values: { ohms: 700_000 } }, ...faults],
      });
      doing(world, ...MAKE_DEAD, { op: 'disconnect', what: 'unit' });
      return [
        read(world, {
          op: 'measure',
          quantity: 'insulation',
          between: ['supply.L1', 'supply.PE'],
          volts: 500,
        }),
        read(world, { op: 'measure', quantity: 'continuity', between: ['met', 'supply.PE'] }),
      ].map(({ value }) => value ?? 0);
    };
    const [[leak = 0, path = 0], [leakShown = 0, pathShown = 0]] = [measured([]), measured([TIMES])];
    expect(leak).toBeLessThan(1e6);
    expect(leakShown).toBeGreaterThan(1e6);
    expect(leakShown / leak).toBeCloseTo(1.5, 1);
    // Each to its digits, 0.02 Ω.
    expect(Math.abs(pathShown - 1.5 * path)).toBeLessThan(0.05);
  });

  test('both leads on one terminal do not tell it: the known resistors do', () => {
    const world = benchWith({ faults: [TIMES] });
    expect(read(world, JOINED).value).toBeLessThan(0.03);
    const [ohm, megohm] = readKnown(world);
    // 1.5 Ω to 3 % and 0.02 Ω, 1.5 MΩ to 5 % and two digits.
    expect(Math.abs((ohm?.value ?? 0) - 1.5)).toBeLessThanOrEqual(0.065);
    expect(Math.abs((megohm?.value ?? 0) - 1.5e6)).toBeLessThanOrEqual(0.095e6);
  });

  test('of a sound tester they read right, and leads that were not nulled are in them', () => {
    const world = benchWith({});
    doing(world, { op: 'null-leads', on: false });
    const [with_] = readKnown(world);
    doing(world, { op: 'null-leads' });
    const [without] = readKnown(world);
    expect((with_?.value ?? 0) - (without?.value ?? 0)).toBeGreaterThan(0.03);
    expect(doing(world, { op: 'check-instruments' })[0]?.readings).toEqual([]);
  });
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
