/** Faults of the pilot’s source, levels and conductor. Ranges are trade judgement (common practice, no source). */
import type { Fault } from './fault.ts';
import { LOCK_OFF, PRACTICE, TELL_MAKER } from './fault.ts';
import type { Parts } from './parts.ts';
import { withDesign, withMore, withOpen, withPart } from './parts.ts';

const frame = {
  kind: 'fault',
  family: 'pilot',
  component: 'pilot',
  source: PRACTICE,
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
    id: 'pilot-source-high',
    title: 'Pilot’s source resistance too high',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 1300, max: 2000, default: 1500 }],
    where: 'the pilot’s output inside the unit',
    cause: 'A wrong or aged part, or a poor joint on the unit’s side.',
    hazard: 'States are mistaken for each other.',
    source: 'IEC 61851-1:2017 Table A.2: 1 kΩ ± 3 %',
    change: (parts, { ohms = 0 }) => withSource(parts, ohms),
  },
  {
    ...frame,
    id: 'pilot-source-low',
    title: 'Pilot’s source resistance too low',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 500, max: 750, default: 650 }],
    where: 'the pilot’s output inside the unit',
    cause: 'A wrong part, or one of two in series shorted.',
    hazard: 'States are mistaken for each other.',
    source: 'IEC 61851-1:2017 Table A.2: 1 kΩ ± 3 %',
    change: (parts, { ohms = 0 }) => withSource(parts, ohms),
  },
  {
    ...frame,
    id: 'pilot-high-half-weak',
    title: 'Pilot’s positive level too low',
    parameters: [{ name: 'volts', unit: 'V', min: 9.5, max: 11.2, default: 10.8 }],
    where: 'the positive supply of the pilot',
    cause: 'A failing supply rail.',
    hazard: 'States are mistaken for each other.',
    source: 'IEC 61851-1:2017 Table A.2: 12 V ± 5 %',
    change: (parts, { volts = 0 }) => withPilot(parts, { positive: volts }),
  },
  {
    ...frame,
    id: 'pilot-high-half-strong',
    title: 'Pilot’s positive level too high',
    parameters: [{ name: 'volts', unit: 'V', min: 12.8, max: 15, default: 13.4 }],
    where: 'the positive supply of the pilot',
    cause: 'A failing regulator.',
    hazard: 'States are mistaken for each other.',
    source: 'IEC 61851-1:2017 Table A.2: 12 V ± 5 %',
    change: (parts, { volts = 0 }) => withPilot(parts, { positive: volts }),
  },
  {
    ...frame,
    id: 'pilot-low-half-weak',
    title: 'Pilot’s negative level too weak',
    parameters: [{ name: 'volts', unit: 'V', min: -11.2, max: -8, default: -10.2 }],
    where: 'the negative supply of the pilot',
    cause: 'A failing supply rail or driver.',
    hazard: 'The check of the vehicle’s diode fails, or means nothing.',
    source: 'IEC 61851-1:2017 Table A.2: −12 V ± 5 %',
    change: (parts, { volts = 0 }) => withPilot(parts, { negative: volts }),
  },
  {
    ...frame,
    id: 'pilot-frequency',
    title: 'Pilot oscillates at the wrong frequency',
    parameters: [{ name: 'hertz', unit: 'Hz', min: 900, max: 975, default: 950 }],
    where: 'the pilot’s oscillator',
    cause: 'A clock that has drifted.',
    hazard: 'None to people: a vehicle refuses beyond 5 %.',
    source: 'IEC 61851-1:2017 Table A.2: 1000 Hz ± 2 %',
    change: (parts, { hertz = 0 }) => withPilot(parts, { frequency: hertz }),
  },
  {
    ...frame,
    id: 'pilot-steady',
    title: 'Pilot never oscillates',
    parameters: [],
    where: 'the pilot’s output stage: both halves come from the positive supply',
    cause: 'One half of the output stage has failed.',
    hazard: 'None to people: the vehicle gets no offer.',
    change: (parts) => withPilot(parts, { negative: parts.design.pilot.positive }),
  },
  {
    ...frame,
    id: 'pilot-conductor-open',
    title: 'Pilot conductor open',
    parameters: [],
    where: 'between the unit and the outlet’s pilot contact',
    cause: 'A pin was pushed back.',
    hazard: 'None to people: the unit never finds a vehicle.',
    change: (parts) => withOpen(parts, 'pilot.conductor'),
  },
  {
    ...frame,
    id: 'pilot-contact-dirty',
    title: 'Resistance in the pilot conductor',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 300, max: 2000, default: 500 }],
    where: 'the outlet’s pilot contact',
    cause: 'Corrosion.',
    hazard: 'Supply drops out; unit and vehicle see different states.',
    change: (parts, { ohms = 0 }) => withMore(parts, 'pilot.conductor', ohms),
  },
  {
    ...frame,
    id: 'pilot-damp',
    title: 'Damp across the pilot',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 2000, max: 12_000, default: 8000 }],
    where: 'between pilot and PE at the far end of the cable, or at the socket-outlet',
    cause: 'Water in the connector.',
    hazard: 'The unit sees a vehicle that is not there, or misses one.',
    change: (parts, { ohms = 0 }) =>
      parts.design.sheet.outlet === 'tethered'
        ? acrossPilot(parts, ohms)
        : withPart(parts, 'insulation.outlet.PE-CP', (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...frame,
    id: 'pilot-shorted',
    title: 'Pilot shorted to PE',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.1, max: 50, default: 1 }],
    where: 'between pilot and PE at the outlet or in its cable',
    cause: 'A crushed cable, or a strand between two contacts.',
    hazard: 'None to people: the unit refuses.',
    change: (parts, { ohms = 0 }) =>
      parts.design.sheet.outlet === 'tethered'
        ? acrossPilot(parts, ohms)
        : withPart(parts, 'insulation.outlet.PE-CP', (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...frame,
    id: 'dummy-left-on-pilot',
    title: 'A dummy vehicle left on the pilot inside the unit',
    parameters: [],
    where: 'a resistor of 2.74 kΩ from the pilot to PE, inside the unit',
    cause: 'A jig was left in after commissioning.',
    hazard: 'The vehicle’s loss of PE goes unnoticed.',
    source: PRACTICE,
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
