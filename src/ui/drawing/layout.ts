/**
 * Where things stand: the rows of the conductors, the columns of the installation, and a place for every terminal that
 * a lead can be put on, by the same names as at the bench. The whole installation, or on a small screen one part.
 */
import type { Terminal } from '../../bench/terminals.ts';
import { terminalsOf } from '../../bench/terminals.ts';
import type { CONDUCTORS } from '../../laws/conductors.ts';
import { livesOf } from '../../site/site.ts';
import type { Papers } from '../../verification/testAction.ts';
import type { Position } from '../flow/position.ts';
import type { Point } from './figure.ts';
import { oddWords } from './oddWords.ts';

export type Conductor = (typeof CONDUCTORS)[number];

export const PARTS = ['origin', 'unit', 'outlet'] as const;
export type Part = (typeof PARTS)[number];
export type View = Part | 'whole';

/** Columns, from the supply to the far side of the stand-in; what is not in a view has none. */
export interface Columns {
  readonly width: number;
  readonly star: number;
  readonly coil: readonly [number, number];
  /** Where earth and neutral part on TN-C-S. */
  readonly parting: number;
  readonly met: number;
  readonly incoming: number;
  readonly origin: number;
  readonly rod: number;
  readonly unitLeft: number;
  readonly unitRight: number;
  /** The free end of a tether, and of the stand-in's own cable, while nothing is plugged in. */
  readonly tetherEnd: number;
  readonly cableStart: number;
  readonly standInLeft: number;
  readonly standInRight: number;
}

const NOWHERE = Number.NaN;
const NO_SUPPLY = {
  star: NOWHERE,
  coil: [NOWHERE, NOWHERE],
  parting: NOWHERE,
  met: NOWHERE,
  incoming: NOWHERE,
  origin: NOWHERE,
  rod: NOWHERE,
} as const;
const NO_OUTLET = { tetherEnd: NOWHERE, cableStart: NOWHERE, standInLeft: NOWHERE, standInRight: NOWHERE };

const COLUMNS: Readonly<Record<View, Columns>> = {
  whole: {
    width: 730,
    star: 18,
    coil: [32, 64],
    parting: 82,
    met: 102,
    incoming: 122,
    origin: 226,
    rod: 254,
    unitLeft: 314,
    unitRight: 438,
    tetherEnd: 524,
    cableStart: 478,
    standInLeft: 564,
    standInRight: 724,
  },
  origin: {
    width: 288,
    star: 14,
    coil: [26, 58],
    parting: 72,
    met: 92,
    incoming: 110,
    origin: 214,
    rod: 246,
    unitLeft: 288,
    unitRight: NOWHERE,
    ...NO_OUTLET,
  },
  unit: {
    width: 288,
    ...NO_SUPPLY,
    unitLeft: 82,
    unitRight: 206,
    tetherEnd: 288,
    cableStart: NOWHERE,
    standInLeft: 288,
    standInRight: NOWHERE,
  },
  outlet: {
    width: 288,
    ...NO_SUPPLY,
    unitLeft: NOWHERE,
    unitRight: 34,
    tetherEnd: 82,
    cableStart: 78,
    standInLeft: 124,
    standInRight: 284,
  },
};

const FIRST_ROW = 72;
/**
 * Terminals of a part are a finger's target apart; room over the pilot for its second branch, and at the origin under
 * the neutral for the words of its devices. Under the protective conductor: electrodes, then the instrument.
 */
const GAPS = {
  whole: { row: 36, abovePilot: 54, belowPilot: 44, parting: 34, rod: 36, instrument: 84 },
  origin: { row: 44, abovePilot: 54, belowPilot: 48, parting: 46, rod: 46, instrument: 84 },
  unit: { row: 44, abovePilot: 44, belowPilot: 44, parting: 46, rod: 46, instrument: 68 },
  outlet: { row: 44, abovePilot: 44, belowPilot: 44, parting: 46, rod: 46, instrument: 68 },
} as const satisfies Readonly<Record<View, unknown>>;
const FOOT = { whole: 36, origin: 36, unit: 36, outlet: 24 } as const;
/** How far the circuit's conductors stand off the unit once they are taken off. */
const OFF = 24;

