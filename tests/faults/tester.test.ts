/**
 * A tester that fails: found with both leads on one terminal, before anything rests on it. Nothing is then said of the
 * unit, until the tester is replaced.
 */
import { describe, expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import type { OperationInput } from '../../src/bench/operation.ts';
import type { Reading } from '../../src/bench/reading.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import type { World } from '../../src/bench/world.ts';
import type { FaultChoice } from '../../src/faults/catalogue.ts';
import { entryNamed } from '../../src/faults/catalogue.ts';
import { testerFaults } from '../../src/faults/testerFaults.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { benchOf } from '../../src/scenario/scenario.ts';
import { verify, verifying } from '../../src/scenario/verify.ts';
import { benchWith, doing, MAKE_DEAD, read } from '../bench/build.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { faultlessAttempt } from '../helpers/trainee.ts';
import { scenarioOn } from './installations.ts';

/** Of what measures continuity and insulation; the voltage detector is looked at by itself below. */
const OF_TESTER = testerFaults.filter(({ component }) => component === 'tester');
const CASES = OF_TESTER.flatMap(({ id }) => (['home', 'yard', 'rod'] as const).map((on) => ({ id, on })));
const choice = (fault: string): FaultChoice => ({
  fault,
  values: Object.fromEntries(entryNamed(fault)?.parameters.map((p) => [p.name, p.default]) ?? []),
});
const JOINED: OperationInput = { op: 'measure', quantity: 'continuity', between: ['met', 'met'] };
/** The tester on its known resistor. */
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
    expect(readKnown(world)[0]?.value).toBeCloseTo(1, 1);
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

  test('both leads on one terminal do not tell it: the known resistor does', () => {
    const world = benchWith({ faults: [TIMES] });
    expect(read(world, JOINED).value).toBeLessThan(0.03);
    const [ohm] = readKnown(world);
    // 1.5 Ω to 3 % and 0.02 Ω.
    expect(Math.abs((ohm?.value ?? 0) - 1.5)).toBeLessThanOrEqual(0.065);
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

describe('a detector whose lead parts in use', () => {
  const PARTS = { fault: 'detector-lead-parts', values: {} };
  /** Live at the unit although the way that the schedule names is locked off. */
  const LIVE = { fault: 'schedule-names-other-way', values: {} };
  const DARK = 'detector dark';
  const OFF: readonly OperationInput[] = [
    { op: 'isolate' },
    { op: 'wait', seconds: 2 },
    { op: 'open-cover' },
  ];
  const proving = (proof?: 'before' | 'none'): OperationInput => ({
    op: 'prove-dead',
    at: 'supply',
    ...(proof === undefined ? {} : { proof }),
  });

  test.each(['home', 'yard', 'rod'] as const)(
    'on %s it stops at the first place, with nothing touched',
    (on) => {
      const { conclusion, stopped, actions, world } = toItsEnd(verifying(scenarioOn(on, [PARTS])));
      expect(conclusion).toBe('could not finish');
      expect(stopped).toEqual({ action: 'prove-dead', line: 'detector-proves' });
      expect(actions.at(-1)?.action.id).toBe('prove-dead');
      expect(actions.flatMap(({ unsafe }) => unsafe)).toEqual([]);
      // What it showed there is no sign of anything.
      expect(actions.at(-1)?.expectations.map(({ finding }) => finding)).toEqual([
        'broken',
        'not shown',
        'not shown',
        'not shown',
      ]);
      expect(world.plant.cover).toBe('closed');
      expect(world.knowledge.provedDead).toEqual({});
    },
  );

  test('live terminals show nothing on it, and only the second trial tells', () => {
    const shownOn = (faults: readonly FaultChoice[], proof?: 'before' | 'none') => {
      const [outcome] = doing(benchWith({ faults }), ...OFF, proving(proof)).slice(-1);
      return {
        volts: Math.max(...(outcome?.readings.map(({ value }) => value ?? 0) ?? [])),
        isDark: outcome?.events.some(({ what }) => what === DARK),
      };
    };
    expect(shownOn([LIVE]).volts).toBeGreaterThan(200);
    expect(shownOn([LIVE]).isDark).toBe(false);
    expect(shownOn([LIVE, PARTS])).toEqual({ volts: expect.closeTo(0, -1), isDark: true });
    expect(shownOn([LIVE, PARTS], 'before').isDark).toBe(false);
    expect(shownOn([LIVE, PARTS], 'none').isDark).toBe(false);
  });

  test('replaced, it finds the terminals live', () => {
    const world = benchWith({ faults: [LIVE, PARTS] });
    doing(world, ...OFF, proving(), { op: 'put-right', what: PARTS.fault }, proving());
    expect(world.knowledge.foundLive).toEqual(['supply']);
  });

  test('lit until it is on terminals, dark on the proving unit from then on', () => {
    const world = benchWith({ faults: [PARTS] });
    const isDark = (...operations: OperationInput[]) =>
      doing(world, ...operations)
        .at(-1)
        ?.events.some(({ what }) => what === DARK);
    expect(isDark({ op: 'check-instruments' })).toBe(false);
    expect(
      isDark({ op: 'measure', quantity: 'voltage', between: ['outlet.L1', 'outlet.PE'], tool: 'meter' }),
    ).toBe(false);
    expect(isDark({ op: 'check-instruments' })).toBe(false);
    expect(isDark({ op: 'measure', quantity: 'voltage', between: ['outlet.L1', 'outlet.PE'] })).toBe(false);
    expect(isDark({ op: 'check-instruments' })).toBe(true);
    expect(isDark({ op: 'put-right', what: PARTS.fault }, { op: 'check-instruments' })).toBe(false);
  });
});

test('beside a fault of the unit, nothing is said until it is replaced', () => {
  const [own, tester] = [LEAK, choice('tester-does-not-null')];
  expect(verify(scenarioOn('home', [own, tester])).conclusion).toBe('could not finish');
  expect(verify(scenarioOn('home', [own, tester]), { faults: [own] }).conclusion).toBe('not sound');
});

test.each([
  ['tester-lead-broken', ['papers', 'isolate', 'prove-dead', 'pe-circuit']],
  ['detector-lead-parts', ['papers', 'instruments', 'isolate', 'pe-circuit']],
])('a file that does not let %s be found is refused', (fault, allowed) => {
  const file = { ...(scenarioNamed('harbour-mews').file as object), faults: [{ fault }], allowed };
  const result = readScenario(file);
  expect(result.ok ? [] : result.problems.map(({ path }) => path)).toEqual(['faults[0]']);
});
