/**
 * Fault loops and the current they let flow. Leaves the greatest permitted impedance to
 * overcurrent.ts and the measured one to the bench.
 */

import { NOMINAL_TO_EARTH } from './overcurrent.ts';
import type { Amps, Ohms, Volts } from './quantities.ts';

/** √3, line-to-line over line-to-neutral voltage of a balanced supply. */
export const ROOT_THREE = 1.7320508075688772;

/**
 * Earth fault loop impedance of a circuit.
 *   Zs = Ze + k · (R1 + R2)      ohms; k = 1 cold, or the factor to operating temperature
 * Reactance of the circuit is neglected, which holds up to about 35 mm². Range: all >= 0.
 * Source: BS 7671:2018+A2:2022, Part 2 (definition of Zs); IET Guidance Note 3.
 */
export const loopImpedance = (external: Ohms, lineAndProtective: Ohms, factor = 1): Ohms =>
  external + factor * lineAndProtective;

/**
 * R1 + R2 of a circuit found from two loop measurements: Zs - Ze, ohms. Parallel earth paths make it
 * read low, down to a negative number. Range: both >= 0. Source: IET Guidance Note 3.
 */
export const lineAndProtectiveFrom = (loop: Ohms, external: Ohms): Ohms => loop - external;

/**
 * Prospective fault current, A.
 *   I = U0 / Z      U0 in V (230 unless given), Z of the line-neutral or line-earth loop in ohms
 * Range: Z >= 0; 0 gives Infinity, to be shown as over range; RangeError for negative or NaN.
 * The larger of the line-neutral and line-earth currents counts.
 * Source: BS 7671:2018+A2:2022, 643.7.3.201; IET Guidance Note 3.
 */
export const prospectiveCurrent = (loop: Ohms, voltage: Volts = NOMINAL_TO_EARTH): Amps => {
  if (!(loop >= 0)) throw new RangeError(`A loop cannot have ${loop} ohms.`);
  return voltage / loop;
};

/**
 * Three-phase prospective current taken as double the single-phase one, A. It errs on the safe side
 * and is exact for a balanced fault where line and neutral have the same impedance.
 * Source: rule of thumb of the IET Guidance Note 3.
 */
export const threePhaseProspective = (singlePhase: Amps): Amps => 2 * singlePhase;

/**
 * Line-to-line prospective current under the same assumption, A: √3 times the single-phase one.
 * Calculated: √3 · U0 drives it through two line impedances, which together equal the line-neutral
 * loop.
 */
export const lineToLineProspective = (singlePhase: Amps): Amps => ROOT_THREE * singlePhase;
