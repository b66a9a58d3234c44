/**
 * Voltages of the control pilot: the source and vehicle parts with their permitted spread, what
 * they give at the pilot terminal in each half of the period, and what a voltage means.
 * Leaves the duty cycle to pilotDuty.ts, times to timing.ts, and a unit's own thresholds to its
 * design.
 */

import type { Duty, Ohms, Range, Volts } from './quantities.ts';

/**
 * Charge-point side of the pilot circuit. `open` is the size of the no-load voltage in both halves:
 * +12 V and -12 V. Source: IEC 61851-1:2017, Table A.2.
 */
export const PILOT_SOURCE = {
  open: 12,
  openRange: { least: 11.4, greatest: 12.6 },
  resistance: 1000,
  resistanceRange: { least: 970, greatest: 1030 },
} as const satisfies Record<string, Volts | Ohms | Range>;

/**
 * Vehicle side: the permanent resistor, the switched resistors put in parallel with it for states
 * C and D, and the drop of the diode in series at 2.75 to 10 mA. The combined ranges are the
 * table's own rounded figures. Resistors in ohms, drop in volts.
 * Source: IEC 61851-1:2017, Table A.3 (which calls the permanent one R3 and the switched one R2).
 */
export const VEHICLE = {
  permanent: 2740,
  permanentRange: { least: 2658, greatest: 2822 },
  stateC: 1300,
  stateCRange: { least: 1261, greatest: 1339 },
  combinedCRange: { least: 856, greatest: 908 },
  stateD: 270,
  stateDRange: { least: 261.9, greatest: 278.1 },
  combinedDRange: { least: 239, greatest: 253 },
  diodeDrop: 0.7,
  diodeDropRange: { least: 0.55, greatest: 0.85 },
} as const satisfies Record<string, Ohms | Volts | Range>;

/**
 * Resistance of resistors in parallel.
 *   R = 1 / (1/R1 + 1/R2 + …)      ohms
 * Range: each from 0 to Infinity; a short gives 0, nothing connected gives Infinity.
 */
export const parallel = (...resistances: readonly Ohms[]): Ohms => {
  let conductance = 0;
  for (const resistance of resistances) conductance += 1 / resistance;
  return 1 / conductance;
};

/** A source seen from its terminals: no-load voltage (its size, V) and internal resistance (ohms). */
export interface PilotSource {
  readonly open: Volts;
  readonly sourceResistance: Ohms;
}

/**
 * The same source with a resistor put from the pilot to the protective conductor.
 *   U' = U · Rp / (R1 + Rp)      R' = R1 · Rp / (R1 + Rp)
 * Range: R1 > 0, Rp from 0 (a short) to Infinity (nothing). Closed form (Thévenin).
 */
export const shunted = (source: PilotSource, shunt: Ohms): PilotSource =>
  shunt === Infinity
    ? source
    : {
        open: (source.open * shunt) / (source.sourceResistance + shunt),
        sourceResistance: (source.sourceResistance * shunt) / (source.sourceResistance + shunt),
      };

/**
 * Pilot voltage in the positive half.
 *   V+ = Vd + (U - Vd) · Re / (R1 + Re)
 *   U no-load voltage (V), R1 source resistance, Re vehicle resistance (ohms), Vd diode drop (V)
 * Range: U >= 0, R1 > 0, Re from 0 to Infinity (no vehicle: V+ = U). Where U does not exceed Vd the
 * diode carries nothing and V+ = U. The drop is taken as constant; the standard gives it at 2.75 to
 * 10 mA. Source: circuit of IEC 61851-1:2017, Annex A; its corners give Table A.10.
 */
export const pilotHigh = (
  circuit: PilotSource & { readonly vehicleResistance: Ohms; readonly diodeDrop: Volts },
): Volts => {
  const { open, sourceResistance, vehicleResistance, diodeDrop } = circuit;
  if (vehicleResistance === Infinity || open <= diodeDrop) return open;
  return diodeDrop + ((open - diodeDrop) * vehicleResistance) / (sourceResistance + vehicleResistance);
};

