/**
 * An attempt that was converted from an older format, beside its file as it was written. Apart from the attempt itself,
 * so that what only keeps attempts comes without all that reads one.
 */
import type { Attempt, Written } from './attempt.ts';

/** Under it stands a file of an older format as it was written. A file cannot hold it, and none is written with it. */
export const WRITTEN: unique symbol = Symbol.for('attempt as written');

/** What is kept, handed in and hashed: the file as it was written, where it was converted. */
export const asWritten = (attempt: Attempt): Written => attempt[WRITTEN] ?? attempt;

/** Converted from an older format: it is told and marked, and not gone on with. */
export const isConverted = (attempt: Attempt): boolean => attempt[WRITTEN] !== undefined;
