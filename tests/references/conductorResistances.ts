/** Copper conductors: resistance at 20 °C, temperature factors, and R1+R2 of common pairs. */

import type { ReferenceRow } from './row.ts';

const SOURCE = 'IEC 60228, greatest d.c. resistance of plain copper at 20 °C';

/** mm², ohms per kilometre. */
export interface ResistanceRow extends ReferenceRow {
  readonly area: number;
  readonly class2: number;
  readonly class5: number;
}

export const RESISTANCES: readonly ResistanceRow[] = [
  { area: 1, class2: 18.1, class5: 19.5, source: SOURCE },
  { area: 1.5, class2: 12.1, class5: 13.3, source: SOURCE },
  { area: 2.5, class2: 7.41, class5: 7.98, source: SOURCE },
  { area: 4, class2: 4.61, class5: 4.95, source: SOURCE },
  { area: 6, class2: 3.08, class5: 3.3, source: SOURCE },
  { area: 10, class2: 1.83, class5: 1.91, source: SOURCE },
  { area: 16, class2: 1.15, class5: 1.21, source: SOURCE },
  { area: 25, class2: 0.727, class5: 0.78, source: SOURCE },
  { area: 35, class2: 0.524, class5: 0.554, source: SOURCE },
  { area: 50, class2: 0.387, class5: 0.386, source: SOURCE },
  { area: 70, class2: 0.268, class5: 0.272, source: SOURCE },
  { area: 95, class2: 0.193, class5: 0.206, source: SOURCE },
];

/** °C, factor to 20 °C to three places. */
export const TO_TWENTY: readonly (ReferenceRow & { celsius: number; factor: number })[] = [
  { celsius: 5, factor: 1.064, source: 'IEC 60228, annex on temperature correction' },
  { celsius: 10, factor: 1.042, source: 'IEC 60228, annex on temperature correction' },
  { celsius: 15, factor: 1.02, source: 'IEC 60228, annex on temperature correction' },
  { celsius: 20, factor: 1, source: 'IEC 60228, annex on temperature correction' },
  { celsius: 25, factor: 0.98, source: 'IEC 60228, annex on temperature correction' },
  { celsius: 30, factor: 0.962, source: 'IEC 60228, annex on temperature correction' },
  { celsius: 70, factor: 0.833, source: 'IEC 60228, annex on temperature correction' },
];

/** °C, factor from 20 °C to two places. */
export const FROM_TWENTY: readonly (ReferenceRow & { celsius: number; factor: number })[] = [
  { celsius: 5, factor: 0.94, source: 'IET On-Site Guide, ambient factors, from memory' },
  { celsius: 10, factor: 0.96, source: 'IET On-Site Guide, ambient factors, from memory' },
  { celsius: 15, factor: 0.98, source: 'IET On-Site Guide, ambient factors, from memory' },
  { celsius: 25, factor: 1.02, source: 'IET On-Site Guide, ambient factors, from memory' },
  { celsius: 70, factor: 1.2, source: 'IET On-Site Guide, 70 °C thermoplastic' },
  { celsius: 90, factor: 1.28, source: 'IET On-Site Guide, 90 °C thermosetting, from memory' },
];

const PAIRS = 'Guide to the Wiring Regulations (17th edition), D. Locke, 2008, Appendix 4';
const SUM = 'sum of two rows of IEC 60228';

/** Line and protective conductor, mm²; milliohms per metre. */
export const PAIR_RESISTANCES: readonly (ReferenceRow & {
  line: number;
  protective: number;
  milliohmsPerMetre: number;
})[] = [
  { line: 1.5, protective: 1, milliohmsPerMetre: 30.2, source: PAIRS },
  { line: 2.5, protective: 1.5, milliohmsPerMetre: 19.51, source: PAIRS },
  { line: 4, protective: 1.5, milliohmsPerMetre: 16.71, source: PAIRS },
  { line: 6, protective: 2.5, milliohmsPerMetre: 10.49, source: PAIRS },
  { line: 10, protective: 4, milliohmsPerMetre: 6.44, source: PAIRS },
  { line: 16, protective: 6, milliohmsPerMetre: 4.23, source: PAIRS },
  { line: 1.5, protective: 1.5, milliohmsPerMetre: 24.2, source: PAIRS },
  { line: 2.5, protective: 2.5, milliohmsPerMetre: 14.82, source: PAIRS },
  { line: 4, protective: 4, milliohmsPerMetre: 9.22, source: PAIRS },
  { line: 6, protective: 6, milliohmsPerMetre: 6.16, source: PAIRS },
  { line: 10, protective: 10, milliohmsPerMetre: 3.66, source: PAIRS },
  { line: 16, protective: 16, milliohmsPerMetre: 2.3, source: PAIRS },
  { line: 4, protective: 2.5, milliohmsPerMetre: 12.02, source: SUM },
  { line: 6, protective: 4, milliohmsPerMetre: 7.69, source: SUM },
  { line: 10, protective: 6, milliohmsPerMetre: 4.91, source: SUM },
  { line: 16, protective: 10, milliohmsPerMetre: 2.98, source: SUM },
];
