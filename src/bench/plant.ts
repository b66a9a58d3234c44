/**
 * The positions of everything that can be switched, moved or set on the bench, as data, and which contacts of the
 * network are closed in them. What moves them (commands, operations, trips) is told elsewhere.
 */
import type { Line, Live } from '../laws/conductors.ts';
import { LIVES } from '../laws/conductors.ts';
import { codingResistance } from '../laws/proximity.ts';
import type { Amps, Duty, Ohms, Volts } from '../laws/quantities.ts';
import type { Part } from '../site/part.ts';
import { driedBy } from '../site/part.ts';
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

/** Where it is isolated by hand: this circuit at the origin, or the whole installation at its main switch. */
export const ISOLATORS = ['origin', 'main-switch'] as const;
export type Isolator = (typeof ISOLATORS)[number];

/** Temporary links at the origin, each from a line to PE or to N. */
export type Link = `${Line}-${'PE' | 'N'}`;

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

/** What may stick until it has moved once. */
export type Freed = 'unit' | 'upstream';

export interface Plant {
  /** Poles opened by hand at the origin, and whether they are locked. */
  readonly isolated: readonly Live[];
  readonly locked: boolean;
  /** Poles opened by hand at the main switch, which takes the other circuits with it, and whether they are locked. */
  readonly mainOff: readonly Live[];
  readonly mainLocked: boolean;
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
  readonly links: readonly Link[];
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
  /** What the vehicle at the next point draws, A per line at 230 V. */
  readonly nextPoint: Amps;
  readonly testButton: boolean;
  /** The outlet's cable is being bent. */
  readonly flexed: boolean;
  readonly leadsNulled: boolean;
  /** The fuse of the continuity and insulation tester: opened by a live part, renewed when instruments are checked. */
  readonly testerFuse: 'sound' | 'opened';
  /** A detector's lead that parts in use; renewed with the detector. */
  readonly detectorLead: 'whole' | 'parted';
  /** Steps that whatever is wet has dried by. */
  readonly dried: number;
  /** Residual devices that stuck and have moved since. */
  readonly freed: readonly Freed[];
  /** How often a contactor that sticks now and then has been told to open. */
  readonly openings: number;
  /** What wrong tests have destroyed inside the unit. */
  readonly damaged: readonly Damage[];
  readonly standIn: StandIn;
  readonly test: TestCurrent | null;
}

export const plantAtRest = (site: Site, design: UnitDesign): Plant => ({
  isolated: [],
  locked: false,
  mainOff: [],
  mainLocked: false,
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
  nextPoint: site.nextPoint?.draws ?? 0,
  testButton: false,
  flexed: false,
  leadsNulled: true,
  testerFuse: 'sound',
  detectorLead: 'whole',
  dried: 0,
  freed: [],
  openings: 0,
  damaged: [],
  standIn: unpluggedStandIn(design.sheet.cable.coding),
  test: null,
});

/** Positions that change nothing in the network. */
const UNFELT = {
  locked: undefined,
  mainLocked: undefined,
  coil: undefined,
  plugLock: undefined,
  lockDriven: undefined,
  duty: undefined,
  cover: undefined,
  loadLimit: undefined,
  leadsNulled: undefined,
  testerFuse: undefined,
  detectorLead: undefined,
  openings: undefined,
} as const satisfies Partial<Record<keyof Plant, undefined>>;

/** Positions that set the network's sources and change none of its branches. */
const OF_SOURCES = {
  pilot: undefined,
  voltage: undefined,
  damaged: undefined,
} as const satisfies Partial<Record<keyof Plant, undefined>>;

export interface FeltBy {
  /** Two positions with one key here have one network, whatever its sources. */
  readonly branches: string;
  /** Two positions with one key here have one solution. */
  readonly all: string;
}

/** Everything that the network feels of a position, as keys. */
export function feltOf(plant: Plant): FeltBy {
  const { test } = plant;
  names ??= namesIn(plant);
  const drawn = test === null ? '' : textOf(test);
  // Of a test current only an a.c. load is a branch.
  let branches = test === null || test.resistance === null ? '' : drawn;
  for (const name of names.ofBranches) branches += textOfPart(plant[name]);
  let all = branches + drawn;
  for (const name of names.ofSources) all += textOfPart(plant[name]);
  return { branches, all };
}

type Names = readonly (keyof Plant)[];
/** Of every plant alike: sorted out when the first one is seen. */
let names: { readonly ofBranches: Names; readonly ofSources: Names } | null = null;

function namesIn(plant: Plant): NonNullable<typeof names> {
  const felt = (Object.keys(plant) as (keyof Plant)[]).filter((name) => !(name in UNFELT) && name !== 'test');
  return {
    ofBranches: felt.filter((name) => !(name in OF_SOURCES)),
    ofSources: felt.filter((name) => name in OF_SOURCES),
  };
}

const textOfPart = (part: Plant[keyof Plant]): string =>
  `;${typeof part === 'object' && part !== null ? textOf(part) : part}`;

const texts = new WeakMap<object, string>();

/** Parts of a position are never changed, only replaced: the text of one is made once. */
function textOf(part: object): string {
  let text = texts.get(part);
  if (text === undefined) {
    text = shortFor(JSON.stringify(part));
    texts.set(part, text);
  }
  return text;
}

const shorts = new Map<string, string>();
const MOST_SHORTS = 10_000;
let shortened = 0;

/** A short text for each content, never the same for two: keys are made of them at every move, and long ones are slow to look up. */
function shortFor(content: string): string {
  const before = shorts.get(content);
  if (before !== undefined) return before;
  if (shorts.size >= MOST_SHORTS) shorts.clear();
  const short = `#${shortened++}`;
  shorts.set(content, short);
  return short;
}

