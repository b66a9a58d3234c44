/**
 * The installation up to the unit's supply terminals: supply, earthing, the circuit and its devices, as data and
 * as network parts. Shapes are those of the scenario file. The charge point itself is unit/'s business.
 */

import { conductorResistance } from '../laws/conductor.ts';
import type { Line, Live } from '../laws/conductors.ts';
import { LINES } from '../laws/conductors.ts';
import type { CableKind, Method } from '../laws/currentCarrying.ts';
import type { BreakerType } from '../laws/overcurrent.ts';
import type {
  Amps,
  Celsius,
  Metres,
  Ohms,
  Siemens,
  SquareMillimetres,
  Volts,
  Watts,
} from '../laws/quantities.ts';
import type { Delay, DeviceType } from '../laws/residualLimits.ts';
import type { Part, Source } from './part.ts';
import { insulationAt, OPEN } from './part.ts';

export const EARTHINGS = ['TN-S', 'TN-C-S', 'TT'] as const;
export type Earthing = (typeof EARTHINGS)[number];

export interface Breaker {
  readonly type: BreakerType;
  readonly rating: Amps;
  readonly breakingCapacity: Amps;
  readonly poles: number;
}

export interface ResidualDevice {
  readonly type: DeviceType;
  readonly rated: Amps;
  readonly delay: Delay;
  readonly poles: number;
}

/** What opens on an earth fault: the breaker, or the residual device at the origin. The unit's own never counts. */
export const FAULT_PROTECTIONS = ['overcurrent', 'residual'] as const;
export type FaultProtection = (typeof FAULT_PROTECTIONS)[number];

export interface Circuit {
  readonly length: Metres;
  readonly lineArea: SquareMillimetres;
  readonly protectiveArea: SquareMillimetres;
  /** How the cable is laid, and which it is; left out, the usual one for the method. */
  readonly method: Method;
  readonly cable?: CableKind | undefined;
  /** Air round it, °C, circuits bunched with it, itself among them, and how much of it lies in thermal insulation, mm. */
  readonly ambient: Celsius;
  readonly grouped: number;
  readonly insulated: number;
  readonly breaker: Breaker;
  /** Short-circuit rating that the consumer unit is declared to have with this breaker in it, A; null: none. */
  readonly conditionalRating: Amps | null;
  readonly residualDevice: ResidualDevice | null;
  /** Charging points behind that device, this one among them. */
  readonly points: number;
  readonly faultProtection: FaultProtection;
  /** Resistance of armour, steel or tray in parallel with the circuit's protective conductor, Ω. */
  readonly parallelEarth: Ohms | null;
  /**
   * Between any two cores of its cable, F/m; left out, nothing couples. From memory: 50 to 150 pF/m in low-voltage
   * multicore, most in armoured cable.
   */
  readonly capacitance?: number | undefined;
}

export interface Load {
  readonly line: Line;
  /** Power at 230 V, W; the load is a resistance. */
  readonly power: Watts;
}

/** The service: what it is rated for on each line, and what the house asks of it, by the design, without the point. */
export interface Service {
  readonly rating: Amps;
  readonly demand: Amps;
}

/**
 * Another charging point on the same service, on a board of its own where the tails part: it takes what it takes, and is
 * no part of this circuit. Nothing on this circuit's board switches it.
 */
export interface NextPoint {
  /** The most that it may take, A per line. */
  readonly ratedCurrent: Amps;
  /** What the vehicle on it draws as the site is found, A per line at 230 V; 0: it is idle. */
  readonly draws: Amps;
}

/** The rest of the house on the combined conductor of its supply (PME), where the circuit has an earth of its own. */
export interface House {
  /** From the house's own earthing terminal to true earth by bonding and pipes, Ω. */
  readonly metEarthResistance: Ohms | null;
}

export interface Site {
  readonly phases: 1 | 3;
  /** How the circuit is earthed, and with it the whole installation but for a house that is said to be otherwise. */
  readonly earthing: Earthing;
  readonly house?: House | undefined;
  /** No-load voltage of the source, line to neutral, V. */
  readonly voltage: Volts;
  /** Line–earth loop at the origin with the earthing conductor off, Ω; on TT it follows from the electrodes. */
  readonly loopImpedance: Ohms;
  /** Line–neutral loop at the origin, Ω. */
  readonly neutralImpedance: Ohms;
  readonly electrodeResistance: Ohms | null;
  readonly sourceElectrodeResistance: Ohms;
  readonly metEarthResistance: Ohms | null;
  readonly circuit: Circuit;
  /** Null where the papers say nothing of it. */
  readonly service: Service | null;
  readonly nextPoint?: NextPoint | undefined;
  readonly otherLoads: readonly Load[];
  readonly neighbours: readonly Load[];
}

