/*
 * Potentials and branch currents against closed forms, the laws any linear network obeys, and the
 * rule of one-way parts. The comparison with a circuit simulator is in tests/oracle.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NotFinite } from '../../src/network/errors.ts';
import type { Injection, OneWay, Planes } from '../../src/network/potentials.ts';
import { branchCurrent, potentials } from '../../src/network/potentials.ts';
import { anySupplied, networkOf, reduced, steady } from './build.ts';
import { currentImbalance } from './kirchhoff.ts';

const NONE: Injection = {
  port: { a: 0, b: 0 },
  mains: { re: 0, im: 0 },
  direct: 0,
  halfWave: 0,
};

const listsOf = (p: Planes): Float64Array[] => [p.mains.re, p.mains.im, p.high, p.low, p.halfWave];

describe('closed forms', () => {
  test('divider: U · R2 / (R1 + R2), in every plane with a source', () => {
    const n = networkOf([
      ['source', 'earth', 'top', 1],
      ['upper', 'top', 'tap', 299],
      ['lower', 'tap', 'earth', 100],
    ]);
    const planes = potentials(reduced(n), [steady(n.branch('source'), 240)], [], []);
    const tap = n.node('tap');
    expect(planes.mains.re[tap]).toBeCloseTo(60, 12);
    expect(planes.mains.im[tap]).toBeCloseTo(0, 12);
    expect(planes.high[tap]).toBeCloseTo(60, 12);
    expect(planes.low[tap]).toBeCloseTo(60, 12);
    expect(planes.halfWave[tap]).toBe(0);
  });

  test('the two d.c. planes have their own sources; the half-wave plane has none', () => {
    const n = networkOf([['source', 'earth', 'top', 1000]]);
    const emf = { branch: 0, mains: { re: 1, im: 2 }, high: 12, low: -12 };
    const planes = potentials(reduced(n), [emf], [], []);
    expect(listsOf(planes).map((list) => list[1])).toEqual(
      [1, 2, 12, -12, 0].map((v) => expect.closeTo(v, 12)),
    );
  });

  test('an injected current goes into a and out of b', () => {
    const n = networkOf([
      ['one', 'x', 'earth', 10],
      ['two', 'y', 'earth', 20],
    ]);
    const injection = { port: { a: 1, b: 2 }, mains: { re: 1, im: -2 }, direct: 3, halfWave: 0.5 };
    const planes = potentials(reduced(n), [], [], [injection]);
    const near = (...volts: number[]) => volts.map((v) => expect.closeTo(v, 12));
    expect([...planes.mains.re]).toEqual(near(0, 10, -20));
    expect([...planes.mains.im]).toEqual(near(0, -20, 40));
    expect([...planes.high]).toEqual(near(0, 30, -60));
    expect([...planes.low]).toEqual(near(0, 30, -60));
    expect([...planes.halfWave]).toEqual(near(0, 5, -10));
    // Beside one that has no half-wave it is the same.
    const beside = potentials(reduced(n), [], [], [{ ...injection, halfWave: 0 }, injection]);
    expect([...beside.halfWave]).toEqual(near(0, 5, -10));
    expect([...beside.high]).toEqual(near(0, 60, -120));
  });

  test('a balanced bridge carries nothing across; its branch currents are U / R', () => {
    const n = networkOf([
      ['source', 'earth', 'top', 1e-3],
      ['a1', 'top', 'left', 10],
      ['a2', 'left', 'earth', 20],
      ['b1', 'top', 'right', 100],
      ['b2', 'right', 'earth', 200],
      ['across', 'left', 'right', 5],
    ]);
    const r = reduced(n);
    const emf = steady(n.branch('source'), 30);
    const planes = potentials(r, [emf], [], []);
    expect(branchCurrent(r, planes, n.branch('across')).high).toBeCloseTo(0, 12);
    const total = 30 / (1e-3 + 1 / (1 / 30 + 1 / 300));
    expect(branchCurrent(r, planes, n.branch('source'), emf).high).toBeCloseTo(total, 8);
    expect(branchCurrent(r, planes, n.branch('a2')).mains.re).toBeCloseTo((total * 10) / 11, 8);
  });

  test('a source’s own branch carries what its load takes, in every plane and to its sign', () => {
    const n = networkOf([
      ['source', 'earth', 'top', 2],
      ['load', 'top', 'earth', 4],
    ]);
    const r = reduced(n);
    const emf = { branch: 0, mains: { re: 3, im: -6 }, high: 12, low: -9 };
    const planes = potentials(r, [emf], [], []);
    // U / (2 Ω + 4 Ω), from a to b.
    const current = branchCurrent(r, planes, 0, emf);
    expect(current.mains.re).toBeCloseTo(0.5, 12);
    expect(current.mains.im).toBeCloseTo(-1, 12);
    expect(current.high).toBeCloseTo(2, 12);
    expect(current.low).toBeCloseTo(-1.5, 12);
    expect(current.halfWave).toBe(0);
    // Round the loop it is one current.
    const load = branchCurrent(r, planes, 1);
    expect([load.mains.re, load.mains.im, load.high, load.low]).toEqual(
      [0.5, -1, 2, -1.5].map((amps) => expect.closeTo(amps, 12)),
    );
  });

  test('a low-pass at 50 Hz: U / (1 + jωRC), and its current leads', () => {
    const susceptance = 1 / 400;
    const n = networkOf([
      ['source', 'earth', 'in', 1e-3],
      ['series', 'in', 'out', 300],
      ['capacitor', 'out', 'earth', 1e12, susceptance],
    ]);
    const r = reduced(n);
    const planes = potentials(r, [steady(0, 230)], [], []);
    // 1 / (1 + 0.75j) = 0.64 − 0.48j
    expect(planes.mains.re[n.node('out')]).toBeCloseTo(230 * 0.64, 2);
    expect(planes.mains.im[n.node('out')]).toBeCloseTo(-230 * 0.48, 2);
    expect(planes.high[n.node('out')]).toBeCloseTo(230, 6);
    const { mains } = branchCurrent(r, planes, n.branch('capacitor'));
    expect(mains.re).toBeCloseTo(230 * 0.48 * susceptance, 5);
    expect(mains.im).toBeCloseTo(230 * 0.64 * susceptance, 5);
  });

  test('three phases on a star of unlike loads without neutral (Millman)', () => {
    const h = Math.sqrt(3) / 2;
    const phases = [
      { re: 230, im: 0 },
      { re: -115, im: -230 * h },
      { re: -115, im: 230 * h },
    ];
    const loads = [20, 40, 80];
    const n = networkOf([
      ...loads.map((ohms, i) => [`load ${i}`, 'earth', 'star', ohms] as const),
      ['insulation', 'star', 'earth', 1e12],
    ]);
    const emfs = phases.map((mains, branch) => ({ branch, mains, high: 0, low: 0 }));
    const planes = potentials(reduced(n), emfs, [], []);
    const y = loads.map((ohms) => 1 / ohms);
    const sum = y.reduce((s, g) => s + g, 0);
    const star = (part: 're' | 'im') => phases.reduce((s, u, i) => s + u[part] * (y[i] ?? 0), 0) / sum;
    expect(planes.mains.re[1]).toBeCloseTo(star('re'), 8);
    expect(planes.mains.im[1]).toBeCloseTo(star('im'), 8);
  });
});

describe('properties of random networks', () => {
  test('currents balance at every node', () => {
    fc.assert(
      fc.property(anySupplied({ from: -3, to: 5, reactive: true }), ({ network, emfs, injections }) => {
        const planes = potentials(reduced(network), emfs, [], injections);
        const { topology, values } = network;
        expect(currentImbalance(topology, values, planes, emfs, injections, [])).toMatchObject({
          worst: expect.toSatisfy((worst: number) => worst < 1),
        });
      }),
    );
  });

  test('superposition: together is the sum of one at a time', () => {
    fc.assert(
      // A source's current rounds to 10⁻¹⁶ of itself, and that flows on into an island's insulation.
      fc.property(anySupplied({ from: -2, to: 4, reactive: true }), ({ network, emfs, injections }) => {
        const r = reduced(network);
        const together = listsOf(potentials(r, emfs, [], injections));
        const alone = [
          ...emfs.map((emf) => potentials(r, [emf], [], [])),
          ...injections.map((injection) => potentials(r, [], [], [injection])),
        ].map(listsOf);
        for (const [k, list] of together.entries()) {
          const scale = alone.reduce((s, one) => s + Math.max(...(one[k] ?? []).map(Math.abs)), 1);
          for (const [node, volts] of list.entries()) {
            const sum = alone.reduce((s, one) => s + (one[k]?.[node] ?? Number.NaN), 0);
            expect(Math.abs(volts - sum)).toBeLessThan(1e-9 * scale);
          }
        }
      }),
    );
  });

  test('reciprocity: 1 A at one port raises at another what 1 A there raises here', () => {
    fc.assert(
      fc.property(
        anySupplied({ from: -4, to: 9, reactive: true }),
        fc.array(fc.nat(), { minLength: 4, maxLength: 4 }),
        ({ network }, picks) => {
          const count = network.topology.nodes.length;
          const [a, b, c, d] = picks.map((pick) => pick % count) as [number, number, number, number];
          const r = reduced(network);
          const one = { mains: { re: 1, im: 0 }, direct: 1, halfWave: 1 };
          const here = listsOf(potentials(r, [], [], [{ ...one, port: { a, b } }]));
          const there = listsOf(potentials(r, [], [], [{ ...one, port: { a: c, b: d } }]));
          const across = (list: Float64Array | undefined, p: number, q: number) =>
            (list?.[p] ?? 0) - (list?.[q] ?? 0);
          const scale = Math.max(1e-9, ...[...here, ...there].flatMap((list) => [...list]).map(Math.abs));
          for (const [k, list] of here.entries()) {
            expect(Math.abs(across(list, c, d) - across(there[k], a, b))).toBeLessThan(1e-12 * scale);
          }
        },
      ),
    );
  });
});

describe('one-way parts', () => {
  /** A pilot's shape: ±12 V behind 1 kΩ, then a diode and a resistor back to the bar. */
  const pilot = (vehicle: number) =>
    networkOf([
      ['bond', 'bar', 'earth', 1],
      ['source', 'bar', 'pilot', 1000],
      ['blocked', 'pilot', 'inside', 1e12],
      ['vehicle', 'inside', 'bar', vehicle],
    ]);

  test('a diode conducts in one half and blocks in the other: Vd + (U − Vd) · Re / (R1 + Re)', () => {
    const n = pilot(2740);
    const r = reduced(n);
    const [cp, inside, bar] = [n.node('pilot'), n.node('inside'), n.node('bar')];
    const emf = { branch: n.branch('source'), mains: { re: 1, im: 0 }, high: 12, low: -12 };
    const oneWays: OneWay[] = [{ port: { a: cp, b: inside }, drop: 0.7, onResistance: 0 }];
    const planes = potentials(r, [emf], oneWays, []);
    const level = (list: Float64Array) => (list[cp] ?? 0) - (list[bar] ?? 0);
    expect(level(planes.high)).toBeCloseTo(0.7 + (11.3 * 2740) / 3740, 6);
    expect(level(planes.low)).toBeCloseTo(-12, 6);
    expect(level(planes.mains.re)).toBeCloseTo(1, 6);
    expect(planes.oneWays.high[0]).toBeCloseTo(11.3 / 3740, 9);
    expect(planes.oneWays.low[0]).toBe(0);
    expect(currentImbalance(n.topology, n.values, planes, [emf], [], oneWays).worst).toBeLessThan(1);
  });

  test('its on-resistance counts as a resistor in series', () => {
    const n = pilot(882);
    const emf = { branch: n.branch('source'), mains: { re: 0, im: 0 }, high: 12, low: -12 };
    const oneWays = [{ port: { a: n.node('pilot'), b: n.node('inside') }, drop: 0.7, onResistance: 50 }];
    const planes = potentials(reduced(n), [emf], oneWays, []);
    expect(planes.oneWays.high[0]).toBeCloseTo(11.3 / 1932, 9);
  });

  test.each([
    [100, 100],
    [700, 600 + (2 * 100) / 102],
    [-700, -600 - (2 * 100) / 102],
  ])('an arrester is two parts back to back: %d V behind 100 Ω leaves %f V', (open, expected) => {
    const n = networkOf([
      ['source', 'earth', 'line', 100],
      ['insulation', 'line', 'earth', 1e12],
    ]);
    const arrester: OneWay[] = [
      { port: { a: 1, b: 0 }, drop: 600, onResistance: 2 },
      { port: { a: 0, b: 1 }, drop: 600, onResistance: 2 },
    ];
    const emf = { branch: 0, mains: { re: 0, im: 0 }, high: open, low: -open };
    const planes = potentials(reduced(n), [emf], arrester, []);
    expect(planes.high[1]).toBeCloseTo(expected, 6);
    expect(planes.low[1]).toBeCloseTo(-expected, 6);
  });

  test('a negative drop is a source behind a resistance that takes nothing back', () => {
    const n = networkOf([['load', 'out', 'earth', 100]]);
    const source: OneWay[] = [{ port: { a: 0, b: 1 }, drop: -12, onResistance: 20 }];
    const r = reduced(n);
    const feeding = potentials(r, [], source, []);
    expect(feeding.high[1]).toBeCloseTo(10, 9);
    expect(feeding.oneWays.high[0]).toBeCloseTo(0.1, 12);
    const pushedUp = potentials(r, [], source, [{ ...NONE, port: { a: 1, b: 0 }, direct: 0.2 }]);
    expect(pushedUp.high[1]).toBeCloseTo(20, 9);
    expect(pushedUp.oneWays.high[0]).toBe(0);
  });

  test('two ideal diodes on one port: the lower drop takes the current, in either order', () => {
    const n = networkOf([['source', 'earth', 'x', 1000]]);
    for (const drops of [
      [0.3, 0.7],
      [0.7, 0.3],
    ]) {
      const parts = drops.map((drop) => ({ port: { a: 1, b: 0 }, drop, onResistance: 0 }));
      const planes = potentials(reduced(n), [steady(0, 5)], parts, []);
      expect(planes.high[1]).toBeCloseTo(0.3, 9);
      expect([...planes.oneWays.high]).toEqual(
        drops.map((drop) => expect.closeTo(drop === 0.3 ? 4.7e-3 : 0, 9)),
      );
    }
  });

  test('two ideal diodes in series with the node between them on 10 GΩ', () => {
    const n = networkOf([
      ['source', 'earth', 'x', 1000],
      ['insulation', 'middle', 'earth', 1e10],
      ['load', 'out', 'earth', 1000],
    ]);
    const parts = [
      { port: { a: n.node('x'), b: n.node('middle') }, drop: 0.7, onResistance: 0 },
      { port: { a: n.node('middle'), b: n.node('out') }, drop: 0.7, onResistance: 0 },
    ];
    const planes = potentials(reduced(n), [steady(0, 5)], parts, []);
    expect(planes.high[n.node('out')]).toBeCloseTo(1.8, 5);
    expect(planes.high[n.node('middle')]).toBeCloseTo(2.5, 5);
  });

  test('random parts in random networks obey their rule and balance', () => {
    const part = fc.record({
      a: fc.nat(),
      b: fc.nat(),
      drop: fc.double({ min: -20, max: 20, noNaN: true }),
      onResistance: fc.oneof(fc.constant(0), fc.double({ min: 1e-3, max: 1e3, noNaN: true })),
    });
    fc.assert(
      fc.property(
        anySupplied({ from: -2, to: 5, reactive: false }),
        fc.array(part, { maxLength: 5 }),
        ({ network, emfs, injections }, raw) => {
          const count = network.topology.nodes.length;
          const oneWays = raw
            .map(({ a, b, ...rest }) => ({ port: { a: a % count, b: b % count }, ...rest }))
            .filter(({ port }) => port.a !== port.b)
            // Two ideal sources against each other through nothing have no answer.
            .map((x) => (x.drop < 0 ? { ...x, onResistance: x.onResistance + 1 } : x));
          const planes = potentials(reduced(network), emfs, oneWays, injections);
          for (const plane of ['high', 'low'] as const) {
            const list = planes[plane];
            const scale = Math.max(1, ...list.map(Math.abs));
            for (const [k, { port, drop, onResistance }] of oneWays.entries()) {
              const amps = planes.oneWays[plane][k] ?? Number.NaN;
              const over = (list[port.a] ?? 0) - (list[port.b] ?? 0) - drop - onResistance * amps;
              expect(amps).toBeGreaterThanOrEqual(0);
              expect(amps > 0 ? Math.abs(over) : over).toBeLessThan(1e-7 * scale);
            }
          }
          const { topology, values } = network;
          expect(currentImbalance(topology, values, planes, emfs, injections, oneWays).worst).toBeLessThan(1);
        },
      ),
    );
  });
});

describe('sources that are no numbers', () => {
  const r = reduced(networkOf([['only', 'x', 'earth', 1]]));

  test('are refused', () => {
    expect(() => potentials(r, [steady(0, Number.NaN)], [], [])).toThrow(NotFinite);
    expect(() => potentials(r, [], [], [{ ...NONE, direct: Infinity }])).toThrow(NotFinite);
    expect(() => potentials(r, [], [{ port: { a: 1, b: 0 }, drop: 0, onResistance: -1 }], [])).toThrow(
      NotFinite,
    );
    expect(() => potentials(r, [], [{ port: { a: 0, b: 0 }, drop: -1, onResistance: 0 }], [])).toThrow(
      NotFinite,
    );
  });

  test('a source in a branch that does not exist is refused', () => {
    expect(() => potentials(r, [steady(3, 1)], [], [])).toThrow('no branch 3');
    expect(() => branchCurrent(r, potentials(r, [], [], []), 3)).toThrow('no branch 3');
  });
});
