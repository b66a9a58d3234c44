/**
 * One moment of the bench as it truly was, opened: positions, what is driven, the pilot, latches, and the potential
 * of every place that a drawing shows. Plain data; it looks and changes nothing.
 */
import { INPUT } from '../bench/instruments/voltageTools.ts';
import type { Operation } from '../bench/operation.ts';
import type { Outcome } from '../bench/perform.ts';
import { contactsOf, poleClosed } from '../bench/plant.ts';
import { leadsOn, modulus } from '../bench/port.ts';
import type { Reading, Truth } from '../bench/reading.ts';
import type { Terminal } from '../bench/terminals.ts';
import type { World } from '../bench/world.ts';
import { portOf } from '../bench/world.ts';
import type { Live } from '../laws/conductors.ts';
import type { Duty, Ohms, Seconds, Volts } from '../laws/quantities.ts';
import { seconds } from '../laws/quantities.ts';
import { difference, inject } from '../network/potentials.ts';
import { solveMains } from '../network/solve.ts';
import { livesOf } from '../site/site.ts';
import type { Sensed } from '../unit/sensed.ts';
import type { Commands } from '../unit/unitChart.ts';

export type Position = 'open' | 'closed';

/** How firmly something decides where a conductor stands: firm, through a filter or a bleed, or nothing at all. */
export type Hold = 'firm' | 'faint' | 'none';

export interface Potential {
  /** 50 Hz, r.m.s., against true earth. */
  readonly volts: Volts;
  readonly hold: Hold;
  /** The other terminal of the voltage tool whose lead is on it now. */
  readonly tiedTo: Terminal | null;
}

export interface Halves {
  readonly high: Volts;
  readonly low: Volts;
}

/** What an instrument met, and what it showed of it. */
export interface Met {
  readonly truth: Truth;
  readonly reading: Reading;
}

/** Latches and other standing states of the control, by the chart's own tags, in the words of the drawing. */
const STANDING = [
  ['fault', 'fault latched'],
  ['residual tripped', 'residual trip latched'],
  ['direct tripped', 'd.c. trip latched'],
  ['not available', 'says not available'],
  ['earth opened', 'open-PEN measure locked out'],
  ['stopped', 'stopped by hand'],
] as const;

/** Everything that stands still between two operations. */
export interface Look {
  /** This world's own bench time. */
  readonly at: Seconds;
  readonly origin: Readonly<Partial<Record<Live, Position>>>;
  readonly breaker: 'closed' | 'tripped';
  /** Null where there is none. */
  readonly upstream: 'closed' | 'tripped' | null;
  readonly unitBreaker: 'closed' | 'tripped' | null;
  readonly unit: 'connected' | 'taken off';
  /** The contactor's poles as they truly are. */
  readonly poles: Readonly<Partial<Record<Live, Position>>>;
  readonly coil: 'driven' | 'not driven';
  readonly earthPole: Position | null;
  readonly pilot: {
    readonly drive: Commands['pilot'];
    readonly duty: Duty;
    readonly atUnit: Halves;
    readonly atOutlet: Halves;
    readonly band: Sensed['pilot'] | null;
  };
  readonly lock: 'driven' | 'not driven' | null;
  readonly plug: 'out' | 'free' | 'held';
  readonly indicator: Commands['indicator'];
  readonly latches: readonly string[];
  readonly damaged: readonly string[];
  readonly volts: Readonly<Record<Terminal, Potential>>;
  /** When anything was last switched, set or moved by hand. */
  readonly changedAt: Seconds;
}

export interface Moment extends Look {
  readonly met: readonly Met[];
  readonly events: Outcome['events'];
  readonly refused: string | null;
  readonly found: Outcome['found'];
}

/** Source impedances up to which a conductor is held firmly, and at all, Ω. A design choice: a detector of 40 kΩ moves the second kind, a meter of 10 MΩ still shows it. */
const FIRM: Ohms = 100_000;
const FAINT: Ohms = 20e6;

const holdOf = (impedance: Ohms): Hold => (impedance < FIRM ? 'firm' : impedance < FAINT ? 'faint' : 'none');

/** Places whose potential is drawn. */
export function drawnTerminals(world: World): readonly Terminal[] {
  const conductors = [...livesOf(world.installation.site), 'PE'];
  return ['met', ...conductors.map((x) => `supply.${x}`), 'case', ...conductors.map((x) => `outlet.${x}`)];
}

/**
 * The bench as it stands now, with the leads of this operation on it where it measures voltage. `volts` may be handed
 * in where they are known already.
 */
