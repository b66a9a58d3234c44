/**
 * The parts of one installation as a network of fixed topology, and its solution for a position of the plant.
 * Knows no time and no logic.
 */

import type { Parts } from '../faults/parts.ts';
import type { Volts } from '../laws/quantities.ts';
import type { Plan } from '../network/plan.ts';
import { plan as planOf } from '../network/plan.ts';
import { seenFrom } from '../network/port.ts';
import type { Emf, Injection, OneWay, Planes } from '../network/potentials.ts';
import { mainsPotentials, potentials } from '../network/potentials.ts';
import type { BranchValues, Reduced } from '../network/reduce.ts';
import { reduce } from '../network/reduce.ts';
import type { Topology } from '../network/topology.ts';
import type { OneWayPart, Part } from '../site/part.ts';
import { OPEN } from '../site/part.ts';
import { linesOf } from '../site/site.ts';
import { PROXIMITY_SOURCE } from '../unit/parts.ts';
import type { IsClosed, Plant, Setting, TestedPlace } from './plant.ts';
import { contactsOf, feltOf, settingOf } from './plant.ts';
import { standInOneWays, standInParts } from './standIn.ts';

/** A branch whose values depend on the position of the plant. */
interface Moving {
  readonly branch: number;
  readonly part: Part;
  readonly isClosed: IsClosed;
  readonly setting: Setting | null;
}

export interface Wiring {
  readonly parts: readonly Part[];
  readonly topology: Topology;
  readonly plan: Plan;
  /** Values of the branches that nothing moves, and the parts of all others. */
  readonly still: BranchValues;
  readonly moving: readonly Moving[];
  readonly nodeAt: (name: string) => number;
  readonly branchOf: (part: string) => number;
  /** Every one-way part, and those that stay when the arresters are taken off. */
  readonly oneWays: readonly OneWay[];
  readonly withoutArresters: readonly OneWay[];
  /** By what the network feels of the position: a verification comes back to most of its positions. */
  readonly solved: Map<string, Solution>;
  /** By what its branches feel of it: half of the positions differ in their sources alone. */
  readonly factored: Map<string, Factored>;
}

interface Factored {
  readonly reduced: Reduced;
  /** The 50 Hz plane by the source's voltage: at the bench nothing else drives it. */
  readonly mains: Map<Volts, Planes['mains']>;
}

/** A solved network: its factors (for instruments on a port), and the potentials in every plane. */
export interface Solution {
  readonly reduced: Reduced;
  readonly emfs: readonly Emf[];
  readonly oneWays: readonly OneWay[];
  readonly injections: readonly Injection[];
  readonly planes: Planes;
}

/** The nodes of a place at which a test current can flow. */
const TESTED_NODES: Readonly<Record<TestedPlace, string>> = { outlet: 'end', origin: 'origin' };

const testParts = (parts: Parts): readonly Part[] =>
  linesOf(parts.site).flatMap((line) =>
    (
      [
        ['outlet', 'PE'],
        ['outlet', 'N'],
        ['origin', 'PE'],
      ] as const
    ).map(([at, to]) => ({
      id: `test.${at}.${line}-${to}`,
      a: `${TESTED_NODES[at]}.${line}`,
      b: `${TESTED_NODES[at]}.${to}`,
      resistance: Infinity,
    })),
  );

type Layout = Pick<Wiring, 'topology' | 'plan' | 'nodeAt' | 'branchOf'>;

/** Layouts by which part joins which nodes: whatever is wrong with an installation, most parts hang where they did. */
const layouts = new Map<string, Layout>();
const MOST_LAYOUTS = 100;

function laidOut(parts: readonly Part[]): Layout {
  let key = '';
  for (const { id, a, b } of parts) key += `${id} ${a} ${b};`;
  const known = layouts.get(key);
  if (known !== undefined) return known;
  const layout = layoutOf(parts);
  if (layouts.size >= MOST_LAYOUTS) layouts.clear();
  layouts.set(key, layout);
  return layout;
}

