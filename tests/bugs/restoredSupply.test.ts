/**
 * A disturbance taken back put the supply to what the papers say: a voltage out of limits, or neighbours on a broken main,
 * were put right by it. It goes back to what the site has of itself.
 */
import { expect, test } from 'vitest';
import { mainsAcross } from '../../src/bench/world.ts';
import { restore } from '../../src/verification/actions/penHazard.ts';
import { benchWith, doing } from '../bench/build.ts';

test.each([
  ['voltage-high', { volts: 260 }],
  ['pen-open-in-street', { watts: 6000 }],
])('%s is still there after a disturbance', (fault, values) => {
  const world = benchWith({ faults: [{ fault, values }] });
  const volts = () => mainsAcross(world, 'service.L1', 'service.N');
  const before = volts();
  doing(world, { op: 'supply', voltage: 200, neighbours: [], missing: 'N', siteLoad: 20 });
  expect(Math.abs(volts() - before)).toBeGreaterThan(5);
  doing(world, restore);
  expect(volts()).toBeCloseTo(before, 6);
});
