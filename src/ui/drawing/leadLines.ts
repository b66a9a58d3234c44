/**
 * The trainee's leads as lines: from the instrument's circle to each terminal, joined terminals in a row under one
 * lead, and a short end towards the part that is not in view.
 */
import type { Terminal } from '../../bench/terminals.ts';
import type { Leads } from '../flow/leads.ts';
import { CLAMP, STAKES } from '../flow/leads.ts';
import type { Label, Point } from './figure.ts';
import { label } from './figure.ts';
import type { Layout, Part } from './layout.ts';
import { PARTS, partOf } from './layout.ts';

/** Radius of the instrument's circle. */
export const INSTRUMENT_RADIUS = 16;
/** How far the circle stays from the edge, for what is written beside it. */
const MARGIN = { whole: { left: 40, right: 214 }, part: { left: 60, right: 104 } } as const;
/** Leads come out of the circle this far apart. */
const FAN = 5;

export interface LeadLines {
  /** The instrument's circle, or null where no lead is anywhere. */
  readonly instrument: Point | null;
  readonly paths: readonly string[];
  readonly discs: readonly Point[];
  /** `to the origin`: where a lead goes that is not in view. */
  readonly labels: readonly Label[];
  /** Where it says whose leads they are: on the side of the circle to which none goes. */
  readonly words: Pick<Label, 'x' | 'y' | 'anchor'>;
}

const NO_WORDS = { x: 0, y: 0, anchor: 'start' } as const;

const PART_WORDS: Readonly<Record<Part, string>> = {
  origin: 'to the origin',
  unit: 'to the unit',
  outlet: 'to the outlet',
};

/** Where a lead's end stands, the electrode tester's clamp and stakes included. */
export function pointOf(layout: Layout, terminal: Terminal): Point | undefined {
  const { columns, rows } = layout;
  if (layout.view !== 'unit' && layout.view !== 'outlet') {
    if (terminal === CLAMP) return { x: columns.met, y: rows.PE + 14 };
    const stake = STAKES.indexOf(terminal as (typeof STAKES)[number]);
    if (stake >= 0) return { x: columns.met + 40 + 26 * stake, y: rows.PE + 44 };
  }
  return layout.terminals.get(terminal);
}

export function leadLines(layout: Layout, leads: Leads): LeadLines {
  if (leads.length === 0) return { instrument: null, paths: [], discs: [], labels: [], words: NO_WORDS };
  const { view, columns, instrumentY } = layout;
  const points = leads.map((ends) => ends.flatMap((t) => pointOf(layout, t) ?? []));
  const discs = points.flat();
  const margin = MARGIN[view === 'whole' ? 'whole' : 'part'];
  const mean =
    discs.length === 0 ? columns.width / 2 : discs.reduce((sum, { x }) => sum + x, 0) / discs.length;
  const x = Math.min(columns.width - margin.right, Math.max(margin.left, mean - 34));
  const instrument = { x, y: instrumentY };
  const lines = leads.map((ends, i) => {
    const start = x + FAN * (i - (leads.length - 1) / 2);
    return line(layout, ends, points[i] ?? [], { x: start, y: instrumentY });
  });
  const away = [...new Map(lines.flatMap((l) => l.away).map((l) => [l.text, l])).values()];
  const beside = INSTRUMENT_RADIUS + 8;
  const isRightTaken = away.some(({ anchor }) => anchor === 'end');
  return {
    instrument,
    discs,
    labels: away,
    words: isRightTaken
      ? { x: x - beside, y: instrumentY + 5, anchor: 'end' }
      : { x: x + beside, y: instrumentY + (view === 'whole' ? -2 : 5), anchor: 'start' },
    paths: lines.flatMap(({ paths }) => paths),
  };
}

interface Line {
  readonly paths: readonly string[];
  readonly away: readonly Label[];
}

function line(layout: Layout, ends: readonly Terminal[], seen: readonly Point[], from: Point): Line {
  const hidden = ends.filter((t) => pointOf(layout, t) === undefined).map(partOf);
  const [main, ...joined] = seen;
  const away = [...new Set(hidden)].map((part) => towards(layout, part, from));
  if (main === undefined) return { paths: away.map(({ d }) => d), away: away.map((a) => a.label) };
  const side = sideOf(ends.find((t) => pointOf(layout, t) === main) ?? '', layout);
  const jumps = joined.map((to, i) => jumper(seen[i] ?? main, to, side));
  return {
    paths: [curve(from, main, side), ...jumps, ...away.map(({ d }) => d)],
    away: away.map((a) => a.label),
  };
}

/** From which side a lead comes to a terminal: from where fewest names stand; 0: from below. */
function sideOf(terminal: Terminal, { outletX, columns }: Layout): -1 | 0 | 1 {
  const [at] = terminal.split('.');
  if (at === 'origin') return 1;
  if (at === 'incoming' || at === 'supply') return -1;
  if (at !== 'outlet') return 0;
  return outletX === columns.unitRight ? 1 : -1;
}

function curve(from: Point, to: Point, side: -1 | 0 | 1): string {
  const down = from.y - INSTRUMENT_RADIUS - to.y;
  const top = from.y - INSTRUMENT_RADIUS + 2;
  return `M${from.x} ${top}C${from.x} ${top - 0.4 * down} ${to.x + 40 * side} ${to.y + 0.35 * down} ${to.x} ${to.y}`;
}

/** A clip from one terminal to the next, in a bow. */
const jumper = (from: Point, to: Point, side: -1 | 0 | 1): string => {
  const bow = 20 * (side === 0 ? -1 : side);
  return `M${from.x} ${from.y}C${from.x + bow} ${from.y} ${to.x + bow} ${to.y} ${to.x} ${to.y}`;
};

function towards({ view, columns }: Layout, part: Part, { x, y }: Point): { d: string; label: Label } {
  const isBefore = PARTS.indexOf(part) < PARTS.indexOf(view === 'whole' ? 'origin' : view);
  const edge = isBefore ? 3 : columns.width - 3;
  return {
    d: `M${x} ${y}H${edge}m${isBefore ? 7 : -7} -5L${edge} ${y}l${isBefore ? 7 : -7} 5`,
    label: label(edge, y - 9, PART_WORDS[part], { anchor: isBefore ? 'start' : 'end' }),
  };
}
