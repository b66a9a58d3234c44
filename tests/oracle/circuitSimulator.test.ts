/*
 * The network floor against an independent circuit simulator, on random networks and on pilot
 * levels with a real diode; and the harness itself, which must not hand back stale answers.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pilotHigh, pilotLow } from '../../src/laws/pilotLevels.ts';
import type { OneWay } from '../../src/network/potentials.ts';
import { potentials } from '../../src/network/potentials.ts';
import { anySupplied, networkOf, reduced, type Supplied, steady } from '../network/build.ts';
import type { Plane } from './circuitSimulator.ts';
import { netlistOf, simulate } from './circuitSimulator.ts';

const SEED = 20_617;
const PLANES: readonly Plane[] = ['mains', 'high', 'low', 'halfWave'];

/**
 * Greatest difference between the two answers, relative to the potential itself or, for small ones,
 * to a thousandth of the greatest in the network.
 */
async function disagreement({ network, emfs, injections }: Supplied, plane: Plane): Promise<number> {
  const planes = potentials(reduced(network), emfs, [], injections);
  const ours =
    plane === 'mains' ? planes.mains : { re: planes[plane], im: new Float64Array(planes.high.length) };
  const theirs = await simulate(netlistOf(network.topology, network.values, { emfs, injections }, plane));
  const sizes = Array.from(theirs.re, (re, node) => Math.hypot(re, theirs.im[node] ?? 0));
  const floor = Math.max(1e-3 * Math.max(...sizes), 1e-6);
  const apart = sizes.map((size, node) => {
    const re = (theirs.re[node] ?? 0) - (ours.re[node] ?? Number.NaN);
    const im = (theirs.im[node] ?? 0) - (ours.im[node] ?? Number.NaN);
    return Math.hypot(re, im) / Math.max(size, floor);
  });
  return Math.max(...apart);
}

describe('random networks against the circuit simulator', () => {
  // Within the spread the simulator can be trusted with.
  const cases = fc.sample(anySupplied({ from: -3, to: 9, reactive: true }), { seed: SEED, numRuns: 200 });

  test.each(PLANES)(
    `200 networks, seed ${SEED}, plane %s: within 10⁻⁵`,
    { timeout: 60_000 },
    async (plane) => {
      let worst = 0;
      for (const supplied of cases) worst = Math.max(worst, await disagreement(supplied, plane));
      console.log(`seed ${SEED}, ${plane}: worst disagreement ${worst.toExponential(1)}`);
      expect(worst).toBeLessThan(1e-5);
    },
  );
});

describe('pilot levels: the law, the network and a real diode', () => {
  const grid: [open: number, source: number, vehicle: number, diode: 'sound' | 'shorted' | 'absent'][] = [];
  for (const open of [11.4, 12, 12.6]) {
    for (const source of [500, 970, 1000, 1030, 2000]) {
      for (const vehicle of [220, 246, 882, 1300, 2740, 4610]) {
        for (const diode of ['sound', 'shorted', 'absent'] as const)
          grid.push([open, source, vehicle, diode]);
      }
    }
  }

  test(`${grid.length} combinations`, { timeout: 60_000 }, async () => {
    let network = 0;
    let simulator = 0;
    for (const [open, sourceResistance, vehicle, diode] of grid) {
      const circuit = networkOf([
        ['protective conductor', 'bar', 'earth', 1],
        ['source', 'bar', 'pilot', sourceResistance],
        ['diode', 'pilot', 'inside', diode === 'shorted' ? 1e-3 : 1e9],
        ['vehicle', 'inside', 'bar', vehicle],
      ]);
      const [bar, pilot, inside] = ['bar', 'pilot', 'inside'].map(circuit.node) as [number, number, number];
      const emf = { ...steady(circuit.branch('source'), 0), high: open, low: -open };
      const oneWays: OneWay[] =
        diode === 'sound' ? [{ port: { a: pilot, b: inside }, drop: 0.7, onResistance: 0 }] : [];
      const planes = potentials(reduced(circuit), [emf], oneWays, []);
      const seen = { open, sourceResistance, vehicleResistance: diode === 'absent' ? Infinity : vehicle };
      const law = {
        high: pilotHigh({ ...seen, diodeDrop: diode === 'shorted' ? 0 : 0.7 }),
        low: pilotLow({ ...seen, diode: diode === 'shorted' ? 'shorted' : 'sound' }),
      };
      for (const plane of ['high', 'low'] as const) {
        const ours = (planes[plane][pilot] ?? 0) - (planes[plane][bar] ?? 0);
        const { re } = await simulate(
          netlistOf(circuit.topology, circuit.values, { emfs: [emf], oneWays }, plane),
        );
        const theirs = (re[pilot] ?? 0) - (re[bar] ?? 0);
        network = Math.max(network, Math.abs(ours / law[plane] - 1));
        simulator = Math.max(simulator, Math.abs(theirs / law[plane] - 1));
      }
    }
    console.log(
      `pilot: network ${network.toExponential(1)}, simulator ${simulator.toExponential(1)} from the law`,
    );
    // The network has 1 GΩ across an open diode and 1 mΩ in a shorted one; the law has neither.
    expect(network).toBeLessThan(1e-5);
    expect(simulator).toBeLessThan(0.02);
  });
});

describe('the harness', () => {
  const sound = networkOf([['only', 'top', 'earth', 10]]);

  test('a failed run is reported, not answered with the data of the run before', async () => {
    const good = netlistOf(sound.topology, sound.values, { emfs: [steady(0, 5)] }, 'high');
    const { re } = await simulate(good);
    expect(re).toHaveLength(2);
    const next = netlistOf(sound.topology, sound.values, { emfs: [steady(0, 6)] }, 'high');
    const clash = next.text.replace('.op', 'Vone n1 0 dc 1\nVtwo n1 0 dc 2\n.op');
    await expect(simulate({ ...next, text: clash })).rejects.toThrow('the simulator failed');
  });

  test('currents flow into a and out of b; sources drive from a to b', async () => {
    const injections = [{ port: { a: 1, b: 0 }, mains: { re: 1, im: 2 }, direct: 3, halfWave: 4 }];
    const { topology, values } = sound;
    const mains = await simulate(netlistOf(topology, values, { injections }, 'mains'));
    expect([mains.re[1], mains.im[1]]).toEqual([expect.closeTo(10, 6), expect.closeTo(20, 6)]);
    const halfWave = await simulate(netlistOf(topology, values, { injections }, 'halfWave'));
    expect(halfWave.re[1]).toBeCloseTo(40, 6);
    const low = await simulate(netlistOf(topology, values, { injections, emfs: [steady(0, 5)] }, 'low'));
    expect(low.re[1]).toBeCloseTo(25, 6);
  });
});
