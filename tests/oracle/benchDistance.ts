/**
 * How far a solved bench is from the circuit simulator's potentials: every node against true earth, and every pair of
 * terminals that leads can be put on, in every plane. Judges by one allowance; what a distance means is the test's.
 */
import { leadsOn } from '../../src/bench/port.ts';
import { terminalsOf } from '../../src/bench/terminals.ts';
import type { World } from '../../src/bench/world.ts';
import type { Planes } from '../../src/network/potentials.ts';
import type { Potentials } from './circuitNetlist.ts';
import type { Plane } from './circuitSimulator.ts';

export const PLANES: readonly Plane[] = ['mains', 'high', 'low', 'halfWave'];
export type Simulated = Readonly<Record<Plane, Potentials>>;

/** The distance allowed: a share of the voltage, or this many volts where that is more. */
const ALLOWED = { share: 0.005, volts: 0.01 };

/**
 * Inside the stand-in, and behind a diode inside the unit, no lead can be put. Where such a diode carries no more than
 * what insulation lets through, a real one drops less than 0.7 V; these nodes are compared at 50 Hz alone.
 */
const OUT_OF_REACH = ['car.PE', 'car.CP', 'car.R', 'dummy'];

export interface Distance {
  /** In what is allowed, and where. */
  readonly far: number;
  readonly where: string;
  readonly volts: number;
  /** Volts apart as a share of the voltage, where that is above 2 V: below, 10 mV are the more. */
  readonly share: number;
}

export const NONE: Distance = { far: 0, where: 'nowhere', volts: 0, share: 0 };

export const further = (one: Distance, other: Distance): Distance => ({
  ...(other.far > one.far ? other : one),
  volts: Math.max(one.volts, other.volts),
  share: Math.max(one.share, other.share),
});

/** Pairs of nodes between which a voltage is compared: the second may be true earth. */
interface Pair {
  readonly a: number;
  readonly b: number;
}

/** The simulator's potentials in the order of the bench's nodes, and what is compared, for one plane. */
interface Prepared {
  readonly plane: Plane;
  readonly re: Float64Array;
  readonly im: Float64Array;
  readonly pairs: readonly Pair[];
}

export interface Yardstick {
  readonly nodes: readonly string[];
  readonly planes: readonly Prepared[];
}

/** Lays the simulator's potentials out for one bench. A node that the simulator does not have counts as far away. */
export function yardstickOf(world: World, theirs: Simulated): Yardstick {
  const { nodes } = world.wiring.topology;
  const touched = terminalsOf(world.installation.site).map(
    (terminal) => leadsOn(world, terminal, 'met').port.a,
  );
  const terminals = [...new Set(touched)];
  const across = terminals.flatMap((a, i) => terminals.slice(i + 1).map((b) => ({ a, b })));
  const toEarth = (plane: Plane): readonly Pair[] =>
    nodes.flatMap((name, a) => (plane !== 'mains' && OUT_OF_REACH.includes(name) ? [] : [{ a, b: 0 }]));
  const planes = PLANES.map((plane) => ({
    plane,
    re: Float64Array.from(nodes, (name) => theirs[plane].get(name)?.re ?? Number.NaN),
    im: Float64Array.from(nodes, (name) => theirs[plane].get(name)?.im ?? Number.NaN),
    pairs: [...toEarth(plane), ...across],
  }));
  return { nodes, planes };
}

/** The same for one plane alone. */
export const inPlane = ({ nodes, planes }: Yardstick, plane: Plane): Yardstick => ({
  nodes,
  planes: planes.filter((one) => one.plane === plane),
});

const at = (list: Float64Array, { a, b }: Pair): number => (list[a] as number) - (list[b] as number);

/** Math.hypot is several times slower, and there are millions. */
const modulus = (x: number, y: number): number => Math.sqrt(x * x + y * y);

/** The greatest distance over all planes and pairs; with `enough`, the first that is beyond it. */
export function distance({ nodes, planes }: Yardstick, solved: Planes, enough = Infinity): Distance {
  let found = NONE;
  const nothing = new Float64Array(nodes.length);
  for (const { plane, re, im, pairs } of planes) {
    const ours = plane === 'mains' ? solved.mains : { re: solved[plane], im: nothing };
    for (const pair of pairs) {
      const [x, y] = [at(re, pair), at(im, pair)];
      const volts = modulus(at(ours.re, pair) - x, at(ours.im, pair) - y);
      const size = modulus(x, y);
      const far = Number.isNaN(volts) ? Infinity : volts / Math.max(ALLOWED.share * size, ALLOWED.volts);
      const share = size > ALLOWED.volts / ALLOWED.share ? volts / size : 0;
      if (far > found.far || volts > found.volts || share > found.share)
        found = further(found, { far, where: `${plane} ${nodes[pair.a]}–${nodes[pair.b]}`, volts, share });
      if (far > enough) return found;
    }
  }
  return found;
}
