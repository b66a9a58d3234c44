/** Faults of insulation, and of what is there to give way. Ranges are trade judgement (common practice, no source). */
import type { Fault } from './fault.ts';
import {
  LINE,
  LOCK_OFF,
  lineOf,
  noSuchLine,
  PRACTICE,
  PUT_RIGHT,
  TELL_INSTALLER,
  TELL_MAKER,
  tetheredOnly,
  unless,
} from './fault.ts';
import { withPart } from './parts.ts';

const frame = { kind: 'fault', family: 'insulation', source: PRACTICE } as const;
const inCircuit = { ...frame, component: 'circuit', next: PUT_RIGHT, tell: TELL_INSTALLER } as const;
const inUnit = { ...frame, next: LOCK_OFF, tell: TELL_MAKER } as const;

export const insulationFaults: readonly Fault[] = [
  {
    ...inCircuit,
    id: 'line-pe-insulation-low',
    title: 'Low insulation from line to PE in the circuit’s cable',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 20_000, max: 900_000, default: 300_000 }],
    where: 'the cable between origin and unit, L1 to PE',
    cause: 'A nail or a staple, or a crushed cable.',
    hazard: 'Shock and fire; it gets worse with damp and time.',
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'insulation.circuit.L1-PE', (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...inCircuit,
    id: 'neutral-pe-insulation-low',
    title: 'Low insulation from neutral to PE in the circuit’s cable',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 50, max: 500_000, default: 40_000 }],
    where: 'the cable between origin and unit, N to PE',
    cause: 'A nail or a staple, or a crushed cable.',
    hazard: 'Current strays into the protective conductor; residual devices are disturbed.',
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'insulation.circuit.N-PE', (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...inCircuit,
    id: 'line-neutral-insulation-low',
    title: 'Low insulation from line to neutral in the circuit’s cable',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 20_000, max: 900_000, default: 150_000 }],
    where: 'the cable between origin and unit, L1 to N',
    cause: 'A crushed cable, or a damp box on the way.',
    hazard: 'Fire: no residual device sees it.',
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'insulation.circuit.L1-N', (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...inUnit,
    id: 'outlet-insulation-low',
    title: 'Low insulation from line to PE at the outlet',
    component: 'outlet',
    parameters: [LINE, { name: 'ohms', unit: 'Ω', min: 20_000, max: 900_000, default: 200_000 }],
    where: 'the outlet or its cable, behind the contactor',
    cause: 'It was driven over, or water stands in it.',
    hazard: 'Shock, as soon as it is supplied.',
    impossible: noSuchLine,
    change: (parts, { ohms = 0, ...line }) =>
      withPart(parts, `insulation.outlet.${lineOf(line)}-PE`, (part) => ({ ...part, resistance: ohms })),
  },
  {
    ...inUnit,
    id: 'tether-insulation-moves',
    title: 'Tether’s insulation gives way when it is bent',
    component: 'outlet',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 20_000, max: 900_000, default: 80_000 }],
    where: 'the tether, L1 to PE, where it enters the connector',
    cause: 'The core’s insulation has cracked.',
    hazard: 'Shock, as soon as it is supplied and moved.',
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
    id: 'arrester-aged',
    title: 'Surge arrester has aged',
    component: 'arrester',
    parameters: [{ name: 'volts', unit: 'V', min: 60, max: 200, default: 150 }],
    where: 'the arrester on L1 in the unit: the voltage from which it conducts',
    cause: 'Surges have worn it.',
    hazard: 'It heats, and may burn.',
    impossible: unless(({ sheet }) => sheet.surgeArrester, 'this unit has no arrester'),
    change: (parts, { volts = 0 }) => ({
      ...parts,
      oneWays: parts.oneWays.map((part) =>
        part.id === 'arrester.L1+' || part.id === 'arrester.L1-' ? { ...part, drop: volts } : part,
      ),
    }),
  },
];
