/**
 * Faults of the supply and of the wiring to the unit. The papers keep what was meant; ranges are trade judgement
 * (common practice, no source) where no clause is named.
 */
import { isTabled } from '../laws/currentCarrying.ts';
import type { BreakerType } from '../laws/overcurrent.ts';
import { BREAKER_RATINGS, BREAKER_TYPES, measuredLoopLimit } from '../laws/overcurrent.ts';
import type { Amps, Ohms, Volts } from '../laws/quantities.ts';
import type { Designed } from '../site/design.ts';
import { carriedBy, laidAs, loopAtUnit } from '../site/design.ts';
import { hasPen, livesOf, loadResistance, siteSources } from '../site/site.ts';
import type { Fault, Setting } from './fault.ts';
import {
  LINE,
  LOCK_OFF,
  lineOf,
  noSuchLine,
  PUT_RIGHT,
  penOnly,
  TELL_DISTRIBUTOR,
  TELL_INSTALLER,
  TELL_MAKER,
  unless,
} from './fault.ts';
import type { Parts } from './parts.ts';
import { withCrossed, withDesign, withMore, withOpen, withPart, withSite, withVisible } from './parts.ts';
import { ofSupply } from './penFaults.ts';

const family = 'supply-wiring';
const inCircuit = {
  kind: 'fault',
  family,
  component: 'circuit',
  next: PUT_RIGHT,
  tell: TELL_INSTALLER,
} as const;
const inBoard = { ...inCircuit, component: 'breaker', parameters: [] } as const;
/** A joint that has oxidised: a little when cold, Ω, and what is said of it at this current, A. Common practice, no source. */
const COLD_JOINT: Ohms = 0.02;
const OF_CHARGE: Amps = 32;

/** The supply at another voltage: site and sources alike, so that the bench starts from it. */
function withVoltage(parts: Parts, volts: Volts): Parts {
  const changed = withSite(parts, { voltage: volts });
  return { ...changed, sources: siteSources(changed.site) };
}

/**
 * The least slow of the slower types that the circuit's loop does not open in time; null where a residual device does
 * it, or where the loop is good enough for any: then another type is no fault, and only the papers are to be mended.
 */
function tooSlow(site: Designed): BreakerType | null {
  const { breaker, faultProtection } = site.circuit;
  if (site.earthing === 'TT' || faultProtection === 'residual') return null;
  const slower = BREAKER_TYPES.slice(BREAKER_TYPES.indexOf(breaker.type) + 1);
  return slower.find((type) => loopAtUnit(site) > measuredLoopLimit(type, breaker.rating)) ?? null;
}

/** The least rating that the circuit's cable does not carry; null where its area or its laying is not in the tables. */
const tooLarge = (site: Designed): Amps | null =>
  isTabled(laidAs(site))
    ? (BREAKER_RATINGS.find((one) => one > Math.max(carriedBy(site).amps, site.circuit.breaker.rating)) ??
      null)
    : null;

/** Conventional tripping current of a breaker, as a multiple of its rating (IEC 60898-1 Table 7, from memory). */
const SURELY_TRIPS = 1.45;

/** The greatest rating that surely trips, within the hour, on what the unit is set to. */
const tooSmall = ({ setCurrent, ratedCurrent }: Setting['sheet']): Amps | null =>
  BREAKER_RATINGS.findLast((one) => SURELY_TRIPS * one < (setCurrent ?? ratedCurrent)) ?? null;

/** Another breaker fitted than the papers have; its rating can be read on it. */
function withBreakerRated(parts: Parts, rating: Amps | null): Parts {
  const { circuit } = parts.site;
  const { breaker } = circuit;
  if (rating === null) return parts;
  return withVisible(
    withSite(parts, { circuit: { ...circuit, breaker: { ...breaker, rating } } }),
    'protective devices',
    { id: 'breaker-rated', type: breaker.type, rated: rating, meant: breaker.rating },
  );
}