/** What is off by hand: with either of them off the circuit is isolated. */
export const offAt = ({ isolated, mainOff }: Plant): readonly Isolator[] =>
  ISOLATORS.filter((at) => (at === 'origin' ? isolated : mainOff).length > 0);
export const isIsolated = (plant: Plant): boolean => offAt(plant).length > 0;

/** Nobody else can switch it on again: one of the two is off and locked. */
export const isLockedOff = (plant: Plant): boolean =>
  (plant.isolated.length > 0 && plant.locked) || isMainLockedOff(plant);
export const isMainLockedOff = ({ mainOff, mainLocked }: Plant): boolean => mainOff.length > 0 && mainLocked;

export const isNeutralOpened = ({ isolated, mainOff }: Plant): boolean =>
  isolated.includes('N') || mainOff.includes('N');

export const plugPosition = (plant: Plant): 'out' | 'in' | 'held' =>
  !plant.standIn.plugged ? 'out' : plant.plugLock === 'held' ? 'held' : 'in';

export const poleClosed = (plant: Plant, design: UnitDesign, pole: Live): boolean =>
  design.poles[pole].welded || (plant.contactor === 'closed' && design.poles[pole].stuckOpen !== true);

/** The lives that a device of so many poles opens: lines first, then the neutral. */
export const polesOpenedBy = (site: Site, poles: number): readonly Live[] => {
  const lines = linesOf(site);
  return poles > lines.length ? [...lines, 'N'] : lines;
};

/** A joint on which the cover presses: made while the cover is off. */
export const UNDER_COVER = 'under-cover';

/** Whether a contact is closed in a position of the plant. */
export type IsClosed = (plant: Plant) => boolean;

/** Every contact of the network, by name. */
export function contactsOf(site: Site, design: UnitDesign): ReadonlyMap<string, IsClosed> {
  const { breaker, residualDevice } = site.circuit;
  const openedByBreaker = polesOpenedBy(site, breaker.poles);
  const openedUpstream = residualDevice === null ? [] : polesOpenedBy(site, residualDevice.poles);
  const isSupplied = (plant: Plant, pole: Live): boolean =>
    plant.missing !== pole &&
    (plant.breaker === 'closed' || !openedByBreaker.includes(pole)) &&
    (plant.upstream === 'closed' || !openedUpstream.includes(pole));
  const ofPole = (pole: Live): readonly (readonly [string, IsClosed])[] => [
    [`main.${pole}`, (plant) => !plant.mainOff.includes(pole)],
    [`origin.${pole}`, (plant) => !plant.isolated.includes(pole) && isSupplied(plant, pole)],
    // A way beside the one that the schedule names: nobody's hand opens it, its devices do.
    [`other-way.${pole}`, (plant) => isSupplied(plant, pole)],
    [`unit.${pole}`, (plant) => !plant.removed.includes('unit') && plant.unitBreaker === 'closed'],
    [`contactor.${pole}`, (plant) => poleClosed(plant, design, pole)],
    ...(['PE', 'N'] as const).map((to): readonly [string, IsClosed] => [
      `link.${pole}-${to}`,
      (plant) => pole !== 'N' && plant.links.includes(`${pole}-${to}`),
    ]),
  ];
  return new Map<string, IsClosed>([
    ...standInContacts.map(([name, isClosed]) => [name, (plant: Plant) => isClosed(plant.standIn)] as const),
    ['pen', (plant) => plant.pen === 'sound'],
    ['earthing-conductor', (plant) => !plant.removed.includes('earthing-conductor')],
    ['electrode', (plant) => !plant.removed.includes('electrode')],
    ['open-pen', (plant) => plant.earthPole === 'closed'],
    ['test-button', (plant) => plant.testButton],
    ['unflexed', (plant) => !plant.flexed],
    [UNDER_COVER, (plant) => plant.cover === 'open'],
    ['cable', (plant) => plant.standIn.plugged],
    ['coding', (plant) => plant.standIn.plugged && plant.standIn.coding !== null],
    ...LIVES.flatMap(ofPole),
  ]);
}

/** The resistance that a setting gives a part, Ω; undefined while it gives none. */
export type Setting = (plant: Plant) => Ohms | undefined;

/** How the settings of the plant make a part's resistance; null for a part that has its own. */
export function settingOf({ id, resistance, dries }: Part): Setting | null {
  if (dries !== undefined) return ({ dried }) => driedBy(resistance, dries, dried);
  if (id === 'coding.plug')
    return ({ standIn: { coding } }) => (coding === null ? undefined : codingResistance(coding));
  if (id.startsWith('standin.load.'))
    return ({ standIn }) => (standIn.plugged ? 230 / standIn.load : Infinity);
  const line = id.slice(-2);
  if (id.startsWith('standin.leakage.'))
    return ({ standIn: { plugged, leakage } }) =>
      plugged && leakage?.line === line ? 230 / leakage.ac : Infinity;
  if (id.startsWith('known-load.')) return ({ siteLoad }) => 230 / siteLoad;
  if (id.startsWith('next-point.')) return ({ nextPoint }) => 230 / nextPoint;
  if (id.startsWith('neighbour.'))
    return ({ neighbours }) =>
      loadResistance(neighbours.reduce((sum, load) => sum + (load.line === line ? load.power : 0), 0));
  if (id.startsWith('test.'))
    return ({ test }) =>
      test !== null && id === `test.${test.at}.${test.line}-${test.to}` && test.resistance !== null
        ? test.resistance
        : Infinity;
  return null;
}
