/**
 * Where everything stands on the drawing of an opened unit, by the papers alone: rows for the conductors, columns
 * from the origin to the outlet, and the spot of every place that a difference can name. Lengths are in drawing units,
 * about one to a CSS pixel on a phone.
 */
import type { Terminal } from '../../../bench/terminals.ts';
import type { Live } from '../../../laws/conductors.ts';
import { livesOf } from '../../../site/site.ts';
import type { Papers } from '../../../verification/testAction.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export const WIDTH = 352;

/** Across. A contact runs from its hinge to its fixed end. */
export const X = {
  name: 4,
  line: 24,
  originHinge: 30,
  originFixed: 50,
  originRing: 60,
  supply: 92,
  breakerHinge: 100,
  breakerFixed: 118,
  residual: 134,
  direct: 162,
  hinge: 182,
  fixed: 208,
  figure: 245,
  edge: 278,
  outlet: 294,
  instrument: 333,
  controlLeft: 98,
  controlRight: 176,
  resistor: 192,
  met: 24,
  bar: 134,
} as const;

const FIRST_ROW = 60;
const ROW = 40;

export interface Layout {
  readonly lives: readonly Live[];
  readonly rows: Readonly<Record<string, number>>;
  readonly top: number;
  readonly bottom: number;
  readonly height: number;
  /** Top of the control's box. */
  readonly control: number;
  readonly coil: number;
}

export function openedLayout({ site }: Papers): Layout {
  const lives = livesOf(site);
  const last = FIRST_ROW + ROW * (lives.length - 1);
  const control = last + 26;
  const rows: Record<string, number> = Object.fromEntries(
    lives.map((live, i) => [live, FIRST_ROW + ROW * i]),
  );
  rows.CP = control + 50;
  rows.PP = rows.CP + 32;
  rows.PE = rows.PP + 30;
  const bottom = rows.PE + 22;
  return { lives, rows, top: 24, bottom, height: bottom + 52, control, coil: control + 8 };
}

const row = ({ rows }: Layout, name: string): number => rows[name] ?? rows.PE ?? 0;

/** Where a terminal of the bench is on the drawing, or null where it is not drawn. */
export function terminalAt(layout: Layout, terminal: Terminal): Point | null {
  const [place = '', conductor = 'PE'] = terminal.split('.');
  const y = row(layout, conductor);
  switch (place) {
    case 'met':
      return { x: X.met, y: row(layout, 'PE') };
    case 'earthing':
    case 'earth':
      return { x: X.met, y: row(layout, 'PE') + 26 };
    case 'case':
      return { x: X.bar, y: layout.bottom };
    case 'incoming':
      return { x: X.line, y };
    case 'origin':
      return { x: X.originFixed + 22, y };
    case 'supply':
      return { x: X.supply, y };
    case 'outlet':
      return { x: X.outlet, y };
    default:
      return null;
  }
}

/** The middle of the live conductors' rows. */
export const middle = ({ rows, lives }: Layout): number =>
  lives.reduce((sum, live) => sum + (rows[live] ?? 0), 0) / lives.length;

/** Spots of single places; those of a conductor are worked out below. */
function spots(layout: Layout): Readonly<Record<string, Point>> {
  const { rows, control, coil, bottom, top, lives } = layout;
  const first = rows[lives[0] ?? 'N'] ?? 0;
  const { CP = 0, PP = 0, PE = 0 } = rows;
  const between = middle(layout);
  return {
    supply: { x: X.line, y: first },
    'origin.breaker': { x: X.originFixed - 6, y: first },
    'origin.residual': { x: X.originRing, y: between },
    'unit.breaker': { x: X.breakerFixed - 6, y: first },
    residual: { x: X.residual, y: first - 8 },
    direct: { x: X.direct, y: first - 8 },
    coil: { x: X.hinge + 13, y: coil + 8 },
    'contactor.watch': { x: X.hinge + 13, y: coil - 8 },
    control: { x: (X.controlLeft + X.controlRight) / 2, y: control + 26 },
    'pilot.resistor': { x: X.resistor + 10, y: CP },
    'pilot.conductor': { x: X.edge - 8, y: CP },
    'pilot.outlet': { x: X.outlet, y: CP },
    proximity: { x: X.resistor + 10, y: PP },
    coding: { x: X.outlet, y: PP },
    lock: { x: X.outlet, y: top + 8 },
    bar: { x: X.bar, y: PE },
    met: { x: X.met, y: PE },
    earthing: { x: X.met, y: PE + 20 },
    electrode: { x: X.met, y: PE + 20 },
    case: { x: X.bar, y: bottom },
    arrester: { x: X.bar + 24, y: PE - 10 },
    'pe.supply': { x: X.supply - 30, y: PE },
    'pe.pole': { x: X.breakerFixed - 8, y: PE },
    'pe.outlet': { x: X.figure - 22, y: PE },
    'pe.cable': { x: X.edge + 2, y: PE },
    'insulation.circuit': { x: X.supply - 16, y: between },
    'insulation.outlet': { x: X.outlet - 8, y: between },
    // Whoever tests stands beside the unit.
    tester: { x: X.edge - 40, y: bottom },
    'seen.enclosure': { x: X.edge - 40, y: top },
    'seen.terminals': { x: X.supply, y: between },
    'seen.protective devices': { x: X.originFixed - 6, y: first },
    'seen.outlet': { x: X.outlet, y: between },
    'seen.cable': { x: X.outlet, y: between },
    'seen.position': { x: X.edge - 40, y: bottom },
    'seen.labels': { x: X.originFixed - 6, y: first },
  };
}

/** Where a difference is ringed; null for what has no place on the drawing, such as a sound. */
export function spotOf(layout: Layout, place: string): Point | null {
  const found = spots(layout)[place];
  if (found !== undefined) return found;
  const [kind = '', ...rest] = place.split('.');
  const name = rest.join('.');
  switch (kind) {
    case 'pole':
      return { x: X.hinge + 13, y: row(layout, name) };
    case 'circuit':
      return { x: X.supply - 14, y: row(layout, name) };
    case 'volts':
      return terminalAt(layout, name);
    default:
      return null;
  }
}
