/** A residual test current at the origin: the device there feels it, the unit does not. */
import { describe, expect, test } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import { residualThrough } from '../../src/bench/sensors.ts';
import { move } from '../../src/bench/settle.ts';
import type { DeviceType } from '../../src/laws/residualLimits.ts';
import { VERIFICATION } from '../../src/laws/residualLimits.ts';
import { benchWith, doing, read, type Wanted } from './build.ts';

const atOrigin = (milliamps: number, waveform: 'sinusoidal' | 'half-wave-positive' = 'sinusoidal') =>
  ({
    op: 'measure',
    quantity: 'residual',
    at: 'origin',
    waveform,
    mode: 'fixed',
    amps: milliamps / 1000,
    seconds: 1,
  }) satisfies OperationInput;

const withDevice = (rated: number, delay: 'general' | 'S', type: DeviceType = 'A'): Wanted => ({
  site: { circuit: { residualDevice: { type, rated, delay, poles: 2 } } },
});

test('every milliampere of it goes through the device at the origin, and none through the unit', () => {
  const world = benchWith(withDevice(0.1, 'S'));
  const through = (place: 'origin' | 'unit') =>
    residualThrough(world.wiring, world.solution, world.installation, place).alternating;
  const before = { origin: through('origin'), unit: through('unit') };
  move(world, {
    test: { at: 'origin', line: 'L1', to: 'PE', resistance: 236 / 0.02, direct: 0, halfWave: 0 },
  });
  // 20 mA, less what the house's own load takes off the voltage; the filters leak a quarter of a period ahead of it.
  expect(through('origin')).toBeCloseTo(Math.hypot(0.02, before.origin), 3);
  expect(through('unit')).toBeCloseTo(before.unit, 6);
});

/** Break times: BS EN 61008-1, and BS 7671:2018+A2:2022 643.8 for the test at the rating. */
describe.each([
  { rated: 0.03, delay: 'general' },
  { rated: 0.1, delay: 'general' },
  { rated: 0.1, delay: 'S' },
  { rated: 0.3, delay: 'S' },
] as const)('$rated A, $delay', ({ rated, delay }) => {
  test('holds at half its rating and acts at it, in its time, with nothing of the unit', () => {
    const world = benchWith(withDevice(rated, delay));
    expect(read(world, atOrigin(500 * rated)).trippedWhat).toBe('none');
    const { tripMs, trippedWhat } = read(world, atOrigin(1000 * rated));
    expect(trippedWhat).toBe('upstream');
    expect(tripMs).toBeGreaterThanOrEqual(1000 * VERIFICATION[delay].least - 2);
    expect(tripMs).toBeLessThanOrEqual(1000 * VERIFICATION[delay].greatest + 2);
    expect(world.indicator).toBe('dark');
    doing(world, { op: 'reset', what: 'upstream' }, { op: 'wait', seconds: 10 });
    expect(world.indicator).toBe('ready');
  });
});

test('without an amount it is the rating of the device there, not of the unit', () => {
  const world = benchWith(withDevice(0.1, 'S'));
  const { amps: _, ...rated } = atOrigin(0);
  expect(read(world, rated).tripAmps).toBeGreaterThanOrEqual(0.1);
});

test('refused where there is no voltage, and where there is no way back', () => {
  const off = benchWith(withDevice(0.1, 'S'));
  doing(off, { op: 'isolate' });
  expect(read(off, atOrigin(100))).toMatchObject({
    qualifier: 'unable',
    reason: { id: 'not-live', place: 'origin' },
  });
  const lost = benchWith(withDevice(0.1, 'S'));
  doing(lost, { op: 'disconnect', what: 'earthing-conductor' });
  expect(read(lost, atOrigin(100))).toMatchObject({
    qualifier: 'unable',
    reason: { id: 'no-return' },
  });
});
