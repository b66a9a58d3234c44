/**
 * The main switch takes the whole installation off: what is left live, what stops drawing, and what is read behind it.
 * Figures by Ohm’s law alone: 236 V, 0.22 Ω from the source and back, 1500 W of other loads (230²/1500 = 35.27 Ω).
 */
import { describe, expect, test } from 'vitest';
import { measure } from '../../src/bench/measure.ts';
import type { Measurement, OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import { residualThrough } from '../../src/bench/sensors.ts';
import type { World } from '../../src/bench/world.ts';
import { mainsAcross } from '../../src/bench/world.ts';
import { benchWith, CHARGE, doing, MAKE_DEAD, THREE_PHASE } from './build.ts';

const MAIN_OFF: OperationInput = { op: 'isolate', at: 'main-switch' };
const LOADS = (230 * 230) / 1500;

function truth(world: World, input: OperationInput): number {
  const found = measure(world, operation(input) as Measurement);
  return 'refused' in found ? Number.NaN : found.value;
}
const insulation = (a: string, b: string): OperationInput => ({
  op: 'measure',
  quantity: 'insulation',
  between: [a, b],
  volts: 250,
});

describe('off by the main switch alone', () => {
  const off = (): World => {
    const world = benchWith();
    doing(world, MAIN_OFF, { op: 'wait', seconds: 2 }, { op: 'prove-dead', at: 'origin' });
    return world;
  };
  const before = mainsAcross(benchWith(), 'service.L1', 'service.N');

  test('the unit goes dark, and every pair at the origin is dead', () => {
    const world = off();
    expect(world.indicator).toBe('dark');
    const [dead] = doing(world, { op: 'prove-dead', at: 'origin' });
    expect(dead?.readings.map(({ value }) => (value ?? 999) < 12)).toEqual([true, true, true]);
    expect(Object.keys(world.knowledge.provedDead)).toEqual(['origin']);
  });

  test('the live side stays so, and no load draws on it any more', () => {
    // The unit itself draws some 20 mA.
    expect(before).toBeCloseTo((236 * LOADS) / (LOADS + 0.22), 1);
    expect(mainsAcross(off(), 'service.L1', 'service.N')).toBeCloseTo(236, 3);
  });

  test('Ze is measured there as before', () => {
    const world = off();
    doing(world, { op: 'disconnect', what: 'earthing-conductor' });
    const loop: OperationInput = {
      op: 'measure',
      quantity: 'loop',
      between: ['incoming.L1', 'earthing'],
      current: 'full',
    };
    expect(truth(world, loop)).toBeCloseTo(0.22, 2);
  });

  test('line to neutral reads the other loads, which is no fault of the circuit; by its own device it is clear of them', () => {
    const world = off();
    doing(
      world,
      { op: 'open-cover' },
      { op: 'prove-dead', at: 'supply' },
      { op: 'disconnect', what: 'unit' },
    );
    expect(truth(world, insulation('supply.L1', 'supply.N'))).toBeCloseTo(LOADS, 0);
    doing(world, insulation('supply.L1', 'supply.N'));
    expect(world.knowledge.failedTests).toEqual([]);
    doing(world, { op: 'isolate' });
    expect(truth(world, insulation('supply.L1', 'supply.N'))).toBeGreaterThan(1e6);
  });

  test('energised, all of it comes back', () => {
    const world = off();
    doing(world, { op: 'isolate' }, { op: 'energise' }, { op: 'wait', seconds: 15 });
    expect([world.plant.isolated, world.plant.mainOff]).toEqual([[], []]);
    expect(world.indicator).toBe('ready');
    expect(mainsAcross(world, 'service.L1', 'service.N')).toBeCloseTo(before, 1);
  });
});

test('each of the two is switched on by itself, and a tripped breaker by its own device alone', () => {
  const world = benchWith();
  doing(world, ...MAKE_DEAD, MAIN_OFF);
  world.plant = { ...world.plant, breaker: 'tripped' };
  doing(world, { op: 'energise', at: 'main-switch' });
  expect(world.plant).toMatchObject({ mainOff: [], isolated: ['L1', 'N'], breaker: 'tripped' });
  doing(world, MAIN_OFF, { op: 'energise', at: 'origin' });
  expect(world.plant).toMatchObject({ mainOff: ['L1', 'N'], isolated: [], breaker: 'closed' });
});

test('with the supply off, ten seconds off and on is refused, by whichever of the two it is off', () => {
  const [, refused] = doing(benchWith(), MAIN_OFF, { op: 'reset', what: 'supply' });
  expect(refused?.refused).toEqual({ id: 'supply-off' });
});

test('the device at the origin feels no residual current from a switch-off, and does not trip', () => {
  const world = benchWith({
    site: {
      ...THREE_PHASE,
      circuit: {
        ...THREE_PHASE.circuit,
        residualDevice: { type: 'A', rated: 0.03, delay: 'general', poles: 4 },
      },
    },
  });
  const outcomes = doing(world, ...CHARGE, MAIN_OFF, { op: 'wait', seconds: 5 }, { op: 'energise' });
  const events = outcomes.flatMap((outcome) => outcome.events.map(({ what }) => what));
  expect(events.filter((what) => what.endsWith('tripped'))).toEqual([]);
  doing(world, MAIN_OFF);
  const { wiring, solution, installation } = world;
  expect(residualThrough(wiring, solution, installation, 'origin').alternating).toBeLessThan(1e-6);
});

test('an electrode’s site: its neutral opens with the lines', () => {
  const world = benchWith({ site: { earthing: 'TT', electrodeResistance: 80 } });
  doing(world, { op: 'isolate', at: 'main-switch', poles: 'line' });
  expect(world.plant.mainOff).toEqual(['L1', 'N']);
});
