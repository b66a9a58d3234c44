/**
 * Cable coding on the proximity contact of a Type 2 or Type 3 accessory: the resistor between PP and
 * PE in the cable's plug, and how a charge point reads it. Leaves the thresholds in the gaps to the
 * unit's design, and what is offered to pilotDuty.ts.
 */

import type { Amps, Ohms, Range } from './quantities.ts';

/**
 * Cable ratings that can be coded, A. 63 stands for 63 A three-phase and 70 A single-phase.
 * Source: IEC 61851-1:2017, Table B.2.
 */
export const CABLE_CODINGS = [13, 20, 32, 63] as const;
export type CableCoding = (typeof CABLE_CODINGS)[number];

/** What a coding stands for, A, on so many phases. Source: IEC 61851-1:2017, Table B.2. */
export const codedCurrent = (coding: CableCoding, phases: 1 | 3): Amps =>
  coding === 63 && phases === 1 ? 70 : coding;

const NOMINAL: Readonly<Record<CableCoding, Ohms>> = { 13: 1500, 20: 680, 32: 220, 63: 100 };

/**
 * Nominal resistance that codes a cable rating, ohms. Source: IEC 61851-1:2017, Table B.2.
 */
export const codingResistance = (coding: CableCoding): Ohms => NOMINAL[coding];

/** Permitted spread of the coding resistor, ±3 %. Source: IEC 61851-1:2017, Table B.2. */
export const CODING_TOLERANCE = 0.03;

/**
 * Resistance a charge point has to read as each rating, ohms, ends included.
 * Source: IEC 61851-1:2017, Table B.2.
 */
export const CODING_RANGES: Readonly<Record<CableCoding, Range>> = {
  13: { least: 1100, greatest: 2460 },
  20: { least: 400, greatest: 936 },
  32: { least: 164, greatest: 308 },
  63: { least: 80, greatest: 140 },
};

/** Above this nothing is plugged in, or an error: no power. IEC 61851-1:2017, Table B.2. */
export const UNPLUGGED_ABOVE: Ohms = 4500;

/** Below this it is an error: no power. IEC 61851-1:2017, Table B.2. */
export const SHORTED_BELOW: Ohms = 60;

/**
 * What the standard says of a resistance between PP and PE: a rating, 'none' above 4500 ohms,
 * 'invalid' below 60 ohms, or 'gap' between, where the maker chooses the threshold.
 * Range: 0 to Infinity ohms; a negative value or NaN is 'invalid'.
 * Source: IEC 61851-1:2017, Table B.2.
 */
export const readCoding = (resistance: Ohms): CableCoding | 'none' | 'invalid' | 'gap' => {
  if (!(resistance >= SHORTED_BELOW)) return 'invalid';
  if (resistance > UNPLUGGED_ABOVE) return 'none';
  for (const coding of CABLE_CODINGS) {
    const { least, greatest } = CODING_RANGES[coding];
    if (resistance >= least && resistance <= greatest) return coding;
  }
  return 'gap';
};
