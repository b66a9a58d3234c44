/** Faults of the PEN conductor, and of what should part the vehicle from a broken one. Ranges are trade judgement. */
import type { Amps, Ohms, Volts, Watts } from '../laws/quantities.ts';
import { OPEN_PEN_WINDOW } from '../laws/supplyLimits.ts';
import type { Site } from '../site/site.ts';
import { loadResistance } from '../site/site.ts';
import type { Fault } from './fault.ts';
import { LOCK_OFF, openPenOnly, penOnly, TELL_DISTRIBUTOR, TELL_MAKER } from './fault.ts';
import type { Parts } from './parts.ts';
import { withDesign, withOpen, withPart, withSite, withTiming } from './parts.ts';

const family = 'supply-wiring';

/** The PEN conductor broken, and the ground path of the main earthing terminal that carries what it carried. */
const withBrokenPen = (parts: Parts, toEarth: number): Parts =>
  withPart(withOpen(parts, 'pen'), 'met.earth', (part) => ({
    ...part,
    resistance: Math.min(part.resistance, toEarth),
  }));

const TO_EARTH = { name: 'ohms', unit: 'Ω', min: 5, max: 100, default: 20 } as const;

/** Of the distributor's supply. */
export const ofSupply = {
  kind: 'fault',
  family,
  component: 'supply',
  next: LOCK_OFF,
  tell: TELL_DISTRIBUTOR,
} as const;
/** Of the open-PEN measure inside the unit. */
const ofMeasure = {
  kind: 'fault',
  family,
  component: 'open-pen',
  next: LOCK_OFF,
  tell: TELL_MAKER,
  impossible: openPenOnly,
} as const;

/** The current at which a warm joint has the ohms that are said of it, A: a house's and a kettle's. */
const OF_LOAD: Amps = 16;

/** How far a broken PEN moves the neutral at right angles to the line, V: over the 70 V that count. */
const SIDEWAYS: Volts = 76;
/** Half of √3: how far another line stands off at right angles. */
const ASIDE = 0.866;

/**
 * The neighbour's load on L2 and the ground path by which a broken PEN moves the neutral at right angles to L1. Twice
 * this house's load pulls the neutral as far back along L1 as this house pulls it forward: line to neutral hardly
 * changes. Null where that cannot be, or would be seen in line to neutral all the same.
 */
function sidewaysOn({
  voltage,
  otherLoads,
  metEarthResistance,
}: Pick<Site, 'voltage' | 'otherLoads' | 'metEarthResistance'>): { watts: Watts; toEarth: Ohms } | null {
  const own = otherLoads.reduce((sum, { line, power }) => sum + (line === 'L1' ? power : 0), 0);
  const toEarth = loadResistance(own) / ((2 * ASIDE * voltage) / SIDEWAYS - 3);
  const isSeen = Math.sqrt(voltage * voltage + SIDEWAYS * SIDEWAYS) > OPEN_PEN_WINDOW.greatest - 3;
  return own === 0 || isSeen || (metEarthResistance ?? Infinity) < toEarth
    ? null
    : { watts: 2 * own, toEarth };
}

export const penFaults: readonly Fault[] = [
  {
    ...ofSupply,
    // BS 7671:2018+A2:2022 722.411.4.1.
    id: 'pen-open',
    parameters: [TO_EARTH],
    impossible: penOnly,
    change: (parts, { ohms = 0 }) => withBrokenPen(parts, ohms),
  },
  {
    ...ofSupply,
    // BS 7671:2018+A2:2022 722.411.4.1.
    id: 'pen-open-in-street',
    parameters: [{ name: 'watts', unit: 'W', min: 3000, max: 12_000, default: 6000 }],
    impossible: penOnly,
    change: (parts, { watts = 0 }) =>
      withSite(withBrokenPen(parts, TO_EARTH.max), {
        neighbours: [...parts.site.neighbours, { line: 'L2', power: watts }, { line: 'L3', power: watts }],
      }),
  },
  {
    ...ofSupply,
    // BS 7671:2018+A2:2022 722.411.4.1: a measure on line to neutral is blind to it.
    id: 'pen-open-sideways',
    parameters: [],
    impossible: (on) =>
      on.site.phases === 3
        ? 'three-phases'
        : (penOnly(on) ?? (sidewaysOn(on.site) === null ? 'neutral-would-show' : null)),
    change: (parts) => {
      const found = sidewaysOn(parts.site);
      return found === null
        ? parts
        : withSite(withBrokenPen(parts, found.toEarth), {
            neighbours: [...parts.site.neighbours, { line: 'L2', power: found.watts }],
          });
    },
  },
  {
    ...ofSupply,
    // BS 7671:2018+A2:2022 722.411.4.1; ESQCR 2002 reg. 24 (from memory).
    id: 'pen-joint-warms',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 2, max: 20, default: 5 }],
    impossible: penOnly,
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'pen', (part) => ({ ...part, warms: ohms / (OF_LOAD * OF_LOAD) })),
  },
  {
    ...ofMeasure,
    // BS 7671:2018+A2:2022 722.411.4.1.
    id: 'open-pen-blind',
    parameters: [],
    change: (parts) => withDesign(parts, { openPen: { ...parts.design.openPen, senses: false } }),
  },
  {
    ...ofMeasure,
    // BS 7671:2018+A2:2022 722.411.4.1: within 5 s.
    id: 'open-pen-late',
    parameters: [{ name: 'seconds', unit: 's', min: 6, max: 20, default: 9 }],
    change: (parts, { seconds = 0 }) => withTiming(parts, { openPen: seconds }),
  },
  {
    ...ofMeasure,
    // BS 7671:2018+A2:2022 722.411.4.1.
    id: 'open-pen-leaves-earth',
    parameters: [],
    change: (parts) => withDesign(parts, { openPen: { ...parts.design.openPen, opensEarth: false } }),
  },
];
