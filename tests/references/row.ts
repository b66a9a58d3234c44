/**
 * The shape all reference tables share: a value that was published, or follows exactly from what was
 * published, with the place it stands. The tables hold figures only; tests/laws compares.
 */

export interface ReferenceRow {
  /** Document, clause or table, edition. */
  readonly source: string;
}
