/**
 * How a sound residual current device or d.c. detector of the simulation trips: time by current and
 * pickup. The curves are chosen, not a maker's; they stay inside residualLimits.ts, which says what
 * the standards demand. Leaves the pickup, sensing and opening parts to the unit.
 */

import { interpolated, type Knots } from './interpolation.ts';
import type { Amps, Seconds } from './quantities.ts';
import type { Delay } from './residualLimits.ts';

/**
 * Seconds to trip by multiple of the pickup. General devices take about 28 ms at rated current with
 * a pickup of three quarters of it (15 to 40 ms is common practice, no source).
 */
const RESIDUAL: Readonly<Record<Delay, Knots>> = {
  general: [
    { at: 1, value: 0.1 },
    { at: 1.1, value: 0.05 },
    { at: 4 / 3, value: 0.028 },
    { at: 8 / 3, value: 0.022 },
    { at: 20 / 3, value: 0.016 },
    { at: 20, value: 0.012 },
  ],
  S: [
    { at: 1, value: 0.4 },
    { at: 4 / 3, value: 0.25 },
    { at: 5 / 3, value: 0.2 },
    { at: 8 / 3, value: 0.13 },
    { at: 20 / 3, value: 0.08 },
    { at: 20, value: 0.065 },
  ],
};

/** Seconds to trip on smooth direct current by multiple of the pickup: about 1 s at the pickup. */
const DIRECT: Knots = [
  { at: 1, value: 1 },
  { at: 1.5, value: 0.7 },
  { at: 3, value: 0.35 },
  { at: 10, value: 0.12 },
  { at: 30, value: 0.06 },
  { at: 100, value: 0.04 },
];

const timeOn = (curve: Knots, current: Amps, pickup: Amps): Seconds => {
  if (!(pickup > 0)) throw new RangeError(`A pickup cannot be ${pickup} A.`);
  return current >= pickup ? interpolated(curve, current / pickup) : Infinity;
};

/**
 * How long a sound device carries a steady residual current before it trips, in s; Infinity below
 * its pickup. Current r.m.s., in the waveform for which the pickup is given. Falls as the current
 * rises.
 * Range: current >= 0, pickup > 0 A (Infinity: blind to this waveform), RangeError otherwise. With a
 * pickup of 0.6 to 0.95 of the rated current it keeps the break and non-actuating times of
 * BS EN 61008-1 and BS EN 61009-1 (see residualLimits.ts), with 12 ms to spare for a contactor.
 */
export const residualTripTime = (current: Amps, pickup: Amps, delay: Delay = 'general'): Seconds =>
  timeOn(RESIDUAL[delay], current, pickup);

/**
 * How long a sound d.c. detector carries a steady smooth direct current before it acts, in s;
 * Infinity below its pickup. The sign of the current does not matter.
 * Range: pickup > 0 A, RangeError otherwise. With a pickup of 3.3 to 5.6 mA it keeps the times and
 * the slow-rise band of IEC 62955:2018, Table 2 and 9.9.2.1.
 */
export const directTripTime = (current: Amps, pickup: Amps): Seconds =>
  timeOn(DIRECT, Math.abs(current), pickup);
