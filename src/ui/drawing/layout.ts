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
import type { Figure, Point } from './figure.ts';
import { label, labels } from './figure.ts';
import { oddLines } from './oddWords.ts';

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
    parting: 42,
    met: 92,
    incoming: 110,
    origin: 214,
    rod: 262,
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

/**
 * Three lines of a part leave room for one line of words above them: so it is no higher than a phone that lies has
 * room for, with its terminals still a finger's target apart.
 */
const HEADS = {
  roomy: { firstRow: 72, above: 20, below: 22, title: 16, lines: [30, 44] },
  tight: { firstRow: 27, above: 12, below: 12, title: 10, lines: [] },
} as const;

/**
 * Terminals of a part are a finger's target apart; room over the pilot for its second branch, and at the origin under
 * the neutral for the words of its devices.
 */
const GAPS = {
  whole: { row: 36, abovePilot: 54, belowPilot: 44, closer: 0 },
  origin: { row: 44, abovePilot: 50, belowPilot: 30, closer: 18 },
  unit: { row: 44, abovePilot: 44, belowPilot: 44, closer: 0 },
  outlet: { row: 44, abovePilot: 44, belowPilot: 44, closer: 0 },
} as const satisfies Readonly<Record<View, unknown>>;
/** A part is never higher, but where much is set out of the ordinary: a phone that lies has no more room. */
export const PART_HEIGHT = 316;
/** Beside the outlet of a part the stand-in has a corner cut out from here on: there the instrument is at hand. */
export const NOTCH = 36;
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
  /** Where titles stand over the columns, and the lines under a title as far as there is room for them. */
  readonly titleY: number;
  readonly lineYs: readonly number[];
  readonly top: number;
  readonly bottom: number;
  /** The instrument's circle: in its own place, or in a row of its own, as near to its leads as there is room. */
  readonly instrument: { readonly x: number | null; readonly y: number };
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
  const head = HEADS[view !== 'whole' && lives.length > 2 ? 'tight' : 'roomy'];
  const isTight = head === HEADS.tight;
  const pilot = head.firstRow + gaps.row * (lives.length - 1) + gaps.abovePilot - (isTight ? gaps.closer : 0);
  const rows = {
    ...Object.fromEntries(lives.map((name, i) => [name, head.firstRow + gaps.row * i])),
    CP: pilot,
    PP: pilot + gaps.belowPilot,
    PE: pilot + 2 * gaps.belowPilot,
  } as Layout['rows'];
  const isBare = sheet.outlet === 'socket' && !position.plugged;
  const top = head.firstRow - head.above;
  const bottom = rows.PE + head.below;
  const odd = oddLines(position, columns.width - columns.standInLeft - 2).length;
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
          : { x: columns.parting, y: view === 'whole' ? y - 34 : y };
      case 'house':
        return { x: columns.parting, y: view === 'whole' ? y - 34 : y };
      case 'earth':
        return { x: columns.rod, y: view === 'whole' ? y + 36 : rows.N + 38 };
      case 'case':
        return {
          x: (columns.unitLeft + columns.unitRight) / 2,
          y: view === 'whole' ? bottom : rows.N + 66,
        };
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
  const instrumentIn = (): Pick<Layout, 'instrument' | 'height'> => {
    switch (view) {
      case 'whole': {
        const y = Math.max(rows.PE + 84, bottom + 14 * odd + 36);
        return { instrument: { x: null, y }, height: y + 36 };
      }
      case 'origin':
        return { instrument: { x: null, y: rows.PE + 48 }, height: rows.PE + 65 };
      case 'unit':
        return { instrument: { x: 52, y: rows.N + 36 }, height: isTight ? PART_HEIGHT : bottom + 22 };
      case 'outlet':
        return {
          instrument: { x: columns.standInLeft + NOTCH + 20, y: top + 32 },
          height: isTight ? PART_HEIGHT : bottom + 22 + 14 * Math.max(0, odd - 1),
        };
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
    titleY: head.title,
    lineYs: head.lines,
    top,
    bottom,
    width: columns.width,
    ...instrumentIn(),
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

/** A title over a column and what is said under it, as far as there is room. */
export const heading = (
  { titleY, lineYs }: Layout,
  x: number,
  title: string,
  ...lines: readonly string[]
): Figure =>
  labels(
    label(x, titleY, title, { bold: true }),
    ...lineYs.slice(0, lines.length).map((y, i) => label(x, y, lines[i] ?? '')),
  );

/** The outlet's row names that there are on this site. */
export const namesAt = ({ lives }: Layout): readonly Conductor[] => [...lives, 'CP', 'PP', 'PE'];
