/**
 * Reasons set by law in Great Britain for a sound private charge point to wait: default hours and
 * the random delay. Leaves overrides, and what the owner has set, to the unit.
 */

import type { Range, Seconds } from './quantities.ts';

export const WEEKDAYS = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
] as const;
export type Weekday = (typeof WEEKDAYS)[number];

/**
 * Hours the default schedule avoids, in minutes after midnight. The start belongs to the peak, the
 * end does not (chosen). Source: Electric Vehicles (Smart Charge Points) Regulations 2021, SI
 * 2021/1467, regulation 10.
 */
export const PEAK_HOURS = [
  { least: 8 * 60, greatest: 11 * 60 },
  { least: 16 * 60, greatest: 22 * 60 },
] as const satisfies readonly Range[];

/**
 * Whether the default schedule keeps a charge point from charging: 08:00 to 11:00 and 16:00 to
 * 22:00, Monday to Friday (the limit to weekdays from memory).
 * Range: minutes after midnight, 0 to below 1440; RangeError otherwise.
 * Source: SI 2021/1467, regulation 10.
 */
export const isPeakHour = (weekday: Weekday, minutes: number): boolean => {
  if (!(minutes >= 0 && minutes < 1440)) {
    throw new RangeError(`A day has no minute ${minutes}.`);
  }
  if (weekday === 'Saturday' || weekday === 'Sunday') return false;
  return PEAK_HOURS.some(({ least, greatest }) => minutes >= least && minutes < greatest);
};

/**
 * Random delay before a charge starts or its rate changes, in s, to the nearest second: from 0 to
 * `default` as delivered; the greatest can be set up to `capability`.
 * Source: SI 2021/1467, regulation 11(1).
 */
export const RANDOM_DELAY = { default: 600, capability: 1800 } as const satisfies Record<string, Seconds>;