/** Whether neutral and earth of the supply are one conductor, which may break. */
export const hasPen = ({ earthing, house }: Pick<Site, 'earthing'> & { readonly house?: unknown }): boolean =>
  earthing === 'TN-C-S' || house !== undefined;

export const linesOf = (site: Pick<Site, 'phases'>): readonly Line[] => LINES.slice(0, site.phases);
export const livesOf = (site: Pick<Site, 'phases'>): readonly Live[] => [...linesOf(site), 'N'];

/** Resistance of the remote rod against which the main earthing terminal is measured, Ω. A design choice. */
const REMOTE_ROD: Ohms = 20;
/** A closed pole or a made terminal, Ω. Common practice, no source: a few milliohms. */
const CONTACT: Ohms = 0.001;
/** A pole of the main switch, Ω; with the circuit's own pole it comes to one contact. A design choice. */
const MAIN_CONTACT: Ohms = 0.0001;
/** Insulation of new circuit cable, Ω for each pair. Common practice, no source: hundreds of megohms and more. */
const CABLE_INSULATION: Ohms = 2e9;
/** A balanced three-phase set on the unit circle: −1/2 and √3/2 are written as constants so that every engine agrees. */
const HALF_ROOT_THREE = 0.8660254037844386;
const DIRECTIONS: Record<Line, { re: number; im: number }> = {
  L1: { re: 1, im: 0 },
  L2: { re: -0.5, im: -HALF_ROOT_THREE },
  L3: { re: -0.5, im: HALF_ROOT_THREE },
};

/** Resistance of a load whose power is stated at 230 V, Ω; no power is no path. */
export const loadResistance = (power: Watts): Ohms => (230 * 230) / power;

/** Half the loop belongs to the line and half to the return (contract: loopImpedance). On TT the line has half the line–neutral loop. */
const lineImpedance = (site: Site): Ohms =>
  (site.earthing === 'TT' ? site.neutralImpedance : site.loopImpedance) / 2;

/** The site's mains sources: each line's in series with its own impedance, and the neighbours' behind the same PEN. */
export function siteSources(site: Site): readonly Source[] {
  const emf = (line: Line) => ({
    re: site.voltage * DIRECTIONS[line].re,
    im: site.voltage * DIRECTIONS[line].im,
  });
  return [
    ...linesOf(site).map((line) => ({ part: `source.${line}`, mains: emf(line) })),
    ...(hasPen(site) ? LINES.map((line) => ({ part: `neighbour.${line}`, mains: emf(line) })) : []),
  ];
}

/** The site as network parts, from the source's star point to the unit's supply terminals. */
export function siteParts(site: Site): readonly Part[] {
  return [...supplyParts(site), ...earthingParts(site), ...circuitParts(site)];
}

function supplyParts(site: Site): readonly Part[] {
  const line = lineImpedance(site);
  const neutral = Math.max(0.0001, site.neutralImpedance - line);
  return [
    ...linesOf(site).map((l) => ({ id: `source.${l}`, a: 'star', b: `service.${l}`, resistance: line })),
    // On TN-C-S the return is one PEN conductor: it carries neutral and earth, and may open.
    hasPen(site)
      ? { id: 'pen', a: 'star', b: 'service.N', resistance: line, contact: 'pen' }
      : { id: 'source.N', a: 'star', b: 'service.N', resistance: neutral },
    { id: 'source.electrode', a: 'star', b: 'earth', resistance: site.sourceElectrodeResistance },
    // The main switch has a pole for every live conductor (BS 7671 462.1.201, from memory: both where ordinary
    // persons use it). Earth is taken before it, all circuits after it.
    ...livesOf(site).map((x) => ({
      id: `main.${x}`,
      a: `service.${x}`,
      b: `busbar.${x}`,
      resistance: MAIN_CONTACT,
      contact: `main.${x}`,
    })),
    ...site.otherLoads.map((load, i) => ({
      id: `load.${i}`,
      a: `busbar.${load.line}`,
      b: 'busbar.N',
      resistance: loadResistance(load.power),
    })),
    // A load that is switched on to see what follows it; its current is a setting.
    ...linesOf(site).map((line) => ({
      id: `known-load.${line}`,
      a: `busbar.${line}`,
      b: 'busbar.N',
      resistance: Infinity,
    })),
    // The next point hangs before the main switch; what it draws is a setting.
    ...(site.nextPoint === undefined
      ? []
      : linesOf(site).map((line) => ({
          id: `next-point.${line}`,
          a: `service.${line}`,
          b: 'service.N',
          resistance: Infinity,
        }))),
    // Neighbours behind the same PEN conductor, on any line; their power is a setting.
    ...(hasPen(site)
      ? LINES.map((line) => ({
          id: `neighbour.${line}`,
          a: 'star',
          b: 'service.N',
          resistance: Infinity,
        }))
      : []),
  ];
}

