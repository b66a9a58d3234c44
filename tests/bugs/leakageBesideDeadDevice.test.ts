/** A condenser sized by what trips the device grew without end beside a device that never trips, and no network was solved. */
import { expect, test } from 'vitest';
import { benchWith } from '../bench/build.ts';

test('leakage beside a residual device that is dead has a size', () => {
  const leak = { fault: 'standing-leakage', values: { share: 0.93 } };
  const { installation } = benchWith({ faults: [{ fault: 'residual-dead', values: {} }, leak] });
  const condenser = installation.parts.find(({ id }) => id === 'filter.L1');
  const amps = (condenser?.susceptance ?? 0) * installation.site.voltage;
  expect(amps).toBeCloseTo(0.93 * 0.03, 6);
});
