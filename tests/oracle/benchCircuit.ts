/**
 * One installation as an electrician would draw it, written a second time for the circuit simulator: from the data of
 * site and sheet and from the positions of everything that moves, element by element. Takes nothing from the
 * simulation's own parts, contacts, settings or solver; only the names of the nodes are the same, so that potentials
 * can be compared. What the model has chosen for itself (a made contact, new insulation) stands here again.
 */
import type { Site } from '../../src/site/site.ts';
import type { UnitSheet } from '../../src/unit/design.ts';
import { RESISTANCES } from '../references/conductorResistances.ts';

type Live = 'L1' | 'L2' | 'L3' | 'N';
type Line = Exclude<Live, 'N'>;

/** Volts of a source that drives from a to b: complex at 50 Hz, and in the two halves of the pilot. */
interface Drive {
  readonly re: number;
  readonly im: number;
  readonly high: number;
  readonly low: number;
}

export interface Element {
  a: string;
  b: string;
  ohms: number;
  readonly farads?: number;
  readonly drive?: Drive;
}

export interface Circuit {
  readonly elements: Map<string, Element>;
  /** Conducts from a to b above its drop, in the d.c. planes. */
  readonly oneWays: { readonly a: string; readonly b: string; readonly drop: number }[];
  /** Currents driven out of one node and into another. */
  readonly currents: {
    readonly from: string;
    readonly into: string;
    readonly direct: number;
    readonly halfWave: number;
  }[];
}

/** Where everything stands, as whoever describes a bench knows it. */
export interface Position {
  /** Conductors that do not reach the outgoing side of the board. */
  readonly openAtOrigin: readonly Live[];
  /** The main switch, which opens every live conductor of the board. */
  readonly mainSwitch: 'on' | 'off';
  readonly earthingOff: boolean;
  readonly unitOff: boolean;
  readonly linked: readonly Line[];
  /** Lines that are linked to neutral at the board. */
  readonly linkedToNeutral: readonly Line[];
  readonly pen: 'whole' | 'broken';
  readonly volts: number | null;
  readonly neighbours: Readonly<Partial<Record<Line, number>>>;
  /** What a vehicle at the next point draws on each line, A at 230 V. */
  readonly nextPoint: number;
  /** Poles of the contactor that conduct. */
  readonly poles: readonly Live[];
  readonly earthPole: 'closed' | 'open';
  readonly button: boolean;
  readonly pilot: 'dead' | 'steady' | 'oscillating' | 'refusing';
  /** The vehicle stand-in. */
  readonly plugged: boolean;
  readonly state: 'A' | 'B' | 'C' | 'D';
  readonly coding: 13 | 20 | 32 | 63 | null;
  readonly pilotAt: 'sound' | 'shorted' | 'open';
  readonly diodeShorted: boolean;
  readonly vehicleEarthOpen: boolean;
  readonly load: number;
  readonly leakage: { readonly line: Line; readonly ac: number; readonly dc: number } | null;
  /** A test in the outlet: an a.c. load, or currents of the tester's own, from a line. */
  readonly test: {
    readonly line: Line;
    readonly to: 'PE' | 'N';
    readonly ohms: number | null;
    readonly direct: number;
    readonly halfWave: number;
  } | null;
}

/** Energised, the unit ready, nothing plugged in. */
export const AT_REST: Position = {
  openAtOrigin: [],
  mainSwitch: 'on',
  earthingOff: false,
  unitOff: false,
  linked: [],
  linkedToNeutral: [],
  pen: 'whole',
  volts: null,
  neighbours: {},
  nextPoint: 0,
  poles: [],
  earthPole: 'closed',
  button: false,
  pilot: 'steady',
  plugged: false,
  state: 'A',
  coding: 32,
  pilotAt: 'sound',
  diodeShorted: false,
  vehicleEarthOpen: false,
  load: 0,
  leakage: null,
  test: null,
};

