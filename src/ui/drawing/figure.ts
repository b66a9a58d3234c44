/**
 * What a drawing is made of before anything draws it: shapes and labels as data, so that a test can look at them.
 * Lengths are in drawing units, at least one CSS pixel each. How wide a text comes out is estimated from above.
 */

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Line weights and fills by what is drawn; the values are in the style sheet. */
export type Look =
  | 'conductor'
  | 'earth'
  | 'symbol'
  | 'box'
  | 'enclosure'
  | 'contact'
  | 'linkage'
  | 'ring'
  | 'joint'
  | 'dimension';

/** `changed`: where it goes at the lock, not yet where it is; drawn dashed. */
export type Shape =
  | { readonly kind: 'path'; readonly look: Look; readonly changed?: boolean; readonly d: string }
  | {
      readonly kind: 'circle';
      readonly look: Look;
      readonly changed?: boolean;
      readonly x: number;
      readonly y: number;
      readonly r: number;
    }
  | {
      readonly kind: 'rect';
      readonly look: Look;
      readonly changed?: boolean;
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    };

export interface Label {
  readonly text: string;
  /** The base line: of its beginning, middle or end. */
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly bold: boolean;
  /** Height of the lettering where it is not the usual one. */
  readonly size?: number;
  /** A state that a hand has set: it follows the text, bold. */
  readonly state?: StateWords;
}

export interface StateWords {
  readonly text: string;
  /** Whether it can be touched now: then it is underlined. */
  readonly acts: boolean;
}

export interface Figure {
  readonly shapes: readonly Shape[];
  readonly labels: readonly Label[];
}

export const EMPTY: Figure = { shapes: [], labels: [] };

export const together = (...figures: readonly Figure[]): Figure => ({
  shapes: figures.flatMap(({ shapes }) => shapes),
  labels: figures.flatMap(({ labels }) => labels),
});

export const shapes = (...list: readonly Shape[]): Figure => ({ shapes: list, labels: [] });
export const labels = (...list: readonly Label[]): Figure => ({ shapes: [], labels: list });

export const path = (look: Look, d: string): Shape => ({ kind: 'path', look, d });
export const rect = (look: Look, x: number, y: number, width: number, height: number): Shape => ({
  kind: 'rect',
  look,
  x,
  y,
  width,
  height,
});
/** The same shapes as they will be at the lock, where that is not how they are. */
export const dashedIf = <T extends Shape>(changed: boolean, ...list: readonly T[]): readonly T[] =>
  changed ? list.map((shape) => ({ ...shape, changed })) : list;

/** A small filled dot: conductors that are joined. A crossing has none. */
export const joint = (x: number, y: number): Shape => ({ kind: 'circle', look: 'joint', x, y, r: 2.75 });

interface Lettering {
  readonly anchor?: Label['anchor'];
  readonly bold?: boolean;
  readonly size?: number;
  readonly state?: StateWords;
}

export const label = (
  x: number,
  y: number,
  text: string,
  { anchor = 'start', bold = false, ...more }: Lettering = {},
): Label => ({ text, x, y, anchor, bold, ...more });

/** Height of the lettering, in drawing units. */
export const LETTERING = 12;

/** Widths of characters as shares of the lettering's height, in the widest sans-serif fonts that a system may give. */
const NARROW = /[iljtfrI.,:;'’“”|()/ \u00a0²]/;
const WIDE = /[mwMWΩ—]/;
const CAPITAL = /[A-ZΔ+]/;
const BOLD = 1.1;

export function widthOf(text: string, bold = false, size = LETTERING): number {
  const shares = [...text].reduce(
    (sum, character) =>
      sum +
      (NARROW.test(character) ? 0.4 : WIDE.test(character) ? 0.98 : CAPITAL.test(character) ? 0.76 : 0.63),
    0,
  );
  return shares * size * (bold ? BOLD : 1);
}

/** As many words a line as there is room for. */
export function inLines(text: string, bold: boolean, size: number, room: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && widthOf(longer, bold, size) <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The space that a label takes at most. */
export function boxOf({ text, x, y, anchor, bold, size = LETTERING, state }: Label): Box {
  const width = widthOf(text, bold, size) + (state === undefined ? 0 : widthOf(state.text, true, size));
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { left, right: left + width, top: y - 0.8 * size, bottom: y + 0.24 * size };
}

export const meet = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
