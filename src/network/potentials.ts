/*
 * The potential of every node in four planes over one topology: 50 Hz phasors, the two halves of
 * the pilot (d.c., with every d.c. source in both), and the half-wave test. Says what may be
 * connected to a network: sources in branches, currents at ports, one-way parts.
 * What an instrument sees from a port is port.ts's business.
 *
 * Limits: in `mains` and `halfWave` one-way parts are open, so mains does not drive the pilot's
 * diode; a 50 Hz drop in the pilot's return conductor does not show in `high` and `low`.
 */
import type { Amps, Ohms, Volts } from '../laws/quantities.ts';
import { complementaryCurrents } from './complementarity.ts';
import { NotFinite } from './errors.ts';
import { listOf, listsOf } from './lists.ts';
import type { Reduced } from './reduce.ts';
import { solveDirect, solveMains } from './solve.ts';
import type { NodeId } from './topology.ts';

/** R.m.s. value as a complex number. */
export interface Phasor {
  re: number;
  im: number;
}

/**
 * A source in series with a branch, driving current from the branch's a to its b. Give the branch a
 * real source impedance: an island that hangs on R ohms shifts by 10⁻¹⁶ · R · short-circuit current.
 */
export interface Emf {
  branch: number;
  mains: Phasor;
  high: Volts;
  low: Volts;
}

export interface Port {
  a: NodeId;
  b: NodeId;
}

/**
 * Conducts from a to b while V(a) − V(b) = drop + onResistance · current, else not at all; in the
 * d.c. planes only. A negative drop makes it a source behind a resistance that pushes current from
 * a to b and takes none back.
 */
export interface OneWay {
  port: Port;
  drop: Volts;
  onResistance: Ohms;
}

/** Current into node a and out of node b. `direct` flows in `high` and in `low`. */
export interface Injection {
  port: Port;
  mains: Phasor;
  direct: Amps;
  halfWave: Amps;
}

/** Volts against true earth by node, and amps from a to b in each one-way part. */
export interface Planes {
  mains: { re: Float64Array; im: Float64Array };
  high: Float64Array;
  low: Float64Array;
  halfWave: Float64Array;
  oneWays: { high: Float64Array; low: Float64Array };
}

type DirectPlane = 'high' | 'low';

/**
 * Added to a port's own resistance, as a part of it: two parts of no on-resistance on one port
 * would otherwise have no unique currents. Far below any accuracy asked for.
 */
const TELL_APART = 1e-14;

/**
 * Potentials in all planes. `halfWave` takes the injections' half-wave currents only. Whoever has the 50 Hz plane of
 * these sources already hands it in. What cannot differ is worked out once: the two halves where every source is the
 * same in both, the half-wave plane where nothing flows in it.
 * Throws NotFinite for a source or a current that is not finite, OneWaysUnsettled when no state of
 * the one-way parts fits.
 */
export function potentials(
  r: Reduced,
  emfs: readonly Emf[],
  oneWays: readonly OneWay[],
  injections: readonly Injection[],
  mains: Planes['mains'] = mainsPotentials(r, emfs, injections),
): Planes {
  const high = directPotentials(r, emfs, oneWays, injections, 'high');
  const low = emfs.every((emf) => emf.high === emf.low)
    ? high
    : directPotentials(r, emfs, oneWays, injections, 'low');
  const halfWave = listOf(r.plan.topology.nodes.length);
  for (const { port, halfWave: amps } of injections) inject(halfWave, port, amps);
  if (injections.some((one) => one.halfWave !== 0)) solveDirect(r, halfWave);
  return {
    mains,
    high: high.list,
    low: low.list,
    halfWave,
    oneWays: { high: high.currents, low: low.currents },
  };
}

/** The 50 Hz plane alone. Throws NotFinite. */
export function mainsPotentials(
  r: Reduced,
  emfs: readonly Emf[],
  injections: readonly Injection[],
): Planes['mains'] {
  const count = r.plan.topology.nodes.length;
  const [re, im] = listsOf(count, count);
  putMainsCurrents(r, emfs, injections, re, im);
  solveMains(r, re, im);
  return { re, im };
}

function directPotentials(
  r: Reduced,
  emfs: readonly Emf[],
  oneWays: readonly OneWay[],
  injections: readonly Injection[],
  plane: DirectPlane,
): { readonly list: Float64Array; readonly currents: Float64Array } {
  const list = listOf(r.plan.topology.nodes.length);
  putDirectCurrents(r, emfs, injections, plane, list);
  return { list, currents: settleOneWays(r, list, oneWays, () => resistancesOnce(r, oneWays), 0) };
}

/** For each network as it is factored, by the parts: both halves ask for them, and so does every change of a source. */
const known = new WeakMap<Reduced, WeakMap<readonly OneWay[], Float64Array>>();

function resistancesOnce(r: Reduced, parts: readonly OneWay[]): Float64Array {
  const ofNetwork = known.get(r) ?? new WeakMap<readonly OneWay[], Float64Array>();
  known.set(r, ofNetwork);
  const matrix = ofNetwork.get(parts) ?? portResistances(r, parts);
  ofNetwork.set(parts, matrix);
  return matrix;
}

