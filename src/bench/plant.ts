/**
 * The positions of everything that can be switched, moved or set on the bench, as data, and which contacts of the
 * network are closed in them. What moves them (commands, operations, trips) is told elsewhere.
 */
import type { Line, Live } from '../laws/conductors.ts';
import { LIVES } from '../laws/conductors.ts';
import { codingResistance } from '../laws/proximity.ts';
import type { Amps, Duty, Ohms, Volts } from '../laws/quantities.ts';
import type { Part } from '../site/part.ts';
import type { Load, Site } from '../site/site.ts';
import { linesOf, loadResistance } from '../site/site.ts';
import type { UnitDesign } from '../unit/design.ts';
import type { Commands } from '../unit/unitChart.ts';
import type { Damage } from './damages.ts';
import type { StandIn } from './standIn.ts';
import { standInContacts, unpluggedStandIn } from './standIn.ts';

/** Things that a trainee may take off; each interrupts its own conductors. */
export const REMOVABLES = ['unit', 'arrester', 'earthing-conductor', 'electrode'] as const;
export type Removable = (typeof REMOVABLES)[number];

/** Where a test current can flow: at the outlet, or at the outgoing terminals of the origin, before the unit. */
export const TESTED_PLACES = ['outlet', 'origin'] as const;
export type TestedPlace = (typeof TESTED_PLACES)[number];

/** What an instrument draws while it tests: an a.c. load, or a current of its own. */
export interface TestCurrent {
  readonly at: TestedPlace;
  readonly line: Line;
  readonly to: 'PE' | 'N';
  /** A.c. load, Ω; null while the current is not a.c. */
  readonly resistance: Ohms | null;
  /** Smooth d.c., positive from line to PE. */
  readonly direct: Amps;
  /** R.m.s. of a half-wave current, signed by its polarity. */
  readonly halfWave: Amps;
}

export interface Plant {
  /** Poles opened by hand at the origin, and whether they are locked. */
  readonly isolated: readonly Live[];
  readonly locked: boolean;
  readonly breaker: 'closed' | 'tripped';
  readonly upstream: 'closed' | 'tripped';
  readonly unitBreaker: 'closed' | 'tripped';
  /** Moving contacts of the contactor, as the coil puts them; a welded pole ignores them. */
  readonly contactor: 'open' | 'closed';
  readonly coil: boolean;
  readonly plugLock: 'free' | 'held';
  readonly lockDriven: boolean;
  readonly pilot: Commands['pilot'];
  readonly duty: Duty;
  readonly cover: 'closed' | 'open';
  readonly removed: readonly Removable[];
  /** Temporary links at the origin, by line, to PE. */
  readonly links: readonly Line[];
  /** The PE pole of an open-PEN measure, held mechanically. */
  readonly earthPole: 'closed' | 'open';
  readonly pen: 'sound' | 'open';
  /** The source's no-load voltage, V. */
  readonly voltage: Volts;
  /** A conductor that the supply has lost. */
  readonly missing: Live | null;
  readonly neighbours: readonly Load[];
  /** What the site's load management leaves for the unit, A. */
  readonly loadLimit: Amps | null;
  /** A known load switched on at the origin, A per line at 230 V. */
  readonly siteLoad: Amps;
  readonly testButton: boolean;
  /** The outlet's cable is being bent. */
  readonly flexed: boolean;
  readonly leadsNulled: boolean;
  /** The fuse of the continuity and insulation tester: opened by a live part, renewed when instruments are checked. */
  readonly testerFuse: 'sound' | 'opened';
  /** What wrong tests have destroyed inside the unit. */
  readonly damaged: readonly Damage[];
  readonly standIn: StandIn;
  readonly test: TestCurrent | null;
}

