/**
 * Every fault and not-fault, and how a list of them from a scenario is brought onto an installation. Adding one is
 * an entry in its family's file; no other code knows an id.
 */
import type { UnitSheet } from '../unit/design.ts';
import type { CatalogueEntry, Fault, NotFault, Values } from './fault.ts';
import { insulationFaults } from './insulationFaults.ts';
import { notFaults } from './notFaults.ts';
import type { Parts } from './parts.ts';
import { pilotFaults } from './pilotFaults.ts';
import { protectiveConductorFaults } from './protectiveConductor.ts';
import { residualDirectFaults } from './residualDirect.ts';
import { switchingFaults } from './switching.ts';

export const CATALOGUE: readonly CatalogueEntry[] = [
  ...protectiveConductorFaults,
  ...switchingFaults,
  ...pilotFaults,
  ...residualDirectFaults,
  ...insulationFaults,
  ...notFaults,
];

/** A fault with its parameters, as a scenario names it. */
export interface FaultChoice {
  readonly fault: string;
  readonly values: Values;
}

export const entryNamed = (id: string): CatalogueEntry | undefined =>
  CATALOGUE.find((entry) => entry.id === id);

const isFault = (entry: CatalogueEntry | undefined): entry is Fault => entry?.kind === 'fault';
const isNotFault = (entry: CatalogueEntry | undefined): entry is NotFault => entry?.kind === 'not-fault';

/** Parameters with the defaults of those left out. */
export const withDefaults = (entry: CatalogueEntry, values: Values): Values => ({
  ...Object.fromEntries(entry.parameters.map((p) => [p.name, p.default])),
  ...values,
});

/** The faults among the choices, not-faults left out. */
export const faultsAmong = (choices: readonly FaultChoice[]): readonly Fault[] =>
  choices.map(({ fault }) => entryNamed(fault)).filter(isFault);

/** The sheet as the trainee reads it: not-faults are told there. */
export const toldOnSheet = (sheet: UnitSheet, choices: readonly FaultChoice[]): UnitSheet =>
  choices.reduce((told, { fault, values }) => {
    const entry = entryNamed(fault);
    return isNotFault(entry) ? entry.alter(told, withDefaults(entry, values)) : told;
  }, sheet);

/** The installation with every fault brought in, in the order named. */
export const withFaults = (parts: Parts, choices: readonly FaultChoice[]): Parts =>
  choices.reduce((changed, { fault, values }) => {
    const entry = entryNamed(fault);
    return isFault(entry) ? entry.change(changed, withDefaults(entry, values)) : changed;
  }, parts);
