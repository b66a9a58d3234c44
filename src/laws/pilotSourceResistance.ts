/** The resistance of the pilot's source, found from what it gives with and without a vehicle. */

import { VEHICLE } from './pilotLevels.ts';
import type { Ohms, Volts } from './quantities.ts';

/**
 * Source resistance found from two readings of the positive half.
 *   R1 = R3 · (UA - UB) / (UB - Vd)      R3 = 2740 ohms, Vd = 0.7 V
 *   UA without a vehicle, UB with the permanent resistor alone (state B), volts
 * Range: UB > 0.7 V, otherwise RangeError. Source: IEC 61851-1:2017, A.4.4; the result is to lie in
 * PILOT_SOURCE.resistanceRange.
 */
export const sourceResistanceFrom = (openReading: Volts, loadedReading: Volts): Ohms => {
  if (!(loadedReading > VEHICLE.diodeDrop)) {
    throw new RangeError('The loaded reading must be above the diode drop of 0.7 V.');
  }
  return (VEHICLE.permanent * (openReading - loadedReading)) / (loadedReading - VEHICLE.diodeDrop);
};