export const plantAtRest = (site: Site, design: UnitDesign): Plant => ({
  isolated: [],
  locked: false,
  breaker: 'closed',
  upstream: 'closed',
  unitBreaker: 'closed',
  contactor: 'open',
  coil: false,
  plugLock: 'free',
  lockDriven: false,
  pilot: 'unpowered',
  duty: 0,
  cover: 'closed',
  removed: [],
  links: [],
  earthPole: 'closed',
  pen: 'sound',
  voltage: site.voltage,
  missing: null,
  neighbours: site.neighbours,
  loadLimit: design.sheet.loadLimit,
  siteLoad: 0,
  testButton: false,
  flexed: false,
  leadsNulled: true,
  testerFuse: 'sound',
  damaged: [],
  standIn: unpluggedStandIn(design.sheet.cable.coding),
  test: null,
});

export const plugPosition = (plant: Plant): 'out' | 'in' | 'held' =>
  !plant.standIn.plugged ? 'out' : plant.plugLock === 'held' ? 'held' : 'in';

export const poleClosed = (plant: Plant, design: UnitDesign, pole: Live): boolean =>
  design.poles[pole].welded || (plant.contactor === 'closed' && design.poles[pole].stuckOpen !== true);

/** The lives that a device of so many poles opens: lines first, then the neutral. */
export const polesOpenedBy = (site: Site, poles: number): readonly Live[] => {
  const lines = linesOf(site);
  return poles > lines.length ? [...lines, 'N'] : lines;
};

/** Contacts that each pole has, by name; made once, since every solution asks for them. */
const POLE_CONTACTS = LIVES.map((pole) => ({
  pole,
  names: {
    origin: `origin.${pole}`,
    unit: `unit.${pole}`,
    contactor: `contactor.${pole}`,
    link: `link.${pole}-PE`,
  },
}));

/** Every contact of the network by name: true where it is closed. */
export function contactsOf(plant: Plant, site: Site, design: UnitDesign): Readonly<Record<string, boolean>> {
  const { breaker, residualDevice } = site.circuit;
  const opened = new Set<Live>([
    ...plant.isolated,
    ...(plant.missing === null ? [] : [plant.missing]),
    ...(plant.breaker === 'tripped' ? polesOpenedBy(site, breaker.poles) : []),
    ...(plant.upstream === 'tripped' && residualDevice ? polesOpenedBy(site, residualDevice.poles) : []),
  ]);
  const connected = !plant.removed.includes('unit') && plant.unitBreaker === 'closed';
  const closed: Record<string, boolean> = {
    ...standInContacts(plant.standIn),
    pen: plant.pen === 'sound',
    'earthing-conductor': !plant.removed.includes('earthing-conductor'),
    electrode: !plant.removed.includes('electrode'),
    'open-pen': plant.earthPole === 'closed',
    'test-button': plant.testButton,
    unflexed: !plant.flexed,
    cable: plant.standIn.plugged,
    coding: plant.standIn.plugged && plant.standIn.coding !== null,
  };
  for (const { pole, names } of POLE_CONTACTS) {
    closed[names.origin] = !opened.has(pole);
    closed[names.unit] = connected;
    closed[names.contactor] = poleClosed(plant, design, pole);
    closed[names.link] = pole !== 'N' && plant.links.includes(pole);
  }
  return closed;
}

/** Resistances that a setting gives, by part; undefined for all others. */
export function settingOf(part: Part, plant: Plant): Ohms | undefined {
  const { standIn, test } = plant;
  if (part.id === 'coding.plug' && standIn.coding !== null) return codingResistance(standIn.coding);
  if (part.id.startsWith('standin.load.')) return standIn.plugged ? 230 / standIn.load : Infinity;
  if (part.id.startsWith('standin.leakage.')) {
    const { leakage } = standIn;
    return standIn.plugged && leakage?.line === part.id.slice(-2) ? 230 / leakage.ac : Infinity;
  }
  if (part.id.startsWith('known-load.')) return 230 / plant.siteLoad;
  if (part.id.startsWith('neighbour.')) {
    const line = part.id.slice(-2);
    const power = plant.neighbours.reduce((sum, load) => sum + (load.line === line ? load.power : 0), 0);
    return loadResistance(power);
  }
  if (part.id.startsWith('test.')) {
    return test !== null && part.id === `test.${test.at}.${test.line}-${test.to}` && test.resistance !== null
      ? test.resistance
      : Infinity;
  }
  return undefined;
}
