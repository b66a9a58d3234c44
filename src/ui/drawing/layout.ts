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
    width: 758,
    star: 18,
    coil: [32, 64],
    parting: 84,
    met: 108,
    incoming: 128,
    origin: 206,
    rod: 256,
    unitLeft: 320,
    unitRight: 418,
    tetherEnd: 540,
    cableStart: 478,
    standInLeft: 592,
    standInRight: 752,
  },
  origin: {
    width: 288,
    star: 14,
    coil: [26, 58],
    parting: 74,
    met: 98,
    incoming: 118,
    origin: 196,
    rod: 242,
    unitLeft: 288,
    unitRight: NOWHERE,
    ...NO_OUTLET,
  },
  unit: {
    width: 288,
    ...NO_SUPPLY,
    unitLeft: 96,
    unitRight: 194,
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
    tetherEnd: 92,
    cableStart: 78,
    standInLeft: 122,
    standInRight: 284,
  },
};

const FIRST_ROW = 72;
/** Terminals of neighbouring rows are a finger's target apart: 24 px round, at one pixel to a unit. */
const ROW = 26;
/** Room for the dimension lines, and for the branches of the pilot's circuit. */
const ABOVE_PILOT = 54;
const BELOW_PILOT = 30;
/** Under the protective conductor: electrodes, then the instrument. */
const INSTRUMENT = 84;
const FOOT = 26;
/** How far the circuit's conductors stand off the unit once they are taken off. */
const OFF = 24;

export interface Layout {
  readonly view: View;
  readonly columns: Columns;
  readonly lives: readonly Conductor[];
  readonly rows: Readonly<Record<Conductor, number>>;
  readonly top: number;
  readonly bottom: number;
  readonly height: number;
  readonly instrumentY: number;
  /** Where the circuit's conductors end at the unit. */
  readonly supplyX: number;
  /** Where the outlet's terminals are: the far end of a cable, or the bare socket. */
  readonly outletX: number;
  /** Of this view. */
  readonly terminals: ReadonlyMap<Terminal, Point>;
}

/** The part of the drawing that a terminal is in. */
export function partOf(terminal: Terminal): Part {
  const [at] = terminal.split('.');
  return at === 'outlet' ? 'outlet' : at === 'supply' || at === 'case' ? 'unit' : 'origin';
}

export function layoutOf({ site, sheet }: Papers, position: Position, view: View): Layout {
  const columns = COLUMNS[view];
  const lives = livesOf(site);
  const pilot = FIRST_ROW + ROW * (lives.length - 1) + ABOVE_PILOT;
  const rows = {
    ...Object.fromEntries(lives.map((name, i) => [name, FIRST_ROW + ROW * i])),
    CP: pilot,
    PP: pilot + BELOW_PILOT,
    PE: pilot + 2 * BELOW_PILOT,
  } as Layout['rows'];
  const isBare = sheet.outlet === 'socket' && !position.plugged;
  const bottom = rows.PE + 22;
  const instrumentY = rows.PE + INSTRUMENT;
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
          : { x: columns.parting, y: y - 34 };
      case 'earth':
        return { x: columns.rod, y: y + 36 };
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
    height: instrumentY + FOOT,
    instrumentY,
    supplyX,
    outletX,
    terminals: new Map(
      terminalsOf(site)
        .filter(isShown)
        .map((terminal) => [terminal, place(terminal)]),
    ),
  };
}

/** The outlet's row names that there are on this site. */
export const namesAt = ({ lives }: Layout): readonly Conductor[] => [...lives, 'CP', 'PP', 'PE'];