export function lookInside(
  world: World,
  operation: Operation | null,
  volts: Look['volts'] = potentialsOf(world, operation),
): Look {
  const { plant, installation, actor, lastSent } = world;
  const { site, design } = installation;
  const { sheet } = design;
  const lives = livesOf(site);
  const snapshot = actor.getSnapshot();
  const byLive = <T>(of: (live: Live) => T) =>
    Object.fromEntries(lives.map((live) => [live, of(live)])) as Partial<Record<Live, T>>;
  const contacts = contactsOf(plant, site, design);
  return {
    at: seconds(world.timeline.now),
    origin: byLive((live) => (contacts[`origin.${live}`] === true ? 'closed' : 'open')),
    breaker: plant.breaker,
    upstream: site.circuit.residualDevice === null ? null : plant.upstream,
    unitBreaker: sheet.residual.by === 'breaker' ? plant.unitBreaker : null,
    unit: plant.removed.includes('unit') ? 'taken off' : 'connected',
    poles: byLive((live) => (poleClosed(plant, design, live) ? 'closed' : 'open')),
    coil: plant.coil ? 'driven' : 'not driven',
    earthPole: sheet.openPen === 'none' ? null : plant.earthPole,
    pilot: {
      drive: plant.pilot,
      duty: plant.duty,
      atUnit: halves(world, 'pilot', 'bar'),
      atOutlet: halvesAtOutlet(world),
      band: world.powered ? (lastSent?.pilot ?? null) : null,
    },
    lock: sheet.outlet === 'socket' ? (plant.lockDriven ? 'driven' : 'not driven') : null,
    plug: !plant.standIn.plugged ? 'out' : plant.plugLock === 'held' ? 'held' : 'free',
    indicator: world.indicator,
    latches: STANDING.filter(([tag]) => snapshot.hasTag(tag)).map(([, words]) => words),
    damaged: plant.damaged,
    volts,
    changedAt: seconds(world.changedAt),
  };
}

function halves(world: World, a: string, b: string): Halves {
  const { high, low } = world.solution.planes;
  const port = portOf(world, a, b);
  return { high: difference(high, port), low: difference(low, port) };
}

function halvesAtOutlet(world: World): Halves {
  const { port } = leadsOn(world, 'outlet.CP', 'outlet.PE');
  const { high, low } = world.solution.planes;
  return { high: difference(high, port), low: difference(low, port) };
}

/**
 * Potentials of all drawn places against true earth. While a voltage is measured the instrument's own load is on the
 * network: a conductor that floats then shows where the leads have drawn it.
 */
function potentialsOf(world: World, operation: Operation | null): Look['volts'] {
  const { reduced, planes } = world.solution;
  const { re, im } = loaded(world, operation) ?? planes.mains;
  const [first, second] = voltageLeads(operation) ?? [];
  const tied: Record<Terminal, Terminal | undefined> =
    first === undefined || second === undefined ? {} : { [first]: second, [second]: first };
  const nodes = reduced.plan.topology.nodes.length;
  const listRe = new Float64Array(nodes);
  const listIm = new Float64Array(nodes);
  const list = drawnTerminals(world).map((terminal): [Terminal, Potential] => {
    const node = leadsOn(world, terminal, terminal).port.a;
    listRe.fill(0);
    listIm.fill(0);
    inject(listRe, { a: node, b: 0 }, 1);
    solveMains(reduced, listRe, listIm);
    const impedance = modulus({ re: listRe[node] as number, im: listIm[node] as number });
    const volts = modulus({ re: re[node] as number, im: im[node] as number });
    return [terminal, { volts, hold: holdOf(impedance), tiedTo: tied[terminal] ?? null }];
  });
  const floats = (terminal: Terminal | null) =>
    list.some(([name, { hold }]) => name === terminal && hold === 'none');
  // Two conductors that both float hold each other to nothing.
  return Object.fromEntries(
    list.map(([terminal, potential]) => [
      terminal,
      floats(terminal) && floats(potential.tiedTo) ? { ...potential, tiedTo: null } : potential,
    ]),
  );
}

/** Where the voltage tool of this operation is; null where it measures none, or joins terminals. */
function voltageLeads(operation: Operation | null): readonly [Terminal, Terminal] | null {
  if (operation?.op !== 'measure' || operation.quantity !== 'voltage') return null;
  const [a, b] = operation.between;
  return typeof a !== 'string' || typeof b !== 'string' || a === b ? null : [a, b];
}

/** The mains plane with the voltage tool across its leads, or null where there is none. */
function loaded(world: World, operation: Operation | null): { re: Float64Array; im: Float64Array } | null {
  const leads = voltageLeads(operation);
  if (leads === null || operation?.op !== 'measure' || operation.quantity !== 'voltage') return null;
  const { port } = leadsOn(world, ...leads);
  const { reduced, planes } = world.solution;
  const re = new Float64Array(planes.mains.re.length);
  const im = new Float64Array(planes.mains.im.length);
  inject(re, port, 1);
  solveMains(reduced, re, im);
  const open = { re: difference(planes.mains.re, port), im: difference(planes.mains.im, port) };
  const whole = { re: difference(re, port) + INPUT[operation.tool], im: difference(im, port) };
  const size = whole.re * whole.re + whole.im * whole.im;
  // The current that the instrument draws from a and gives back to b.
  const drawn = {
    re: (open.re * whole.re + open.im * whole.im) / size,
    im: (open.im * whole.re - open.re * whole.im) / size,
  };
  for (let node = 0; node < re.length; node++) {
    const x = re[node] as number;
    const y = im[node] as number;
    re[node] = (planes.mains.re[node] as number) - (x * drawn.re - y * drawn.im);
    im[node] = (planes.mains.im[node] as number) - (x * drawn.im + y * drawn.re);
  }
  return { re, im };
}
