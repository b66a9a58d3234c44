/**
 * The rows of IEC 61851-1:2017 Table A.6, and of the clauses beside it, that a unit has to keep, on the bench, over the
 * spread of sound units. Rows of the vehicle are not shown: the stand-in has no charger, whoever sets it plays its part.
 */

import { expect, test } from 'vitest';
import { PILOT_TIMES } from '../references/pilotTimes.ts';
import { benchWith, CHARGE, doing, PLUG_IN } from './build.ts';
import { TIMING_ROWS, untilHeard } from './pilotTimingRows.ts';

const SEEDS = Array.from({ length: 12 }, (_, i) => 100 + i);

test.each(TIMING_ROWS)('$sequence: $what ($least – $greatest s)', (row) => {
  for (const seed of SEEDS) {
    const world = benchWith({ ...row.wanted, seed });
    doing(world, ...row.before);
    const time = row.measured(world);
    expect(time, `seed ${seed}`).toBeGreaterThanOrEqual(row.least ?? 0);
    expect(time, `seed ${seed}`).toBeLessThanOrEqual(row.greatest ?? Infinity);
  }
});

test('every limit of the table that a unit has to keep has its rows here', () => {
  const lacking = PILOT_TIMES.filter(
    ({ by, least, greatest }) => by === 'unit' && (least ?? greatest) !== undefined,
  ).filter(
    (limit) =>
      !TIMING_ROWS.some(
        (row) =>
          row.sequence === limit.sequence &&
          (limit.least === undefined || row.least === limit.least) &&
          (limit.greatest === undefined || row.greatest === limit.greatest),
      ),
  );
  expect(lacking).toEqual([]);
  expect(
    TIMING_ROWS.filter(({ sequence }) => !PILOT_TIMES.some((limit) => limit.sequence === sequence)),
  ).toEqual([]);
});

test('if locking is used, the plug is locked before the supply closes (Table A.6)', () => {
  for (const seed of SEEDS)
    for (const holdInB of [true, false]) {
      const world = benchWith({ sheet: { outlet: 'socket', holdInB }, seed });
      const heard = doing(world, ...CHARGE)
        .flatMap(({ events }) => events)
        .map(({ what }) => what);
      expect(heard.filter((what) => what !== 'plug released')).toEqual(['plug locked', 'contactor closed']);
    }
});

test('a stop is answered by a steady pilot before anything opens, and supply is still there at 4 s (9.1, 10.2)', () => {
  for (const seed of SEEDS) {
    const world = benchWith({ seed });
    doing(world, ...CHARGE, { op: 'press', button: 'stop' });
    expect(world.plant.pilot).toBe('positive');
    doing(world, { op: 'wait', seconds: 3 });
    expect(world.plant.contactor).toBe('closed');
  }
});

test('a return from C to B keeps the permission (A.3)', () => {
  const world = benchWith({ sheet: { permission: 'authorise' } });
  doing(world, ...PLUG_IN, { op: 'press', button: 'authorise' }, { op: 'vehicle', state: 'C' });
  doing(world, { op: 'wait', seconds: 3 }, { op: 'vehicle', state: 'B' }, { op: 'wait', seconds: 3 });
  expect(world.plant.contactor).toBe('open');
  expect(untilHeard(world, { op: 'vehicle', state: 'C' }, 'contactor closed')).toBeLessThanOrEqual(3);
});
