/**
 * What the standards demand of residual current devices and of d.c. detectors: bands in which they
 * trip, greatest times in which they must, least times for which they must not. Leaves how a
 * simulated device trips to residualCurves.ts.
 */

import type { Amps, Range, Seconds } from './quantities.ts';

/**
 * Device types by the waveforms they answer to. Source: BS EN 61008-1 and BS EN 61009-1 (AC, A),
 * BS EN 62423 (F, B).
 */
export const DEVICE_TYPES = ['AC', 'A', 'F', 'B'] as const;
export type DeviceType = (typeof DEVICE_TYPES)[number];

/** Without intended delay, or time-delayed (S). Source: BS EN 61008-1. */
export const DELAYS = ['general', 'S'] as const;
export type Delay = (typeof DELAYS)[number];

/** A demand that starts at a multiple of the rated current, or at a current in A. */
interface Step {
  readonly from: number;
  readonly time: Seconds;
}

/** The demand of the last step reached; Infinity, no demand, before the first. Steps rising. */
const demanded = (steps: readonly Step[], at: number): Seconds => {
  let time = Infinity;
  for (const step of steps) if (at >= step.from) time = step.time;
  return time;
};

/** The S row is from memory; the general row stands in BS EN 61008-1, table of break times. */
const BREAK_TIMES: Readonly<Record<Delay, readonly Step[]>> = {
  general: [
    { from: 1, time: 0.3 },
    { from: 2, time: 0.15 },
    { from: 5, time: 0.04 },
  ],
  S: [
    { from: 1, time: 0.5 },
    { from: 2, time: 0.2 },
    { from: 5, time: 0.15 },
  ],
};

/**
 * Greatest break time on alternating residual current, s, by multiple of the rated current. Infinity
 * below 1: nothing is demanded. Between tabled multiples the demand of the lower one stands.
 *   general  1: 0.3   2: 0.15   5 and more: 0.04
 *   S        1: 0.5   2: 0.2    5 and more: 0.15      (S from memory)
 * Range: multiple >= 0. For 30 mA and less the product test may use 0.25 A for 5 times (from memory).
 * Source: BS EN 61008-1 and BS EN 61009-1, tables of break times.
 */
export const breakTimeLimit = (delay: Delay, multiple: number): Seconds =>
  demanded(BREAK_TIMES[delay], multiple);

/** At this share of the rated current and below no device trips. Source: BS EN 61008-1. */
export const NON_TRIPPING_SHARE = 0.5;

/**
 * Time an alternating residual current may last without tripping the device, s, by multiple of the
 * rated current. Infinity up to 0.5: it must not trip. Above that a general device may trip at once
 * (0). An S type has to hold, between tabled multiples as long as at the higher one:
 *   up to 1: 0.13   up to 2: 0.06   up to 5: 0.05   above: 0.04      (from memory)
 * The last stands in the standard for 5 A to 500 A. Range: multiple >= 0.
 * Source: BS EN 61008-1 and BS EN 61009-1, tables of non-actuating times.
 */
export const leastNonActuatingTime = (delay: Delay, multiple: number): Seconds => {
  if (multiple <= NON_TRIPPING_SHARE) return Infinity;
  if (delay === 'general') return 0;
  if (multiple <= 1) return 0.13;
  if (multiple <= 2) return 0.06;
  return multiple <= 5 ? 0.05 : 0.04;
};

/**
 * Band of a slowly rising alternating current in which a device trips, A r.m.s.: above the lower
 * end, at the upper end or before. Holds for every type. Range: rated current > 0 A.
 * Source: BS EN 61008-1, 0.5 to 1 times rated current.
 */
export const alternatingBand = (rated: Amps): Range => ({
  least: NON_TRIPPING_SHARE * rated,
  greatest: rated,
});

/** Angles at which a half-wave current begins in the tests, degrees. Source: BS EN 61008-1, 9.9. */
export const HALF_WAVE_ANGLES = [0, 90, 135] as const;
export type HalfWaveAngle = (typeof HALF_WAVE_ANGLES)[number];

const HALF_WAVE_LEAST: Readonly<Record<HalfWaveAngle, number>> = { 0: 0.35, 90: 0.25, 135: 0.11 };

/**
 * Band of a slowly rising half-wave current in which a device trips, A r.m.s.
 *   0°: 0.35   90°: 0.25   135°: 0.11   to 1.4 times rated current; to 2 times for 10 mA and less
 * The figures for 90° and 135° and the factor 2 are from memory. Undefined for type AC, of which
 * nothing is demanded on this waveform. Range: rated current > 0 A.
 * Source: BS EN 61008-1, 9.9 and its table of pulsating currents; BS EN 62423 for F and B.
 */
export const halfWaveBand = (type: DeviceType, rated: Amps, angle: HalfWaveAngle): Range | undefined =>
  type === 'AC'
    ? undefined
    : { least: HALF_WAVE_LEAST[angle] * rated, greatest: (rated <= 0.01 ? 2 : 1.4) * rated };