function layoutOf(parts: readonly Part[]): Layout {
  const nodes = [...new Set(['earth', ...parts.flatMap((part) => [part.a, part.b])])];
  const nodeIndex = new Map(nodes.map((name, i) => [name, i]));
  const partIndex = new Map(parts.map((part, i) => [part.id, i]));
  const nodeAt = (name: string) => {
    const index = nodeIndex.get(name);
    if (index === undefined) throw new Error(`no node "${name}" in this installation`);
    return index;
  };
  const topology = {
    nodes,
    branches: parts.map((part) => ({ id: part.id, a: nodeAt(part.a), b: nodeAt(part.b) })),
  };
  return {
    topology,
    plan: planOf(topology),
    nodeAt,
    branchOf: (part) => {
      const index = partIndex.get(part);
      if (index === undefined) throw new Error(`no part "${part}" in this installation`);
      return index;
    },
  };
}

export function wire(installation: Parts): Wiring {
  const parts = [
    ...installation.parts,
    ...standInParts(linesOf(installation.site)),
    ...testParts(installation),
  ];
  const { topology, plan, nodeAt, branchOf } = laidOut(parts);
  const seat = (part: OneWayPart): OneWay => ({
    port: { a: nodeAt(part.a), b: nodeAt(part.b) },
    drop: part.drop,
    onResistance: 0,
  });
  return {
    parts,
    topology,
    plan,
    still: stillValues(parts),
    moving: movingIn(parts, installation),
    nodeAt,
    branchOf,
    oneWays: [...installation.oneWays, ...standInOneWays].map(seat),
    withoutArresters: standInOneWays.map(seat),
    solved: new Map(),
    factored: new Map(),
  };
}

/** Every branch as it is while closed. */
const stillValues = (parts: readonly Part[]): BranchValues => ({
  conductance: Float64Array.from(parts, ({ resistance }) => 1 / resistance),
  susceptance: Float64Array.from(parts, ({ susceptance }) => susceptance ?? 0),
});

const ALWAYS: IsClosed = () => true;

function movingIn(parts: readonly Part[], { site, design }: Parts): readonly Moving[] {
  const contacts = contactsOf(site, design);
  return parts.flatMap((part, branch) => {
    const setting = settingOf(part);
    const isClosed = part.contact === undefined ? ALWAYS : contacts.get(part.contact);
    if (isClosed === undefined) throw new Error(`no contact "${part.contact}" for part "${part.id}"`);
    return isClosed === ALWAYS && setting === null ? [] : [{ branch, part, isClosed, setting }];
  });
}

/** Conductance and susceptance of every branch in this position of the plant. */
export function valuesOf({ still, moving }: Wiring, plant: Plant): BranchValues {
  const conductance = still.conductance.slice();
  const susceptance = still.susceptance.slice();
  for (const { branch, part, isClosed, setting } of moving) {
    if (isClosed(plant)) {
      conductance[branch] = 1 / (setting?.(plant) ?? part.resistance);
    } else {
      conductance[branch] = 1 / (part.openResistance ?? OPEN);
      susceptance[branch] = 0;
    }
  }
  return { conductance, susceptance };
}

const NOTHING = { re: 0, im: 0 };

/** Every source at work: the mains, the unit's pilot and proximity sources while it is powered. */
export function emfsOf(wiring: Wiring, installation: Parts, plant: Plant): readonly Emf[] {
  const { design } = installation;
  const high = { unpowered: 0, negative: design.pilot.negative, positive: design.pilot.positive };
  const pilot = plant.damaged.includes('pilot')
    ? { high: 0, low: 0 }
    : plant.pilot === 'oscillating'
      ? { high: design.pilot.positive, low: design.pilot.negative }
      : { high: high[plant.pilot], low: high[plant.pilot] };
  const share = plant.voltage / installation.site.voltage;
  const proximity = plant.pilot === 'unpowered' ? 0 : PROXIMITY_SOURCE.volts;
  return [
    ...installation.sources.map(({ part, mains }) => ({
      branch: wiring.branchOf(part),
      mains: { re: mains.re * share, im: mains.im * share },
      high: 0,
      low: 0,
    })),
    { branch: wiring.branchOf('pilot.source'), mains: NOTHING, ...pilot },
    ...(design.sheet.outlet === 'socket'
      ? [{ branch: wiring.branchOf('proximity.source'), mains: NOTHING, high: proximity, low: proximity }]
      : []),
  ];
}

