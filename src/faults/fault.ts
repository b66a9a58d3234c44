/**
 * What an entry of the catalogue is. A fault changes parts, the unit's design or one rule before the installation is
 * assembled; a not-fault changes the papers, so that the trainee can read of it; a wrong design changes both. None ever
 * touches a reading.
 */
import type { Line } from '../laws/conductors.ts';
import type { Amps } from '../laws/quantities.ts';
import type { Designed } from '../site/design.ts';
import type { Site } from '../site/site.ts';
import type { Clearing, LatchReason, ResidualProtection, UnitSheet } from '../unit/design.ts';
import type { Component } from './components.ts';
import type { Family } from './families.ts';
import type { Impossible } from './impossible.ts';
import type { Parts } from './parts.ts';

export interface Parameter {
  readonly name: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly default: number;
}

export type Values = Readonly<Record<string, number>>;

/** What to do with a unit that has it, and whom to tell, by ids. */
export const NEXT_STEPS = ['hand-over', 'put-right-and-repeat', 'lock-off-and-label'] as const;
export type NextStep = (typeof NEXT_STEPS)[number];
export const TELL = ['client', 'installer', 'maker', 'distributor'] as const;
export type Tell = (typeof TELL)[number];

/**
 * A comment above the id says by which clause it is a fault, notFaultSources.ts by which it is none; most ranges and causes
 * are trade judgement whatever the clause.
 */
interface Entry {
  readonly id: string;
  readonly family: Family;
  /** What of the installation is remade or replaced when it is put right. */
  readonly component: Component;
  readonly parameters: readonly Parameter[];
  /** Why it cannot be on this installation, or null. */
  readonly impossible?: (on: Setting, values: Values) => Impossible | null;
}

/** What decides whether an entry can be on an installation at all: of a file's site and unit as of the papers. */
export interface Setting {
  readonly site: Designed &
    Pick<Site, 'service' | 'voltage' | 'otherLoads' | 'metEarthResistance' | 'house' | 'nextPoint'>;
  readonly sheet: Pick<
    UnitSheet,
    | 'outlet'
    | 'openPen'
    | 'surgeArrester'
    | 'ventilation'
    | 'lostLine'
    | 'serviceLimit'
    | 'loadLimit'
    | 'leastVoltage'
    | 'ratedCurrent'
  > & {
    readonly clearsBy: Readonly<Partial<Record<LatchReason, Clearing | 'restored' | undefined>>>;
    readonly setCurrent?: Amps | undefined;
    readonly residual: Pick<ResidualProtection, 'type' | 'direct'> & {
      readonly by?: ResidualProtection['by'] | undefined;
    };
  };
}

/** What the trainee may read. */
export interface Told {
  readonly site: Site;
  readonly sheet: UnitSheet;
}

export interface Fault extends Entry {
  readonly kind: 'fault';
  readonly next: NextStep;
  readonly tell: readonly Tell[];
  readonly change: (parts: Parts, values: Values) => Parts;
  /** Of a wrong design: what stands in the papers, by which it was built. The sound twin is built to the papers without it. */
  readonly alter?: (told: Told, values: Values) => Told;
}

export interface NotFault extends Entry {
  readonly kind: 'not-fault';
  readonly alter: (told: Told, values: Values) => Told;
}

export type CatalogueEntry = Fault | NotFault;

export const PUT_RIGHT = 'put-right-and-repeat' satisfies NextStep;
export const LOCK_OFF = 'lock-off-and-label' satisfies NextStep;
export const TELL_INSTALLER = ['installer', 'client'] as const;
export const TELL_MAKER = ['maker', 'client'] as const;
export const TELL_DISTRIBUTOR = ['distributor', 'client'] as const;

/** Which line a fault is on, as a number: 1, 2 or 3. */
export const LINE: Parameter = { name: 'line', unit: '', min: 1, max: 3, default: 1 };
export const lineOf = ({ line = 1 }: Values): Line => `L${line}` as Line;
export const noSuchLine = ({ site }: Setting, { line = 1 }: Values): Impossible | null =>
  !Number.isInteger(line) ? 'line-unknown' : line > site.phases ? 'line-absent' : null;

/** An entry that is possible only where this holds. */
export const unless =
  (possible: (on: Setting) => boolean, why: Impossible) =>
  (on: Setting): Impossible | null =>
    possible(on) ? null : why;

export const socketOnly = unless(({ sheet }) => sheet.outlet === 'socket', 'no-socket');
export const tetheredOnly = unless(({ sheet }) => sheet.outlet === 'tethered', 'no-tether');
export const ownDeviceOnly = unless(({ sheet }) => sheet.residual.type !== null, 'no-residual-device');
export const directOnly = unless(({ sheet }) => sheet.residual.direct !== null, 'no-direct-detector');
export const upstreamOnly = unless(({ site }) => site.circuit.residualDevice !== null, 'no-device-at-origin');
export const openPenOnly = unless(
  ({ site, sheet }) => site.earthing === 'TN-C-S' && sheet.openPen !== 'none',
  'no-open-pen-measure',
);
export const sensorOnly = unless(({ sheet }) => sheet.serviceLimit !== null, 'no-service-sensor');
export const nextPointOnly = unless(({ site }) => site.nextPoint !== undefined, 'no-next-point');
export const ttOnly = unless(({ site }) => site.earthing === 'TT', 'no-electrode');
export const islandOnly = unless(({ site }) => site.house !== undefined, 'no-second-earth');
export const penOnly = unless(({ site }) => site.earthing === 'TN-C-S', 'no-pen');
