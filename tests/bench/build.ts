/*
 * Builds benches for the tests: a usual site and sheet, changed where a test says so, and the shortest way to do
 * operations on them. Judges nothing.
 */

import { assemble } from '../../src/bench/assemble.ts';
import { drawer } from '../../src/bench/draw.ts';
import { type OperationInput, operation } from '../../src/bench/operation.ts';
import { type Outcome, perform } from '../../src/bench/perform.ts';
import type { AnyReading } from '../../src/bench/reading.ts';
import type { World } from '../../src/bench/world.ts';
import { asTold, type FaultChoice } from '../../src/faults/catalogue.ts';
import type { Parts } from '../../src/faults/parts.ts';
import { soundParts } from '../../src/faults/parts.ts';
import type { Circuit, Site } from '../../src/site/site.ts';
import type { UnitDesign, UnitSheet } from '../../src/unit/design.ts';
import { soundDesign } from '../../src/unit/design.ts';

/** A Tuesday outside the default peak hours. */
export const MIDDAY = '2026-03-10T12:00';

/** One phase, TN-C-S, 18 m of 6 mm² behind a B40. */
export const SITE: Site = {
  phases: 1,
  earthing: 'TN-C-S',
  voltage: 236,
  loopImpedance: 0.22,
  neutralImpedance: 0.22,
  electrodeResistance: null,
  sourceElectrodeResistance: 0.5,
  metEarthResistance: null,
  circuit: {
    length: 18,
    lineArea: 6,
    protectiveArea: 6,
    method: 'C',
    ambient: 30,
    grouped: 1,
    insulated: 0,
    breaker: { type: 'B', rating: 40, breakingCapacity: 6000, poles: 2 },
    conditionalRating: null,
    residualDevice: null,
    points: 1,
    faultProtection: 'overcurrent',
    parallelEarth: null,
  },
  service: null,
  otherLoads: [{ line: 'L1', power: 1500 }],
  neighbours: [],
};

/** A tethered unit of 32 A with its own type A device on the contactor and a protective d.c. detector. */
export const SHEET: UnitSheet = {
  outlet: 'tethered',
  ratedCurrent: 32,
  setCurrent: 32,
  cable: { length: 5, area: 6, coding: 32 },
  residual: { type: 'A', rated: 0.03, by: 'contactor', direct: 'protective' },
  openPen: 'none',
  openPenRidesOut: true,
  openPenUnpowered: 'closed',
  surgeArrester: false,
  ventilation: false,
  insulationTestVoltageMax: 250,
  startUp: 8,
  startDelay: 0,
  permission: 'open',
  authoriseBefore: false,
  loadLimit: null,
  serviceLimit: null,
  leastVoltage: null,
  schedule: null,
  hoursEnd: 'at-once',
  overCode: { margin: 0.1, seconds: 5 },
  holdInB: true,
  diodeCheck: 'before-closing',
  poleBleed: null,
  lostLine: 'stops',
  clearsBy: {
    E: 'state-A',
    F: 'reset',
    diode: 'reset',
    residual: 'reset',
    direct: 'reset',
    openPen: 'reset',
  },
};

export interface Wanted {
  readonly site?: Partial<Omit<Site, 'circuit'>> & { readonly circuit?: Partial<Circuit> };
  readonly sheet?: Partial<UnitSheet>;
  readonly faults?: readonly FaultChoice[];
  readonly design?: Partial<UnitDesign>;
  /** A change of the parts, before any fault is brought in. */
  readonly parts?: (parts: Parts) => Parts;
  readonly seed?: number;
}

export const siteOf = ({ circuit, ...change }: NonNullable<Wanted['site']> = {}): Site => ({
  ...SITE,
  ...change,
  circuit: { ...SITE.circuit, ...circuit },
});

/** Three phases, with a breaker of four poles. */
export const THREE_PHASE: NonNullable<Wanted['site']> = {
  phases: 3,
  earthing: 'TN-S',
  circuit: { breaker: { type: 'C', rating: 40, breakingCapacity: 10_000, poles: 4 } },
};

export const designOf = (sheet: Partial<UnitSheet> = {}, seed = 7): UnitDesign =>
  soundDesign({ ...SHEET, ...sheet }, drawer(seed));

export function benchWith({
  site,
  sheet,
  faults = [],
  design,
  parts = (p) => p,
  seed = 7,
}: Wanted = {}): World {
  const told = asTold({ site: siteOf(site), sheet: { ...SHEET, ...sheet } }, faults);
  const sound = soundParts(told.site, { ...soundDesign(told.sheet, drawer(seed)), ...design });
  return assemble(parts(sound), faults, seed, MIDDAY);
}

/** Does operations one after another. */
export const doing = (world: World, ...inputs: readonly OperationInput[]): readonly Outcome[] =>
  inputs.map((input) => perform(world, operation(input)));

/** Does one operation that gives one reading. */
export function read(world: World, input: OperationInput): AnyReading {
  const [reading] = perform(world, operation(input)).readings;
  if (reading === undefined) throw new Error(`no reading from ${JSON.stringify(input)}`);
  return reading;
}

export const PLUG_IN: readonly OperationInput[] = [
  { op: 'vehicle', plugged: true, state: 'B' },
  { op: 'wait', seconds: 2 },
];
/** Plugged in, offered, asking and supplied. */
export const CHARGE: readonly OperationInput[] = [
  ...PLUG_IN,
  { op: 'vehicle', state: 'C' },
  { op: 'wait', seconds: 3 },
];
/** Isolated, proved dead, cover off. */
export const MAKE_DEAD: readonly OperationInput[] = [
  { op: 'isolate' },
  { op: 'wait', seconds: 2 },
  { op: 'prove-dead', at: 'origin' },
  { op: 'open-cover' },
  { op: 'prove-dead', at: 'supply' },
];
