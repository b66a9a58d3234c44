/**
 * Where a statement comes from: the document and its clause, and on what basis it is quoted. Put into words by
 * src/words/sources.ts.
 */
export const BASES = ['published', 'from-memory', 'practice', 'sheet', 'circuit', 'tutor'] as const;
export type Basis = (typeof BASES)[number];

/** What is added to a clause that does not say it all. */
export type Remark =
  | 'by-annex-a-circuit'
  | 'doubling-from-guidance-note'
  | 'factor-from-guidance-note'
  | 'hold-by-practice'
  | 'no-operation-at-half'
  | 'sum-from-iec-60228'
  | 'sum-with-contacts'
  | 'time-as-lost-pilot'
  | 'time-by-practice'
  | 'and-sheet'
  | 'with-sheet'
  | 'with-bs-en-61439-3'
  | 'with-iec-60228'
  | 'with-iec-61008-1'
  | 'with-iec-61008-1-9.9';

export interface Source {
  readonly basis: Basis;
  /** Document, edition and clause; empty where the basis says it all. */
  readonly where: string;
  readonly remark?: Remark;
}

const quoted = (basis: Basis, where: string, remark: Remark | undefined): Source =>
  remark === undefined ? { basis, where } : { basis, where, remark };

export const published = (where: string, remark?: Remark): Source => quoted('published', where, remark);
export const fromMemory = (where: string, remark?: Remark): Source => quoted('from-memory', where, remark);
export const PRACTICE: Source = { basis: 'practice', where: '' };
export const SHEET: Source = { basis: 'sheet', where: '' };
export const CIRCUIT: Source = { basis: 'circuit', where: '' };

/** The pilot standard, by clause. */
export const pilotStandard = (clause: string, remark?: Remark): Source =>
  published(`IEC 61851-1:2017 ${clause}`, remark);
