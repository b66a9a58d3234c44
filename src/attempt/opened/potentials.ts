/**
 * Where the conductors of an opened drawing stand at one moment: potentials against true earth, how firmly anything
 * holds them there, and what a detector truly meets between the pairs of the outlet. Solves, and changes nothing.
 */
import { INPUT } from '../../bench/instruments/voltageTools.ts';
import type { Operation } from '../../bench/operation.ts';
import { leadsOn, modulus } from '../../bench/port.ts';
import type { Terminal } from '../../bench/terminals.ts';
import type { World } from '../../bench/world.ts';
import type { Ohms, Volts } from '../../laws/quantities.ts';
import { difference, inject, type Phasor, type Port } from '../../network/potentials.ts';
import { solveMains } from '../../network/solve.ts';
import type { NodeId } from '../../network/topology.ts';
import { pairsOf } from '../../site/part.ts';
import { livesOf } from '../../site/site.ts';

/** How firmly something decides where a conductor stands: firm, through a filter or a bleed, or nothing at all. */
export type Hold = 'firm' | 'faint' | 'none';

export interface Potential {
  /** 50 Hz, r.m.s., against true earth. */
  readonly volts: Volts;
  readonly hold: Hold;
  /** The other terminal of the voltage tool whose lead is on it now. */
  readonly tiedTo: Terminal | null;
}

/** What of a moment takes solving the network, and stays while neither network nor leads change. */
export interface Solved {
  readonly volts: Readonly<Record<Terminal, Potential>>;
  /** What a two-pole detector truly meets between each pair of outlet conductors, such as `L1–PE`, V. */
  readonly pairs: Readonly<Record<string, Volts>>;
}

/** A plane of phasors, by node. */
interface Plane {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

const at = ({ re, im }: Plane, node: NodeId): Phasor => ({ re: re[node] as number, im: im[node] as number });
const across = ({ re, im }: Plane, port: Port): Phasor => ({
  re: difference(re, port),
  im: difference(im, port),
});

/** What one ampere put in at a port raises everywhere, V. */
function raisedBy({ solution: { reduced } }: World, port: Port): Plane {
  const nodes = reduced.plan.topology.nodes.length;
  const plane = { re: new Float64Array(nodes), im: new Float64Array(nodes) };
  inject(plane.re, port, 1);
  solveMains(reduced, plane.re, plane.im);
  return plane;
}

const nodeAt = (world: World, terminal: Terminal): NodeId => leadsOn(world, terminal, terminal).port.a;

/** What a two-pole detector truly meets between two terminals, V. */
export function detectorVolts(world: World, a: Terminal, b: Terminal): Volts {
  const { port } = leadsOn(world, a, b);
  return loadedBy(across(world.solution.planes.mains, port), across(raisedBy(world, port), port));
}

const loadedBy = (open: Phasor, impedance: Phasor): Volts => {
  const load = INPUT['two-pole'];
  return (modulus(open) * load) / modulus({ re: impedance.re + load, im: impedance.im });
};

/** Source impedances up to which a conductor is held firmly, and at all, Ω. A design choice: a detector of 40 kΩ moves the second kind, a meter of 10 MΩ still shows it. */
const FIRM: Ohms = 100_000;
const FAINT: Ohms = 20e6;

const holdOf = (impedance: Ohms): Hold => (impedance < FIRM ? 'firm' : impedance < FAINT ? 'faint' : 'none');

/** Places whose potential is drawn. */
function drawnTerminals(world: World): readonly Terminal[] {
  const conductors = outletConductors(world);
  return ['met', ...conductors.map((x) => `supply.${x}`), 'case', ...conductors.map((x) => `outlet.${x}`)];
}

const outletConductors = (world: World): readonly string[] => [...livesOf(world.installation.site), 'PE'];

/**
 * As the bench stands now. While a voltage is measured the instrument's own load is on the network: a conductor that
 * floats then shows where the leads have drawn it.
 */
export function solvedNow(world: World, operation: Operation | null): Solved {
  const columns = new Map(
    drawnTerminals(world).map((terminal) => {
      const node = nodeAt(world, terminal);
      return [terminal, { node, raised: raisedBy(world, { a: node, b: 0 }) }];
    }),
  );
  const plane = loaded(world, operation) ?? world.solution.planes.mains;
  const [first, second] = voltageLeads(operation) ?? [];
  const volts = [...columns].map(([terminal, { node, raised }]): [Terminal, Potential] => [
    terminal,
    {
      volts: modulus(at(plane, node)),
      hold: holdOf(modulus(at(raised, node))),
      tiedTo: (terminal === first ? second : terminal === second ? first : null) ?? null,
    },
  ]);
  const floats = (terminal: Terminal | null) =>
    volts.some(([name, { hold }]) => name === terminal && hold === 'none');
  const pairs = pairsOf(outletConductors(world)).flatMap(([x, y]): [string, Volts][] => {
    const [a, b] = [columns.get(`outlet.${x}`), columns.get(`outlet.${y}`)];
    if (a === undefined || b === undefined) return [];
    const port = { a: a.node, b: b.node };
    const [own, other] = [across(a.raised, port), across(b.raised, port)];
    const impedance = { re: own.re - other.re, im: own.im - other.im };
    return [[`${x}–${y}`, loadedBy(across(world.solution.planes.mains, port), impedance)]];
  });
  return {
    // Two conductors that both float hold each other to nothing.
    volts: Object.fromEntries(
      volts.map(([terminal, potential]) => [
        terminal,
        floats(terminal) && floats(potential.tiedTo) ? { ...potential, tiedTo: null } : potential,
      ]),
    ),
    pairs: Object.fromEntries(pairs),
  };
}

/** Where the voltage tool of this operation is; null where it measures none, or joins terminals. */
function voltageLeads(operation: Operation | null): readonly [Terminal, Terminal] | null {
  if (operation?.op !== 'measure' || operation.quantity !== 'voltage') return null;
  const [a, b] = operation.between;
  return typeof a !== 'string' || typeof b !== 'string' || a === b ? null : [a, b];
}

/** The mains plane with the voltage tool across its leads, or null where there is none. */
function loaded(world: World, operation: Operation | null): Plane | null {
  const leads = voltageLeads(operation);
  if (leads === null || operation?.op !== 'measure' || operation.quantity !== 'voltage') return null;
  const { port } = leadsOn(world, ...leads);
  const { mains } = world.solution.planes;
  const { re, im } = raisedBy(world, port);
  const open = across(mains, port);
  const own = across({ re, im }, port);
  const whole = { re: own.re + INPUT[operation.tool], im: own.im };
  const size = whole.re * whole.re + whole.im * whole.im;
  // The current that the instrument draws from a and gives back to b.
  const drawn = {
    re: (open.re * whole.re + open.im * whole.im) / size,
    im: (open.im * whole.re - open.re * whole.im) / size,
  };
  return {
    re: mains.re.map((value, i) => value - ((re[i] ?? 0) * drawn.re - (im[i] ?? 0) * drawn.im)),
    im: mains.im.map((value, i) => value - ((re[i] ?? 0) * drawn.im + (im[i] ?? 0) * drawn.re)),
  };
}
