/*
 * What is seen from a pair of terminals, and what a tester put on them reads: closed forms, and
 * the same thing built into the network as a branch.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drive, seenFrom } from '../../src/network/port.ts';
import type { OneWay } from '../../src/network/potentials.ts';
import { potentials } from '../../src/network/potentials.ts';
import { anySupplied, networkOf, type Row, reduced, steady } from './build.ts';
import { currentImbalance } from './kirchhoff.ts';

describe('seenFrom', () => {
  test('a delta seen from two corners, and as the star that equals it', () => {
    const [x, y, z] = [30, 60, 90];
    const insulation: Row = ['insulation', 'c', 'earth', 1e9];
    const delta = networkOf([['ab', 'a', 'b', x], ['bc', 'b', 'c', y], ['ca', 'c', 'a', z], insulation]);
    const sum = x + y + z;
    const star = networkOf([
      ['a', 'a', 'm', (x * z) / sum],
      ['b', 'b', 'm', (x * y) / sum],
      ['c', 'c', 'm', (y * z) / sum],
      insulation,
    ]);
    const resistance = (n: typeof delta, a: string, b: string) => {
      const r = reduced(n);
      return seenFrom(r, potentials(r, [], [], []), { a: n.node(a), b: n.node(b) }).resistance;
    };
    expect(resistance(delta, 'a', 'b')).toBeCloseTo((x * (y + z)) / sum, 10);
    for (const [a, b] of [
      ['a', 'b'],
      ['b', 'c'],
      ['c', 'a'],
    ] as const) {
      expect(resistance(star, a, b)).toBeCloseTo(resistance(delta, a, b), 10);
    }
  });

  test('a resistor and a capacitor: the impedance at 50 Hz, the resistance for d.c.', () => {
    const n = networkOf([['both', 'x', 'earth', 100, 1 / 100]]);
    const r = reduced(n);
    const { impedance, resistance } = seenFrom(r, potentials(r, [], [], []), { a: 1, b: 0 });
    expect(impedance).toEqual({ re: expect.closeTo(50, 12), im: expect.closeTo(-50, 12) });
    expect(resistance).toBeCloseTo(100, 12);
  });

  test('a load on the port is what a branch there would be (Thévenin)', () => {
    fc.assert(
      fc.property(
        anySupplied({ from: -2, to: 5, reactive: true }),
        fc.nat(),
        fc.double({ min: 0, max: 6, noNaN: true }),
        ({ network, emfs, injections }, pick, exponent) => {
          const { topology, values } = network;
          const port = { a: 1 + (pick % (topology.nodes.length - 1)), b: 0 };
          const load = 10 ** exponent;
          const r = reduced(network);
          const { open, impedance, resistance } = seenFrom(r, potentials(r, emfs, [], injections), port);
          const loaded = potentials(
            reduced({
              topology: { ...topology, branches: [...topology.branches, { id: 'load', ...port }] },
              values: {
                conductance: Float64Array.of(...values.conductance, 1 / load),
                susceptance: Float64Array.of(...values.susceptance, 0),
              },
            }),
            emfs,
            [],
            injections,
          );
          const scale = Math.max(1, Math.abs(open.high), Math.abs(open.mains.re), Math.abs(open.mains.im));
          const share = load / (load + resistance);
          expect(Math.abs((loaded.high[port.a] ?? 0) - open.high * share)).toBeLessThan(1e-9 * scale);
          expect(Math.abs((loaded.low[port.a] ?? 0) - open.low * share)).toBeLessThan(
            1e-9 * Math.max(1, Math.abs(open.low)),
          );
          const [p, q] = [load + impedance.re, impedance.im];
          const square = p * p + q * q;
          const re = (load * (open.mains.re * p + open.mains.im * q)) / square;
          const im = (load * (open.mains.im * p - open.mains.re * q)) / square;
          expect(Math.abs((loaded.mains.re[port.a] ?? 0) - re)).toBeLessThan(1e-9 * scale);
          expect(Math.abs((loaded.mains.im[port.a] ?? 0) - im)).toBeLessThan(1e-9 * scale);
        },
      ),
    );
  });
});

describe('drive', () => {
  const insulated = (rows: readonly Row[]) => networkOf([...rows, ['insulation', 'x', 'earth', 200e6]]);

  test('500 V behind 100 kΩ on 200 MΩ: U / (R + Ri) through it', () => {
    const n = insulated([]);
    const { volts, amps } = drive(reduced(n), [], [], [], { a: 1, b: 0 }, { open: 500, resistance: 1e5 });
    expect(amps).toBeCloseTo(500 / 200.1e6, 15);
    expect(volts).toBeCloseTo((500 * 200e6) / 200.1e6, 9);
  });

  test('continuity of 0.1 mΩ in an island on 35 GΩ keeps its digits', () => {
    const n = networkOf([
      ['link', 'x', 'y', 1e-4],
      ['insulation', 'y', 'earth', 35e9],
    ]);
    const { volts, amps } = drive(reduced(n), [], [], [], { a: 1, b: 2 }, { open: 4, resistance: 20 });
    expect(volts / amps / 1e-4 - 1).toBeCloseTo(0, 10);
  });

  test('a live conductor drives the tester backwards', () => {
    const n = networkOf([['source', 'earth', 'x', 10]]);
    const { volts, amps } = drive(
      reduced(n),
      [steady(0, 12)],
      [],
      [],
      { a: 1, b: 0 },
      { open: 4, resistance: 10 },
    );
    expect(amps).toBeCloseTo(-0.4, 12);
    expect(volts).toBeCloseTo(8, 12);
  });

  test.each([
    ['below its voltage an arrester is not there', 250, (250 * 200) / 201, 1e-5],
    ['above it the reading is the arrester', 1000, 600, 1e-3],
  ])('%s', (_, open, expected, within) => {
    const n = insulated([]);
    const arrester: OneWay[] = [
      { port: { a: 1, b: 0 }, drop: 600, onResistance: 10 },
      { port: { a: 0, b: 1 }, drop: 600, onResistance: 10 },
    ];
    for (const sign of [1, -1]) {
      const driven = drive(
        reduced(n),
        [],
        arrester,
        [],
        { a: 1, b: 0 },
        { open: sign * open, resistance: 1e6 },
      );
      expect(sign * driven.volts).toSatisfy((v: number) => Math.abs(v / expected - 1) < within + 1e-5);
      expect(driven.amps + (driven.oneWays[1] ?? 0) - (driven.oneWays[0] ?? 0)).toBeCloseTo(
        driven.volts / 200e6,
        12,
      );
    }
  });

  test('a diode reads one way only', () => {
    const n = insulated([
      ['blocked', 'x', 'inside', 1e10],
      ['vehicle', 'inside', 'earth', 2740],
    ]);
    const [x, inside] = [n.node('x'), n.node('inside')];
    const diode: OneWay[] = [{ port: { a: x, b: inside }, drop: 0.7, onResistance: 0 }];
    const through = (open: number) =>
      drive(reduced(n), [], diode, [], { a: x, b: 0 }, { open, resistance: 1000 }).amps;
    expect(through(10)).toBeCloseTo(9.3 / 3740, 7);
    // What is left is the insulation.
    expect(through(-10)).toBeCloseTo(-10 / 200e6, 8);
  });

  test('is what a source in a branch of its own would do', () => {
    fc.assert(
      fc.property(
        anySupplied({ from: -2, to: 5, reactive: false }),
        fc.tuple(fc.nat(), fc.nat(), fc.nat()),
        fc.double({ min: -500, max: 500, noNaN: true }),
        ({ network, emfs, injections }, picks, open) => {
          const { topology, values } = network;
          const count = topology.nodes.length;
          const [a, c, d] = picks.map((pick) => pick % count) as [number, number, number];
          const port = { a: Math.max(a, 1), b: 0 };
          const oneWays = c === d ? [] : [{ port: { a: c, b: d }, drop: 0.7, onResistance: 1 }];
          const driven = drive(reduced(network), emfs, oneWays, injections, port, { open, resistance: 50 });
          const built = {
            topology: {
              ...topology,
              branches: [...topology.branches, { id: 'tester', a: port.b, b: port.a }],
            },
            values: {
              conductance: Float64Array.of(...values.conductance, 1 / 50),
              susceptance: Float64Array.of(...values.susceptance, 0),
            },
          };
          const withTester = [...emfs, steady(topology.branches.length, open)];
          const planes = potentials(reduced(built), withTester, oneWays, injections);
          expect(
            currentImbalance(built.topology, built.values, planes, withTester, injections, oneWays).worst,
          ).toBeLessThan(1);
          const scale = Math.max(1, ...planes.high.map(Math.abs));
          for (const [node, volts] of planes.high.entries()) {
            expect(Math.abs(volts - (driven.high[node] ?? Number.NaN))).toBeLessThan(1e-8 * scale);
          }
          expect(driven.volts).toBe((driven.high[port.a] ?? 0) - (driven.high[port.b] ?? 0));
          expect(Math.abs(driven.amps - (open - driven.volts) / 50)).toBeLessThan(1e-8 * scale);
        },
      ),
    );
  });
});
