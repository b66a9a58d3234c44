/** Faults of insulation, and of what is there to give way. Ranges are trade judgement (common practice, no source). */
import type { Fault } from './fault.ts';
import {
  LINE,
  LOCK_OFF,
  lineOf,
  noSuchLine,
  PUT_RIGHT,
  TELL_INSTALLER,
  TELL_MAKER,
  tetheredOnly,
  unless,
} from './fault.ts';
import { withPart } from './parts.ts';

const frame = { kind: 'fault', family: 'insulation' } as const;
const inCircuit = { ...frame, component: 'circuit', next: PUT_RIGHT, tell: TELL_INSTALLER } as const;
const inUnit = { ...frame, next: LOCK_OFF, tell: TELL_MAKER } as const;

/** Twice the resistance in half an hour, in steps of five minutes. Common practice, no source: hours until it is dry. */
const DRIES = { every: 300, times: 1.122 } as const;

export const insulationFaults: readonly Fault[] = [
  {
    ...inCircuit,
    // BS 7671:2018+A2:2022 643.3.2, Table 64.
    id: 'line-pe-insulation-low',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 20_000, max: 900_000, default: 300_000 }],
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'insulation.circuit.L1-PE', (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...inCircuit,
    // BS 7671:2018+A2:2022 643.3.2, Table 64.
    id: 'neutral-pe-insulation-low',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 50, max: 500_000, default: 40_000 }],
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'insulation.circuit.N-PE', (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...inCircuit,
    // BS 7671:2018+A2:2022 643.3.2, Table 64.
    id: 'line-neutral-insulation-low',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 20_000, max: 900_000, default: 150_000 }],
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'insulation.circuit.L1-N', (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...inCircuit,
    // BS 7671:2018+A2:2022 643.3.2, Table 64: at 500 V.
    id: 'flash-over-under-lug',
    parameters: [{ name: 'volts', unit: 'V', min: 360, max: 480, default: 400 }],
    // Over the mains' own peak: nothing jumps it in service as yet.
    change: (parts, { volts = 0 }) => ({
      ...parts,
      oneWays: [
        ...parts.oneWays,
        { id: 'gap.L1+', a: 'supply.L1', b: 'supply.PE', drop: volts },
        { id: 'gap.L1-', a: 'supply.PE', b: 'supply.L1', drop: volts },
      ],
    }),
  },
  {
    ...inUnit,
    // BS 7671:2018+A2:2022 643.3.3, Table 64.
    id: 'outlet-neutral-earth-joined',
    component: 'outlet',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.5, max: 50, default: 5 }],
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'insulation.outlet.N-PE', (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...inUnit,
    // BS 7671:2018+A2:2022 643.3.3, Table 64.
    id: 'water-in-connector',
    component: 'outlet',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 20_000, max: 400_000, default: 60_000 }],
    impossible: tetheredOnly,
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'insulation.cable.L1-PE', (part) => ({
        ...part,
        resistance: ohms,
        dries: { ...DRIES, to: part.resistance },
      })),
  },
  {
    ...inUnit,
    // BS 7671:2018+A2:2022 643.3.3, Table 64.
    id: 'condensation',
    component: 'enclosure',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 100_000, max: 500_000, default: 300_000 }],
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'filter.L1', (part) => ({
        ...part,
        resistance: ohms,
        dries: { ...DRIES, to: part.resistance },
      })),
  },
  {
    ...inUnit,
    // BS 7671:2018+A2:2022 643.3.3, Table 64.
    id: 'outlet-insulation-low',
    component: 'outlet',
    parameters: [LINE, { name: 'ohms', unit: 'Ω', min: 20_000, max: 900_000, default: 200_000 }],
    impossible: noSuchLine,
    change: (parts, { ohms = 0, ...line }) =>
      withPart(parts, `insulation.outlet.${lineOf(line)}-PE`, (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...inUnit,
    // BS 7671:2018+A2:2022 643.3.3, Table 64.
    id: 'tether-insulation-moves',
    component: 'outlet',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 20_000, max: 900_000, default: 80_000 }],
    impossible: tetheredOnly,
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'insulation.cable.L1-PE', (part) => ({
        ...part,
        contact: 'unflexed',
        openResistance: ohms,
      })),
  },
  {
    ...inUnit,
    // BS 7671:2018+A2:2022 643.3.3, Table 64.
    id: 'arrester-aged',
    component: 'arrester',
    parameters: [{ name: 'volts', unit: 'V', min: 60, max: 200, default: 150 }],
    impossible: unless(({ sheet }) => sheet.surgeArrester, 'no-arrester'),
    change: (parts, { volts = 0 }) => ({
      ...parts,
      oneWays: parts.oneWays.map((part) =>
        part.id === 'arrester.L1+' || part.id === 'arrester.L1-' ? { ...part, drop: volts } : part,
      ),
    }),
  },
];
