/**
 * The three installations that the comparison with the circuit simulator goes over, one for each kind of site, and the
 * shape of one bench: what is done on the simulated bench, and where that leaves everything, said by hand.
 */
import { move } from '../../src/bench/settle.ts';
import type { World } from '../../src/bench/world.ts';
import type { FaultChoice } from '../../src/faults/catalogue.ts';
import type { Site } from '../../src/site/site.ts';
import type { UnitSheet } from '../../src/unit/design.ts';
import { benchWith, doing, SHEET } from '../bench/build.ts';
import type { Circuit, Position } from './benchCircuit.ts';
import { AT_REST, circuitOf } from './benchCircuit.ts';

export const INSTALLATIONS = ['home', 'yard', 'cottage', 'island'] as const;
export type InstallationName = (typeof INSTALLATIONS)[number];

interface Installation {
  readonly site: Site;
  readonly sheet: UnitSheet;
}

/** Clipped direct and alone; what no reading depends on. */
const LAID = {
  method: 'C',
  ambient: 30,
  grouped: 1,
  insulated: 0,
  conditionalRating: null,
  points: 1,
  faultProtection: 'overcurrent',
} as const;

/** A single-phase tethered unit on TN-C-S, with earth sensing and an arrester, beside a second point on its service. */
const HOME: Installation = {
  site: {
    phases: 1,
    earthing: 'TN-C-S',
    voltage: 236,
    loopImpedance: 0.22,
    neutralImpedance: 0.22,
    electrodeResistance: null,
    sourceElectrodeResistance: 0.5,
    metEarthResistance: 12,
    circuit: {
      length: 18,
      lineArea: 6,
      protectiveArea: 2.5,
      ...LAID,
      breaker: { type: 'B', rating: 40, breakingCapacity: 6000, poles: 1 },
      residualDevice: null,
      parallelEarth: null,
    },
    service: null,
    nextPoint: { ratedCurrent: 32, draws: 0 },
    otherLoads: [{ line: 'L1', power: 1500 }],
    neighbours: [],
  },
  sheet: { ...SHEET, openPen: 'earth-sensing', surgeArrester: true },
};

/** A three-phase socket-outlet on TN-S, behind a delayed residual device, with an armour in parallel. */
const YARD: Installation = {
  site: {
    phases: 3,
    earthing: 'TN-S',
    voltage: 238,
    loopImpedance: 0.15,
    neutralImpedance: 0.14,
    electrodeResistance: null,
    sourceElectrodeResistance: 0.5,
    metEarthResistance: null,
    circuit: {
      length: 32,
      lineArea: 10,
      protectiveArea: 4,
      ...LAID,
      breaker: { type: 'C', rating: 40, breakingCapacity: 10_000, poles: 4 },
      residualDevice: { type: 'A', rated: 0.1, delay: 'S', poles: 4 },
      parallelEarth: 1.5,
    },
    service: null,
    nextPoint: { ratedCurrent: 16, draws: 0 },
    otherLoads: [
      { line: 'L1', power: 3200 },
      { line: 'L2', power: 2400 },
      { line: 'L3', power: 4100 },
    ],
    neighbours: [],
  },
  sheet: { ...SHEET, outlet: 'socket', cable: { length: 6, area: 6, coding: 32 } },
};

/** A single-phase tethered unit on TT, with a bleed across its poles and ventilation declared. */
const COTTAGE: Installation = {
  site: {
    phases: 1,
    earthing: 'TT',
    voltage: 240,
    loopImpedance: 52.65,
    neutralImpedance: 0.3,
    electrodeResistance: 52,
    sourceElectrodeResistance: 0.5,
    metEarthResistance: 900,
    circuit: {
      length: 14,
      lineArea: 6,
      protectiveArea: 6,
      ...LAID,
      breaker: { type: 'B', rating: 40, breakingCapacity: 6000, poles: 2 },
      residualDevice: null,
      parallelEarth: null,
    },
    service: null,
    otherLoads: [{ line: 'L1', power: 1300 }],
    neighbours: [],
  },
  sheet: { ...SHEET, poleBleed: 470_000, ventilation: true },
};

/** The same on an electrode of its own at a house on PME, whose pipes are bonded. */
const ISLAND: Installation = {
  ...COTTAGE,
  site: {
    ...COTTAGE.site,
    house: { metEarthResistance: 25 },
    loopImpedance: 64.65,
    electrodeResistance: 64,
    metEarthResistance: null,
    // A long armoured run.
    circuit: { ...COTTAGE.site.circuit, length: 70, capacitance: 150e-12 },
  },
};

const BY_NAME: Readonly<Record<InstallationName, Installation>> = {
  home: HOME,
  yard: YARD,
  cottage: COTTAGE,
  island: ISLAND,
};

export interface Bench {
  readonly name: string;
  readonly at: InstallationName;
  readonly faults?: readonly FaultChoice[];
  /** What is done on the simulated bench. */
  readonly bring: (world: World) => void;
  /** Where that leaves everything, as far as it is not at rest. */
  readonly position: Partial<Position>;
  /** What the faults alter in the drawn circuit. */
  readonly altered?: (circuit: Circuit) => void;
}

/** The simulated bench, with its own faults or with others. The pilot's levels are not left to the draw. */
export function worldOf({ at, faults = [], bring }: Bench, others: readonly FaultChoice[] = faults): World {
  const { site, sheet } = BY_NAME[at];
  const pilot = { positive: 12, negative: -12, frequency: 1000 };
  const world = benchWith({ site, sheet, faults: others, design: { pilot } });
  bring(world);
  return world;
}

/** The same bench as a drawn circuit. */
export function drawingOf({ at, position, altered }: Bench): Circuit {
  const { site, sheet } = BY_NAME[at];
  const circuit = circuitOf(site, sheet, { ...AT_REST, ...position });
  altered?.(circuit);
  return circuit;
}

/** A fault as a bench names it. */
export const fault = (id: string, values: FaultChoice['values'] = {}): FaultChoice => ({ fault: id, values });

/** Operations as a bench's `bring`. */
export const done =
  (...inputs: Parameters<typeof doing>[1][]): Bench['bring'] =>
  (world) => {
    doing(world, ...inputs);
  };

/** The same, and then a test in the outlet that lasts. */
export const tested =
  (test: NonNullable<World['plant']['test']>, ...inputs: Parameters<typeof doing>[1][]): Bench['bring'] =>
  (world) => {
    doing(world, ...inputs);
    move(world, { test });
  };
