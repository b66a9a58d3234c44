/**
 * The trainee's leads as lines: from the instrument's circle to each terminal, joined terminals in a row under one
 * lead, and a short end towards the part that is not in view.
 */
import type { Terminal } from '../../bench/terminals.ts';
import type { Leads } from '../flow/leads.ts';
import { CLAMP, STAKES } from '../flow/leads.ts';
import type { Label, Point } from './figure.ts';
import { inLines, LETTERING, label, widthOf } from './figure.ts';
import type { Layout, Part } from './layout.ts';
import { PARTS, partOf } from './layout.ts';

/** Radius of the instrument's circle. */
export const INSTRUMENT_RADIUS = 16;
/** How far the circle stays from the edge, for what is written beside it. */
const MARGIN = { whole: { left: 40, right: 214 }, part: { left: 60, right: 104 } } as const;
/** The same where leads go on into another part. */
const AWAY_MARGIN = { left: 118, right: 118 };
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

export const NO_LEADS: LeadLines = {
  instrument: null,
  paths: [],
  discs: [],
  labels: [],
  words: { x: 0, y: 0, anchor: 'start' },
};

/** Where a lead's end stands, the electrode tester's clamp and stakes included. */
export function pointOf(layout: Layout, terminal: Terminal): Point | undefined {
  const { columns, rows } = layout;
  if (layout.view !== 'unit' && layout.view !== 'outlet') {
    if (terminal === CLAMP) return { x: columns.met, y: rows.PE + 14 };
    const stake = STAKES.indexOf(terminal as (typeof STAKES)[number]);
    if (stake >= 0)
      return layout.view === 'whole'
        ? { x: columns.met + 40 + 26 * stake, y: rows.PE + 58 }
        : { x: columns.met + 104 + 26 * stake, y: rows.PE + 22 };
  }
  return layout.terminals.get(terminal);
}

export function leadLines(layout: Layout, leads: Leads): LeadLines {
  if (leads.length === 0) return NO_LEADS;
  const { view, columns, instrument } = layout;
  const points = leads.map((ends) => ends.flatMap((t) => pointOf(layout, t) ?? []));
  const discs = points.flat();
  const margin = MARGIN[view === 'whole' ? 'whole' : 'part'];
  const mean =
    discs.length === 0 ? columns.width / 2 : discs.reduce((sum, { x }) => sum + x, 0) / discs.length;
  const hidden = new Set(
    leads
      .flat()
      .filter((t) => pointOf(layout, t) === undefined)
      .map(partOf),
  );
  const room = hidden.size === 0 ? margin : AWAY_MARGIN;
  const x = instrument.x ?? Math.min(columns.width - room.right, Math.max(room.left, mean - 34));
  const { y } = instrument;
  const lines = leads.flatMap((ends, i) => {
    const fan = FAN * (i - (leads.length - 1) / 2);
    return line(layout, ends, points[i] ?? [], view === 'outlet' ? { x, y: y + fan } : { x: x + fan, y });
  });
  const away = SIDES.flatMap((side) => awayLabel(layout, side, [...hidden]));
  const beside = INSTRUMENT_RADIUS + 8;
  const isRightTaken = away.some(({ anchor }) => anchor === 'end');
  return {
    instrument: { x, y },
    discs,
    labels: away,
    words:
      view === 'unit'
        ? { x: 2, y: y + 32, anchor: 'start' }
        : isRightTaken
          ? { x: x - beside, y: y + 5, anchor: 'end' }
          : { x: x + beside, y: y + (view === 'whole' ? -2 : 5), anchor: 'start' },
    paths: lines,
  };
}

function line(
  layout: Layout,
  ends: readonly Terminal[],
  seen: readonly Point[],
  from: Point,
): readonly string[] {
  const hidden = new Set(ends.filter((t) => pointOf(layout, t) === undefined).map(partOf));
  const away = [...hidden].map((part) => towards(layout, sideTo(layout, part), from));
  const [main, ...joined] = seen;
  if (main === undefined) return away;
  const side = sideOf(ends.find((t) => pointOf(layout, t) === main) ?? '', layout);
  return [
    curve(layout, from, main, side),
    ...joined.map((to, i) => jumper(seen[i] ?? main, to, side)),
    ...away,
  ];
}

/** From which side a lead comes to a terminal: from where fewest names stand; 0: from below. */
function sideOf(terminal: Terminal, { view, outletX, columns }: Layout): -1 | 0 | 1 {
  const [at] = terminal.split('.');
  if (at === 'origin') return 1;
  if (at === 'incoming' || at === 'supply') return -1;
  if (at !== 'outlet') return 0;
  return view === 'outlet' || (view === 'whole' && outletX === columns.unitRight) ? 1 : -1;
}

