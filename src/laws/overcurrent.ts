/**
 * Circuit-breakers: their types, the greatest earth fault loop impedance they allow, and how a sound
 * one in the simulation trips. Leaves poles, handles and the state of a device to the unit and the
 * bench, and residual current to residualLimits.ts and residualCurves.ts.
 */

import { interpolated, type Knots } from './interpolation.ts';
import type { Amps, Ohms, Seconds, Volts } from './quantities.ts';

/** Ratings that circuit-breakers are made in, A (IEC 60898-1 5.3.2, preferred values, from memory). */
export const BREAKER_RATINGS: readonly Amps[] = [6, 10, 16, 20, 25, 32, 40, 50, 63];

export const BREAKER_TYPES = ['B', 'C', 'D'] as const;
export type BreakerType = (typeof BREAKER_TYPES)[number];

const INSTANTANEOUS = { B: 5, C: 10, D: 20 } as const;

/**
 * Current that is sure to trip the breaker at once, as a multiple of its rating. It serves both
 * 0.4 s and 5 s. Source: BS 7671:2018+A2:2022, Appendix 3, from memory; it reproduces Table 41.3.
 */
export const instantaneousMultiple = (type: BreakerType): 5 | 10 | 20 => INSTANTANEOUS[type];

/** Nominal voltage to earth. Source: BS 7671:2018+A2:2022, 411.4.4 and Table 41.1. */
export const NOMINAL_TO_EARTH: Volts = 230;

/** Allowance for the lowest supply voltage. Source: BS 7671:2018+A2:2022, 411.4.4. */
export const VOLTAGE_FACTOR = 0.95;

/** Hundredths of an ohm, so that 2.185 rounds up as it does in the table. */
const loopHundredths = (type: BreakerType, rating: Amps): number => {
  if (!(rating > 0)) throw new RangeError(`A breaker cannot be rated ${rating} A.`);
  return Math.round((NOMINAL_TO_EARTH * VOLTAGE_FACTOR * 100) / (instantaneousMultiple(type) * rating));
};

/**
 * Greatest earth fault loop impedance at operating temperature, rounded to 0.01 ohm as tabled.
 *   Zs = U0 · Cmin / (m · In)      U0 = 230 V, Cmin = 0.95, m instantaneous multiple, In in A
 * Range: rating > 0, RangeError otherwise; the table runs from 6 to 63 A here.
 * Source: BS 7671:2018+A2:2022, 411.4.4 and Table 41.3.
 */
export const greatestLoopImpedance = (type: BreakerType, rating: Amps): Ohms =>
  loopHundredths(type, rating) / 100;

/**
 * Greatest loop impedance to be measured on a cold circuit: 0.8 of the tabled value, rounded to
 * 0.01 ohm. Where the sum is taken before rounding, B32 and C32 come out 0.01 apart. Range as above.
 * Source: BS 7671:2018+A2:2022, Appendix 3; IET Guidance Note 3.
 */
export const measuredLoopLimit = (type: BreakerType, rating: Amps): Ohms =>
  Math.round((loopHundredths(type, rating) * 4) / 5) / 100;

/**
 * The heated strip of the simulated breaker: seconds to trip by multiple of the rating. Chosen to
 * lie inside the limits below; not a maker's curve.
 * Limits, BS EN 60898-1 Table 7, from memory: at 1.13 no trip within 1 h, at 1.45 a trip within 1 h,
 * at 2.55 between 1 and 60 s (120 s above 32 A); at 3 (B), 5 (C), 10 (D) more than 0.1 s and no more
 * than 45, 15, 4 s; at 5, 10, 20 less than 0.1 s.
 */
const THERMAL: Knots = [
  { at: 1.2, value: 3500 },
  { at: 1.45, value: 1200 },
  { at: 2, value: 120 },
  { at: 2.55, value: 30 },
  { at: 3, value: 18 },
  { at: 4, value: 8 },
  { at: 5, value: 4 },
  { at: 7.5, value: 2 },
  { at: 10, value: 1 },
  { at: 15, value: 0.5 },
];

/** Where the simulated breaker's magnet acts: the middle of the type's band, times rating. */
const MAGNETIC = { B: 4, C: 7.5, D: 15 } as const;

/** Half a period of 50 Hz: opening by the magnet. Chosen; the limit is 0.1 s. */
const MAGNETIC_TIME: Seconds = 0.01;

/**
 * How long a sound breaker of the simulation carries a steady current before it trips, in s, or
 * Infinity if it never does (below 1.2 times its rating). Falls as the current rises.
 * Range: rating > 0, RangeError otherwise; current >= 0 A r.m.s. Source: a curve chosen inside the
 * limits of BS EN 60898-1 Table 7, from memory.
 */
export const breakerTripTime = (type: BreakerType, rating: Amps, current: Amps): Seconds => {
  if (!(rating > 0)) throw new RangeError(`A breaker cannot be rated ${rating} A.`);
  const multiple = current / rating;
  if (multiple < THERMAL[0].at) return Infinity;
  return multiple >= MAGNETIC[type] ? MAGNETIC_TIME : interpolated(THERMAL, multiple);
};
