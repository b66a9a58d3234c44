/**
 * The vehicle stand-in: a plug coded as set, a diode and resistors on the pilot, a switch in its PE, loads and
 * leakage. Drawn as its circuit; its settings are data.
 */
import type { Line } from '../laws/conductors.ts';
import { VEHICLE } from '../laws/pilotLevels.ts';
import type { CableCoding } from '../laws/proximity.ts';
import type { Amps } from '../laws/quantities.ts';
import type { OneWayPart, Part } from '../site/part.ts';

export const VEHICLE_STATES = ['A', 'B', 'C', 'D'] as const;
export type VehicleState = (typeof VEHICLE_STATES)[number];

export interface Leakage {
  readonly ac: Amps;
  readonly dc: Amps;
  readonly line: Line;
}

export interface StandIn {
  readonly plugged: boolean;
  /** The load on the pilot; A is none, plugged or not. */
  readonly state: VehicleState;
  /** The resistor that the unit sees at its socket; null: none. */
  readonly coding: CableCoding | null;
  readonly pilot: 'sound' | 'shorted-to-earth' | 'open';
  readonly diode: 'sound' | 'shorted';
  readonly earth: 'sound' | 'open';
  /** A per line, drawn between line and neutral. */
  readonly load: Amps;
  readonly leakage: Leakage | null;
}

export const unpluggedStandIn = (coding: CableCoding): StandIn => ({
  plugged: false,
  state: 'A',
  coding,
  pilot: 'sound',
  diode: 'sound',
  earth: 'sound',
  load: 0,
  leakage: null,
});

const CONTACT = 0.001;

/** Nodes `car.PE`, `car.CP` and `car.R` (behind the diode); resistors nominal (IEC 61851-1:2017 Table A.3). */
export function standInParts(lines: readonly Line[]): readonly Part[] {
  return [
    { id: 'standin.PE', a: 'end.PE', b: 'car.PE', resistance: CONTACT, contact: 'standin.PE' },
    { id: 'standin.CP', a: 'end.CP', b: 'car.CP', resistance: CONTACT, contact: 'standin.CP' },
    { id: 'standin.short', a: 'car.CP', b: 'car.PE', resistance: CONTACT, contact: 'standin.short' },
    { id: 'standin.diode', a: 'car.CP', b: 'car.R', resistance: CONTACT, contact: 'standin.diode' },
    {
      id: 'standin.permanent',
      a: 'car.R',
      b: 'car.PE',
      resistance: VEHICLE.permanent,
      contact: 'standin.permanent',
    },
    {
      id: 'standin.C',
      a: 'car.R',
      b: 'car.PE',
      resistance: VEHICLE.stateC,
      contact: 'standin.C',
    },
    {
      id: 'standin.D',
      a: 'car.R',
      b: 'car.PE',
      resistance: VEHICLE.stateD,
      contact: 'standin.D',
    },
    // Loads and leakage: no path at all until set (plant.ts gives them their value).
    ...lines.map((x) => ({ id: `standin.load.${x}`, a: `end.${x}`, b: 'end.N', resistance: Infinity })),
    ...lines.map((x) => ({ id: `standin.leakage.${x}`, a: `end.${x}`, b: 'car.PE', resistance: Infinity })),
  ];
}

export const standInOneWays: readonly OneWayPart[] = [
  { id: 'standin.diode', a: 'car.CP', b: 'car.R', drop: VEHICLE.diodeDrop },
];

/** The stand-in's own contacts, and at which settings each is closed. */
export const standInContacts: readonly (readonly [string, (standIn: StandIn) => boolean])[] = [
  ['standin.PE', (s) => s.plugged && s.earth === 'sound'],
  ['standin.CP', (s) => s.plugged && s.pilot !== 'open'],
  ['standin.short', (s) => s.pilot === 'shorted-to-earth'],
  ['standin.diode', (s) => s.diode === 'shorted'],
  ['standin.permanent', (s) => s.state !== 'A'],
  ['standin.C', (s) => s.state === 'C'],
  ['standin.D', (s) => s.state === 'D'],
];
