/**
 * How much copper a protective conductor needs so that a fault does not burn it before it is cleared. Leaves which
 * fault current flows, and which device clears it, to the circuit.
 */

import type { BreakerType } from './overcurrent.ts';
import type { Amps, Seconds, SquareMillimetres } from './quantities.ts';

/**
 * k of copper, insulated for 70 °C: a core of the cable or bunched with it. Source: BS 7671:2018+A2:2022, Table 54.3.
 */
export const K_IN_CABLE = 115;
/** k of a separate copper conductor, 70 °C, and of steel armour, 70 °C. Source: Tables 54.2 and 54.4, from memory. */
export const K_SEPARATE = 143;
export const K_ARMOUR = 51;

/**
 * Least cross-section of a protective conductor.
 *   S = √(I² · t) / k      A, s, mm²
 * Range: I >= 0, t from 0.1 to 5 s (below, the let-through energy stands for I²t), k > 0; RangeError for k <= 0.
 * Source: BS 7671:2018+A2:2022, 543.1.3.
 */
export const leastProtective = (current: Amps, time: Seconds, k = K_IN_CABLE): SquareMillimetres =>
  leastForEnergy(current * current * time, k);

/** The same from the energy that the device lets through, A²s. Source: the same, with 434.5.2. */
export function leastForEnergy(energy: number, k = K_IN_CABLE): SquareMillimetres {
  if (!(k > 0)) throw new RangeError(`A conductor cannot have a k of ${k}.`);
  return Math.sqrt(energy) / k;
}

/**
 * The least time that can be read from a breaker’s curve, s: the curves stop there, and from the current that is sure
 * to open it at once it is used upward. Source: BS 7671:2018+A2:2022, Appendix 3.
 */
export const CURVE_ENDS: Seconds = 0.1;

/**
 * Greatest let-through energy of a breaker of energy class 3, A²s, by its breaking capacity and rating; null where the
 * class has no figure: its maker’s then stands. Source: BS EN 60898-1, Annex ZA. From memory but for 10 kA to 16 A.
 */
export function classEnergy(type: BreakerType, rating: Amps, breakingCapacity: Amps): number | null {
  if (type === 'D' || rating > 32) return null;
  const [b, c] =
    breakingCapacity >= 10_000
      ? rating <= 16
        ? [70_000, 84_000]
        : [90_000, 110_000]
      : rating <= 16
        ? [35_000, 42_000]
        : [45_000, 55_000];
  if (breakingCapacity < 6000) return null;
  return type === 'B' ? b : c;
}

/**
 * Cross-section that needs no sum, by the line’s, mm²: the line’s own up to 16, 16 up to 35, half above.
 * Range: line > 0, RangeError otherwise. Source: BS 7671:2018+A2:2022, Table 54.7.
 */
export function protectiveWithoutSum(line: SquareMillimetres): SquareMillimetres {
  if (!(line > 0)) throw new RangeError(`A conductor cannot have ${line} mm².`);
  return line <= 16 ? line : line <= 35 ? 16 : line / 2;
}
