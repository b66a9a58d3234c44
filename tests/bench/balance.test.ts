/** Kirchhoff over a random run: in every solved network the currents at every node add up to nothing. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import { perform } from '../../src/bench/perform.ts';
import type { World } from '../../src/bench/world.ts';
import { branchCurrent } from '../../src/network/potentials.ts';
import { benchWith, doing, THREE_PHASE } from './build.ts';

const SEED = 1845;
/** Share of the sum of the currents at a node, and the least that counts, A. */
const TOLERANCE = 1e-9;
const FLOOR = 1e-8;

/** The node whose currents are furthest from adding up, in what is allowed; sources are inside their branches. */
function imbalance(world: World): number {
  const { wiring, solution } = world;
  const { nodes, branches } = wiring.topology;
  const emfAt = new Map(solution.emfs.map((emf) => [emf.branch, emf]));
  const sums = nodes.map(() => ({ re: 0, im: 0, size: 0 }));
  for (const [i, { a, b }] of branches.entries()) {
    const { mains } = branchCurrent(solution.reduced, solution.planes, i, emfAt.get(i));
    const size = Math.hypot(mains.re, mains.im);
    for (const [node, sign] of [
      [a, 1],
      [b, -1],
    ] as const) {
      const sum = sums[node];
      if (sum === undefined) continue;
      sum.re += sign * mains.re;
      sum.im += sign * mains.im;
      sum.size += size;
    }
  }
  // Node 0 is true earth: what the others leave over would show there, and its own sum follows from theirs.
  return Math.max(...sums.map(({ re, im, size }) => Math.hypot(re, im) / Math.max(TOLERANCE * size, FLOOR)));
}

const anyOperation: fc.Arbitrary<OperationInput> = fc.oneof(
  fc.constantFrom<OperationInput>(
    { op: 'isolate' },
    { op: 'isolate', poles: 'line' },
    { op: 'energise' },
    { op: 'open-cover' },
    { op: 'disconnect', what: 'unit' },
    { op: 'reconnect', what: 'unit' },
    { op: 'disconnect', what: 'earthing-conductor' },
    { op: 'reconnect', what: 'earthing-conductor' },
    { op: 'reset', what: 'unit' },
    { op: 'reset', what: 'supply' },
    { op: 'pull-plug' },
    { op: 'measure', quantity: 'residual', waveform: 'sinusoidal', mode: 'ramp' },
    { op: 'measure', quantity: 'residual', waveform: 'smooth-dc-positive', mode: 'ramp' },
    { op: 'measure', quantity: 'loop', between: ['outlet.L1', 'outlet.PE'] },
    { op: 'measure', quantity: 'opening-time' },
  ),
  fc.record({
    op: fc.constant('vehicle' as const),
    plugged: fc.boolean(),
    state: fc.constantFrom('A', 'B', 'C', 'D'),
    pilot: fc.constantFrom('sound', 'sound', 'shorted-to-earth', 'open'),
    earth: fc.constantFrom('sound', 'sound', 'open'),
    load: fc.constantFrom(0, 6, 32),
    leakage: fc.constantFrom(null, { ac: 0.01, dc: 0.002, line: 'L1' }),
  }) as fc.Arbitrary<OperationInput>,
  fc.record({ op: fc.constant('wait' as const), seconds: fc.constantFrom(0.02, 0.5, 3, 15) }),
);

test.each([
  ['one phase', {}],
  ['three phases, socket', { site: THREE_PHASE, sheet: { outlet: 'socket' } }],
  ['PE not landed', { faults: [{ fault: 'pe-not-landed', values: {} }] }],
] as const)('%s: 40 runs of 25 operations', (_, wanted) => {
  let worst = 0;
  const runs = fc.sample(fc.array(anyOperation, { minLength: 25, maxLength: 25 }), {
    seed: SEED,
    numRuns: 40,
  });
  for (const script of runs) {
    const world = benchWith({ ...wanted });
    for (const input of script) {
      perform(world, operation(input));
      worst = Math.max(worst, imbalance(world));
    }
  }
  console.log(`seed ${SEED}, ${_}: worst imbalance ${worst.toExponential(1)} of what is allowed`);
  expect(worst).toBeLessThan(1);
});

test('a network that does not balance is noticed', () => {
  const world = benchWith();
  doing(world, { op: 'wait', seconds: 1 });
  const node = world.wiring.nodeAt('inner.L1');
  const { re } = world.solution.planes.mains;
  re[node] = (re[node] ?? 0) + 0.01;
  expect(imbalance(world)).toBeGreaterThan(1);
});
