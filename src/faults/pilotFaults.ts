/** Faults of the pilot’s source, levels and conductor. Ranges are trade judgement (common practice, no source). */
import type { Fault } from './fault.ts';
import { LOCK_OFF, TELL_MAKER } from './fault.ts';
import type { Parts } from './parts.ts';
import { withDesign, withMore, withOpen, withPart } from './parts.ts';

const frame = {
  kind: 'fault',
  family: 'pilot',
  component: 'pilot',
  next: LOCK_OFF,
  tell: TELL_MAKER,
} as const;

const withPilot = (parts: Parts, change: Partial<Parts['design']['pilot']>): Parts =>
  withDesign(parts, { pilot: { ...parts.design.pilot, ...change } });

const withSource = (parts: Parts, ohms: number): Parts =>
  withPart(parts, 'pilot.source', (part) => ({ ...part, resistance: ohms }));

const acrossPilot = (parts: Parts, ohms: number): Parts =>
  withPart(parts, 'insulation.cable.PE-CP', (part) => ({ ...part, resistance: ohms }));

export const pilotFaults: readonly Fault[] = [
  {
    ...frame,
    // IEC 61851-1:2017 Table A.2: 1 kΩ ± 3 %.
    id: 'pilot-source-high',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 1300, max: 2000, default: 1500 }],
    change: (parts, { ohms = 0 }) => withSource(parts, ohms),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.2: 1 kΩ ± 3 %.
    id: 'pilot-source-low',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 500, max: 750, default: 650 }],
    change: (parts, { ohms = 0 }) => withSource(parts, ohms),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.2: 12 V ± 5 %.
    id: 'pilot-high-half-weak',
    parameters: [{ name: 'volts', unit: 'V', min: 9.5, max: 11.2, default: 10.8 }],
    change: (parts, { volts = 0 }) => withPilot(parts, { positive: volts }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.2: 12 V ± 5 %.
    id: 'pilot-high-half-strong',
    parameters: [{ name: 'volts', unit: 'V', min: 12.8, max: 15, default: 13.4 }],
    change: (parts, { volts = 0 }) => withPilot(parts, { positive: volts }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.2: −12 V ± 5 %.
    id: 'pilot-low-half-weak',
    parameters: [{ name: 'volts', unit: 'V', min: -11.2, max: -8, default: -10.2 }],
    change: (parts, { volts = 0 }) => withPilot(parts, { negative: volts }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.2: 1000 Hz ± 2 %.
    id: 'pilot-frequency',
    parameters: [{ name: 'hertz', unit: 'Hz', min: 900, max: 975, default: 950 }],
    change: (parts, { hertz = 0 }) => withPilot(parts, { frequency: hertz }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 A.3, Table A.6 sequence 3.1.
    id: 'pilot-steady',
    parameters: [],
    change: (parts) => withPilot(parts, { negative: parts.design.pilot.positive }),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Tables A.4 and A.10.
    id: 'pilot-conductor-open',
    parameters: [],
    change: (parts) => withOpen(parts, 'pilot.conductor'),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.10.
    id: 'pilot-contact-dirty',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 300, max: 2000, default: 500 }],
    change: (parts, { ohms = 0 }) => withMore(parts, 'pilot.conductor', ohms),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Table A.10.
    id: 'pilot-damp',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 2000, max: 12_000, default: 8000 }],
    change: (parts, { ohms = 0 }) =>
      parts.design.sheet.outlet === 'tethered'
        ? acrossPilot(parts, ohms)
        : withPart(parts, 'insulation.outlet.PE-CP', (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Tables A.4 and A.10.
    id: 'pilot-shorted',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.1, max: 50, default: 1 }],
    change: (parts, { ohms = 0 }) =>
      parts.design.sheet.outlet === 'tethered'
        ? acrossPilot(parts, ohms)
        : withPart(parts, 'insulation.outlet.PE-CP', (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...frame,
    // IEC 61851-1:2017 Tables A.4 and A.10.
    id: 'dummy-left-on-pilot',
    parameters: [],
    change: (parts) => ({
      ...parts,
      parts: [
        ...parts.parts,
        { id: 'dummy', a: 'pilot', b: 'dummy', resistance: 2740 },
        { id: 'dummy.diode', a: 'dummy', b: 'bar', resistance: 1e9 },
      ],
      oneWays: [...parts.oneWays, { id: 'dummy.diode', a: 'dummy', b: 'bar', drop: 0.7 }],
    }),
  },
];