const MILLI = 1e-3;
/** A pole of the main switch: a tenth of the milliohm that it makes with the circuit’s own. */
const MAIN_POLE = MILLI / 10;
/** What stands across an open contact or a broken conductor. */
export const GAP = 10e9;
const [CIRCUIT_INSULATION, UNIT_INSULATION] = [2e9, 5e9];
const PILOT_VOLTS = { dead: [0, 0], steady: [12, 12], oscillating: [12, -12], refusing: [-12, -12] } as const;
const TURN = { L1: [1, 0], L2: [-0.5, -Math.sqrt(0.75)], L3: [-0.5, Math.sqrt(0.75)] } as const;

/** Ω by ampere of a cable (IEC 61851-1:2017 Table B.2). */
const CODING = { 13: 1500, 20: 680, 32: 220, 63: 100 } as const;

const ofPower = (watts: number): number => 230 ** 2 / watts;

function copper(metres: number, area: number, kind: 'class2' | 'class5'): number {
  const row = RESISTANCES.find((one) => one.area === area);
  if (row === undefined) throw new Error(`no conductor of ${area} mm²`);
  return (metres * row[kind]) / 1000;
}

/** Draws the whole circuit of an installation without faults. */
export function circuitOf(site: Site, sheet: UnitSheet, at: Position): Circuit {
  const circuit: Circuit = { elements: new Map(), oneWays: [], currents: [] };
  drawSupply(circuit, site, at);
  drawFinalCircuit(circuit, site, at);
  drawUnit(circuit, site, sheet, at);
  drawOutlet(circuit, site, sheet, at);
  drawVehicle(circuit, site, at);
  return circuit;
}

export const linesOn = (site: Site): readonly Line[] => (site.phases === 1 ? ['L1'] : ['L1', 'L2', 'L3']);
const livesOn = (site: Site): readonly Live[] => [...linesOn(site), 'N'];

export function add(
  { elements }: Circuit,
  name: string,
  a: string,
  b: string,
  ohms: number,
  more: { readonly farads?: number; readonly drive?: Drive } = {},
): void {
  if (elements.has(name)) throw new Error(`"${name}" is drawn twice`);
  elements.set(name, { a, b, ohms, ...more });
}

/** The named element, to be altered as a fault alters it. */
export function element({ elements }: Circuit, name: string): Element {
  const found = elements.get(name);
  if (found === undefined) throw new Error(`"${name}" is not in this circuit`);
  return found;
}

const closedIf = (closed: boolean, ohms: number, open = GAP): number => (closed ? ohms : open);

function drawInsulation(
  circuit: Circuit,
  place: string,
  conductors: readonly string[],
  ohms: number,
  farads?: number,
): void {
  for (const [i, x] of conductors.entries())
    for (const y of conductors.slice(i + 1))
      add(
        circuit,
        `${place} ${x}/${y}`,
        `${place}.${x}`,
        `${place}.${y}`,
        ohms,
        farads === undefined ? {} : { farads },
      );
}