/** Amps from a to b in a branch, in each plane. `emf` is the source in this branch, if it has one. */
export function branchCurrent(
  r: Reduced,
  planes: Planes,
  branch: number,
  emf?: Emf,
): { mains: Phasor; high: Amps; low: Amps; halfWave: Amps } {
  const ends = r.plan.topology.branches[branch];
  if (ends === undefined) throw new RangeError(`no branch ${branch}`);
  const g = r.values.conductance[branch] as number;
  const b = r.values.susceptance[branch] as number;
  const across = (list: Float64Array): number => difference(list, ends);
  const re = across(planes.mains.re) + (emf?.mains.re ?? 0);
  const im = across(planes.mains.im) + (emf?.mains.im ?? 0);
  return {
    mains: { re: g * re - b * im, im: g * im + b * re },
    high: g * (across(planes.high) + (emf?.high ?? 0)),
    low: g * (across(planes.low) + (emf?.low ?? 0)),
    halfWave: g * across(planes.halfWave),
  };
}

/** V(a) − V(b) in one plane. */
export function difference(list: Float64Array, port: Port): number {
  return (list[port.a] as number) - (list[port.b] as number);
}

/** Adds a current into a port's a and out of its b. Throws NotFinite. */
export function inject(list: Float64Array, port: Port, amps: Amps): void {
  if (!Number.isFinite(amps)) throw new NotFinite('an injected current', amps);
  list[port.a] = (list[port.a] as number) + amps;
  list[port.b] = (list[port.b] as number) - amps;
}

/** Adds the currents into the nodes in a d.c. plane, sources as their Norton equivalents. */
export function putDirectCurrents(
  r: Reduced,
  emfs: readonly Emf[],
  injections: readonly Injection[],
  plane: DirectPlane,
  list: Float64Array,
): void {
  for (const emf of emfs) {
    const { branch, backwards } = seatOf(r, emf);
    inject(list, backwards, (r.values.conductance[branch] as number) * emf[plane]);
  }
  for (const { port, direct } of injections) inject(list, port, direct);
}

function putMainsCurrents(
  r: Reduced,
  emfs: readonly Emf[],
  injections: readonly Injection[],
  re: Float64Array,
  im: Float64Array,
): void {
  for (const emf of emfs) {
    const { branch, backwards } = seatOf(r, emf);
    const g = r.values.conductance[branch] as number;
    const b = r.values.susceptance[branch] as number;
    inject(re, backwards, g * emf.mains.re - b * emf.mains.im);
    inject(im, backwards, g * emf.mains.im + b * emf.mains.re);
  }
  for (const { port, mains } of injections) {
    inject(re, port, mains.re);
    inject(im, port, mains.im);
  }
}

/** A source that drives from a to b feeds the node b and draws on the node a. */
function seatOf(r: Reduced, emf: Emf): { branch: number; backwards: Port } {
  const ends = r.plan.topology.branches[emf.branch];
  if (ends === undefined) throw new RangeError(`no branch ${emf.branch} for a source`);
  return { branch: emf.branch, backwards: { a: ends.b, b: ends.a } };
}

/** Volts at port k for one ampere into port l, by rows, each part's own resistance included. */
export function portResistances(r: Reduced, parts: readonly OneWay[]): Float64Array {
  const n = parts.length;
  const [matrix, list] = listsOf(n * n, r.plan.topology.nodes.length);
  for (const [column, { port, onResistance }] of parts.entries()) {
    list.fill(0);
    inject(list, port, 1);
    solveDirect(r, list);
    for (const [row, part] of parts.entries()) {
      matrix[row * n + column] = difference(list, part.port);
    }
    const own = matrix[column * n + column] as number;
    matrix[column * n + column] = own + TELL_APART * own + onResistance;
  }
  return matrix;
}

/**
 * Turns the currents into a d.c. plane's potentials with the one-way parts at work, and gives the
 * amps from a to b in each part. The first `free` parts conduct both ways (instruments).
 * `resistances` are those of portResistances, asked for only where a part conducts.
 */
export function settleOneWays(
  r: Reduced,
  list: Float64Array,
  parts: readonly OneWay[],
  resistances: () => Float64Array,
  free: number,
): Float64Array {
  const [idle, missing] = listsOf(list.length, parts.length);
  idle.set(list);
  solveDirect(r, idle);
  for (const [i, { port, drop, onResistance }] of parts.entries()) {
    if (!(onResistance >= 0)) throw new NotFinite('an on-resistance', onResistance);
    missing[i] = drop - difference(idle, port);
  }
  if (free === 0 && missing.every((volts) => volts >= 0)) {
    list.set(idle);
    return listOf(parts.length);
  }
  const currents = complementaryCurrents(resistances(), missing, free);
  for (const [i, { port }] of parts.entries()) inject(list, port, -(currents[i] as number));
  solveDirect(r, list);
  return currents;
}
