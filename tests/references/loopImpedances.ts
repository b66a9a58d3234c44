/**
 * Greatest earth fault loop impedance by breaker, as tabled and at 0.8 of the table, ohms. The 0.8
 * column is 0.8 of the rounded entry; taken before rounding, B32 and C32 differ by 0.01.
 */

import type { ReferenceRow } from './row.ts';

const SOURCE = 'BS 7671:2018+A2:2022, Table 41.3 (Cmin 0.95) and Appendix 3 (0.8)';

/** Rating in A; for each type the tabled value, then 0.8 of it. */
export interface LoopRow extends ReferenceRow {
  readonly rating: number;
  readonly B: readonly [number, number];
  readonly C: readonly [number, number];
  readonly D: readonly [number, number];
}

export const LOOP_IMPEDANCES: readonly LoopRow[] = [
  { rating: 6, B: [7.28, 5.82], C: [3.64, 2.91], D: [1.82, 1.46], source: SOURCE },
  { rating: 10, B: [4.37, 3.5], C: [2.19, 1.75], D: [1.09, 0.87], source: SOURCE },
  { rating: 16, B: [2.73, 2.18], C: [1.37, 1.1], D: [0.68, 0.54], source: SOURCE },
  { rating: 20, B: [2.19, 1.75], C: [1.09, 0.87], D: [0.55, 0.44], source: SOURCE },
  { rating: 25, B: [1.75, 1.4], C: [0.87, 0.7], D: [0.44, 0.35], source: SOURCE },
  { rating: 32, B: [1.37, 1.1], C: [0.68, 0.54], D: [0.34, 0.27], source: SOURCE },
  { rating: 40, B: [1.09, 0.87], C: [0.55, 0.44], D: [0.27, 0.22], source: SOURCE },
  { rating: 50, B: [0.87, 0.7], C: [0.44, 0.35], D: [0.22, 0.18], source: SOURCE },
  { rating: 63, B: [0.69, 0.55], C: [0.35, 0.28], D: [0.17, 0.14], source: SOURCE },
];
