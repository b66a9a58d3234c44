/*
 * An independent circuit simulator (ngspice in WebAssembly) as an oracle: writes any network of
 * ours as a netlist, runs it, and gives back potentials by our node numbers.
 *
 * Two traps are closed here. A run that fails returns the previous run's data and throws nothing,
 * so each netlist carries a source of a fresh value, looked for in the answer. Its tolerances stay
 * at their defaults, for tight ones stop it converging on diodes; it is trustworthy while
 * resistances stay within 1 mΩ … 1 GΩ.
 */
import { Simulation } from 'eecircuit-engine';
import type { Emf, Injection, OneWay } from '../../src/network/potentials.ts';
import type { BranchValues } from '../../src/network/reduce.ts';
import type { NodeId, Topology } from '../../src/network/topology.ts';

export type Plane = 'mains' | 'high' | 'low' | 'halfWave';

export interface Connected {
  emfs?: readonly Emf[];
  oneWays?: readonly OneWay[];
  injections?: readonly Injection[];
}

export interface Netlist {
  text: string;
  /** Value of the source that proves an answer to be this netlist's. */
  fresh: number;
  /** The simulator's name for the voltage of each of our nodes; true earth has none. */
  vectors: readonly (string | null)[];
}

/** Drop of the silicon diode below at some milliamperes, in volts. */
const SILICON_DROP = 0.7;
const SILICON = '.model silicon D(is=1e-14 n=1)';
const OMEGA = 2 * Math.PI * 50;

let runs = 0;

/** A value that no netlist before had: its source proves an answer to be that netlist's own. */
export const freshMarker = (): number => {
  runs += 1;
  return runs;
};

/**
 * A network as a netlist for one plane. A one-way part becomes a silicon diode of about 0.7 V with
 * the rest of its drop as a source and its on-resistance in series, in the d.c. planes only.
 */
export function netlistOf(
  topology: Topology,
  values: BranchValues,
  { emfs = [], oneWays = [], injections = [] }: Connected,
  plane: Plane,
): Netlist {
  const fresh = freshMarker();
  const mains = plane === 'mains';
  const name = (node: NodeId) => (node === 0 ? '0' : `n${node}`);
  const lines = [`run ${fresh} ${plane}`, `Vfresh fresh 0 dc ${fresh} ac ${fresh} 0`];
  const source = (id: string, plus: string, minus: string, { re, im }: { re: number; im: number }) => {
    const between = `${id}_between`;
    if (mains) {
      lines.push(
        `V${id}r ${plus} ${between} dc 0 ac ${re} 0`,
        `V${id}i ${between} ${minus} dc 0 ac ${im} 90`,
      );
    } else lines.push(`V${id} ${plus} ${minus} dc ${re}`);
  };

  for (const [i, { a, b }] of topology.branches.entries()) {
    let from = name(a);
    if (plane !== 'halfWave') {
      for (const [k, emf] of emfs.entries()) {
        if (emf.branch !== i) continue;
        const raised = `e${k}`;
        source(raised, raised, from, mains ? emf.mains : { re: emf[plane], im: 0 });
        from = raised;
      }
    }
    const conductance = values.conductance[i] ?? 0;
    const susceptance = values.susceptance[i] ?? 0;
    if (conductance > 0) lines.push(`R${i} ${from} ${name(b)} ${1 / conductance}`);
    if (mains && susceptance > 0) lines.push(`C${i} ${from} ${name(b)} ${susceptance / OMEGA}`);
  }

  for (const [k, { port, ...amps }] of injections.entries()) {
    const [a, b] = [name(port.a), name(port.b)];
    if (mains) {
      lines.push(
        `Ir${k} ${b} ${a} dc 0 ac ${amps.mains.re} 0`,
        `Ii${k} ${b} ${a} dc 0 ac ${amps.mains.im} 90`,
      );
    } else lines.push(`I${k} ${b} ${a} dc ${plane === 'halfWave' ? amps.halfWave : amps.direct}`);
  }

  if (plane === 'high' || plane === 'low') {
    for (const [k, { port, drop, onResistance }] of oneWays.entries()) {
      const last = onResistance > 0 ? `w${k}_on` : name(port.b);
      lines.push(`D${k} ${name(port.a)} w${k} silicon`, `Vw${k} w${k} ${last} dc ${drop - SILICON_DROP}`);
      if (onResistance > 0) lines.push(`Rw${k} ${last} ${name(port.b)} ${onResistance}`);
    }
    if (oneWays.length > 0) lines.push(SILICON);
  }
  lines.push(mains ? '.ac lin 1 50 50' : '.op', '.end');
  return {
    text: lines.join('\n'),
    fresh,
    vectors: topology.nodes.map((_, node) => (node === 0 ? null : `v(n${node})`)),
  };
}

let started: Promise<Simulation> | undefined;

async function simulator(): Promise<Simulation> {
  const simulation = new Simulation();
  await simulation.start();
  return simulation;
}

/** Runs a netlist: potentials by our node numbers, the imaginary parts zero outside `mains`. */
export async function simulate(netlist: Netlist): Promise<{ re: Float64Array; im: Float64Array }> {
  started ??= simulator();
  const simulation = await started;
  simulation.setNetList(netlist.text);
  const answer = await simulation.runSim();
  const found = new Map<string, { re: number; im: number }>();
  for (const { name, values } of answer.data) {
    const value = values[0];
    if (value === undefined) continue;
    found.set(name, typeof value === 'number' ? { re: value, im: 0 } : { re: value.real, im: value.img });
  }
  const fresh = found.get('v(fresh)');
  if (fresh === undefined || Math.abs(fresh.re - netlist.fresh) > 1e-6 * netlist.fresh) {
    throw new Error(`the simulator failed on\n${netlist.text}\n${simulation.getError().join('\n')}`);
  }
  const at = (vector: string | null) => {
    if (vector === null) return { re: 0, im: 0 };
    const value = found.get(vector);
    if (value === undefined) throw new Error(`no ${vector} in the answer to\n${netlist.text}`);
    return value;
  };
  const volts = netlist.vectors.map(at);
  return { re: Float64Array.from(volts, (v) => v.re), im: Float64Array.from(volts, (v) => v.im) };
}
