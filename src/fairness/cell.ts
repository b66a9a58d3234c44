/**
 * A cell of the dictionary: what one test lets a trainee see of one cause, in plain data. True values stand in it with
 * the bands that instruments may show, so that it holds for every seed's errors; and whether two cells could be told
 * apart at the bench.
 */
import type { Figure } from '../bench/band.ts';
import { BY_EAR, bandOf } from '../bench/band.ts';
import type { Operation } from '../bench/operation.ts';
import type { Truth } from '../bench/reading.ts';
import type { Refusal } from '../bench/refusal.ts';
import type { Seconds } from '../laws/quantities.ts';
import type { JudgedExpectation, JudgedLimit } from '../verification/assess.ts';
import type { Sample } from '../verification/observed.ts';

/** A figure of a display, or when a sound came, s after its operation began. */
export interface Shown extends Omit<Figure, 'name'> {
  readonly name: Figure['name'] | 'heard';
  /** What it was read of: quantity, and terminals or line; or which sound it was. */
  readonly of: string;
}

/** What operations show: all that is told without a figure as one text, and the figures in their order. */
interface Showing {
  readonly told: string;
  readonly figures: readonly Shown[];
}

export interface Cell {
  /** What was done, and seen on the way, before the test itself began. */
  readonly prepared: Showing & { readonly operations: string };
  readonly test: Showing;
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
  const shows = samples.map((sample, i) => {
    const truths = done.truths.slice(met, met + sample.readings.length);
    met += sample.readings.length;
    return showingOf(sample, truths, done.refused[i] ?? null, done.began?.[i] ?? null);
  });
  const operations = samples.slice(0, prepared).map(({ operation }) => textOf(operation));
  return {
    prepared: { operations: operations.join(';'), ...joined(shows.slice(0, prepared)) },
    test: joined(shows.slice(prepared)),
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

function showingOf(
  sample: Sample,
  truths: readonly Truth[],
  refused: Refusal | null,
  began: Seconds | null,
): Showing {
  const { operation, seen, events, found } = sample;
  const bands = truths.map(bandOf);
  const heard = began === null ? [] : events;
  const told = [
    textOf(operation),
    ...(began === null ? [] : [seen.indicator, seen.plug]),
    ...heard.map(({ what }) => what),
    ...found.map(({ where, what }) => `${where} ${JSON.stringify(what)}`),
    ...bands.map((band) => band.told),
    ...(refused === null ? [] : [`refused ${refused.id}`]),
  ];
  return {
    told: told.join('|'),
    figures: [
      ...bands.flatMap(({ figures }, i) => {
        const of = nameOf(truths[i] as Truth);
        return figures.map((figure) => ({ ...figure, of }));
      }),
      ...heard.map(({ what, at }): Shown => {
        const after = at - (began ?? 0);
        const half = BY_EAR / 2;
        return { name: 'heard', of: what, true: after, least: after - half, greatest: after + half };
      }),
    ],
  };
}

function nameOf({ quantity, details: { between, line, waveform, place } }: Truth): string {
  return [quantity, ...(between ?? []), line, waveform, place].filter((x) => x !== undefined).join(' ');
}

const joined = (shows: readonly Showing[]): Showing => ({
  told: shows.map(({ told }) => told).join('\n'),
  figures: shows.flatMap(({ figures }) => figures),
});

/** The same text for cells that show the same to the last digit. */
const contentOf = ({ prepared, test, broken }: Cell): string =>
  [
    prepared.operations,
    prepared.told,
    test.told,
    broken.join(),
    ...[...prepared.figures, ...test.figures].map((figure) => String(figure.true)),
  ].join('¦');

/** Keeps one object a content: most cells of a dictionary show what another does. */
export class Cells {
  private readonly known = new Map<string, Cell>();

  one(cell: Cell): Cell {
    const content = contentOf(cell);
    const known = this.known.get(content);
    if (known === undefined) this.known.set(content, cell);
    return known ?? cell;
  }
}

/**
 * How two cells of one test could be told apart at the bench; null where they could not. Preparations that were not the
 * same are no difference: they hang on what was done before, and what they showed was seen by whoever did them.
 */
export function difference(x: Cell, y: Cell): Difference | null {
  if (x === y) return null;
  const isAlikeBefore = x.prepared.operations === y.prepared.operations;
  return (isAlikeBefore ? differenceIn(x.prepared, y.prepared) : null) ?? differenceIn(x.test, y.test);
}

/** The figures of one reading, or what was seen, heard, done or refused otherwise. */
export type Difference =
  | { readonly what: 'told' }
  | { readonly what: 'figure'; readonly x: Shown; readonly y: Shown };

function differenceIn(x: Showing, y: Showing): Difference | null {
  if (x.told !== y.told) return { what: 'told' };
  for (const [i, one] of x.figures.entries()) {
    const other = y.figures[i];
    if (other === undefined) return { what: 'told' };
    if (one.greatest < other.least || other.greatest < one.least) return { what: 'figure', x: one, y: other };
  }
  return null;
}

/** How far two cells are from each other: of each figure the distance in half-widths, at most `MOST`, added up. */
export function distance(x: Cell, y: Cell): number {
  if (x === y) return 0;
  if (x.test.told !== y.test.told) return MOST;
  return x.test.figures.reduce((sum, one, i) => {
    const other = y.test.figures[i] as Shown;
    const widths = one.greatest - one.least + (other.greatest - other.least);
    const apart = one.true === other.true ? 0 : (2 * Math.abs(one.true - other.true)) / widths;
    return Math.min(MOST, sum + (Number.isFinite(apart) ? apart : 0));
  }, 0);
}
const MOST = 1000;
