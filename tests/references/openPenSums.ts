/**
 * What a broken PEN conductor does by arithmetic alone. 236 V; loads are resistances, their power stated at 230 V; the
 * source's own electrode and the lines count as nothing. V.
 */

import type { ReferenceRow } from './row.ts';

const DIVIDER =
  'voltage divider: electrode over load and electrode; window 207 to 253 V and 70 V of BS 7671:2018+A2:2022, 722.411.4.1, figures of the window from memory';

/** One load of the installation's own, and its electrode at the main earthing terminal, Ω. */
export interface OwnLoadSum extends ReferenceRow {
  readonly watts: number;
  readonly electrode: number;
  /** Main earthing terminal to true earth. */
  readonly touch: number;
  readonly lineToNeutral: number;
  /** Whether a measure that watches the line–neutral voltage has to open. */
  readonly opens: boolean;
}

export const OWN_LOAD_SUMS: readonly OwnLoadSum[] = [
  { watts: 1800, electrode: 5, touch: 34, lineToNeutral: 202, opens: true, source: DIVIDER },
  { watts: 1500, electrode: 20, touch: 85, lineToNeutral: 151, opens: true, source: DIVIDER },
  { watts: 200, electrode: 5, touch: 4, lineToNeutral: 232, opens: false, source: DIVIDER },
];

/**
 * Neighbours of 6.0 kW on L1 and 8.4 kW on L2 behind the same break, no electrode. The neutral stands at the mean of the
 * lines weighted by load: (6 · 236∠0° + 8.4 · 236∠−120°) / 14.4 = 122.8 V∠−76°, and L1 to it is 238.4 V.
 */
export const SIDEWAYS_SUM = {
  neighbours: [
    { line: 'L1', power: 6000 },
    { line: 'L2', power: 8400 },
  ],
  touch: 122.8,
  lineToNeutral: 238.4,
  source: `Millman’s theorem; ${DIVIDER.slice(DIVIDER.indexOf('window'))}`,
} as const;
