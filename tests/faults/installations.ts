/*
 * A few sound installations on which every entry of the catalogue can be shown: which one suits an entry, and which
 * test action shows it there. Judges nothing.
 */

import type { FaultChoice } from '../../src/faults/catalogue.ts';
import type { CatalogueEntry, Setting, Values } from '../../src/faults/fault.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import type { ResidualDevice } from '../../src/site/site.ts';
import type { UnitSheet } from '../../src/unit/design.ts';
import { THREE_PHASE, type Wanted } from '../bench/build.ts';
import { scenarioOf } from '../scenario/build.ts';

const thirty = (poles: number): ResidualDevice => ({ type: 'A', rated: 0.03, delay: 'general', poles });
/** The a.c. device stands at the origin; the unit has the d.c. detector alone. */
const AT_THE_ORIGIN: UnitSheet['residual'] = { type: null, rated: null, by: null, direct: 'monitoring' };
/** A loop low enough that a long customer's cable does not fail the site. */
const yard: NonNullable<Wanted['site']> = { ...THREE_PHASE, loopImpedance: 0.08, neutralImpedance: 0.08 };

export const INSTALLATIONS = {
  /** One phase, TN-C-S, tethered, all in the unit. */
  home: { sheet: { openPen: 'voltage-window', surgeArrester: true } },
  /** One phase, TN-S, tethered, with a sensor on the service. */
  dairy: {
    site: { earthing: 'TN-S', loopImpedance: 0.3, neutralImpedance: 0.28, metEarthResistance: 20 },
    sheet: { serviceLimit: 60 },
  },
  /** Three phases, TN-S, socket-outlet. */
  yard: { site: yard, sheet: { outlet: 'socket' } },
  /** The same, with a customer's cable of 20 A. */
  yard20: { site: yard, sheet: { outlet: 'socket', cable: { length: 5, area: 4, coding: 20 } } },
  /** Three phases, TN-S, socket-outlet, the 30 mA device at the board. */
  board: {
    site: { ...yard, circuit: { ...THREE_PHASE.circuit, residualDevice: thirty(4) } },
    sheet: { outlet: 'socket', residual: AT_THE_ORIGIN },
  },
  /** One phase, TT, tethered, the 30 mA device at the origin. */
  rod: {
    site: {
      earthing: 'TT',
      electrodeResistance: 80,
      loopImpedance: 80.625,
      neutralImpedance: 0.25,
      circuit: { residualDevice: thirty(2) },
    },
    sheet: { residual: AT_THE_ORIGIN },
  },
  /** The same on an electrode of its own, at a house on PME whose water pipe is bonded. */
  island: {
    site: {
      earthing: 'TT',
      house: { metEarthResistance: 30 },
      electrodeResistance: 70,
      loopImpedance: 70.61,
      neutralImpedance: 0.22,
      circuit: { residualDevice: thirty(2) },
    },
    sheet: { residual: AT_THE_ORIGIN },
  },
  /** One phase, TN-C-S, tethered, on one service with another charging point, whose current its sensor feels. */
  pair: {
    site: {
      loopImpedance: 0.16,
      neutralImpedance: 0.16,
      service: { rating: 60, demand: 20 },
      nextPoint: { ratedCurrent: 32, draws: 0 },
    },
    sheet: { openPen: 'voltage-window', serviceLimit: 60 },
  },
} as const satisfies Record<string, Wanted>;
export type InstallationName = keyof typeof INSTALLATIONS;
export const INSTALLATION_NAMES = Object.keys(INSTALLATIONS) as readonly InstallationName[];

export const scenarioOn = (name: InstallationName, faults: readonly FaultChoice[] = []): Scenario =>
  scenarioOf({ ...(INSTALLATIONS[name] as Wanted), faults });

export const settingOn = (name: InstallationName): Setting => {
  const { site, unit } = scenarioOn(name);
  return { site, sheet: unit };
};

/** Every parameter at the least, usual and greatest value. */
export const settingsOf = ({ parameters }: CatalogueEntry): readonly (readonly [string, Values])[] =>
  parameters.length === 0
    ? [['as it is', {}]]
    : (['min', 'default', 'max'] as const).map((end) => [
        end,
        Object.fromEntries(parameters.map((parameter) => [parameter.name, parameter[end]])),
      ]);
