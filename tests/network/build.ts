/*
 * Builds small networks for tests from rows of names and ohms, and makes random ones for properties
 * and for the comparison with the circuit simulator. Judges nothing.
 */
import fc from 'fast-check';
import { plan } from '../../src/network/plan.ts';
import type { Emf, Injection } from '../../src/network/potentials.ts';
import type { BranchValues, Reduced } from '../../src/network/reduce.ts';
import { reduce } from '../../src/network/reduce.ts';
import type { NodeId, Topology } from '../../src/network/topology.ts';

export interface Network {
  topology: Topology;
  values: BranchValues;
}

/** Branch id, from, to, ohms, susceptance in siemens. The node `earth` is node 0. */
export type Row = readonly [id: string, a: string, b: string, ohms: number, susceptance?: number];

export function networkOf(rows: readonly Row[]): Network & {
  node: (name: string) => NodeId;
  branch: (id: string) => number;
} {
  const nodes = [...new Set(['earth', ...rows.flatMap(([, a, b]) => [a, b])])];
  const node = (name: string) => nodes.indexOf(name);
  return {
    topology: { nodes, branches: rows.map(([id, a, b]) => ({ id, a: node(a), b: node(b) })) },
    values: {
      conductance: Float64Array.from(rows, ([, , , ohms]) => 1 / ohms),
      susceptance: Float64Array.from(rows, (row) => row[4] ?? 0),
    },
    node,
    branch: (id) => rows.findIndex((row) => row[0] === id),
  };
}

export const reduced = ({ topology, values }: Network): Reduced => reduce(plan(topology), values);

/** A source that is the same in both d.c. planes and in phase at 50 Hz. */
export const steady = (branch: number, volts: number): Emf => ({
  branch,
  mains: { re: volts, im: 0 },
  high: volts,
  low: volts,
});

/** Connected networks of 2 to 12 nodes, resistances even on a logarithmic scale. */
export function anyNetwork(decades: { from: number; to: number; reactive: boolean }): fc.Arbitrary<Network> {
  const siemens = fc.double({ min: -decades.to, max: -decades.from, noNaN: true }).map((e) => 10 ** e);
  const branch = (a: fc.Arbitrary<number>, b: number) =>
    fc.record({
      a,
      b: fc.constant(b),
      conductance: siemens,
      susceptance: decades.reactive ? fc.oneof(fc.constant(0), siemens) : fc.constant(0),
    });
  return fc.integer({ min: 2, max: 12 }).chain((count) => {
    // Each node hangs on an earlier one, so none floats; some further branches make meshes.
    const tree = Array.from({ length: count - 1 }, (_, i) => branch(fc.integer({ min: 0, max: i }), i + 1));
    const extra = fc
      .integer({ min: 1, max: count - 1 })
      .chain((b) => branch(fc.integer({ min: 0, max: b - 1 }), b));
    return fc
      .tuple(fc.tuple(...tree), fc.array(extra, { maxLength: 2 * count }))
      .map(([trunk, rest]) => [...trunk, ...rest])
      .map((all) => ({
        topology: {
          nodes: Array.from({ length: count }, (_, i) => `n${i}`),
          branches: all.map(({ a, b }, i) => ({ id: `b${i}`, a, b })),
        },
        values: {
          conductance: Float64Array.from(all, (x) => x.conductance),
          susceptance: Float64Array.from(all, (x) => x.susceptance),
        },
      }));
  });
}

export interface Supplied {
  network: Network;
  emfs: Emf[];
  injections: Injection[];
}

/** A network with up to three sources in it and up to two currents put into it. */
export function anySupplied(decades: {
  from: number;
  to: number;
  reactive: boolean;
}): fc.Arbitrary<Supplied> {
  const volts = fc.double({ min: -300, max: 300, noNaN: true });
  const amps = fc.double({ min: -1, max: 1, noNaN: true });
  return anyNetwork(decades).chain((network) => {
    const node = fc.nat({ max: network.topology.nodes.length - 1 });
    return fc.record({
      network: fc.constant(network),
      emfs: fc.array(
        fc.record({
          branch: fc.nat({ max: network.topology.branches.length - 1 }),
          mains: fc.record({ re: volts, im: volts }),
          high: volts,
          low: volts,
        }),
        { minLength: 1, maxLength: 3 },
      ),
      injections: fc.array(
        fc.record({
          port: fc.record({ a: node, b: node }),
          mains: fc.record({ re: amps, im: amps }),
          direct: amps,
          halfWave: amps,
        }),
        { maxLength: 2 },
      ),
    });
  });
}
