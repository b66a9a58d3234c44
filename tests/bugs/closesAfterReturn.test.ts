/** After a residual trip a sound unit closed again by itself when the supply came back, against its own sheet. */
import { expect, test } from 'vitest';
import { mainsAcross } from '../../src/bench/world.ts';
import { benchWith, CHARGE, doing } from '../bench/build.ts';

test('a trip that clears by the reset button outlasts a loss of supply', () => {
  const world = benchWith();
  doing(
    world,
    ...CHARGE,
    { op: 'measure', quantity: 'residual', line: 'L1', waveform: 'sinusoidal', mode: 'fixed', amps: 0.03 },
    { op: 'reset', what: 'supply' },
    { op: 'wait', seconds: 60 },
  );
  expect(mainsAcross(world, 'end.L1', 'end.N')).toBeLessThan(50);
});
