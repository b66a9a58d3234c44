/*
 * What is seen from a pair of terminals: an instrument, a detector or a load is a thing on a port,
 * never a branch of its own, so that leads do not change the topology and idle ones bridge nothing.
 * What an instrument makes of it (range, limit, error) is left to the floors above.
 */
import type { Amps, Ohms, Volts } from '../laws/quantities.ts';
import { listOf, listsOf } from './lists.ts';
import type { Emf, Injection, OneWay, Phasor, Planes, Port } from './potentials.ts';
import { difference, inject, portResistances, putDirectCurrents, settleOneWays } from './potentials.ts';
import type { Reduced } from './reduce.ts';
import { solveDirect, solveMains } from './solve.ts';

export interface Seen {
  /** V(a) − V(b) with nothing on the port. */
  open: { mains: Phasor; high: Volts; low: Volts; halfWave: Volts };
  /** Of the 50 Hz network, one-way parts open. */
  impedance: Phasor;
  /** Of the d.c. network, one-way parts open. `drive` is what takes them along. */
  resistance: Ohms;
}

/** Open voltages in every plane, and what one ampere put through the network at the port raises. */
export const seenFrom = (
  r: Reduced,
  planes: Planes,
  port: Port,
  own: Pick<Seen, 'impedance' | 'resistance'> = impedancesAt(r, port),
): Seen => ({
  open: {
    mains: { re: difference(planes.mains.re, port), im: difference(planes.mains.im, port) },
    high: difference(planes.high, port),
    low: difference(planes.low, port),
    halfWave: difference(planes.halfWave, port),
  },
  ...own,
});

/** What no source has a part in: the same for every position that differs in its sources alone. */
export function impedancesAt(r: Reduced, port: Port): Pick<Seen, 'impedance' | 'resistance'> {
  const count = r.plan.topology.nodes.length;
  const [re, im, direct] = listsOf(count, count, count);
  inject(re, port, 1);
  inject(direct, port, 1);
  solveMains(r, re, im);
  solveDirect(r, direct);
  return {
    impedance: { re: difference(re, port), im: difference(im, port) },
    resistance: difference(direct, port),
  };
}

export interface Driven {
  /** V(a) − V(b) with the source on the port. */
  volts: Volts;
  /** Out of the source into a, back from b; negative when the network drives the source. */
  amps: Amps;
  /** The whole `high` plane under test, and the amps in each one-way part. */
  high: Float64Array;
  oneWays: Float64Array;
}

/**
 * The response of the d.c. network, one-way parts and standing sources included, to a source put
 * on a port with its plus on a: `open` volts behind `resistance` ohms (≥ 0). Evaluated in `high`.
 * Throws as `potentials` does.
 */
export function drive(
  r: Reduced,
  emfs: readonly Emf[],
  oneWays: readonly OneWay[],
  injections: readonly Injection[],
  port: Port,
  source: { open: Volts; resistance: Ohms },
): Driven {
  // The source is a part that obeys V(a) − V(b) = open + resistance · current, in either direction.
  const parts = [{ port, drop: source.open, onResistance: source.resistance }, ...oneWays];
  const high = listOf(r.plan.topology.nodes.length);
  putDirectCurrents(r, emfs, injections, 'high', high);
  const currents = settleOneWays(r, high, parts, () => portResistances(r, parts), 1);
  return {
    volts: difference(high, port),
    amps: -(currents[0] as number),
    high,
    oneWays: currents.slice(1),
  };
}
