/**
 * Faults of the protective conductor, which runs in pieces: earthing terminal–board, board–unit, unit, outlet.
 * Ranges are trade judgement (common practice, no source).
 */
import { OPEN } from '../site/part.ts';
import type { Fault } from './fault.ts';
import { withPart } from './parts.ts';

const open = { resistance: OPEN } as const;

export const protectiveConductorFaults: readonly Fault[] = [
  {
    id: 'pe-not-landed',
    kind: 'fault',
    title: 'Circuit’s protective conductor not connected',
    family: 'protective-conductor',
    parameters: [],
    where: 'between the board’s earth bar and the unit’s PE terminal',
    cause: 'The core was left folded back, or missed at the bar.',
    hazard:
      'Case and vehicle are unearthed, and no residual device sees a fault until somebody touches them.',
    source: 'common practice, no source',
    next: 'isolate, lock off and label',
    tell: ['the client', 'whoever installed the circuit'],
    change: (parts) => withPart(parts, 'circuit.PE', (part) => ({ ...part, ...open })),
  },
  {
    id: 'pe-joint',
    kind: 'fault',
    title: 'Poor joint in the circuit’s protective conductor',
    family: 'protective-conductor',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.3, max: 20, default: 1.8 }],
    where: 'the PE terminal on the supply side of the unit',
    cause: 'The screw is on the insulation, or was not tightened.',
    hazard: 'Heat in the joint, and touch voltage while a fault is cleared too late.',
    source: 'common practice, no source',
    next: 'put right and repeat the tests it may have touched',
    tell: ['whoever installed the circuit', 'the client'],
    change: (parts, { ohms = 0 }) =>
      withPart(parts, 'circuit.PE', (part) => ({ ...part, resistance: part.resistance + ohms })),
  },
  {
    id: 'outlet-pe-open',
    kind: 'fault',
    title: 'Protective conductor open between unit and outlet',
    family: 'protective-conductor',
    parameters: [],
    where: 'between the unit’s PE bar and the outlet’s or tether’s PE contact',
    cause: 'A terminal inside the unit was not tightened, or the tether’s core has parted.',
    hazard: 'The unit finds no vehicle; whoever bypasses that leaves the vehicle unearthed.',
    source: 'common practice, no source',
    next: 'isolate, lock off and label',
    tell: ['the maker or supplier of the unit', 'the client'],
    change: (parts) => withPart(parts, 'outlet.PE', (part) => ({ ...part, ...open })),
  },
];
