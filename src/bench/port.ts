/**
 * Two leads on the bench: what they see of the network with joined terminals joined, and whether a person or an
 * instrument would call it live.
 */

import type { Parts } from '../faults/parts.ts';
import type { Live } from '../laws/conductors.ts';
import type { Amps, Ohms, Volts } from '../laws/quantities.ts';
import type { Seen } from '../network/port.ts';
import { impedancesAt, seenFrom } from '../network/port.ts';
import type { Phasor, Port } from '../network/potentials.ts';
import { difference } from '../network/potentials.ts';
import type { Reduced } from '../network/reduce.ts';
import type { Part } from '../site/part.ts';
import type { Place, Probe, Terminal } from './terminals.ts';
import { terminalsIn } from './terminals.ts';
import type { Solution, Wiring } from './wiring.ts';
import { solve, wire } from './wiring.ts';
import type { World } from './world.ts';
import { portOf } from './world.ts';

/** A clip that joins two terminals under one lead, Ω. */
const JOIN: Ohms = 0.0001;

export interface Leads {
  readonly port: Port;
  readonly nodeAt: (name: string) => number;
  readonly solution: Solution;
}

const SINGLE = { met: 'met', house: 'house', earth: 'rod', case: 'case' } as const;

/**
 * The network node that a terminal (one of terminalsOf(site)) stands for now: `outlet` is the tether's connector, or
 * the socket's contacts, or the far end of a plugged customer's cable.
 */
function nodeOf(world: World, terminal: Terminal): string {
  if (terminal === 'earthing')
    return world.installation.site.earthing === 'TN-C-S' ? 'service.N' : 'service.PE';
  if (terminal in SINGLE) return SINGLE[terminal as keyof typeof SINGLE];
  const [place, conductor] = terminal.split('.');
  if (place === 'incoming') return `service.${conductor}`;
  if (place !== 'outlet') return terminal;
  const socketBare = world.installation.design.sheet.outlet === 'socket' && !world.plant.standIn.plugged;
  return `${socketBare ? 'socket' : 'end'}.${conductor}`;
}

/** The node of one conductor at a place or on the live side of the origin, as `nodeOf`. */
export const nodeAtPlace = (world: World, place: Place | 'incoming', conductor: Live): string =>
  nodeOf(world, `${place}.${conductor}`);

/** Where two probes touch. Joining terminals changes the network: it is wired anew for them. */
export function leadsOn(world: World, a: Probe, b: Probe): Leads {
  if (typeof a === 'string' && typeof b === 'string')
    return { port: portBetween(world, a, b), nodeAt: world.wiring.nodeAt, solution: world.solution };
  const [first, second] = [a, b].map((probe) => terminalsIn(probe).map((t) => nodeOf(world, t))) as [
    string[],
    string[],
  ];
  const joins = [...joined(first), ...joined(second)];
  if (joins.length === 0)
    return {
      port: portOf(world, first[0] as string, second[0] as string),
      nodeAt: world.wiring.nodeAt,
      solution: world.solution,
    };
  const { installation, wiring } = wiredWith(world, joins);
  return {
    port: { a: wiring.nodeAt(first[0] as string), b: wiring.nodeAt(second[0] as string) },
    nodeAt: wiring.nodeAt,
    solution: solve(wiring, installation, world.plant),
  };
}

/** By the terminals and whether anything is plugged in, for each wiring: benches of an installation name the same ones. */
const portsBefore = new WeakMap<Wiring, Map<string, Port>>();

function portBetween(world: World, a: Terminal, b: Terminal): Port {
  const ofWiring = portsBefore.get(world.wiring) ?? new Map<string, Port>();
  portsBefore.set(world.wiring, ofWiring);
  const key = `${a} ${b} ${world.plant.standIn.plugged}`;
  const port = ofWiring.get(key) ?? portOf(world, nodeOf(world, a), nodeOf(world, b));
  ofWiring.set(key, port);
  return port;
}

interface Wired {
  readonly installation: Parts;
  readonly wiring: Wiring;
}

/** By which terminals are joined, for each wiring: a test joins the same ones in many positions. */
const wiredBefore = new WeakMap<Wiring, Map<string, Wired>>();
const MOST_WIRED = 10;

function wiredWith({ installation: bare, wiring: own }: World, joins: readonly Part[]): Wired {
  const before = wiredBefore.get(own) ?? new Map<string, Wired>();
  const key = joins.map(({ id }) => id).join(' ');
  const known = before.get(key);
  if (known !== undefined) return known;
  const installation = { ...bare, parts: [...bare.parts, ...joins] };
  const wired = { installation, wiring: wire(installation) };
  if (before.size >= MOST_WIRED) before.clear();
  wiredBefore.set(own, before.set(key, wired));
  return wired;
}

const joined = (nodes: readonly string[]): readonly Part[] =>
  nodes
    .slice(1)
    .map((node) => ({ id: `join.${nodes[0]}.${node}`, a: nodes[0] as string, b: node, resistance: JOIN }));

/**
 * By the two nodes, for each solution, and without its sources for each network: a bench comes back to its positions, and
 * a test to its terminals.
 */
const seenBefore = new WeakMap<Solution, Map<number, Seen>>();
const impedancesBefore = new WeakMap<Reduced, Map<number, ReturnType<typeof impedancesAt>>>();

export function seenBy({ port, solution }: Leads): Seen {
  const { reduced, planes } = solution;
  const key = port.a * reduced.plan.topology.nodes.length + port.b;
  return once(seenBefore, solution, key, () =>
    seenFrom(
      reduced,
      planes,
      port,
      once(impedancesBefore, reduced, key, () => impedancesAt(reduced, port)),
    ),
  );
}

function once<Of extends object, T>(
  before: WeakMap<Of, Map<number, T>>,
  of: Of,
  key: number,
  make: () => T,
): T {
  const known = before.get(of) ?? new Map<number, T>();
  before.set(of, known);
  const value = known.get(key) ?? make();
  known.set(key, value);
  return value;
}

/** V r.m.s. of the mains between the leads, with nothing on them. */
export function openVolts({ port, solution }: Leads): Volts {
  const { re, im } = solution.planes.mains;
  return modulus({ re: difference(re, port), im: difference(im, port) });
}

export const modulus = ({ re, im }: Phasor): number => Math.sqrt(re * re + im * im);

/** V r.m.s. that a resistance across the leads would have on it. */
export const loadedVolts = ({ open, impedance }: Seen, load: Ohms): Volts =>
  (modulus(open.mains) * load) / modulus({ re: impedance.re + load, im: impedance.im });

/**
 * Live: more than 50 V open, and more than 0.5 mA through 2 kΩ. A design choice, from memory of touch-current
 * practice; an unloaded node behind good insulation shows tens of volts and is not live.
 */
export const LIVE = { volts: 50, amps: 0.0005, through: 2000 } as const satisfies Record<
  string,
  Volts | Amps | Ohms
>;

export const isLive = (seen: Seen): boolean =>
  modulus(seen.open.mains) > LIVE.volts && loadedVolts(seen, LIVE.through) / LIVE.through > LIVE.amps;

export function liveBetween(world: World, a: Probe, b: Probe): boolean {
  const leads = leadsOn(world, a, b);
  return openVolts(leads) > LIVE.volts && isLive(seenBy(leads));
}
