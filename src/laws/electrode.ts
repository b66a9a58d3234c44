/**
 * Earth electrodes in TT installations protected by a residual current device. Leaves the soil, and
 * the measurement, to the site and the bench.
 */

import type { Amps, Ohms, Volts } from './quantities.ts';

/** Touch voltage the electrode may cause at rated residual current. BS 7671:2018+A2:2022, 411.5.3. */
export const ELECTRODE_TOUCH_VOLTAGE: Volts = 50;

/**
 * Greatest resistance of electrode and protective conductor together.
 *   RA = 50 V / IΔn      ohms, A
 * Range: rated residual current > 0, RangeError otherwise.
 * Source: BS 7671:2018+A2:2022, 411.5.3 and Table 41.5 (which rounds to whole ohms).
 */
export const greatestElectrode = (rated: Amps): Ohms => {
  if (!(rated > 0)) throw new RangeError(`A residual current device cannot be rated ${rated} A.`);
  return ELECTRODE_TOUCH_VOLTAGE / rated;
};

/**
 * Voltage an electrode raises the protective conductor to while a current flows through it.
 *   U = RA · I      V, ohms, A
 * Range: both >= 0. Source: Ohm's law, as used in BS 7671:2018+A2:2022, 411.5.3.
 */
export const electrodeVoltage = (resistance: Ohms, current: Amps): Volts => resistance * current;

/** Above this an electrode may not be stable. BS 7671:2018+A2:2022, note to Table 41.5. */
export const STABLE_ELECTRODE: Ohms = 200;
