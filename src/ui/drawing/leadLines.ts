/**
 * The trainee's leads as lines: from the instrument's circle to each terminal, joined terminals in a row under one
 * lead, and a short end towards the part that is not in view.
 */
import type { Terminal } from '../../bench/terminals.ts';
import type { Leads } from '../flow/leads.ts';
import { CLAMP, STAKES } from '../flow/leads.ts';
import type { Label, Point } from './figure.ts';
import { LETTERING, label, widthOf } from './figure.ts';
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
    if (stake >= 0) return { x: columns.met + 40 + 26 * stake, y: rows.PE + 58 };
  }
  return layout.terminals.get(terminal);
}

export function leadLines(layout: Layout, leads: Leads): LeadLines {
  if (leads.length === 0) return NO_LEADS;
  const { view, columns, instrumentY } = layout;
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
  const x = Math.min(columns.width - room.right, Math.max(room.left, mean - 34));
  const lines = leads.flatMap((ends, i) =>
    line(layout, ends, points[i] ?? [], { x: x + FAN * (i - (leads.length - 1) / 2), y: instrumentY }),
  );
  const away = SIDES.flatMap((side) => awayLabel(layout, side, [...hidden]));
  const beside = INSTRUMENT_RADIUS + 8;
  const isRightTaken = away.some(({ anchor }) => anchor === 'end');
  return {
    instrument: { x, y: instrumentY },
    discs,
    labels: away,
    words: isRightTaken
      ? { x: x - beside, y: instrumentY + 5, anchor: 'end' }
      : { x: x + beside, y: instrumentY + (view === 'whole' ? -2 : 5), anchor: 'start' },
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
  return [curve(from, main, side), ...joined.map((to, i) => jumper(seen[i] ?? main, to, side)), ...away];
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

type Side = 'left' | 'right';
const SIDES = ['left', 'right'] as const satisfies readonly Side[];

/** On which side of the view another part lies. */
const sideTo = ({ view }: Layout, part: Part): Side =>
  view !== 'whole' && PARTS.indexOf(part) < PARTS.indexOf(view) ? 'left' : 'right';

const edgeAt = ({ columns }: Layout, side: Side): number => (side === 'left' ? 3 : columns.width - 3);

/** Along the instrument's row, to an arrow at the edge. */
function towards(layout: Layout, side: Side, { x, y }: Point): string {
  const edge = edgeAt(layout, side);
  const back = side === 'left' ? 7 : -7;
  return `M${x} ${y}H${edge}m${back} -5L${edge} ${y}l${back} 5`;
}

function awayLabel(layout: Layout, side: Side, hidden: readonly Part[]): readonly Label[] {
  const parts = PARTS.filter((part) => hidden.includes(part) && sideTo(layout, part) === side);
  if (parts.length === 0) return [];
  const text = parts.length === 1 ? `to the ${parts[0]}` : `to ${parts.join(', ')}`;
  const anchor = side === 'left' ? 'start' : 'end';
  return [label(edgeAt(layout, side), layout.instrumentY - 9, text, { anchor })];
}

/** Heights that a reading may stand in: the greatest that fits. */
const READING_SIZES = [19, 14, LETTERING] as const;
/** Where its lines stand beside the circle; lower, where a lead goes off on either side. */
const BESIDE = { reading: -9, words: [6, 19, 32] } as const;
const BELOW_BOTH = { reading: 16, words: [30] } as const;

/** What the instrument shows, and through which terminals, beside its circle: on the side where there is more room. */
export function readingLabels(
  layout: Layout,
  { instrument, words, labels: away }: LeadLines,
  reading: string,
  between: string,
): readonly Label[] {
  if (instrument === null) return [];
  const { x, y } = instrument;
  const beside = INSTRUMENT_RADIUS + 8;
  const anchor = away.length > 0 ? words.anchor : x > layout.width / 2 ? 'end' : 'start';
  const room = (anchor === 'end' ? x : layout.width - x) - beside - 4;
  const at = anchor === 'end' ? x - beside : x + beside;
  const lines = away.length > 1 ? BELOW_BOTH : BESIDE;
  const size = READING_SIZES.find((one) => widthOf(reading, true, one) <= room) ?? LETTERING;
  const [shown = '', ...more] = inLines(reading, true, size, room);
  const under = [...more, ...inLines(between, false, LETTERING, room)];
  // At the outlet there is one line under the reading: what is longer stands in the bar.
  const most = layout.view === 'outlet' ? 1 : lines.words.length;
  const fits = layout.view !== 'outlet' || under.length <= most;
  return [
    label(at, y + lines.reading, shown, { anchor, bold: true, size }),
    ...(fits ? under : more)
      .slice(0, most)
      .map((text, i) => label(at, y + (lines.words[i] ?? 0), text, { anchor })),
  ];
}

/** As many words a line as there is room for. */
function inLines(text: string, bold: boolean, size: number, room: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && widthOf(longer, bold, size) <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