/**
 * Greatest break time on half-wave current, s, by multiple of the rated current (r.m.s.), for types
 * A, F and B above 10 mA. Infinity below 1.4.   1.4: 0.3   2.8: 0.15   7 and more: 0.04
 * For 30 mA the last applies to 0.35 A, which is more than 7 times. Source: BS EN 61008-1, 9.9, from
 * memory.
 */
export const halfWaveBreakTimeLimit = (multiple: number): Seconds =>
  demanded(
    [
      { from: 1.4, time: 0.3 },
      { from: 2.8, time: 0.15 },
      { from: 7, time: 0.04 },
    ],
    multiple,
  );

/**
 * Smooth direct current a device bears and still trips as it should on its own waveforms, A.
 * Source: BS 7671:2018+A2:2022, 531.3.3 (A 6 mA, F 10 mA); type B 0.4 times rated current or 10 mA,
 * the larger, BS EN 62423, from memory. Type AC bears none.
 */
export const toleratedDirect = (type: DeviceType, rated: Amps): Amps => {
  if (type === 'AC') return 0;
  if (type === 'A') return 0.006;
  return type === 'F' ? 0.01 : Math.max(0.4 * rated, 0.01);
};

/**
 * Band of a slowly rising smooth direct current in which a type B device trips, A: 0.5 to 2 times
 * rated current. Range: rated current > 0 A. Source: BS EN 62423, from memory.
 */
export const smoothDirectBand = (rated: Amps): Range => ({
  least: 0.5 * rated,
  greatest: 2 * rated,
});

/**
 * Greatest break time of a type B device on smooth or rectified direct current, s, by multiple of
 * the rated current. Infinity below 2.   2: 0.3   4: 0.15   10 and more: 0.04
 * Source: BS EN 62423, from memory. The S rows (0.5, 0.2, 0.15) too.
 */
export const smoothDirectBreakTimeLimit = (delay: Delay, multiple: number): Seconds =>
  demanded(
    [
      { from: 2, time: delay === 'S' ? 0.5 : 0.3 },
      { from: 4, time: delay === 'S' ? 0.2 : 0.15 },
      { from: 10, time: delay === 'S' ? 0.15 : 0.04 },
    ],
    multiple,
  );

/**
 * Verification of additional protection on site: an alternating current, `multiple` times rated,
 * whatever the type. Times in s; S has to lie in a range. `earlier` is the test of the editions
 * before (2018 and A1), taught as history. Source: BS 7671:2018+A2:2022, 643.7 and 643.8, from memory
 * for the exact wording; BS 7671:2018, 643.8 for the earlier.
 */
export const VERIFICATION = {
  multiple: 1,
  general: { least: 0, greatest: 0.3 },
  S: { least: 0.13, greatest: 0.5 },
  earlier: { multiple: 5, greatest: 0.04 },
} as const;

/**
 * Figures for d.c. detectors in charging mode 3 equipment, A and s. Between `nonOperating` and
 * `operating` they act on a current rising slowly from `slowRise.from` or less to the operating
 * current in `slowRise.duration`; the same for rectified currents in their own bands.
 * Source: IEC 62955:2018, 5.3.3, 5.3.4, 9.9.2.1, 9.9.2.6, 9.9.2.7.
 */
export const DIRECT = {
  operating: 0.006,
  nonOperating: 0.003,
  slowRise: { from: 0.002, duration: 30 },
  rectifiedTwoPhase: { least: 0.0035, greatest: 0.007 },
  rectifiedThreePhase: { least: 0.0031, greatest: 0.0062 },
} as const;

/** The band of the slow rise, A, for smooth direct current. IEC 62955:2018, 9.9.2.1. */
export const DIRECT_BAND = {
  least: DIRECT.nonOperating,
  greatest: DIRECT.operating,
} as const satisfies Range;

/**
 * Greatest break time of a d.c. detector on a sudden smooth direct current, s. Infinity below 6 mA.
 *   6 mA: 10   60 mA: 0.3   200 mA and more: 0.1      between, the demand of the lower stands
 * Range: current >= 0 A. Source: IEC 62955:2018, Table 2.
 */
export const directBreakTimeLimit = (current: Amps): Seconds =>
  demanded(
    [
      { from: 0.006, time: 10 },
      { from: 0.06, time: 0.3 },
      { from: 0.2, time: 0.1 },
    ],
    current,
  );

/**
 * Time for which a d.c. detector of the monitoring kind must not act on an alternating residual
 * current, s, so that the residual current device goes first. Infinity up to 30 mA: it must not act
 * (tested for 10 s). Between tabled currents it holds as long as at the higher one.
 *   up to 60 mA: 0.3   up to 5 A: 0.08   above: 0, nothing stated
 * Range: current >= 0 A r.m.s. These are least times; they are not break times.
 * Source: IEC 62955:2018, Table 3 and 9.9.3.
 */
export const leastNonOperatingTime = (alternating: Amps): Seconds => {
  if (alternating <= 0.03) return Infinity;
  if (alternating <= 0.06) return 0.3;
  return alternating <= 5 ? 0.08 : 0;
};
