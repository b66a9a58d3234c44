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
    title: 'The service’s PEN conductor is open',
    parameters: [TO_EARTH],
    where: 'the joint of the service cable; the parameter is the ground path of the main earthing terminal',
    cause: 'A corroded joint has parted.',
    hazard: 'Every earthed part, the vehicle among them, stands at a dangerous voltage.',
    source: 'BS 7671:2018+A2:2022 722.411.4.1',
    impossible: penOnly,
    change: (parts, { ohms = 0 }) => withBrokenPen(parts, ohms),
  },
  {
    ...ofSupply,
    id: 'pen-open-in-street',
    title: 'The PEN conductor is open in the street, with neighbours on it',
    parameters: [{ name: 'watts', unit: 'W', min: 3000, max: 12_000, default: 6000 }],
    where: 'the distributor’s main, beyond the neighbours; the parameter is their load on each other line',
    cause: 'A broken main.',
    hazard: 'Voltage rises until things burn, and every earthed part is live.',
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
    title: 'Open-PEN measure does not act',
    parameters: [],
    where: 'the measure’s sensing inside the unit',
    cause: 'Its sensing has failed, or its electrode was never connected.',
    hazard: 'With the supply’s PEN broken the vehicle’s body is live.',
    source: 'BS 7671:2018+A2:2022 722.411.4.1',
    change: (parts) => withDesign(parts, { openPen: { ...parts.design.openPen, senses: false } }),
  },
  {
    ...ofMeasure,
    id: 'open-pen-late',
    title: 'Open-PEN measure acts too late',
    parameters: [{ name: 'seconds', unit: 's', min: 6, max: 20, default: 9 }],
    where: 'the measure’s timer inside the unit',
    cause: 'A fault of its programme.',
    hazard: 'A long shock from the vehicle’s body.',
    source: 'BS 7671:2018+A2:2022 722.411.4.1: within 5 s',
    change: (parts, { seconds = 0 }) => withTiming(parts, { openPen: seconds }),
  },
  {
    ...ofMeasure,
    id: 'open-pen-leaves-earth',
    title: 'Open-PEN measure leaves the protective conductor closed',
    parameters: [],
    where: 'the measure’s PE pole inside the unit',
    cause: 'A device that opens line and neutral alone was fitted, or its PE pole is stuck.',
    hazard: 'The vehicle’s body stays joined to a broken earth.',
    source: 'BS 7671:2018+A2:2022 722.411.4.1',
    change: (parts) => withDesign(parts, { openPen: { ...parts.design.openPen, opensEarth: false } }),
  },
];