function earthingParts(site: Site): readonly Part[] {
  const conductor = { id: 'earthing', contact: 'earthing-conductor', b: 'met', resistance: CONTACT };
  const ways: Record<Earthing, readonly Part[]> = {
    'TN-S': [
      { id: 'source.PE', a: 'star', b: 'service.PE', resistance: site.loopImpedance / 2 },
      { ...conductor, a: 'service.PE' },
    ],
    'TN-C-S': [{ ...conductor, a: 'service.N' }],
    TT: [
      { id: 'electrode', a: 'earth', b: 'clamp', resistance: site.electrodeResistance ?? OPEN },
      { id: 'electrode.conductor', a: 'clamp', b: 'met', resistance: CONTACT, contact: 'electrode' },
    ],
  };
  return [
    ...ways[site.earthing],
    ...(site.house === undefined
      ? []
      : [
          { id: 'house.earthing', a: 'service.N', b: 'house', resistance: CONTACT },
          { id: 'house.earth', a: 'house', b: 'earth', resistance: site.house.metEarthResistance ?? OPEN },
        ]),
    { id: 'met.earth', a: 'met', b: 'earth', resistance: site.metEarthResistance ?? OPEN },
    { id: 'board.PE', a: 'met', b: 'origin.PE', resistance: CONTACT },
    { id: 'rod', a: 'earth', b: 'rod', resistance: REMOTE_ROD },
  ];
}

/** Susceptance between any two of its cores, S at 50 Hz: 2π × 50 Hz × farads, the cable's taken together at its far end. */
const coupling = ({ capacitance, length }: Circuit): Siemens | undefined =>
  capacitance === undefined ? undefined : 2 * Math.PI * 50 * capacitance * length;

function circuitParts(site: Site): readonly Part[] {
  const { circuit } = site;
  const run = (area: SquareMillimetres) =>
    Math.max(0.0001, conductorResistance({ length: circuit.length, area, class: 2 }));
  const lives = livesOf(site);
  return [
    ...lives.map((x) => ({
      id: `origin.${x}`,
      a: `busbar.${x}`,
      b: `origin.${x}`,
      resistance: CONTACT - MAIN_CONTACT,
      contact: `origin.${x}`,
    })),
    ...lives.map((x) => ({
      id: `circuit.${x}`,
      a: `origin.${x}`,
      b: `supply.${x}`,
      resistance: run(circuit.lineArea),
    })),
    { id: 'circuit.PE', a: 'origin.PE', b: 'supply.PE', resistance: run(circuit.protectiveArea) },
    { id: 'circuit.parallel', a: 'met', b: 'bar', resistance: circuit.parallelEarth ?? OPEN },
    ...linesOf(site).flatMap((x) =>
      ['PE', 'N'].map((to) => ({
        id: `link.${x}-${to}`,
        a: `origin.${x}`,
        b: `origin.${to}`,
        resistance: CONTACT,
        contact: `link.${x}-${to}`,
        // Not put in, it is no path at all; the one to PE counts as an open contact, which insulates as well.
        ...(to === 'N' ? { openResistance: Infinity } : {}),
      })),
    ),
    ...insulationAt('circuit', 'supply', [...lives, 'PE'], CABLE_INSULATION, coupling(circuit)),
  ];
}
