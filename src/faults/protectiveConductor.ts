/**
 * Faults of the protective conductor, which runs in pieces: electrode or distributor's earth, earthing terminal,
 * board–unit, unit, outlet. Ranges are trade judgement (common practice, no source).
 */
import { conductorResistance } from '../laws/conductor.ts';
import { OPEN } from '../site/part.ts';
import type { Fault } from './fault.ts';
import {
  LOCK_OFF,
  openPenOnly,
  PUT_RIGHT,
  TELL_INSTALLER,
  TELL_MAKER,
  tetheredOnly,
  ttOnly,
  unless,
} from './fault.ts';
import { withMore, withOpen, withPart, withVisible } from './parts.ts';

const family = 'protective-conductor';

/** The smallest core of a flat cable that is taken by mistake, mm². */
const TOO_SMALL = 1.5;

export const protectiveConductorFaults: readonly Fault[] = [
  {
    // BS 7671:2018+A2:2022 411.3.1.1, 643.2.1.
    id: 'pe-not-landed',
    kind: 'fault',
    family,
    component: 'circuit',
    parameters: [],
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    change: (parts) => withOpen(parts, 'circuit.PE'),
  },
  {
    // BS 7671:2018+A2:2022 526.1, 643.2.1.
    id: 'pe-joint',
    kind: 'fault',
    family,
    component: 'circuit',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.3, max: 20, default: 1.8 }],
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    change: (parts, { ohms = 0 }) => withMore(parts, 'circuit.PE', ohms),
  },
  {
    // BS 7671:2018+A2:2022 526.1, 643.2.1.
    id: 'pe-moves-with-cover',
    kind: 'fault',
    family,
    component: 'circuit',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 1, max: 1e9, default: 1e9 }],
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'circuit.PE', (part) => ({
        ...part,
        contact: 'under-cover',
        openResistance: Math.min(OPEN, part.resistance + ohms),
      })),
  },
  {
    // BS 7671:2018+A2:2022 543.1.1, 543.1.3.
    id: 'pe-undersized',
    kind: 'fault',
    family,
    component: 'circuit',
    parameters: [],
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    change: (parts) =>
      withPart(parts, 'circuit.PE', (part) => ({
        ...part,
        resistance: conductorResistance({ length: parts.site.circuit.length, area: TOO_SMALL, class: 2 }),
      })),
  },
  {
    // BS 7671:2018+A2:2022 543.2.6 (from memory): precautions against its removal.
    id: 'borrowed-earth',
    kind: 'fault',
    family,
    component: 'circuit',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.3, max: 5, default: 0.6 }],
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    change: (parts, { ohms = 0 }) =>
      withPart(withOpen(parts, 'circuit.PE'), 'circuit.parallel', (part) => ({ ...part, resistance: ohms })),
  },
  {
    // BS 7671:2018+A2:2022 643.2.1.
    id: 'outlet-pe-open',
    kind: 'fault',
    family,
    component: 'unit-earth',
    parameters: [],
    next: LOCK_OFF,
    tell: TELL_MAKER,
    change: (parts) => withOpen(parts, 'outlet.PE'),
  },
  {
    // BS 7671:2018+A2:2022 643.2.1.
    id: 'outlet-pe-joint',
    kind: 'fault',
    family,
    component: 'unit-earth',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.2, max: 3, default: 0.6 }],
    next: LOCK_OFF,
    tell: TELL_MAKER,
    change: (parts, { ohms = 0 }) => withMore(parts, 'outlet.PE', ohms),
  },
  {
    // BS 7671:2018+A2:2022 643.2.1.
    id: 'tether-pe-moves',
    kind: 'fault',
    family,
    component: 'outlet',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 1, max: 1e9, default: 1e9 }],
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: tetheredOnly,
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'cable.PE', (part) => ({
        ...part,
        contact: 'unflexed',
        openResistance: Math.min(OPEN, part.resistance + ohms),
      })),
  },
  {
    // BS 7671:2018+A2:2022 411.3.1.1.
    id: 'case-unearthed',
    kind: 'fault',
    family,
    component: 'unit-earth',
    parameters: [],
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    change: (parts) => withOpen(parts, 'case'),
  },
  {
    // BS 7671:2018+A2:2022 526.1, 411.3.1.1.
    id: 'earthing-conductor-loose',
    kind: 'fault',
    family,
    component: 'earthing',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.5, max: 20, default: 2 }],
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    impossible: unless(({ site }) => site.earthing !== 'TT', 'no-earthing-conductor'),
    change: (parts, { ohms = 0 }) => withMore(parts, 'earthing', ohms),
  },
  {
    // BS 7671:2018+A2:2022 411.3.1.2, 544.1.
    id: 'bonding-missing',
    kind: 'fault',
    family,
    component: 'earthing',
    parameters: [],
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    impossible: unless(({ site }) => site.metEarthResistance !== null, 'nothing-to-bond'),
    change: (parts) => withVisible(withOpen(parts, 'met.earth'), 'terminals', { id: 'bonding-off' }),
  },
  {
    // BS 7671:2018+A2:2022 643.2.1.
    id: 'open-pen-pole-worn',
    kind: 'fault',
    family,
    component: 'unit-earth',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.3, max: 3, default: 0.8 }],
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: openPenOnly,
    change: (parts, { ohms = 0 }) => withMore(parts, 'unit.PE', ohms),
  },
  {
    // BS 7671:2018+A2:2022 Table 41.5 note: above 200 Ω it may not be stable.
    id: 'electrode-poor',
    kind: 'fault',
    family,
    component: 'earthing',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 250, max: 2000, default: 600 }],
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    impossible: ttOnly,
    change: (parts, { ohms = 0 }) => withPart(parts, 'electrode', (part) => ({ ...part, resistance: ohms })),
  },
  {
    // BS 7671:2018+A2:2022 542.3.2 (from memory): a sound connection to the electrode.
    id: 'electrode-clamp',
    kind: 'fault',
    family,
    component: 'earthing',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 200, max: 5000, default: 900 }],
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    impossible: ttOnly,
    change: (parts, { ohms = 0 }) =>
      withVisible(withMore(parts, 'electrode.conductor', ohms), 'terminals', { id: 'clamp-corroded' }),
  },
  {
    // BS 7671:2018+A2:2022 411.3.1.1: what can be touched together belongs to one earth.
    id: 'earths-joined',
    kind: 'fault',
    family,
    component: 'earthing',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.1, max: 1, default: 0.3 }],
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    impossible: ttOnly,
    change: (parts, { ohms = 0 }) => ({
      ...parts,
      parts: [
        ...parts.parts,
        {
          id: 'earths.joined',
          a: parts.site.house === undefined ? 'service.N' : 'house',
          b: 'bar',
          resistance: ohms,
        },
      ],
    }),
  },
];
