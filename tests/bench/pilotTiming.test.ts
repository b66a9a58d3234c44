/** The rows of IEC 61851-1:2017 Table A.6 that a unit has to keep, on the bench, over the spread of sound units. */
import { expect, test } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import type { Happening, World } from '../../src/bench/world.ts';
import { benchWith, CHARGE, doing, PLUG_IN, read, type Wanted } from './build.ts';

const SEEDS = Array.from({ length: 12 }, (_, i) => 100 + i);

const now = (world: World): number => world.timeline.now / 1e6;

/** Seconds from an operation until something is heard, waiting up to a minute; Infinity where it is not. */
function untilHeard(world: World, operation: OperationInput, what: Happening['what']): number {
  const began = now(world);
  const outcomes = doing(world, operation, { op: 'wait', seconds: 60 });
  const heard = outcomes.flatMap(({ events }) => events).find((event) => event.what === what);
  return heard === undefined ? Infinity : heard.at - began;
}

const opening = (
  world: World,
  of: 'C-to-B' | 'C-to-A' | 'unplug' | 'pilot-short' | 'pilot-open' | 'earth-open',
) => {
  const { value, qualifier } = read(world, { op: 'measure', quantity: 'opening-time', of });
  return qualifier === null ? (value ?? Infinity) - 0.002 : Infinity;
};

/** How long the pilot stays steady after it went steady, looked at every 50 ms, s. */
function steadyFor(world: World): number {
  const began = now(world);
  while (world.plant.pilot !== 'oscillating' && now(world) - began < 60)
    doing(world, { op: 'wait', seconds: 0.05 });
  return now(world) - began;
}

const SOCKET: Wanted = { sheet: { outlet: 'socket' } };
const TETHERED: Wanted = {};

interface Row {
  readonly sequence: string;
  readonly what: string;
  readonly wanted: Wanted;
  readonly before: readonly OperationInput[];
  readonly measured: (world: World) => number;
  readonly least?: number;
  readonly greatest?: number;
}

const ROWS: readonly Row[] = [
  {
    sequence: '2.1',
    what: 'B to A: socket unlocked',
    wanted: SOCKET,
    before: PLUG_IN,
    measured: (w) => untilHeard(w, { op: 'vehicle', state: 'A' }, 'plug released'),
    greatest: 5,
  },
  {
    sequence: '2.2',
    what: 'C2 to A, unplugged: supply off',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => opening(w, 'unplug'),
    greatest: 0.1,
  },
  {
    sequence: '2.2',
    what: 'C2 to A, pilot let go: supply off',
    wanted: SOCKET,
    before: CHARGE,
    measured: (w) => opening(w, 'C-to-A'),
    greatest: 0.1,
  },
  {
    sequence: '2.2',
    what: 'C2 to A, pilot broken: supply off',
    wanted: SOCKET,
    before: CHARGE,
    measured: (w) => opening(w, 'pilot-open'),
    greatest: 0.1,
  },
  {
    sequence: '3.2',
    what: 'C1 to C2: supply on',
    wanted: { sheet: { permission: 'authorise' } },
    before: CHARGE,
    measured: (w) => untilHeard(w, { op: 'press', button: 'authorise' }, 'contactor closed'),
    greatest: 3,
  },
  {
    sequence: '4',
    what: 'B2 to C2: supply on',
    wanted: SOCKET,
    before: PLUG_IN,
    measured: (w) => untilHeard(w, { op: 'vehicle', state: 'C' }, 'contactor closed'),
    greatest: 3,
  },
  {
    sequence: '4',
    what: 'B2 to D2 with ventilation: supply on',
    wanted: { sheet: { ventilation: true } },
    before: PLUG_IN,
    measured: (w) => untilHeard(w, { op: 'vehicle', state: 'D' }, 'contactor closed'),
    greatest: 3,
  },
  {
    sequence: '4',
    what: 'C2 to D2 without ventilation: supply off',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => untilHeard(w, { op: 'vehicle', state: 'D' }, 'contactor opened'),
    greatest: 3,
  },
  {
    sequence: '6',
    what: 'a lower limit: duty follows',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => {
      const began = now(w);
      doing(w, { op: 'supply', loadLimit: 10 });
      while (w.plant.duty > 10 / 60 + 1e-9 && now(w) - began < 60) doing(w, { op: 'wait', seconds: 0.05 });
      return now(w) - began;
    },
    greatest: 10,
  },
  {
    sequence: '8.1',
    what: 'C2 to B2: supply off',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => opening(w, 'C-to-B'),
    greatest: 0.1,
  },
  {
    sequence: '8.1',
    what: 'D2 to B2: supply off',
    wanted: { sheet: { ventilation: true } },
    before: [...PLUG_IN, { op: 'vehicle', state: 'D' }, { op: 'wait', seconds: 3 }],
    measured: (w) => opening(w, 'C-to-B'),
    greatest: 0.1,
  },
  {
    sequence: '8.2',
    what: 'C1 to B1: supply off',
    wanted: TETHERED,
    before: [...CHARGE, { op: 'press', button: 'stop' }],
    measured: (w) => opening(w, 'C-to-B'),
    greatest: 0.1,
  },
  {
    sequence: '9.2',
    what: 'x2 to x1: no oscillation before',
    wanted: TETHERED,
    before: [...PLUG_IN, { op: 'supply', voltage: 170 }, { op: 'supply', voltage: 236 }],
    measured: steadyFor,
    least: 3,
    greatest: 10,
  },
  {
    sequence: '10.2',
    what: 'a stop that the vehicle ignores: open under load not before',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => untilHeard(w, { op: 'press', button: 'stop' }, 'contactor opened'),
    least: 6,
    greatest: 60,
  },
  {
    sequence: '12',
    what: 'C to E: supply off',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => opening(w, 'pilot-short'),
    greatest: 3,
  },
  {
    sequence: '12',
    what: 'C to E: socket unlocked',
    wanted: SOCKET,
    before: CHARGE,
    measured: (w) => untilHeard(w, { op: 'vehicle', pilot: 'shorted-to-earth' }, 'plug released'),
    greatest: 30,
  },
  {
    sequence: '6.3.1.2, A.4.8',
    what: 'PE to the vehicle lost: supply off',
    wanted: TETHERED,
    before: CHARGE,
    measured: (w) => opening(w, 'earth-open'),
    greatest: 0.1,
  },
];

test.each(ROWS)('$sequence: $what ($least – $greatest s)', (row) => {
  for (const seed of SEEDS) {
    const world = benchWith({ ...row.wanted, seed });
    doing(world, ...row.before);
    const time = row.measured(world);
    expect(time, `seed ${seed}`).toBeGreaterThanOrEqual(row.least ?? 0);
    expect(time, `seed ${seed}`).toBeLessThanOrEqual(row.greatest ?? Infinity);
  }
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
