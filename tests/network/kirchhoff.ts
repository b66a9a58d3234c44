/*
 * Adds up the currents at every node from the potentials and the values alone, by another road
 * than the solver: what flows in must flow out. For tests on this floor and on the bench.
 */
import type { Emf, Injection, OneWay, Planes } from '../../src/network/potentials.ts';
import type { BranchValues } from '../../src/network/reduce.ts';
import type { Topology } from '../../src/network/topology.ts';

/** Least current that counts: potentials of 235 V through 0.1 mΩ round to some 10⁻¹⁰ A. */
const FLOOR = 1e-8;
/** Part of the currents through a node that may be missing. */
const TOLERANCE = 1e-9;

export interface Imbalance {
  /** Missing current over the allowed one: above 1 the planes are wrong. */
  worst: number;
  node: string;
  plane: string;
}

/** The worst node of all planes, true earth left out. */
export function currentImbalance(
  topology: Topology,
  values: BranchValues,
  planes: Planes,
  emfs: readonly Emf[],
  injections: readonly Injection[],
  oneWays: readonly OneWay[],
): Imbalance {
  const worst: Imbalance = { worst: 0, node: '', plane: '' };
  const at = (list: Float64Array, i: number): number => list[i] ?? Number.NaN;

  const check = (
    plane: string,
    branchAmps: (branch: number, a: number, b: number) => number,
    injected: (injection: Injection) => number,
    oneWayAmps?: Float64Array,
  ) => {
    const sum = new Float64Array(topology.nodes.length);
    const size = new Float64Array(topology.nodes.length);
    const flow = (a: number, b: number, amps: number) => {
      for (const [node, sign] of [
        [a, -1],
        [b, 1],
      ] as const) {
        sum[node] = at(sum, node) + sign * amps;
        size[node] = at(size, node) + Math.abs(amps);
      }
    };
    for (const [i, { a, b }] of topology.branches.entries()) flow(a, b, branchAmps(i, a, b));
    for (const injection of injections) flow(injection.port.b, injection.port.a, injected(injection));
    if (oneWayAmps) {
      for (const [i, { port }] of oneWays.entries()) flow(port.a, port.b, at(oneWayAmps, i));
    }
    for (let node = 1; node < sum.length; node++) {
      const ratio = Math.abs(at(sum, node)) / Math.max(TOLERANCE * at(size, node), FLOOR);
      if (!(ratio <= worst.worst)) {
        Object.assign(worst, { worst: ratio, node: topology.nodes[node], plane });
      }
    }
  };

  const sources = (branch: number, volts: (emf: Emf) => number): number =>
    emfs.filter((emf) => emf.branch === branch).reduce((total, emf) => total + volts(emf), 0);
  const { re, im } = planes.mains;
  const acrossRe = (i: number, a: number, b: number) => at(re, a) - at(re, b) + sources(i, (e) => e.mains.re);
  const acrossIm = (i: number, a: number, b: number) => at(im, a) - at(im, b) + sources(i, (e) => e.mains.im);
  const g = (i: number) => at(values.conductance, i);
  const s = (i: number) => at(values.susceptance, i);
  check(
    'mains, real part',
    (i, a, b) => g(i) * acrossRe(i, a, b) - s(i) * acrossIm(i, a, b),
    (x) => x.mains.re,
  );
  check(
    'mains, imaginary part',
    (i, a, b) => g(i) * acrossIm(i, a, b) + s(i) * acrossRe(i, a, b),
    (x) => x.mains.im,
  );
  for (const plane of ['high', 'low'] as const) {
    const list = planes[plane];
    check(
      plane,
      (i, a, b) => g(i) * (at(list, a) - at(list, b) + sources(i, (e) => e[plane])),
      (x) => x.direct,
      planes.oneWays[plane],
    );
  }
  check(
    'halfWave',
    (i, a, b) => g(i) * (at(planes.halfWave, a) - at(planes.halfWave, b)),
    (x) => x.halfWave,
  );
  return worst;
}