function drawSupply(circuit: Circuit, site: Site, at: Position): void {
  const { earthing } = site;
  const volts = at.volts ?? site.voltage;
  const mains = (line: Line): Drive => ({
    re: volts * TURN[line][0],
    im: volts * TURN[line][1],
    high: 0,
    low: 0,
  });
  const combined = earthing === 'TN-C-S' || site.house !== undefined;
  // Half of the loop lies in the line; on TT, half of line and neutral.
  const half = (earthing === 'TT' ? site.neutralImpedance : site.loopImpedance) / 2;
  for (const line of linesOn(site))
    add(circuit, `transformer ${line}`, 'star', `service.${line}`, half, { drive: mains(line) });
  add(
    circuit,
    combined ? 'PEN' : 'neutral of the supply',
    'star',
    'service.N',
    combined ? closedIf(at.pen === 'whole', half) : site.neutralImpedance - half,
  );
  if (site.house !== undefined) {
    add(circuit, 'earthing of the house', 'service.N', 'house', MILLI);
    add(circuit, 'house to earth', 'house', 'earth', site.house.metEarthResistance ?? GAP);
  }
  add(circuit, 'electrode of the supply', 'star', 'earth', site.sourceElectrodeResistance);
  for (const x of livesOn(site))
    add(
      circuit,
      `main switch ${x}`,
      `service.${x}`,
      `busbar.${x}`,
      closedIf(at.mainSwitch === 'on', MAIN_POLE),
    );
  for (const [i, { line, power }] of site.otherLoads.entries())
    add(circuit, `load ${i}`, `busbar.${line}`, 'busbar.N', ofPower(power));
  for (const [line, power] of Object.entries(at.neighbours) as [Line, number][])
    add(circuit, `neighbour ${line}`, 'star', 'service.N', ofPower(power), { drive: mains(line) });

  // Its tails part before the main switch.
  if (at.nextPoint > 0)
    for (const line of linesOn(site))
      add(circuit, `next point ${line}`, `service.${line}`, 'service.N', 230 / at.nextPoint);

  const joined = closedIf(!at.earthingOff, MILLI);
  if (earthing === 'TN-S') add(circuit, 'PE of the supply', 'star', 'service.PE', site.loopImpedance / 2);
  if (earthing === 'TT') {
    add(circuit, 'electrode', 'earth', 'clamp', site.electrodeResistance ?? GAP);
    add(circuit, 'earthing conductor', 'clamp', 'met', joined);
  } else add(circuit, 'earthing conductor', earthing === 'TN-S' ? 'service.PE' : 'service.N', 'met', joined);
  add(circuit, 'met to earth', 'met', 'earth', site.metEarthResistance ?? GAP);
  add(circuit, 'remote rod', 'earth', 'rod', 20);
}

function drawFinalCircuit(circuit: Circuit, site: Site, at: Position): void {
  const { length, lineArea, protectiveArea, parallelEarth } = site.circuit;
  add(circuit, 'board PE', 'met', 'origin.PE', MILLI);
  for (const x of livesOn(site)) {
    add(
      circuit,
      `board ${x}`,
      `busbar.${x}`,
      `origin.${x}`,
      closedIf(!at.openAtOrigin.includes(x), MILLI - MAIN_POLE),
    );
    add(circuit, `core ${x}`, `origin.${x}`, `supply.${x}`, copper(length, lineArea, 'class2'));
  }
  add(circuit, 'core PE', 'origin.PE', 'supply.PE', copper(length, protectiveArea, 'class2'));
  add(circuit, 'parallel earth', 'met', 'bar', parallelEarth ?? GAP);
  for (const x of linesOn(site)) {
    add(circuit, `link ${x}`, `origin.${x}`, 'origin.PE', closedIf(at.linked.includes(x), MILLI));
    if (at.linkedToNeutral.includes(x)) add(circuit, `link ${x} to N`, `origin.${x}`, 'origin.N', MILLI);
  }
  const { capacitance } = site.circuit;
  drawInsulation(
    circuit,
    'supply',
    [...livesOn(site), 'PE'],
    CIRCUIT_INSULATION,
    capacitance === undefined ? undefined : capacitance * length,
  );
}

function drawUnit(circuit: Circuit, site: Site, sheet: UnitSheet, at: Position): void {
  for (const x of livesOn(site)) {
    add(circuit, `unit ${x}`, `supply.${x}`, `inner.${x}`, closedIf(!at.unitOff, 2 * MILLI));
    add(circuit, `filter ${x}`, `inner.${x}`, 'bar', 20e6, { farads: 4.7e-9 });
    const open = sheet.poleBleed ?? GAP;
    add(circuit, `pole ${x}`, `inner.${x}`, `socket.${x}`, closedIf(at.poles.includes(x), 2 * MILLI, open));
  }
  add(circuit, 'electronics', 'inner.L1', 'inner.N', 10_000);
  if (sheet.residual.type !== null)
    add(
      circuit,
      'test button',
      'inner.L1',
      'supply.N',
      closedIf(at.button, 230 / (2.5 * (sheet.residual.rated ?? 0.03))),
    );
  if (sheet.openPen === 'earth-sensing' || sheet.openPen === 'other')
    add(circuit, 'sensing electrode', 'earth', 'sensing', 200);
  add(circuit, 'PE pole', 'supply.PE', 'bar', closedIf(at.earthPole === 'closed', 2 * MILLI));
  add(circuit, 'case bond', 'bar', 'case', 2 * MILLI);
  add(circuit, 'outlet PE', 'bar', 'socket.PE', 2 * MILLI);
  const [high, low] = PILOT_VOLTS[at.pilot];
  add(circuit, 'pilot source', 'bar', 'pilot', 1000, { drive: { re: 0, im: 0, high, low } });
  add(circuit, 'pilot wire', 'pilot', 'socket.CP', 2 * MILLI);
  if (sheet.outlet === 'socket') {
    const pull = at.pilot === 'dead' ? 0 : 5;
    add(circuit, 'proximity source', 'bar', 'socket.PP', 1000, {
      drive: { re: 0, im: 0, high: pull, low: pull },
    });
  }
  if (sheet.surgeArrester)
    for (const x of livesOn(site))
      circuit.oneWays.push(
        { a: `supply.${x}`, b: 'bar', drop: 430 },
        { a: 'bar', b: `supply.${x}`, drop: 430 },
      );
}

