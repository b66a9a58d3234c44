/**
 * What may remain on a charge point's supply terminals after disconnection. Leaves the waiting to
 * the one who tests.
 */

import type { Farads, Joules, Seconds, Volts } from './quantities.ts';

/**
 * Permanently connected equipment: after `after` seconds no more than `voltage` d.c. or no more than
 * `energy`. Source: IEC 61851-1:2017, 8.2.2.
 */
export const STORED_ENERGY = { after: 5, voltage: 60, energy: 0.2 } as const satisfies Record<
  string,
  Seconds | Volts | Joules
>;

/**
 * Energy in a charged capacitance.
 *   W = C · U² / 2      J, F, V
 * Range: capacitance >= 0. Closed form.
 */
export const storedEnergy = (capacitance: Farads, voltage: Volts): Joules =>
  (capacitance * voltage * voltage) / 2;

/**
 * Whether a charge left at the terminals is within the limit: by voltage or by energy, either will
 * do. Range: capacitance >= 0; the sign of the voltage does not matter.
 * Source: IEC 61851-1:2017, 8.2.2.
 */
export const isDischarged = (capacitance: Farads, voltage: Volts): boolean =>
  Math.abs(voltage) <= STORED_ENERGY.voltage || storedEnergy(capacitance, voltage) <= STORED_ENERGY.energy;
