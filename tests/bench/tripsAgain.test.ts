/** A device that has tripped and was reset protects as it did before: on the same fault it trips again, as soon. */
import { describe, expect, test } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import type { Outcome } from '../../src/bench/perform.ts';
import type { Happening, World } from '../../src/bench/world.ts';
import { benchWith, CHARGE, doing, MAKE_DEAD, type Wanted } from './build.ts';

interface Row {
  readonly device: string;
  readonly wanted: Wanted;
  /** Brings the fault on, from a bench that charges, and says what trips. */
  readonly fault: readonly OperationInput[];
  readonly what: Happening['what'];
  /** Takes the fault away, resets, and charges again. */
  readonly mended: readonly OperationInput[];
}

const LINK: [string, string] = ['origin.L1', 'origin.PE'];
const leak = (ac: number, dc: number): OperationInput => ({
  op: 'vehicle',
  leakage: ac === 0 && dc === 0 ? null : { ac, dc, line: 'L1' },
});
const wait = (seconds: number): OperationInput => ({ op: 'wait', seconds });
const back = (what: 'unit' | 'upstream'): readonly OperationInput[] => [
  leak(0, 0),
  { op: 'reset', what },
  wait(30),
];

const ROWS: readonly Row[] = [
  {
    device: 'the circuit-breaker, on a dead short',
    wanted: {},
    fault: [...MAKE_DEAD, { op: 'link', between: LINK }, { op: 'energise' }, wait(1)],
    what: 'circuit breaker tripped',
    mended: [{ op: 'isolate' }, { op: 'unlink', between: LINK }, { op: 'energise' }, wait(30)],
  },
  {
    device: 'the residual device at the origin',
    wanted: {
      site: { circuit: { residualDevice: { type: 'A', rated: 0.03, delay: 'general', poles: 2 } } },
      design: { residualPickup: Infinity },
    },
    fault: [leak(0.06, 0), wait(1)],
    what: 'upstream device tripped',
    mended: back('upstream'),
  },
  {
    device: 'the unit’s own residual device, on its breaker',
    wanted: { sheet: { residual: { type: 'A', rated: 0.03, by: 'breaker', direct: 'protective' } } },
    fault: [leak(0.06, 0), wait(1)],
    what: 'unit breaker tripped',
    mended: back('unit'),
  },
  {
    device: 'its d.c. detector, on the same breaker',
    wanted: { sheet: { residual: { type: 'A', rated: 0.03, by: 'breaker', direct: 'protective' } } },
    fault: [leak(0, 0.02), wait(10)],
    what: 'unit breaker tripped',
    mended: back('unit'),
  },
  {
    device: 'its residual device, on the contactor',
    wanted: {},
    fault: [leak(0.06, 0), wait(1)],
    what: 'contactor opened',
    mended: back('unit'),
  },
  {
    device: 'its d.c. detector, on the contactor',
    wanted: {},
    fault: [leak(0, 0.02), wait(10)],
    what: 'contactor opened',
    mended: back('unit'),
  },
];

/** What happened, with the time since the last operation but one began. */
const happened = (outcomes: readonly Outcome[]) => {
  const events = outcomes.slice(-2).flatMap(({ events }) => events);
  const began = outcomes.at(-3)?.seen.at ?? Number.NaN;
  return events.map(({ at, what }) => ({ what, after: at - began }));
};

describe.each(ROWS)('$device', ({ wanted, fault, what, mended }) => {
  const charging = (): World => {
    const world = benchWith(wanted);
    doing(world, ...CHARGE, wait(1), wait(1));
    return world;
  };

  test('trips, charges again once mended, and trips again as soon', () => {
    const world = charging();
    const faulty = [wait(1), ...fault];
    const first = happened(doing(world, ...faulty));
    expect(first.map((event) => event.what)).toContain(what);
    doing(world, ...mended);
    expect(world.indicator).toBe('charging');
    const second = happened(doing(world, ...faulty));
    expect(second.map((event) => event.what)).toContain(what);
    const soon = (events: typeof first) => events.find((event) => event.what === what)?.after ?? Number.NaN;
    expect(soon(second)).toBeCloseTo(soon(first), 5);
  });
});
