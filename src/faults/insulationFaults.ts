/** Faults of insulation. */
import type { Fault } from './fault.ts';
import { withPart } from './parts.ts';

export const insulationFaults: readonly Fault[] = [
  {
    id: 'line-pe-insulation-low',
    kind: 'fault',
    title: 'Low insulation from line to PE in the circuit’s cable',
    family: 'insulation',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 20_000, max: 900_000, default: 300_000 }],
    where: 'the cable between origin and unit, L1 to PE',
    cause: 'A nail or a staple, or a crushed cable.',
    hazard: 'Shock and fire; it gets worse with damp and time.',
    source: 'common practice, no source',
    next: 'put right and repeat the tests it may have touched',
    tell: ['whoever installed the circuit', 'the client'],
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'insulation.circuit.L1-PE', (part) => ({ ...part, resistance: ohms })),
  },
];
