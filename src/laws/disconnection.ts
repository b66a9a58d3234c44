/**
 * How long a fault to earth may last at 230 V to earth. Leaves the devices that end it to
 * overcurrent.ts and residualLimits.ts.
 */

import type { Seconds } from './quantities.ts';

const TIMES = {
  TN: { final: 0.4, distribution: 5 },
  TT: { final: 0.2, distribution: 1 },
} as const satisfies Record<string, Record<string, Seconds>>;

export type EarthingFamily = keyof typeof TIMES;
export type CircuitPurpose = 'final' | 'distribution';

/**
 * Greatest disconnection time, s. 'final' covers circuits up to 32 A for fixed equipment and up to
 * 63 A with socket-outlets (this scope from memory); larger ones count as distribution.
 *   TN  final 0.4   distribution 5
 *   TT  final 0.2   distribution 1
 * Range: nominal voltage to earth above 120 V up to 230 V.
 * Source: BS 7671:2018+A2:2022, 411.3.2.2 to 411.3.2.4 and Table 41.1.
 */
export const disconnectionTime = (family: EarthingFamily, purpose: CircuitPurpose): Seconds =>
  TIMES[family][purpose];