/** A test current that is driven, from the line through the instrument to PE. */
function testInjection(wiring: Wiring, { test }: Plant): readonly Injection[] {
  if (test === null || (test.direct === 0 && test.halfWave === 0)) return [];
  const place = TESTED_NODES[test.at];
  const port = { a: wiring.nodeAt(`${place}.PE`), b: wiring.nodeAt(`${place}.${test.line}`) };
  return [{ port, mains: NOTHING, direct: test.direct, halfWave: test.halfWave }];
}

/** Below this between line and PE at the vehicle nothing is rectified, V. A design choice. */
const RECTIFIES: Volts = 50;

/**
 * The stand-in's d.c. leakage is rectified mains: it flows while its line is supplied, and where the mains can drive it
 * through what is in the way.
 */
function leakageInjection(
  wiring: Wiring,
  { standIn: { plugged, leakage } }: Plant,
  reduced: Reduced,
  planes: Planes,
): readonly Injection[] {
  if (!plugged || leakage === null || leakage.dc === 0) return [];
  const port = { a: wiring.nodeAt('car.PE'), b: wiring.nodeAt(`end.${leakage.line}`) };
  const { open, resistance } = seenFrom(reduced, planes, port);
  const volts = Math.sqrt(open.mains.re * open.mains.re + open.mains.im * open.mains.im);
  const flows = volts > RECTIFIES && resistance * Math.abs(leakage.dc) < volts;
  return flows ? [{ port, mains: NOTHING, direct: leakage.dc, halfWave: 0 }] : [];
}

/** Solutions that are kept, of some ten kilobytes each, and as many factors. */
const MOST_KEPT = 500;

/** The network solved in this position of the plant; `installation` is the one that was wired. */
export function solve(wiring: Wiring, installation: Parts, plant: Plant): Solution {
  const felt = feltOf(plant);
  const known = wiring.solved.get(felt.all);
  if (known !== undefined) return known;
  const { reduced, mains: byVolts } = factoredAt(wiring, plant, felt.branches);
  const emfs = emfsOf(wiring, installation, plant);
  const oneWays = plant.removed.includes('arrester') ? wiring.withoutArresters : wiring.oneWays;
  const test = testInjection(wiring, plant);
  const mains = byVolts.get(plant.voltage) ?? mainsPotentials(reduced, emfs, []);
  byVolts.set(plant.voltage, mains);
  const first = potentials(reduced, emfs, oneWays, test, mains);
  const leakage = leakageInjection(wiring, plant, reduced, first);
  const injections = [...test, ...leakage];
  const planes = leakage.length === 0 ? first : potentials(reduced, emfs, oneWays, injections, mains);
  const solution = { reduced, emfs, oneWays, injections, planes };
  if (wiring.solved.size >= MOST_KEPT) wiring.solved.clear();
  wiring.solved.set(felt.all, solution);
  return solution;
}

function factoredAt(wiring: Wiring, plant: Plant, felt: string): Factored {
  const known = wiring.factored.get(felt);
  if (known !== undefined) return known;
  const factored = { reduced: reduce(wiring.plan, valuesOf(wiring, plant)), mains: new Map() };
  if (wiring.factored.size >= MOST_KEPT) wiring.factored.clear();
  wiring.factored.set(felt, factored);
  return factored;
}
