/** A contactor that never closes brings state F about; the plug of a socket-outlet was then held for ever. */
import { expect, test } from 'vitest';
import { GREATEST_UNLOCK_AFTER_FAULT } from '../../src/laws/timing.ts';
import { benchWith, CHARGE, doing, type Wanted } from '../bench/build.ts';

/** No pole closes, so that the contact linked to them never does. */
const STUCK: Wanted = {
  sheet: { outlet: 'socket' },
  faults: [
    { fault: 'line-pole-stuck-open', values: { line: 1 } },
    { fault: 'neutral-pole-stuck-open', values: {} },
  ],
};

test('in state F with its contactor open a unit lets the plug go within 30 s (IEC 61851-1:2017 Table A.6, 12)', () => {
  for (const seed of [1, 2, 3, 4, 5, 6]) {
    const world = benchWith({ ...STUCK, seed });
    doing(world, ...CHARGE);
    expect(world.plant).toMatchObject({ pilot: 'negative', contactor: 'open' });
    doing(world, { op: 'wait', seconds: GREATEST_UNLOCK_AFTER_FAULT });
    expect(world.plant.plugLock).toBe('free');
  }
});

test('and holds it while a pole may still be closed (6.3.2)', () => {
  const world = benchWith({
    sheet: { outlet: 'socket' },
    faults: [{ fault: 'opens-slowly', values: { seconds: 0.8 } }],
  });
  doing(world, ...CHARGE, { op: 'vehicle', state: 'B' }, { op: 'wait', seconds: 0.7 });
  expect(world.plant).toMatchObject({ pilot: 'negative', contactor: 'closed', plugLock: 'held' });
});
