/**
 * A cell of the dictionary: what one test lets a trainee see of one cause, in plain data. True values stand in it with
 * the bands that instruments may show, so that it holds for every seed's errors; and whether two cells could be told
 * apart at the bench.
 */

import type { Operation } from '../bench/operation.ts';
import type { Truth } from '../bench/reading.ts';
import { bandOf } from '../bench/reading.ts';
import type { AnyFields, Figure } from '../bench/readings/quantity.ts';
import type { Refusal } from '../bench/refusal.ts';
import { BY_EAR } from '../bench/world.ts';
import type { Seconds } from '../laws/quantities.ts';
import type { JudgedExpectation } from '../verification/assess.ts';
import type { JudgedLimit } from '../verification/judgeLimit.ts';
import type { Sample } from '../verification/observed.ts';

/** A figure of a display, or when a sound came, s after its operation began. */
export interface Shown extends Omit<Figure, 'name'> {
  readonly name: Figure['name'] | 'heard';
  /** What it was read of: quantity, and terminals or line. */
  readonly of: string;
}

/** What one operation showed. */
interface Glance {
  /** What was done, written as in a log. */
  readonly operation: string;
  /** What is seen and heard, found by looking or refused, as one text. */
  readonly seen: string;
  /** What instruments met. */
  readonly truths: readonly Truth[];
  /** When each sound came, s after the operation began; null where sounds are not told. */
  readonly heard: readonly Seconds[] | null;
}

export interface Cell {
  /** What was done on the way to where the test begins. */
  readonly prepared: readonly Glance[];
  readonly test: readonly Glance[];
  /** Broken lines and failed limits by their ids, judged on what the instruments showed. */
  readonly broken: readonly string[];
}

/** What was done in one test, and when each operation began. */
export interface Done {
  readonly samples: readonly Sample[];
  readonly prepared: number;
  /** Why nothing was done, of each operation; on a sheet nothing was refused. */
  readonly refused: readonly (Refusal | null)[];
  /** Of every reading in its order. */
  readonly truths: readonly Truth[];
  /** Seconds of bench time; without them, as on a sheet that was handed over, sounds are not told. */
  readonly began: readonly Seconds[] | null;
}

export interface Judged {
  readonly expectations: readonly JudgedExpectation[];
  readonly limits: readonly JudgedLimit[];
}

export function cellOf(done: Done, judged: Judged): Cell {
  const { samples, prepared } = done;
  let met = 0;
  const glances = samples.map((sample, i) => {
    const truths = done.truths.slice(met, met + sample.readings.length);
    met += sample.readings.length;
    return glanceOf(sample, truths, done.refused[i] ?? null, done.began?.[i] ?? null);
  });
  return {
    prepared: glances.slice(0, prepared),
    test: glances.slice(prepared),
    broken: brokenIn(judged),
  };
}

const brokenIn = ({ expectations, limits }: Judged): readonly string[] => [
  ...expectations.filter(({ finding }) => finding === 'broken').map(({ expectation }) => expectation.id),
  ...limits.filter(({ pass }) => !pass).map(({ limit }) => limit.id),
];

const texts = new WeakMap<Operation, string>();

/** Procedures hand in the same objects again and again. */
function textOf(operation: Operation): string {
  const known = texts.get(operation);
  if (known !== undefined) return known;
  const text = JSON.stringify(operation);
  texts.set(operation, text);
  return text;
}

function glanceOf(
  { operation, seen, events, found }: Sample,
  truths: readonly Truth[],
  refused: Refusal | null,
  began: Seconds | null,
): Glance {
  let text = began === null ? '' : `${seen.indicator}|${seen.plug}`;
  if (began !== null) for (const { what } of events) text += `|${what}`;
  for (const { where, what } of found) text += `|${where} ${JSON.stringify(what)}`;
  if (refused !== null) text += `|refused ${refused.id}`;
  return {
    operation: textOf(operation),
    seen: text,
    truths,
    heard: began === null ? null : events.map(({ at }) => at - began),
  };
}

/** Keeps one object a content: most cells of a dictionary show what another does. */
export class Cells {
  private readonly known = new Map<string, Cell>();
  private readonly operations = new Map<string, number>();

  one(cell: Cell): Cell {
    const content = this.contentOf(cell);
    const known = this.known.get(content);
    if (known === undefined) this.known.set(content, cell);
    return known ?? cell;
  }

  /** The same text for cells that show the same to the last digit. */
  private contentOf({ prepared, test, broken }: Cell): string {
    let text = `${prepared.length};${broken.join()}`;
    for (const glances of [prepared, test])
      for (const { operation, seen, truths, heard } of glances) {
        text += `;${this.numberOf(operation)} ${seen}`;
        for (const truth of truths) text += ` ${contentOf(truth)}`;
        for (const at of heard ?? []) text += ` ${at}`;
      }
    return text;
  }

