/**
 * Volts lost along a circuit as a design reckons them, by the tables of mV for each ampere and metre at the conductor’s
 * working temperature. What a cold circuit loses on the bench follows from its resistance, in the network.
 */

import type { Amps, Metres, SquareMillimetres, Volts } from './quantities.ts';
import { LINE_TO_LINE, SUPPLY_VOLTAGE, VOLTAGE_DROP_SHARE } from './supplyLimits.ts';

/**
 * Single-phase and three-phase, mV/A/m. Source: BS 7671:2018+A2:2022, Table 4D4B; the flat cable’s figures of Table 4D5
 * are the same up to 16 mm². From memory: that a sheathed cable’s are, 1 mm², and all above 25 mm².
 */
const MILLIVOLTS: Readonly<Record<SquareMillimetres, readonly [number, number]>> = {
  1: [44, 38],
  1.5: [29, 25],
  2.5: [18, 15],
  4: [11, 9.5],
  6: [7.3, 6.4],
  10: [4.4, 3.8],
  16: [2.8, 2.4],
  25: [1.75, 1.5],
  35: [1.25, 1.1],
  50: [0.94, 0.81],
  70: [0.65, 0.57],
  95: [0.5, 0.43],
};

/** The tabled figure, mV/A/m; RangeError for an area that is not tabled. Source as above. */
export function dropPerAmpereMetre(area: SquareMillimetres, phases: 1 | 3): number {
  const row = MILLIVOLTS[area];
  if (row === undefined) throw new RangeError(`No volt drop is tabled for ${area} mm².`);
  return phases === 1 ? row[0] : row[1];
}

/**
 * Volts lost, line to neutral on one phase and line to line on three.
 *   U = (mV/A/m) · Ib · L / 1000      A, m
 * Range: both >= 0, an area of the table; RangeError otherwise. Source: BS 7671:2018+A2:2022, Appendix 4 section 6.
 */
export function voltageDrop(run: {
  readonly area: SquareMillimetres;
  readonly phases: 1 | 3;
  readonly amps: Amps;
  readonly length: Metres;
}): Volts {
  if (!(run.amps >= 0)) throw new RangeError(`A circuit cannot carry ${run.amps} A.`);
  if (!(run.length >= 0)) throw new RangeError(`A circuit cannot be ${run.length} m long.`);
  return (dropPerAmpereMetre(run.area, run.phases) * run.amps * run.length) / 1000;
}

/** What the shares are of, V: 230 on one phase, 400 on three. */
export const nominalOf = (phases: 1 | 3): Volts =>
  phases === 1 ? SUPPLY_VOLTAGE.nominal : LINE_TO_LINE.nominal;

/**
 * Most that a circuit of a public supply is deemed to lose without harm, V: 5 % of nominal, 11.5 V or 20 V.
 * Source: BS 7671:2018+A2:2022, 525.202 and Appendix 4. Beyond it 525.1 asks that the product’s own least voltage be met.
 */
export const greatestDrop = (phases: 1 | 3): Volts => VOLTAGE_DROP_SHARE.other * nominalOf(phases);

/**
 * Volts left at the far end with the supply at the least it may be, line to neutral.
 * Calculated: 216.2 V less the drop, of which a line has 1/√3 on three phases.
 */
export const leastLeft = (drop: Volts, phases: 1 | 3): Volts =>
  SUPPLY_VOLTAGE.least - (drop * SUPPLY_VOLTAGE.nominal) / nominalOf(phases);

/** Longest run that loses no more than this, m. Calculated from voltageDrop; ranges as there, amps > 0. */
export const longestRun = (run: {
  readonly area: SquareMillimetres;
  readonly phases: 1 | 3;
  readonly amps: Amps;
  readonly drop: Volts;
}): Metres => (1000 * run.drop) / (dropPerAmpereMetre(run.area, run.phases) * run.amps);