function drawOutlet(circuit: Circuit, site: Site, sheet: UnitSheet, at: Position): void {
  const { length, area, coding } = sheet.cable;
  const isSocket = sheet.outlet === 'socket';
  const there = !isSocket || at.plugged;
  const cores = [...livesOn(site), 'PE'];
  const power = copper(length, area, 'class5') + 2 * MILLI;
  for (const x of cores) add(circuit, `cable ${x}`, `socket.${x}`, `end.${x}`, closedIf(there, power));
  add(circuit, 'cable CP', 'socket.CP', 'end.CP', closedIf(there, 0.039 * length + 2 * MILLI));
  add(circuit, 'coding at the end', 'end.PP', 'end.PE', CODING[coding]);
  if (isSocket)
    add(
      circuit,
      'coding in the plug',
      'socket.PP',
      'socket.PE',
      at.plugged && at.coding !== null ? CODING[at.coding] : GAP,
    );
  for (const place of ['socket', 'end'])
    drawInsulation(circuit, place, [...cores, 'CP', 'PP'], UNIT_INSULATION);
}

function drawVehicle(circuit: Circuit, site: Site, at: Position): void {
  add(circuit, 'vehicle PE', 'end.PE', 'car.PE', closedIf(at.plugged && !at.vehicleEarthOpen, MILLI));
  add(circuit, 'vehicle CP', 'end.CP', 'car.CP', closedIf(at.plugged && at.pilotAt !== 'open', MILLI));
  add(circuit, 'vehicle short', 'car.CP', 'car.PE', closedIf(at.pilotAt === 'shorted', MILLI));
  add(circuit, 'vehicle diode', 'car.CP', 'car.R', closedIf(at.diodeShorted, MILLI));
  circuit.oneWays.push({ a: 'car.CP', b: 'car.R', drop: 0.7 });
  add(circuit, 'vehicle R3', 'car.R', 'car.PE', closedIf(at.state !== 'A', 2740));
  add(circuit, 'vehicle R2 C', 'car.R', 'car.PE', closedIf(at.state === 'C', 1300));
  add(circuit, 'vehicle R2 D', 'car.R', 'car.PE', closedIf(at.state === 'D', 270));
  if (at.plugged && at.load > 0)
    for (const x of linesOn(site)) add(circuit, `vehicle load ${x}`, `end.${x}`, 'end.N', 230 / at.load);
  if (at.plugged && at.leakage !== null) {
    const { line, ac, dc } = at.leakage;
    if (ac > 0) add(circuit, 'vehicle leakage', `end.${line}`, 'car.PE', 230 / ac);
    circuit.currents.push({ from: `end.${line}`, into: 'car.PE', direct: dc, halfWave: 0 });
  }
  if (at.test !== null) {
    const { line, to, ohms, direct, halfWave } = at.test;
    if (ohms !== null) add(circuit, 'tester', `end.${line}`, `end.${to}`, ohms);
    circuit.currents.push({ from: `end.${line}`, into: `end.${to}`, direct, halfWave });
  }
}
