/**
 * A circuit on an electrode of its own at a house on PME: two earths that meet in the ground alone. Sums by Ohm's law
 * with the resistances of the site, by hand; what it is for: BS 7671:2018+A2:2022 722.411.4.1.
 */
import { describe, expect, test } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import type { FaultChoice } from '../../src/faults/catalogue.ts';
import { verify } from '../../src/scenario/verify.ts';
import { benchWith, doing, MAKE_DEAD, read, type Wanted } from '../bench/build.ts';
import { INSTALLATIONS, scenarioOn } from './installations.ts';

const JOINED: FaultChoice = { fault: 'earths-joined', values: { ohms: 0.3 } };
/** 230² V² ÷ 3 kW. */
const LOAD = (230 * 230) / 3000;
const APART: OperationInput = { op: 'measure', quantity: 'continuity', between: ['met', 'house'] };

function island(faults: readonly FaultChoice[] = []) {
  const on = INSTALLATIONS.island;
  const wanted: Wanted = {
    ...on,
    site: { ...on.site, voltage: 236, otherLoads: [{ line: 'L1', power: 3000 }] },
    faults,
  };
  return benchWith(wanted);
}

/** By a meter, against a rod far out. */
const toEarth = (world: ReturnType<typeof island>, terminal: string): number =>
  read(world, { op: 'measure', quantity: 'voltage', between: [terminal, 'earth'], tool: 'meter' }).value ?? 0;

describe('the two earths, dead', () => {
  test('lie as far apart as electrode, ground and what earths the house make it', () => {
    const world = island();
    doing(world, ...MAKE_DEAD);
    // The house's pipe of 30 Ω beside its PEN conductor and the source's electrode, 0.11 + 0.5 Ω.
    const house = 1 / (1 / 30 + 1 / 0.61);
    const shown = read(world, APART).value ?? 0;
    expect(Math.abs(shown - (70 + house))).toBeLessThan(0.04 * 70);
    expect(world.knowledge.failedTests).toEqual([]);
  });

  test('joined, they read as a wire, and power with that standing is an unsafe act', () => {
    const world = island([JOINED]);
    doing(world, ...MAKE_DEAD);
    expect(read(world, APART).value).toBeLessThan(1);
    const on = doing(world, { op: 'close-cover' }, { op: 'energise' }).at(-1);
    expect(on?.unsafe).toEqual([{ id: 'energised-failed-test', critical: true }]);
  });
});

describe('the PEN conductor breaks, with 3 kW on in the house', () => {
  const broken = (faults: readonly FaultChoice[]) => {
    const world = island(faults);
    doing(world, { op: 'supply', pen: 'open' });
    return { house: toEarth(world, 'house'), unit: toEarth(world, 'case') };
  };

  test('the house’s earth rises, and the unit’s stays where the ground is', () => {
    const { house, unit } = broken([]);
    const amps = 236 / (0.11 + LOAD + 30 + 0.5);
    expect(Math.abs(house - 30 * amps)).toBeLessThan(0.02 * house + 1);
    expect(house).toBeGreaterThan(100);
    expect(unit).toBeLessThan(5);
  });

  test('joined, the unit’s case rises with it', () => {
    const { house, unit } = broken([JOINED]);
    const ground = 1 / (1 / 30 + 1 / 70);
    const amps = 236 / (0.11 + LOAD + ground + 0.5);
    expect(Math.abs(unit - ground * amps)).toBeLessThan(0.02 * unit + 2);
    expect(Math.abs(house - unit)).toBeLessThan(4);
  });
});

test('sound it is passed, with tens of ohms between its earths; joined it stops before power', () => {
  expect(verify(scenarioOn('island')).conclusion).toBe('sound');
  const { conclusion, stopped, actions } = verify(scenarioOn('island', [JOINED]));
  expect(conclusion).toBe('not sound');
  expect(stopped).toEqual({ action: 'earths-apart', line: 'joined' });
  expect(actions.flatMap(({ unsafe }) => unsafe)).toEqual([]);
  expect(actions.some(({ action }) => action.from === 'energised' && action.stage === 'with power')).toBe(
    false,
  );
});
