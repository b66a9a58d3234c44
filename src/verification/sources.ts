/**
 * Where a statement comes from: the document and its clause, and on what basis it is quoted.
 */
export const BASES = [
  'published',
  'published, from memory',
  'common practice, no source',
  'the unit’s sheet',
  'follows from the circuit',
] as const;
export type Basis = (typeof BASES)[number];

export interface Source {
  readonly basis: Basis;
  /** Document, edition and clause; empty where the basis says it all. */
  readonly where: string;
}

export const published = (where: string): Source => ({ basis: 'published', where });
export const fromMemory = (where: string): Source => ({ basis: 'published, from memory', where });
export const PRACTICE: Source = { basis: 'common practice, no source', where: '' };
export const SHEET: Source = { basis: 'the unit’s sheet', where: '' };
export const CIRCUIT: Source = { basis: 'follows from the circuit', where: '' };

/** The pilot standard, by clause. */
export const pilotStandard = (clause: string): Source => published(`IEC 61851-1:2017 ${clause}`);
/** The source as one line of text. */
export const sourceText = ({ basis, where }: Source): string =>
  where === '' ? basis : basis === 'published' ? where : `${where} (${basis})`;
