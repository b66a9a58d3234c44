/**
 * An attempt that was converted from an older format, beside its file as it was written. Apart from the attempt itself,
 * so that what only keeps attempts comes without all that reads one.
 */

/** Under it stands a file of an older format as it was written. A file cannot hold it, and none is written with it. */
export const WRITTEN: unique symbol = Symbol.for('attempt as written');

/** An attempt's own file, in whichever format; with what its chain is about. */
export interface Written {
  format: number;
  engine: string;
  scenario?: unknown;
  trainee?: string | undefined;
  word?: string | undefined;
  rung?: 1 | 2 | 3 | 4 | undefined;
  given?: { id: string; held?: string | undefined; clears?: true | undefined } | undefined;
  marks?: unknown;
  entries: readonly { readonly kind: string; readonly hash: string }[];
}

type MayBeConverted = Written & { readonly [WRITTEN]?: Written };

/** What is kept, handed in and hashed: the file as it was written, where it was converted. */
export const asWritten = (attempt: MayBeConverted): Written => attempt[WRITTEN] ?? attempt;

/** Converted from an older format: it is told and marked, and not gone on with. */
export const isConverted = (attempt: MayBeConverted): boolean => attempt[WRITTEN] !== undefined;