/** Out of the circle towards the terminal, from its rim: where it stands beside the terminals, to their side. */
function curve({ view }: Layout, from: Point, to: Point, side: -1 | 0 | 1): string {
  const rim = INSTRUMENT_RADIUS - 2;
  if (view === 'outlet') {
    const down = to.y - from.y;
    return `M${from.x - rim} ${from.y}C${from.x - 30} ${from.y} ${to.x + 34} ${to.y - 0.3 * down} ${to.x} ${to.y}`;
  }
  const start = to.y < from.y ? from.y - rim : from.y + rim;
  const down = to.y - start;
  return `M${from.x} ${start}C${from.x} ${start + 0.4 * down} ${to.x + 40 * side} ${to.y - 0.35 * down} ${to.x} ${to.y}`;
}

/** A clip from one terminal to the next, in a bow. */
const jumper = (from: Point, to: Point, side: -1 | 0 | 1): string => {
  const bow = 20 * (side === 0 ? -1 : side);
  return `M${from.x} ${from.y}C${from.x + bow} ${from.y} ${to.x + bow} ${to.y} ${to.x} ${to.y}`;
};

type Side = 'left' | 'right';
const SIDES = ['left', 'right'] as const satisfies readonly Side[];

/** On which side of the view another part lies. */
const sideTo = ({ view }: Layout, part: Part): Side =>
  view !== 'whole' && PARTS.indexOf(part) < PARTS.indexOf(view) ? 'left' : 'right';

const edgeAt = ({ columns }: Layout, side: Side): number => (side === 'left' ? 3 : columns.width - 3);

/** Along the instrument's row, to an arrow at the edge; at the outlet, where terminals are in its way, under the neutral. */
function towards(layout: Layout, side: Side, { x, y }: Point): string {
  const edge = edgeAt(layout, side);
  const back = side === 'left' ? 7 : -7;
  const row = layout.view === 'outlet' ? layout.rows.N + 24 : y;
  const down = row === y ? '' : `C${x - 40} ${y} ${x - 20} ${row} ${x - 60} ${row}`;
  return `M${x} ${y}${down}H${edge}m${back} -5L${edge} ${row}l${back} 5`;
}

function awayLabel(layout: Layout, side: Side, hidden: readonly Part[]): readonly Label[] {
  const parts = PARTS.filter((part) => hidden.includes(part) && sideTo(layout, part) === side);
  if (parts.length === 0) return [];
  const text = parts.length === 1 ? `to the ${parts[0]}` : `to ${parts.join(', ')}`;
  const anchor = side === 'left' ? 'start' : 'end';
  const { view, rows, instrument, columns } = layout;
  switch (view) {
    case 'outlet':
      return [label(columns.unitRight + 12, rows.N + 17, text)];
    case 'unit':
      return [label(edgeAt(layout, side), instrument.y - (side === 'left' ? 20 : 11), text, { anchor })];
    default:
      return [label(edgeAt(layout, side), instrument.y - 9, text, { anchor })];
  }
}

/** Heights that a reading may stand in: the greatest that fits. */
const READING_SIZES = [19, 14, LETTERING] as const;
/** From one line to the next under it. */
const LINE = 13;

interface Beside {
  readonly x: number;
  readonly anchor: Label['anchor'];
  readonly room: number;
  /** The base line of the reading, and how many lines there is room for, itself included. */
  readonly y: number;
  readonly most: number;
}

/**
 * What the instrument shows, and through which terminals, beside its circle: on the side where there is more room. A
 * reading that is too long is cut after what it is, and terminals that do not fit are left out: both stand in the bar.
 */
export function readingLabels(
  layout: Layout,
  lines: LeadLines,
  reading: string,
  between: string,
): readonly Label[] {
  if (lines.instrument === null) return [];
  const { x, y, anchor, room, most } = besides(layout, lines, lines.instrument);
  const size = READING_SIZES.find((one) => widthOf(reading, true, one) <= room) ?? LETTERING;
  const whole = inLines(reading, true, size, room);
  const shown = whole.length > most ? inLines(reading.split(':')[0] ?? '', true, size, room) : whole;
  const under = inLines(between, false, LETTERING, room);
  const all = shown.length + under.length > most ? shown : [...shown, ...under];
  return all.map((text, i) =>
    i < shown.length
      ? label(x, y + LINE * i, text, { anchor, bold: true, size })
      : label(x, y + LINE * i + 2, text, { anchor }),
  );
}

function besides(layout: Layout, { words, labels: away }: LeadLines, { x, y }: Point): Beside {
  const beside = INSTRUMENT_RADIUS + 8;
  switch (layout.view) {
    case 'outlet':
      return { x: x + beside, anchor: 'start', room: layout.width - x - beside - 2, y: y - 8, most: 3 };
    case 'unit':
      return { x: 2, anchor: 'start', room: layout.columns.unitLeft - 6, y: y + 32, most: 2 };
    default: {
      const anchor = away.length > 0 ? words.anchor : x > layout.width / 2 ? 'end' : 'start';
      const room = (anchor === 'end' ? x : layout.width - x) - beside - 4;
      const most = layout.view === 'origin' ? 2 : 4;
      return { x: anchor === 'end' ? x - beside : x + beside, anchor, room, y: y - 9, most };
    }
  }
}
