/** State F was left at once by a reset, or with its cause: a vehicle has to see it for 0.3 s. */
import { expect, test } from 'vitest';
import { send, settle } from '../../src/bench/settle.ts';
import { LEAST_STATE_F } from '../../src/laws/timing.ts';
import type { Clearing } from '../../src/unit/design.ts';
import { benchWith, CHARGE, doing, SHEET } from '../bench/build.ts';

/** Seconds for which the pilot stood at −12 V after the contactor was too slow to open. */
function inF(by: Clearing, seed: number): number {
  const world = benchWith({
    seed,
    sheet: { clearsBy: { ...SHEET.clearsBy, F: by } },
    faults: [{ fault: 'opens-slowly', values: { seconds: 0.55 } }],
  });
  const refusing = () => world.plant.pilot === 'negative';
  const step = () => doing(world, { op: 'wait', seconds: 0.01 });
  doing(world, ...CHARGE, { op: 'vehicle', state: 'B' });
  for (let i = 0; i < 100 && !refusing(); i++) step();
  expect(refusing()).toBe(true);
  const began = world.timeline.now;
  for (let i = 0; i < 100 && refusing(); i++) {
    // As soon as there is anything to reset.
    if (by === 'reset' && world.plant.contactor === 'open') {
      send(world, { type: 'button', button: 'reset' });
      settle(world);
    }
    step();
  }
  expect(refusing()).toBe(false);
  return (world.timeline.now - began) / 1e6;
}

test.each(['self', 'reset'] as const)('F cleared by %s stands for 0.3 s (IEC 61851-1:2017 A.3)', (by) => {
  for (const seed of [1, 2, 3]) expect(inF(by, seed)).toBeGreaterThanOrEqual(LEAST_STATE_F - 0.01);
});
