/**
 * Every fault and not-fault, and how a list of them from a scenario is brought onto an installation. Adding one is
 * an entry in its family's file; no other code knows an id.
 */

import { COMPONENTS } from './components.ts';
import { controlFaults } from './controlFaults.ts';
import { designFaults } from './design.ts';
import type { CatalogueEntry, Fault, NotFault, Setting, Told, Values } from './fault.ts';
import type { Impossible, Never } from './impossible.ts';
import { insulationFaults } from './insulationFaults.ts';
import { mechanicalFaults } from './mechanical.ts';
import { notFaults } from './notFaults.ts';
import type { Parts } from './parts.ts';
import { penFaults } from './penFaults.ts';
import { pilotFaults } from './pilotFaults.ts';
import { protectiveConductorFaults } from './protectiveConductor.ts';
import { proximityRetentionFaults } from './proximityRetention.ts';
import { residualDirectFaults } from './residualDirect.ts';
import { supplyWiringFaults } from './supplyWiring.ts';
import { switchingFaults } from './switching.ts';
import { testerFaults } from './testerFaults.ts';

export const CATALOGUE: readonly CatalogueEntry[] = [
  ...protectiveConductorFaults,
  ...supplyWiringFaults,
  ...designFaults,
  ...penFaults,
  ...switchingFaults,
  ...pilotFaults,
  ...controlFaults,
  ...proximityRetentionFaults,
  ...residualDirectFaults,
  ...insulationFaults,
  ...mechanicalFaults,
  ...testerFaults,
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
const isDesign = (entry: CatalogueEntry | undefined): boolean => isFault(entry) && entry.alter !== undefined;
const isNotFault = (entry: CatalogueEntry | undefined): entry is NotFault => entry?.kind === 'not-fault';

/** Parameters with the defaults of those left out. */
export const withDefaults = (entry: CatalogueEntry, values: Values): Values => ({
  ...Object.fromEntries(entry.parameters.map((p) => [p.name, p.default])),
  ...values,
});

/** Why it cannot be on this installation with these values, or null. */
export const whyImpossible = (entry: CatalogueEntry, on: Setting, values: Values): Impossible | null =>
  entry.impossible?.(on, withDefaults(entry, values)) ?? null;

/** Why nobody can put this right on this installation, by its papers alone, whether it is there or not; else null. */
export const cannotBePutRight = (entry: CatalogueEntry, on: Setting): Never | null =>
  isDesign(entry)
    ? 'designers-to-alter'
    : COMPONENTS[entry.component] === 'not here'
      ? 'distributors'
      : whyImpossible(entry, on, {});

/** The faults among the choices, not-faults left out. */
export const faultsAmong = (choices: readonly FaultChoice[]): readonly Fault[] =>
  choices.map(({ fault }) => entryNamed(fault)).filter(isFault);

/** The choices that are wrong designs: they stand in the papers. */
export const designsAmong = (choices: readonly FaultChoice[]): readonly FaultChoice[] =>
  choices.filter(({ fault }) => isDesign(entryNamed(fault)));

/** The papers as the trainee reads them: not-faults are told there, and wrong designs. */
export const asTold = (meant: Told, choices: readonly FaultChoice[]): Told =>
  choices.reduce((told, { fault, values }) => {
    const entry = entryNamed(fault);
    return entry?.alter?.(told, withDefaults(entry, values)) ?? told;
  }, meant);

/** The papers as they ought to be: not-faults alone are told there. */
export const asMeant = (meant: Told, choices: readonly FaultChoice[]): Told =>
  asTold(
    meant,
    choices.filter(({ fault }) => isNotFault(entryNamed(fault))),
  );

/** The installation with every fault brought in, in the order named. */
export const withFaults = (parts: Parts, choices: readonly FaultChoice[]): Parts =>
  choices.reduce((changed, { fault, values }) => {
    const entry = entryNamed(fault);
    return isFault(entry) ? entry.change(changed, withDefaults(entry, values)) : changed;
  }, parts);
