/**
 * Least insulation resistance of an installation and the voltage to test it with. Leaves a maker's
 * lower limit to the unit's sheet, and the instrument to the bench. The type test of the unit itself
 * (IEC 61851-1:2017, 12.5) serves another purpose and is not here.
 */

import type { Ohms, Volts } from './quantities.ts';

/** Test voltage (d.c.) and least resistance that passes. */
export interface InsulationLimit {
  readonly testVoltage: Volts;
  readonly minimum: Ohms;
}

/**
 * Test voltage and least resistance for a circuit.
 *   SELV and PELV             250 V    0.5 MΩ
 *   up to and including 500 V 500 V    1.0 MΩ
 *   above 500 V               1000 V   1.0 MΩ
 * Range: nominal voltage > 0, RangeError otherwise. Source: BS 7671:2018+A2:2022, Table 64.
 */
export const minimumInsulation = (
  nominalVoltage: Volts,
  circuit: 'SELV or PELV' | 'other' = 'other',
): InsulationLimit => {
  if (!(nominalVoltage > 0)) {
    throw new RangeError(`A circuit cannot have ${nominalVoltage} V.`);
  }
  if (circuit === 'SELV or PELV') return { testVoltage: 250, minimum: 0.5e6 };
  return { testVoltage: nominalVoltage <= 500 ? 500 : 1000, minimum: 1e6 };
};

/**
 * Lower test voltage where connected equipment would be damaged or would falsify the result and
 * cannot be disconnected. Source: BS 7671:2018+A2:2022, 643.3.3.
 */
export const EQUIPMENT_TEST_VOLTAGE: Volts = 250;

/** Least resistance at that lower voltage. Source: BS 7671:2018+A2:2022, 643.3.3. */
export const EQUIPMENT_MINIMUM: Ohms = 1e6;