/** What any drawing of the bench says of itself, one upright or in a strip included. */
export interface Shown {
  readonly view: View | 'upright' | 'strip';
  readonly width: number;
  readonly height: number;
  /** Of this view. */
  readonly terminals: ReadonlyMap<Terminal, Point>;
}

export interface Layout extends Shown {
  readonly view: View;
  readonly columns: Columns;
  readonly lives: readonly Conductor[];
  readonly rows: Readonly<Record<Conductor, number>>;
  readonly top: number;
  readonly bottom: number;
  readonly instrumentY: number;
  /** Where the circuit's conductors end at the unit. */
  readonly supplyX: number;
  /** Where the outlet's terminals are: the far end of a cable, or the bare socket. */
  readonly outletX: number;
  /** The middle of the ground on which the plug that a hand can move goes in and out. */
  readonly plugX: number;
}

/** The part of the drawing that a terminal is in. */
export function partOf(terminal: Terminal): Part {
  const [at] = terminal.split('.');
  return at === 'outlet' ? 'outlet' : at === 'supply' || at === 'case' ? 'unit' : 'origin';
}

export function layoutOf({ site, sheet }: Papers, position: Position, view: View): Layout {
  const columns = COLUMNS[view];
  const lives = livesOf(site);
  const gaps = GAPS[view];
  const pilot = FIRST_ROW + gaps.row * (lives.length - 1) + gaps.abovePilot;
  const rows = {
    ...Object.fromEntries(lives.map((name, i) => [name, FIRST_ROW + gaps.row * i])),
    CP: pilot,
    PP: pilot + gaps.belowPilot,
    PE: pilot + 2 * gaps.belowPilot,
  } as Layout['rows'];
  const isBare = sheet.outlet === 'socket' && !position.plugged;
  const bottom = rows.PE + 22;
  const instrumentY = Math.max(rows.PE + gaps.instrument, bottom + 14 * oddWords(position).length + 36);
  const supplyX = position.unit === 'taken off' ? columns.unitLeft - OFF : columns.unitLeft;
  const outletX = isBare ? columns.unitRight : position.plugged ? columns.standInLeft : columns.tetherEnd;
  const place = (terminal: Terminal): Point => {
    const [at = '', conductor] = terminal.split('.');
    const y = rows[(conductor ?? 'PE') as Conductor];
    switch (at) {
      case 'met':
        return { x: columns.met, y };
      case 'earthing':
        return site.earthing === 'TN-S'
          ? { x: (columns.coil[0] + columns.coil[1]) / 2, y }
          : { x: columns.parting, y: y - gaps.parting };
      case 'earth':
        return { x: columns.rod, y: y + gaps.rod };
      case 'case':
        return { x: (columns.unitLeft + columns.unitRight) / 2, y: bottom };
      case 'incoming':
        return { x: columns.incoming, y };
      case 'origin':
        return { x: columns.origin, y };
      case 'supply':
        return { x: supplyX, y };
      default:
        return { x: outletX, y };
    }
  };
  const isShown = (terminal: Terminal) =>
    view === 'whole' ||
    partOf(terminal) === view ||
    (view === 'unit' && isBare && partOf(terminal) === 'outlet');
  return {
    view,
    columns,
    lives,
    rows,
    top: FIRST_ROW - 20,
    bottom,
    width: columns.width,
    height: instrumentY + FOOT[view],
    instrumentY,
    supplyX,
    outletX,
    plugX: sheet.outlet === 'tethered' ? columns.standInLeft - 34 : columns.unitRight + 33,
    terminals: new Map(
      terminalsOf(site)
        .filter(isShown)
        .map((terminal) => [terminal, place(terminal)]),
    ),
  };
}

/** The outlet's row names that there are on this site. */
export const namesAt = ({ lives }: Layout): readonly Conductor[] => [...lives, 'CP', 'PP', 'PE'];
