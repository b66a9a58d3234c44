/**
 * Residual devices as fault protection, one behind another, and several points behind one. Leaves a device’s own times
 * and bands to residualLimits.ts.
 */

import { greatestElectrode } from './electrode.ts';
import { NOMINAL_TO_EARTH, VOLTAGE_FACTOR } from './overcurrent.ts';
import type { Amps, Ohms } from './quantities.ts';
import type { Delay, DeviceType } from './residualLimits.ts';
import { breakTimeLimit, DIRECT, toleratedDirect } from './residualLimits.ts';

/**
 * Greatest loop at which a residual device clears an earth fault on TN, Ω: the tabled 50 V / IΔn (30 mA 1667 Ω).
 * Range: rated > 0, RangeError otherwise. Source: BS 7671:2018+A2:2022, 411.4.204 and Table 41.5; the number of the
 * regulation from memory.
 */
export const greatestResidualLoop = (rated: Amps): Ohms => greatestElectrode(rated);

/**
 * The same where five times the rated current is asked for, Ω: 0.95 · 230 V / (5 · IΔn); 30 mA 1457 Ω.
 * Source: BS 7671:2018+A2:2022, 411.4.4. Range as above.
 */
export function strictResidualLoop(rated: Amps): Ohms {
  if (!(rated > 0)) throw new RangeError(`A residual current device cannot be rated ${rated} A.`);
  return (VOLTAGE_FACTOR * NOMINAL_TO_EARTH) / (5 * rated);
}

/**
 * Multiple of the rated current that a fault without resistance drives at least through the greatest loop: 230 V / 50 V.
 * At it a general device opens within 0.15 s and a delayed one within 0.2 s. Calculated; times from BS EN 61008-1.
 */
export const multipleAtLimit = (rated: Amps): number =>
  NOMINAL_TO_EARTH / greatestResidualLoop(rated) / rated;
export const timeAtLimit = (rated: Amps, delay: Delay): number =>
  breakTimeLimit(delay, multipleAtLimit(rated));

export interface Residual {
  readonly rated: Amps;
  readonly delay: Delay;
}

/**
 * Whether on a fault beyond both the device downstream opens alone: the other has to be delayed, and rated three times
 * as much or more. Source: BS 7671:2018+A2:2022, 536.4.1.4.
 */
export const isSelective = (upstream: Residual, downstream: Residual): boolean =>
  upstream.delay === 'S' && downstream.delay === 'general' && upstream.rated >= 2.999 * downstream.rated;

/**
 * Whether a residual device still works as it should behind so many charging points, each of which may let up to 6 mA
 * of smooth d.c. stand. Range: points >= 0. Source: BS 7671:2018+A2:2022, 531.3.3; IEC 62955:2018.
 */
export const bearsDirectOf = (points: number, type: DeviceType, rated: Amps): boolean =>
  points * DIRECT.operating <= toleratedDirect(type, rated) + 1e-9;
