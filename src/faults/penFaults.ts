/** Faults of the PEN conductor, and of what should part the vehicle from a broken one. Ranges are trade judgement. */
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

export const penFaults: readonly Fault[] = [
  {
    ...ofSupply,
    id: 'pen-open',
    parameters: [TO_EARTH],
    source: 'BS 7671:2018+A2:2022 722.411.4.1',
    impossible: penOnly,
    change: (parts, { ohms = 0 }) => withBrokenPen(parts, ohms),
  },
  {
    ...ofSupply,
    id: 'pen-open-in-street',
    parameters: [{ name: 'watts', unit: 'W', min: 3000, max: 12_000, default: 6000 }],
    source: 'BS 7671:2018+A2:2022 722.411.4.1',
    impossible: penOnly,
    change: (parts, { watts = 0 }) =>
      withSite(withBrokenPen(parts, TO_EARTH.max), {
        neighbours: [...parts.site.neighbours, { line: 'L2', power: watts }, { line: 'L3', power: watts }],
      }),
  },
  {
    ...ofMeasure,
    id: 'open-pen-blind',
    parameters: [],
    source: 'BS 7671:2018+A2:2022 722.411.4.1',
    change: (parts) => withDesign(parts, { openPen: { ...parts.design.openPen, senses: false } }),
  },
  {
    ...ofMeasure,
    id: 'open-pen-late',
    parameters: [{ name: 'seconds', unit: 's', min: 6, max: 20, default: 9 }],
    source: 'BS 7671:2018+A2:2022 722.411.4.1: within 5 s',
    change: (parts, { seconds = 0 }) => withTiming(parts, { openPen: seconds }),
  },
  {
    ...ofMeasure,
    id: 'open-pen-leaves-earth',
    parameters: [],
    source: 'BS 7671:2018+A2:2022 722.411.4.1',
    change: (parts) => withDesign(parts, { openPen: { ...parts.design.openPen, opensEarth: false } }),
  },
];
