/**
 * What an entry of the catalogue is. A fault changes parts, the design or one rule before the installation is
 * assembled; a not-fault changes the unit's sheet, so that the trainee can read of it. Neither ever touches a reading.
 */
import type { UnitSheet } from '../unit/design.ts';
import type { Family } from './families.ts';
import type { Parts } from './parts.ts';

export interface Parameter {
  readonly name: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly default: number;
}

export type Values = Readonly<Record<string, number>>;

/** What to do with a unit that has it, and whom to tell. */
export const NEXT_STEPS = [
  'hand over',
  'put right and repeat the tests it may have touched',
  'isolate, lock off and label',
] as const;
export type NextStep = (typeof NEXT_STEPS)[number];
export const TELL = [
  'the client',
  'whoever installed the circuit',
  'the maker or supplier of the unit',
  'the distributor',
] as const;
export type Tell = (typeof TELL)[number];

interface Entry {
  readonly id: string;
  readonly title: string;
  readonly family: Family;
  readonly parameters: readonly Parameter[];
  /** Where it sits, what brings it about, and who is at risk. */
  readonly where: string;
  readonly cause: string;
  readonly hazard: string;
  readonly source: string;
}

/** What decides whether a fault can be on an installation at all. */
export interface Setting {
  readonly phases: 1 | 3;
  readonly direct: UnitSheet['residual']['direct'];
}

export interface Fault extends Entry {
  readonly kind: 'fault';
  readonly next: NextStep;
  readonly tell: readonly Tell[];
  /** Why it cannot be on this installation, or null. */
  readonly impossible?: (on: Setting, values: Values) => string | null;
  readonly change: (parts: Parts, values: Values) => Parts;
}

export interface NotFault extends Entry {
  readonly kind: 'not-fault';
  readonly alter: (sheet: UnitSheet, values: Values) => UnitSheet;
}

export type CatalogueEntry = Fault | NotFault;