/** The circuit on the way beside the one that the board's schedule names. */
function withOtherWay(parts: Parts): Parts {
  const lives = livesOf(parts.site);
  const moved = lives.reduce(
    (of, live) => withPart(of, `circuit.${live}`, (part) => ({ ...part, a: `other-way.${live}` })),
    parts,
  );
  const resistance = parts.parts.find(({ id }) => id === 'origin.N')?.resistance ?? 0.001;
  return {
    ...moved,
    ways: [...parts.ways, OTHER_WAY],
    parts: [
      ...moved.parts,
      ...lives.map((live) => ({
        id: `${OTHER_WAY}.${live}`,
        a: `busbar.${live}`,
        b: `${OTHER_WAY}.${live}`,
        resistance,
        contact: `${OTHER_WAY}.${live}`,
      })),
    ],
  };
}
const OTHER_WAY = 'other-way';

export const supplyWiringFaults: readonly Fault[] = [
  {
    ...inCircuit,
    // BS 7671:2018+A2:2022 643.6.
    id: 'line-neutral-crossed',
    parameters: [],
    impossible: unless(({ site }) => site.phases === 1, 'three-phases'),
    change: (parts) => withCrossed(parts, 'circuit.L1', 'circuit.N'),
  },
  {
    ...inCircuit,
    // BS 7671:2018+A2:2022 643.9.
    id: 'lines-crossed',
    parameters: [],
    impossible: unless(({ site }) => site.phases === 3, 'one-line'),
    change: (parts) => withCrossed(parts, 'circuit.L2', 'circuit.L3'),
  },
  {
    ...inCircuit,
    // BS 7671:2018+A2:2022 526.1.
    id: 'line-missing',
    parameters: [LINE],
    impossible: noSuchLine,
    change: (parts, values) => withOpen(parts, `circuit.${lineOf(values)}`),
  },
  {
    // The unit’s sheet.
    id: 'line-loss-unnoticed',
    kind: 'fault',
    component: 'pilot',
    family,
    parameters: [],
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: unless(
      ({ site, sheet }) => site.phases === 3 && sheet.lostLine === 'stops',
      'no-line-watched',
    ),
    change: (parts) => withDesign(parts, { watchedLines: 'own' }),
  },
  {
    ...inCircuit,
    // BS 7671:2018+A2:2022 526.1.
    id: 'neutral-missing',
    parameters: [],
    change: (parts) => withOpen(parts, 'circuit.N'),
  },
  {
    ...inCircuit,
    // BS 7671:2018+A2:2022 526.1.
    id: 'neutral-joint',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.4, max: 5, default: 1 }],
    change: (parts, { ohms = 0 }) => withMore(parts, 'circuit.N', ohms),
  },
  {
    ...inCircuit,
    // BS 7671:2018+A2:2022 526.1.
    id: 'terminal-warms',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.1, max: 0.5, default: 0.4 }],
    change: (parts, { ohms = 0 }) =>
      withVisible(
        withPart(parts, 'circuit.L1', (part) => ({
          ...part,
          resistance: part.resistance + COLD_JOINT,
          warms: ohms / (OF_CHARGE * OF_CHARGE),
        })),
        'terminals',
        { id: 'terminal-browned' },
      ),
  },
  {
    ...inCircuit,
    // BS 7671:2018+A2:2022 643.3.2, Table 64.
    id: 'neutral-earth-joined',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.001, max: 2, default: 0.01 }],
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'insulation.circuit.N-PE', (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...inCircuit,
    // BS 7671:2018+A2:2022 314.4 (from memory): each circuit has its own neutral.
    id: 'neutral-borrowed',
    parameters: [],
    change: (parts) => withPart(parts, 'circuit.N', (part) => ({ ...part, a: 'busbar.N' })),
  },
  {
    ...inCircuit,
    // BS 7671:2018+A2:2022 722.533.101: an individual final circuit for each point.
    id: 'circuit-shared',
    parameters: [{ name: 'watts', unit: 'W', min: 600, max: 3000, default: 2000 }],
    change: (parts, { watts = 0 }) => ({
      ...parts,
      parts: [
        ...parts.parts,
        { id: 'shared.load', a: 'supply.L1', b: 'supply.N', resistance: loadResistance(watts) },
      ],
    }),
  },
  {
    // BS 7671:2018+A2:2022 514.9.1; EAWR 1989 regs 12, 13.
    id: 'schedule-names-other-way',
    kind: 'fault',
    family,
    component: 'enclosure',
    parameters: [],
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    change: withOtherWay,
  },
  {
    kind: 'fault',
    family,
    component: 'breaker',
    // BS 7671:2018+A2:2022 411.4.4.
    id: 'breaker-too-slow',
    parameters: [],
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    impossible: ({ site }) => (tooSlow(site) === null ? 'slower-breaker-opens' : null),
    change: (parts) => {
      const { circuit } = parts.site;
      const type = tooSlow(parts.site) ?? circuit.breaker.type;
      return withVisible(
        withSite(parts, { circuit: { ...circuit, breaker: { ...circuit.breaker, type } } }),
        'protective devices',
        { id: 'breaker-marked', type, meant: circuit.breaker.type, rating: circuit.breaker.rating },
      );
    },
  },
  {
    ...inBoard,
    // BS 7671:2018+A2:2022 433.1.1.
    id: 'breaker-rated-too-high',
    impossible: ({ site }) => (tooLarge(site) === null ? 'no-breaker-too-large' : null),
    change: (parts) => withBreakerRated(parts, tooLarge(parts.site)),
  },
  {
    ...inBoard,
    // BS 7671:2018+A2:2022 433.1.1; IEC 60898-1 (from memory): trips on what the unit may take.
    id: 'breaker-rated-too-low',
    impossible: ({ sheet }) => (tooSmall(sheet) === null ? 'no-breaker-too-small' : null),
    change: (parts) => withBreakerRated(parts, tooSmall(parts.design.sheet)),
  },
  {
    ...ofSupply,
    // BS 7671:2018+A2:2022 411.4.4.
    id: 'supply-loop-high',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.5, max: 5, default: 1.2 }],
    impossible: unless(({ site }) => site.earthing !== 'TT', 'electrode-decides'),
    change: (parts, { ohms = 0 }) =>
      withMore(parts, parts.site.earthing === 'TN-S' ? 'source.PE' : 'pen', ohms),
  },
  {
    // BS 7671:2018+A2:2022 643.6.
    id: 'tails-crossed',
    kind: 'fault',
    family,
    component: 'supply',
    parameters: [],
    next: LOCK_OFF,
    tell: TELL_DISTRIBUTOR,
    impossible: ({ site }) =>
      site.phases === 3 ? 'three-phases' : hasPen(site) ? 'earth-crossed-with-it' : null,
    change: (parts) => withCrossed(parts, 'source.L1', 'source.N'),
  },
  {
    // BS 7671:2018+A2:2022 643.6; ESQCR 2002 reg. 24 (from memory).
    id: 'supply-crossed',
    kind: 'fault',
    family,
    component: 'supply',
    parameters: [],
    next: LOCK_OFF,
    tell: TELL_DISTRIBUTOR,
    impossible: (on) => (on.site.phases === 3 ? 'three-phases' : penOnly(on)),
    change: (parts) => withCrossed(parts, 'source.L1', 'pen'),
  },
  {
    ...ofSupply,
    // ESQCR 2002 reg. 27: 253 V at most.
    id: 'voltage-high',
    parameters: [{ name: 'volts', unit: 'V', min: 258, max: 265, default: 260 }],
    change: (parts, { volts = 0 }) => withVoltage(parts, volts),
  },
  {
    ...ofSupply,
    // ESQCR 2002 reg. 27: 216.2 V at least.
    id: 'voltage-low',
    parameters: [{ name: 'volts', unit: 'V', min: 185, max: 205, default: 200 }],
    change: (parts, { volts = 0 }) => withVoltage(parts, volts),
  },
];
