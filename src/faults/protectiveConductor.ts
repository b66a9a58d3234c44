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
    id: 'pe-not-landed',
    kind: 'fault',
    family,
    component: 'circuit',
    parameters: [],
    source: 'BS 7671:2018+A2:2022 411.3.1.1, 643.2.1',
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    change: (parts) => withOpen(parts, 'circuit.PE'),
  },
  {
    id: 'pe-joint',
    kind: 'fault',
    family,
    component: 'circuit',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.3, max: 20, default: 1.8 }],
    source: 'BS 7671:2018+A2:2022 526.1, 643.2.1',
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    change: (parts, { ohms = 0 }) => withMore(parts, 'circuit.PE', ohms),
  },
  {
    id: 'pe-undersized',
    kind: 'fault',
    family,
    component: 'circuit',
    parameters: [],
    source: 'BS 7671:2018+A2:2022 543.1.1, 543.1.3',
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    change: (parts) =>
      withPart(parts, 'circuit.PE', (part) => ({
        ...part,
        resistance: conductorResistance({ length: parts.site.circuit.length, area: TOO_SMALL, class: 2 }),
      })),
  },
  {
    id: 'borrowed-earth',
    kind: 'fault',
    family,
    component: 'circuit',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.3, max: 5, default: 0.6 }],
    source: 'BS 7671:2018+A2:2022 543.2.6 (from memory): precautions against its removal',
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    change: (parts, { ohms = 0 }) =>
      withPart(withOpen(parts, 'circuit.PE'), 'circuit.parallel', (part) => ({ ...part, resistance: ohms })),
  },
  {
    id: 'outlet-pe-open',
    kind: 'fault',
    family,
    component: 'unit-earth',
    parameters: [],
    source: 'BS 7671:2018+A2:2022 643.2.1',
    next: LOCK_OFF,
    tell: TELL_MAKER,
    change: (parts) => withOpen(parts, 'outlet.PE'),
  },
  {
    id: 'outlet-pe-joint',
    kind: 'fault',
    family,
    component: 'unit-earth',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.2, max: 3, default: 0.6 }],
    source: 'BS 7671:2018+A2:2022 643.2.1',
    next: LOCK_OFF,
    tell: TELL_MAKER,
    change: (parts, { ohms = 0 }) => withMore(parts, 'outlet.PE', ohms),
  },
  {
    id: 'tether-pe-moves',
    kind: 'fault',
    family,
    component: 'outlet',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 1, max: 1e9, default: 1e9 }],
    source: 'BS 7671:2018+A2:2022 643.2.1',
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
    id: 'case-unearthed',
    kind: 'fault',
    family,
    component: 'unit-earth',
    parameters: [],
    source: 'BS 7671:2018+A2:2022 411.3.1.1',
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    change: (parts) => withOpen(parts, 'case'),
  },
  {
    id: 'earthing-conductor-loose',
    kind: 'fault',
    family,
    component: 'earthing',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.5, max: 20, default: 2 }],
    source: 'BS 7671:2018+A2:2022 526.1, 411.3.1.1',
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    impossible: unless(({ site }) => site.earthing !== 'TT', 'no-earthing-conductor'),
    change: (parts, { ohms = 0 }) => withMore(parts, 'earthing', ohms),
  },
  {
    id: 'open-pen-pole-worn',
    kind: 'fault',
    family,
    component: 'unit-earth',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.3, max: 3, default: 0.8 }],
    source: 'BS 7671:2018+A2:2022 643.2.1',
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: openPenOnly,
    change: (parts, { ohms = 0 }) => withMore(parts, 'unit.PE', ohms),
  },
  {
    id: 'electrode-poor',
    kind: 'fault',
    family,
    component: 'earthing',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 250, max: 2000, default: 600 }],
    source: 'BS 7671:2018+A2:2022 Table 41.5 note: above 200 Ω it may not be stable',
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    impossible: ttOnly,
    change: (parts, { ohms = 0 }) => withPart(parts, 'electrode', (part) => ({ ...part, resistance: ohms })),
  },
  {
    id: 'electrode-clamp',
    kind: 'fault',
    family,
    component: 'earthing',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 200, max: 5000, default: 900 }],
    source: 'BS 7671:2018+A2:2022 542.3.2 (from memory): a sound connection to the electrode',
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    impossible: ttOnly,
    change: (parts, { ohms = 0 }) =>
      withVisible(withMore(parts, 'electrode.conductor', ohms), 'terminals', { id: 'clamp-corroded' }),
  },
  {
    id: 'earths-joined',
    kind: 'fault',
    family,
    component: 'earthing',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.1, max: 1, default: 0.3 }],
    source: 'BS 7671:2018+A2:2022 411.3.1.1: what can be touched together belongs to one earth',
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
    impossible: ttOnly,
    change: (parts, { ohms = 0 }) => ({
      ...parts,
      parts: [...parts.parts, { id: 'earths.joined', a: 'service.N', b: 'bar', resistance: ohms }],
    }),
  },
];
