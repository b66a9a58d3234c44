/** Where a statement comes from, and which edition of the wiring rules it goes by, in words. */
import type { RuleSetName } from '../verification/rules/ruleSet.ts';
import { rulesFor } from '../verification/rules/rules.ts';
import type { Basis, Remark, Source } from '../verification/sources.ts';

const BASIS_WORDS: Readonly<Record<Basis, string>> = {
  published: 'published',
  'from-memory': 'published, from memory',
  practice: 'common practice, no source',
  sheet: 'the unit’s sheet',
  circuit: 'follows from the circuit',
  tutor: 'set by the tutor',
};

/** Follows the clause at once, its comma or semicolon with it. */
const REMARK_WORDS: Readonly<Record<Remark, string>> = {
  'by-annex-a-circuit': ', by the circuit of Annex A',
  'doubling-from-guidance-note': '; the doubling from Guidance Note 3',
  'factor-from-guidance-note': '; the 0.8 from Guidance Note 3',
  'hold-by-practice': '; the 2 s common practice, no source',
  'no-operation-at-half': ': no operation at half the rated residual current',
  'sum-from-iec-60228': '; the sum from IEC 60228',
  'sum-with-contacts': ', with the sum from IEC 60228; the 0.05 Ω is common practice',
  'time-as-lost-pilot': '; the 100 ms are chosen here, as for a lost pilot (Table A.6 sequence 2.2)',
  'time-by-practice': '; at once: common practice, no source',
  'and-sheet': '; the unit’s sheet',
  'with-sheet': ', with the unit’s sheet',
  'with-bs-en-61439-3': ', with BS EN 61439-3 Annex ZB',
  'with-iec-60228': ', with IEC 60228',
  'with-iec-61008-1': ', with IEC 61008-1',
  'with-iec-61008-1-9.9': ', with IEC 61008-1 9.9',
};

/** The source as one line of text. */
export function sourceText({ basis, where, remark }: Source): string {
  if (where === '') return BASIS_WORDS[basis];
  const clause = `${where}${remark === undefined ? '' : REMARK_WORDS[remark]}`;
  return basis === 'published' ? clause : `${clause} (${BASIS_WORDS[basis]})`;
}

/** What has replaced an edition, and what of that is not covered. */
const EDITION_NOTES: Readonly<Record<RuleSetName, string>> = {
  'BS 7671:2018+A2:2022':
    'BS 7671:2018+A2:2022 is no longer the current edition: by trade pages, A4:2026 replaced it on 15 October 2026. Not covered here are A3:2024 (devices in which power may flow back) and all of A4:2026, Section 722 above all.',
};

const isInForce = (rules: RuleSetName): boolean => rulesFor({ rules }).edition.inForce;

/** The set by name, with a word where it is no longer the edition in force. */
export const editionNamed = (rules: RuleSetName): string =>
  isInForce(rules) ? rules : `${rules}, no longer the current edition`;

/** Null for the edition in force. */
export const editionNote = (rules: RuleSetName): string | null =>
  isInForce(rules) ? null : EDITION_NOTES[rules];
