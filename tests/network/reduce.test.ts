/*
 * The factoring keeps its digits over sixteen decades, judged by exact rational arithmetic, and
 * names the branch or node for which there is no answer.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FloatingNode, NotFinite } from '../../src/network/errors.ts';
import { plan } from '../../src/network/plan.ts';
import { seenFrom } from '../../src/network/port.ts';
import { potentials } from '../../src/network/potentials.ts';
import { reduce } from '../../src/network/reduce.ts';
import { exactNetwork } from '../oracle/rational.ts';
import { anyNetwork, type Network, networkOf, type Row, reduced } from './build.ts';

/** Greatest relative error of any port impedance of the network against exact arithmetic. */
function greatestError(network: Network): number {
  const r = reduced(network);
  const idle = potentials(r, [], [], []);
  const exact = exactNetwork(network.topology, network.values);
  const reactive = network.values.susceptance.some((b) => b > 0);
  let greatest = 0;
  for (let a = 0; a < network.topology.nodes.length; a++) {
    for (let b = 0; b < a; b++) {
      const { impedance, resistance } = seenFrom(r, idle, { a, b });
      const { re, im } = exact.impedance(a, b);
      const size = Math.hypot(re, im);
      greatest = Math.max(greatest, Math.hypot(impedance.re - re, impedance.im - im) / size);
      if (!reactive) greatest = Math.max(greatest, Math.abs(resistance - re) / size);
    }
  }
  return greatest;
}

describe('megohms beside milliohms, against exact rational arithmetic', () => {
  /** Line and protective conductor in four pieces each, insulation between them, a rod to earth. */
  const circuit = (link: number, insulation: number, rod: number): Row[] => [
    ['rod', 'earth', 'pe0', rod],
    ...[0, 1, 2, 3].flatMap((i): Row[] => [
      [`line ${i}`, `l${i}`, `l${i + 1}`, link],
      [`protective ${i}`, `pe${i}`, `pe${i + 1}`, link],
      [`insulation ${i}`, `l${i}`, `pe${i}`, insulation],
    ]),
    ['insulation of the end', 'l4', 'pe4', insulation],
  ];

  test.each([
    ['insulation 350 MΩ through 0.1 mΩ', 1e-4, 350e6, 1],
    ['insulation 35 GΩ through 0.1 mΩ', 1e-4, 35e9, 1],
    ['the same with the rod off', 1e-4, 35e9, 1e10],
    ['links of 1 µΩ', 1e-6, 35e9, 1],
    ['links of 1 µΩ, insulation 1 TΩ, the rod off', 1e-6, 1e12, 1e12],
  ])('%s', (_, link, insulation, rod) => {
    expect(greatestError(networkOf(circuit(link, insulation, rod)))).toBeLessThan(1e-12);
  });

  test('random networks from 0.1 mΩ to 100 GΩ', () => {
    fc.assert(
      fc.property(anyNetwork({ from: -4, to: 11, reactive: false }), (network) => {
        expect(greatestError(network)).toBeLessThan(1e-12);
      }),
    );
  });

  test('random networks with susceptance over the same range', { timeout: 30_000 }, () => {
    fc.assert(
      fc.property(anyNetwork({ from: -4, to: 11, reactive: true }), (network) => {
        expect(greatestError(network)).toBeLessThan(1e-9);
      }),
      { numRuns: 30 },
    );
  });
});

describe('values that have no answer', () => {
  const rows: Row[] = [
    ['supply', 'earth', 'bar', 1],
    ['contact', 'bar', 'outlet', 1e-4],
    ['lead', 'outlet', 'plug', 0.01],
  ];
  const withConductance = (ohms: number, susceptance = 0) => {
    const { topology, values } = networkOf(rows);
    values.conductance[1] = 1 / ohms;
    values.susceptance[1] = susceptance;
    return () => reduce(plan(topology), values);
  };

  test('an island is named by one of its nodes', () => {
    expect(withConductance(Infinity)).toThrow(FloatingNode);
    expect(withConductance(Infinity)).toThrow(/"(outlet|plug)" has no path to true earth/);
    expect(withConductance(1e12)).not.toThrow();
  });

  test('a node without branches is named', () => {
    const { topology, values } = networkOf(rows);
    const more = { ...topology, nodes: [...topology.nodes, 'forgotten'] };
    expect(() => reduce(plan(more), values)).toThrow('"forgotten"');
  });

  test('a capacitor alone leaves a node floating for d.c.', () => {
    expect(withConductance(Infinity, 1e-6)).toThrow(FloatingNode);
  });

  test.each([Number.NaN, -1, 0])('a contact of %s ohms is refused by name', (ohms) => {
    expect(withConductance(ohms)).toThrow(NotFinite);
    expect(withConductance(ohms)).toThrow('branch "contact"');
  });

  test.each([Number.NaN, -1e-9, Infinity])('a susceptance of %s is refused by name', (susceptance) => {
    expect(withConductance(1, susceptance)).toThrow('branch "contact"');
  });

  test('lists of another length are refused', () => {
    const { topology, values } = networkOf(rows);
    const short = { ...values, susceptance: new Float64Array(2) };
    expect(() => reduce(plan(topology), short)).toThrow(`2 values for ${rows.length} branches`);
  });

  test('the factors keep their own copy of the values', () => {
    const { topology, values } = networkOf(rows);
    const r = reduce(plan(topology), values);
    values.conductance.fill(0);
    expect([...r.values.conductance]).toEqual([1, 1e4, 100]);
  });
});
