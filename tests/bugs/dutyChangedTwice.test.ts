/** A limit that changed twice within seconds brought a second duty before a vehicle had its time for the first. */
import { expect, test } from 'vitest';
import { GREATEST_DUTY_CHANGE, GREATEST_VEHICLE_FOLLOW } from '../../src/laws/timing.ts';
import { benchWith, CHARGE, doing } from '../bench/build.ts';

test('between two changes of the duty a vehicle has 5 s, and a limit is still followed in 10 s (Table A.6, 6)', () => {
  for (const seed of [1, 2, 3, 4, 5, 6, 7, 8]) {
    const world = benchWith({ seed });
    doing(world, ...CHARGE, { op: 'supply', loadLimit: 20 });
    const changes: number[] = [];
    let { duty } = world.plant;
    let asked = world.timeline.now;
    for (let step = 0; step < 400 && changes.length < 2; step++) {
      doing(world, { op: 'wait', seconds: 0.05 });
      if (world.plant.duty === duty) continue;
      duty = world.plant.duty;
      changes.push(world.timeline.now);
      expect((world.timeline.now - asked) / 1e6).toBeLessThanOrEqual(GREATEST_DUTY_CHANGE);
      asked = world.timeline.now;
      doing(world, { op: 'supply', loadLimit: 10 });
    }
    const [first = 0, second = 0] = changes;
    // To the 50 ms in which it is looked at.
    expect((second - first) / 1e6 + 0.05).toBeGreaterThanOrEqual(GREATEST_VEHICLE_FOLLOW);
  }
});
