/**
 * Where things stand on the drawing of an installation: one place for every terminal that a lead can be put on, by
 * the same names as at the bench. Lengths are in drawing units, about one to a CSS pixel on a desk.
 */
import type { Terminal } from '../../bench/terminals.ts';
import { terminalsOf } from '../../bench/terminals.ts';
import type { CONDUCTORS } from '../../laws/conductors.ts';
import { livesOf } from '../../site/site.ts';
import type { Papers } from '../../verification/testAction.ts';

type Conductor = (typeof CONDUCTORS)[number];

export interface Point {
  readonly x: number;
  readonly y: number;
}

export const WIDTH = 780;
const FIRST_ROW = 62;
const ROW = 24;

/** Across, from the supply to the far side of the stand-in. */
export const X = {
  star: 24,
  source: 48,
  join: 82,
  met: 100,
  originLeft: 126,
  originRight: 180,
  unitLeft: 300,
  unitRight: 412,
  cableStart: 440,
  cableEnd: 546,
  standInLeft: 580,
  standInRight: 772,
} as const;

export interface Layout {
  readonly lives: readonly Conductor[];
  readonly rows: Readonly<Record<Conductor, number>>;
  readonly top: number;
  readonly bottom: number;
  readonly height: number;
  /** Where the outlet's terminals are: the far end of a cable, or the bare socket. */
  readonly outletX: number;
  readonly terminals: Readonly<Record<Terminal, Point>>;
}

export function layoutOf({ site, sheet }: Papers, plugged: boolean): Layout {
  const lives = livesOf(site);
  const names: readonly Conductor[] = [...lives, 'CP', 'PP', 'PE'];
  const rows = Object.fromEntries(names.map((name, i) => [name, FIRST_ROW + ROW * i])) as Layout['rows'];
  const bottom = rows.PE + 22;
  const outletX = sheet.outlet === 'socket' && !plugged ? X.unitRight : X.cableEnd;
  const place = (terminal: Terminal): Point => {
    const [at = '', conductor] = terminal.split('.');
    const y = rows[(conductor ?? 'PE') as Conductor];
    switch (at) {
      case 'met':
        return { x: X.met, y };
      case 'earth':
        return { x: X.met + 60, y: rows.PE + 56 };
      case 'case':
        return { x: (X.unitLeft + X.unitRight) / 2, y: bottom };
      case 'origin':
        return { x: X.originRight, y };
      case 'supply':
        return { x: X.unitLeft, y };
      default:
        return { x: outletX, y };
    }
  };
  return {
    lives,
    rows,
    top: FIRST_ROW - 22,
    bottom,
    height: rows.PE + 96,
    outletX,
    terminals: Object.fromEntries(terminalsOf(site).map((terminal) => [terminal, place(terminal)])),
  };
}
