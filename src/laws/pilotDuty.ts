/**
 * Duty cycle of the control pilot and the current it stands for, in both directions, with the
 * permitted errors of duty and frequency. Leaves voltages to pilotLevels.ts, and the choice of what
 * to offer to the unit.
 */

import type { Amps, Duty, Hertz, Range } from './quantities.ts';

/**
 * Frequency of the pilot, Hz. `range` is the parameter table and serves on site; `typeTest` is the
 * narrower one of the conformity test; a vehicle should not charge outside `vehicleRange`.
 * Source: IEC 61851-1:2017, Table A.2 (±2 %), A.4.4 (±0.5 %), Table A.8 (±5 %).
 */
export const PILOT_FREQUENCY = {
  nominal: 1000,
  range: { least: 980, greatest: 1020 },
  typeTest: { least: 995, greatest: 1005 },
  vehicleRange: { least: 950, greatest: 1050 },
} as const satisfies Record<string, Hertz | Range>;

/** Greatest error of the duty, ±5 µs of 1 ms. Source: IEC 61851-1:2017, Table A.2. */
export const DUTY_TOLERANCE: Duty = 0.005;

/** The currents a duty can offer, A. Source: IEC 61851-1:2017, Table A.7. */
export const OFFER_RANGE = { least: 6, greatest: 80 } as const satisfies Range;

/**
 * Offers above 51 A and below 52.5 A code to 84.4 to 85 %, where the vehicle reads 50.6 to 51 A.
 * They are best avoided. Calculated from IEC 61851-1:2017, Tables A.7 and A.8; ends excluded.
 */
export const MISREAD_OFFERS = { least: 51, greatest: 52.5 } as const satisfies Range;

/**
 * Duty that offers a current, for each line.
 *   d = I / 60             6 A to 51 A           (I / 0.6 in per cent)
 *   d = (I + 160) / 250    above 51 A to 80 A    (I / 2.5 + 64 in per cent)
 *   d = 1                  0 A: steady positive, nothing offered (state x1)
 * Range: 0 and 6 to 80 A; RangeError otherwise. State F, steady negative, is 0 % and offers nothing
 * either. Source: IEC 61851-1:2017, Table A.7.
 */
export const dutyForCurrent = (current: Amps): Duty => {
  if (current === 0) return 1;
  if (!(current >= OFFER_RANGE.least && current <= OFFER_RANGE.greatest)) {
    throw new RangeError(`No duty stands for ${current} A: offers are 0 or 6 to 80 A.`);
  }
  return current <= 51 ? current / 60 : (current + 160) / 250;
};

/** What a vehicle may take from the duty it sees; the current is for each line. */
export type DutyMeaning =
  | { readonly kind: 'current'; readonly amps: Amps }
  | { readonly kind: 'digital link' }
  | { readonly kind: 'not allowed' };

const NOT_ALLOWED: DutyMeaning = { kind: 'not allowed' };

/**
 * Greatest current a vehicle may draw at a duty seen.
 *   below 3 %             not allowed        10 % to 85 %          d · 60 A
 *   3 % to 7 %            digital link       above 85 % to 96 %    d · 250 - 160 A
 *   above 7 %, below 8 %  not allowed        above 96 % to 97 %    80 A
 *   8 % to below 10 %     6 A                above 97 %            not allowed
 * Range: any number; below 0, above 1 and NaN are not allowed. Source: IEC 61851-1:2017, Table A.8.
 */
export const currentForDuty = (duty: Duty): DutyMeaning => {
  if (!(duty >= 0.03 && duty <= 0.97)) return NOT_ALLOWED;
  if (duty <= 0.07) return { kind: 'digital link' };
  if (duty < 0.08) return NOT_ALLOWED;
  if (duty < 0.1) return { kind: 'current', amps: 6 };
  if (duty <= 0.85) return { kind: 'current', amps: duty * 60 };
  if (duty <= 0.96) return { kind: 'current', amps: duty * 250 - 160 };
  return { kind: 'current', amps: 80 };
};

/**
 * Greatest current that may be offered under several limits: the least of the unit's rating, the
 * cable's rating and any setting, in A. Less than 6 A cannot be offered and gives 0; more than 80 A
 * gives 80. Range: limits >= 0, at least one. Source: IEC 61851-1:2017, 6.3.1.6 and Table A.7.
 */
export const greatestOffer = (...limits: readonly Amps[]): Amps => {
  const least = Math.min(...limits, OFFER_RANGE.greatest);
  return least < OFFER_RANGE.least ? 0 : least;
};
