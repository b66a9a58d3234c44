/*
 * The order of elimination: complete, earth spared, and without influence on any potential.
 * What the values make of it is reduce.test.ts's business.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plan } from '../../src/network/plan.ts';
import { potentials } from '../../src/network/potentials.ts';
import { anySupplied, reduced, type Supplied } from './build.ts';

/** The same network with nodes and branches numbered otherwise and branches turned round. */
function shuffled(supplied: Supplied, order: readonly number[], turn: readonly boolean[]): Supplied {
  const { topology, values } = supplied.network;
  const place = (node: number) => (node === 0 ? 0 : order.filter((x) => x > 0).indexOf(node) + 1);
  const turned = (i: number) => turn[i % turn.length] === true;
  const last = topology.branches.length - 1;
  const nodes: string[] = [];
  for (const [node, name] of topology.nodes.entries()) nodes[place(node)] = name;
  return {
    network: {
      topology: {
        nodes,
        branches: topology.branches
          .map(({ id, a, b }, i) =>
            turned(i) ? { id, a: place(b), b: place(a) } : { id, a: place(a), b: place(b) },
          )
          .reverse(),
      },
      values: {
        conductance: values.conductance.slice().reverse(),
        susceptance: values.susceptance.slice().reverse(),
      },
    },
    emfs: supplied.emfs.map((emf) => {
      const sign = turned(emf.branch) ? -1 : 1;
      return {
        branch: last - emf.branch,
        mains: { re: sign * emf.mains.re, im: sign * emf.mains.im },
        high: sign * emf.high,
        low: sign * emf.low,
      };
    }),
    injections: supplied.injections.map((x) => ({ ...x, port: { a: place(x.port.a), b: place(x.port.b) } })),
  };
}

describe('plan', () => {
  test('eliminates every node once and true earth never', () => {
    fc.assert(
      fc.property(anySupplied({ from: -3, to: 9, reactive: false }), ({ network: { topology } }) => {
        const { order, firstArm, armNode } = plan(topology);
        expect([...order].sort((m, n) => m - n)).toEqual(topology.nodes.map((_, node) => node).slice(1));
        const gone = new Set<number>();
        for (const [step, node] of order.entries()) {
          gone.add(node);
          const arms = armNode.subarray(firstArm[step], firstArm[step + 1]);
          expect([...arms].filter((arm) => gone.has(arm))).toEqual([]);
        }
      }),
    );
  });

  test('a tree needs no new links, a star is eaten from its points', () => {
    const star = {
      nodes: ['earth', 'centre', 'p', 'q', 'r'],
      branches: [0, 2, 3, 4].map((a) => ({ id: `to ${a}`, a, b: 1 })),
    };
    const { order, slots, meshSlot } = plan(star);
    expect([...order]).toEqual([2, 3, 4, 1]);
    expect(slots).toBe(4);
    expect(meshSlot).toHaveLength(0);
  });

  test('the numbering of nodes and the direction of branches change no potential', () => {
    fc.assert(
      fc.property(
        // Wider, and what a source's current rounds to would show on an island's insulation.
        anySupplied({ from: -2, to: 4, reactive: true }),
        fc.shuffledSubarray([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11], { minLength: 11 }),
        fc.array(fc.boolean(), { minLength: 1, maxLength: 9 }),
        (supplied, order, turn) => {
          const count = supplied.network.topology.nodes.length;
          const other = shuffled(
            supplied,
            order.filter((node) => node < count),
            turn,
          );
          const [here, there] = [supplied, other].map((s) =>
            potentials(reduced(s.network), s.emfs, [], s.injections),
          );
          const lists = (p = here) => (p ? [p.mains.re, p.mains.im, p.high, p.low, p.halfWave] : []);
          for (const [k, list] of lists(here).entries()) {
            const largest = Math.max(1, ...list.map(Math.abs));
            for (const [node, volts] of list.entries()) {
              const name = supplied.network.topology.nodes[node] ?? '';
              const same = lists(there)[k]?.[other.network.topology.nodes.indexOf(name)];
              expect(Math.abs(volts - (same ?? Number.NaN)) / largest).toBeLessThan(1e-9);
            }
          }
        },
      ),
    );
  });

  test.each([
    ['a branch from a node to itself', 1, 1],
    ['a node that does not exist', 1, 7],
  ])('refuses %s', (_, a, b) => {
    expect(() => plan({ nodes: ['earth', 'x'], branches: [{ id: 'bad', a, b }] })).toThrow(
      `between nodes ${a} and ${b}`,
    );
  });
});
