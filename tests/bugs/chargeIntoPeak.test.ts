/** A charge that ran into the default hours' peak went on through it, and C to B to C took no new delay. */
import { expect, test } from 'vitest';
import { charging } from '../unit/harness.ts';

test('the peak begins while it charges', () => {
  const unit = charging({ schedule: 'default-hours' });
  unit.sense({ peak: true });
  unit.pass(10_000);
  expect(unit.commands()).toMatchObject({ coil: false, pilot: 'positive' });
});

test('the vehicle asks again', () => {
  const unit = charging({ startDelay: 600 }, { design: { delayShare: (session) => (session > 9 ? 1 : 0) } });
  unit.sense({ pilot: 'B' });
  unit.pass(1000);
  unit.sense({ pilot: 'C' });
  unit.pass(100);
  expect(unit.commands()).toMatchObject({ coil: false, pilot: 'positive' });
});