  private numberOf(operation: string): number {
    const known = this.operations.get(operation) ?? this.operations.size;
    this.operations.set(operation, known);
    return known;
  }
}

/** Where the leads were is the operation's. */
function contentOf(truth: Truth): string {
  if ('refused' in truth) return truth.refused.id;
  let text = String(truth.value);
  for (const field of Object.values(truth.details)) if (!Array.isArray(field)) text += `,${field}`;
  return text;
}

/**
 * How two cells of one test could be told apart at the bench; null where they could not. Preparations that were not the
 * same are no difference: they hang on what was done before, and what they showed was seen by whoever did them.
 */
export function difference(x: Cell, y: Cell): Difference | null {
  if (x === y) return null;
  const isAlikeBefore =
    x.prepared.length === y.prepared.length &&
    x.prepared.every(({ operation }, i) => operation === y.prepared[i]?.operation);
  if (isAlikeBefore && differenceIn(x.prepared, y.prepared) !== null) return { what: 'told' };
  return differenceIn(x.test, y.test);
}

/** What was seen, heard, done or refused otherwise, or the first figure whose bands do not meet. */
export type Difference =
  | { readonly what: 'told' }
  | { readonly what: 'figure'; readonly place: Place; readonly x: Shown; readonly y: Shown };

/** Where a figure stands in a test: of which operation, and which of its figures. */
export interface Place {
  readonly operation: number;
  readonly figure: number;
}

function differenceIn(x: readonly Glance[], y: readonly Glance[]): Difference | null {
  let far: Difference | null = null;
  for (const [operation, one] of x.entries()) {
    const other = y[operation];
    if (other === undefined || !toldAlike(one, other)) return { what: 'told' };
    far ??= figureApart(one, other, operation);
  }
  return x.length === y.length ? far : { what: 'told' };
}

/** Two things met by an instrument, of the same quantity at the same place, that it could show alike. */
export function areAlike(x: Truth, y: Truth): boolean {
  if (nameOf(x) !== nameOf(y)) return false;
  const [one, other] = [bandOf(x), bandOf(y)];
  return (
    one.told === other.told &&
    one.figures.every(({ least, greatest }, i) => {
      const its = other.figures[i];
      return its !== undefined && greatest >= its.least && its.greatest >= least;
    })
  );
}

/** Everything but the figures. */
function toldAlike(x: Glance, y: Glance): boolean {
  if (x.operation !== y.operation || x.seen !== y.seen || x.truths.length !== y.truths.length) return false;
  return x.truths.every((truth, i) => {
    const other = y.truths[i] as Truth;
    return truth === other || bandOf(truth).told === bandOf(other).told;
  });
}

function figureApart(x: Glance, y: Glance, operation: number): Difference | null {
  const others = figuresOf(y);
  for (const [figure, one] of figuresOf(x).entries()) {
    const other = others[figure];
    if (other === undefined) return { what: 'told' };
    if (one.greatest < other.least || other.greatest < one.least)
      return { what: 'figure', place: { operation, figure }, x: one, y: other };
  }
  return null;
}

/** A figure of a cell; undefined where it has none there. */
export const figureAt = ({ test }: Cell, { operation, figure }: Place): Shown | undefined => {
  const glance = test[operation];
  return glance === undefined ? undefined : figuresOf(glance)[figure];
};

/** Worked out when it is asked for: most cells are never looked at so closely. */
const figures = new WeakMap<Glance, readonly Shown[]>();

function figuresOf(glance: Glance): readonly Shown[] {
  const known = figures.get(glance);
  if (known !== undefined) return known;
  const { truths, heard } = glance;
  const half = BY_EAR / 2;
  const shown = [
    ...truths.flatMap((truth) => bandOf(truth).figures.map((figure) => ({ ...figure, of: nameOf(truth) }))),
    ...(heard ?? []).map(
      (after): Shown => ({ name: 'heard', of: '', true: after, least: after - half, greatest: after + half }),
    ),
  ];
  figures.set(glance, shown);
  return shown;
}

function nameOf({ quantity, details }: Truth): string {
  const { between, line, waveform, place }: AnyFields = details;
  return [quantity, ...(between ?? []), line, waveform, place].filter((x) => x !== undefined).join(' ');
}

/** How far two cells are from each other: of each figure the distance in half-widths, at most `MOST` together. */
export function distance(x: Cell, y: Cell): number {
  if (x === y) return 0;
  let sum = 0;
  for (const [operation, glance] of x.test.entries()) {
    const other = y.test[operation];
    if (other === undefined || !toldAlike(glance, other)) return MOST;
    const others = figuresOf(other);
    for (const [i, one] of figuresOf(glance).entries()) {
      const its = others[i] as Shown;
      const widths = one.greatest - one.least + (its.greatest - its.least);
      const apart = one.true === its.true ? 0 : (2 * Math.abs(one.true - its.true)) / widths;
      if (Number.isFinite(apart)) sum += apart;
    }
  }
  return Math.min(MOST, sum);
}
const MOST = 1000;