/**
 * Pilot voltage in the negative half, a negative number.
 *   V- = -U                        sound diode: the vehicle carries nothing
 *   V- = -U · Re / (R1 + Re)       shorted diode
 *   U size of the no-load voltage (V), R1 and Re as in pilotHigh (ohms)
 * Range as pilotHigh. Source: circuit of IEC 61851-1:2017, Annex A; Table A.4 note c for the
 * meaning.
 */
export const pilotLow = (
  circuit: PilotSource & {
    readonly vehicleResistance: Ohms;
    readonly diode: 'sound' | 'shorted';
  },
): Volts => {
  const { open, sourceResistance, vehicleResistance, diode } = circuit;
  if (diode === 'sound' || vehicleResistance === Infinity) return -open;
  return (-open * vehicleResistance) / (sourceResistance + vehicleResistance);
};

/**
 * What a d.c. meter shows on the oscillating pilot.
 *   V = d · V+ + (1 - d) · V-      d duty 0 to 1, voltages in V
 * Closed form; edges of the pulse are neglected.
 */
export const meanPilot = (duty: Duty, high: Volts, low: Volts): Volts => duty * high + (1 - duty) * low;

/**
 * The voltage windows of the pilot, from the highest down, in volts. A band named for two states is
 * where the maker puts the threshold between them. Informative in the standard: compliance is
 * judged by MEASURED_PILOT. 'A' to 'E' apply to the positive half or the steady voltage, 'F' to the
 * steady voltage or, as the sign of a sound diode, to the negative half.
 * Source: IEC 61851-1:2017, Table A.4.
 */
export const PILOT_WINDOWS = [
  { window: 'A', least: 11, greatest: 13 },
  { window: 'A or B', least: 10, greatest: 11 },
  { window: 'B', least: 8, greatest: 10 },
  { window: 'B or C', least: 7, greatest: 8 },
  { window: 'C', least: 5, greatest: 7 },
  { window: 'C or D', least: 4, greatest: 5 },
  { window: 'D', least: 2, greatest: 4 },
  { window: 'D or E', least: 1, greatest: 2 },
  { window: 'E', least: -1, greatest: 1 },
  { window: 'invalid', least: -10, greatest: -1 },
  { window: 'F or invalid', least: -11, greatest: -10 },
  { window: 'F', least: -13, greatest: -11 },
] as const satisfies readonly (Range & { window: string })[];

export type PilotWindow = (typeof PILOT_WINDOWS)[number]['window'] | 'outside';

const STATE_WINDOWS: readonly PilotWindow[] = ['A', 'B', 'C', 'D', 'E', 'F'];

/**
 * The window a pilot voltage falls in. An edge belongs to the state beside it, not to the band
 * between (the table gives it to both); -10 V, between two bands, goes to 'F or invalid'. Beyond
 * 13 V either way, or not a number: 'outside'. Source: IEC 61851-1:2017, Table A.4.
 */
export const pilotWindow = (voltage: Volts): PilotWindow => {
  let found: PilotWindow = 'outside';
  for (const { window, least, greatest } of PILOT_WINDOWS) {
    if (!(voltage >= least && voltage <= greatest)) continue;
    if (STATE_WINDOWS.includes(window)) return window;
    found = window;
  }
  return found;
};

/**
 * Limits for voltages measured with the nominal vehicle load; `low` is the negative half in A2 and
 * B2. Source: IEC 61851-1:2017, Table A.10; D is not in that table and is calculated by the same
 * circuit from the limits of Tables A.2 and A.3, rounded to 0.01 V.
 */
export const MEASURED_PILOT = {
  A: { least: 11.4, greatest: 12.6 },
  B: { least: 8.37, greatest: 9.59 },
  C: { least: 5.47, greatest: 6.53 },
  D: { least: 2.59, greatest: 3.28 },
  low: { least: -12.6, greatest: -11.4 },
} as const satisfies Record<string, Range>;
