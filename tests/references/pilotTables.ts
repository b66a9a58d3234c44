/**
 * The pilot's tables: voltage windows edge by edge, measured limits at the corners of the permitted
 * parts, duty to current and back at every edge. Voltages in V, resistances in ohms, duties in per
 * cent, currents in A.
 */

import type { ReferenceRow } from './row.ts';

const WINDOWS = 'IEC 61851-1:2017, Table A.4';
const OWN_EDGE = 'IEC 61851-1:2017, Table A.4; the shared edge goes to the state (our reading)';

/** Beside each edge, on it, and amid each window. */
export const WINDOW_ROWS: readonly (ReferenceRow & { volts: number; window: string })[] = [
  { volts: 13.001, window: 'outside', source: WINDOWS },
  { volts: 13, window: 'A', source: WINDOWS },
  { volts: 12, window: 'A', source: WINDOWS },
  { volts: 11.001, window: 'A', source: WINDOWS },
  { volts: 11, window: 'A', source: OWN_EDGE },
  { volts: 10.999, window: 'A or B', source: WINDOWS },
  { volts: 10.001, window: 'A or B', source: WINDOWS },
  { volts: 10, window: 'B', source: OWN_EDGE },
  { volts: 9.999, window: 'B', source: WINDOWS },
  { volts: 9, window: 'B', source: WINDOWS },
  { volts: 8.001, window: 'B', source: WINDOWS },
  { volts: 8, window: 'B', source: OWN_EDGE },
  { volts: 7.999, window: 'B or C', source: WINDOWS },
  { volts: 7.001, window: 'B or C', source: WINDOWS },
  { volts: 7, window: 'C', source: OWN_EDGE },
  { volts: 6.999, window: 'C', source: WINDOWS },
  { volts: 6, window: 'C', source: WINDOWS },
  { volts: 5.001, window: 'C', source: WINDOWS },
  { volts: 5, window: 'C', source: OWN_EDGE },
  { volts: 4.999, window: 'C or D', source: WINDOWS },
  { volts: 4.001, window: 'C or D', source: WINDOWS },
  { volts: 4, window: 'D', source: OWN_EDGE },
  { volts: 3.999, window: 'D', source: WINDOWS },
  { volts: 3, window: 'D', source: WINDOWS },
  { volts: 2.001, window: 'D', source: WINDOWS },
  { volts: 2, window: 'D', source: OWN_EDGE },
  { volts: 1.999, window: 'D or E', source: WINDOWS },
  { volts: 1.001, window: 'D or E', source: WINDOWS },
  { volts: 1, window: 'E', source: OWN_EDGE },
  { volts: 0.999, window: 'E', source: WINDOWS },
  { volts: 0, window: 'E', source: WINDOWS },
  { volts: -0.999, window: 'E', source: WINDOWS },
  { volts: -1, window: 'E', source: OWN_EDGE },
  { volts: -1.001, window: 'invalid', source: WINDOWS },
  { volts: -9.999, window: 'invalid', source: WINDOWS },
  { volts: -10, window: 'F or invalid', source: OWN_EDGE },
  { volts: -10.001, window: 'F or invalid', source: WINDOWS },
  { volts: -10.999, window: 'F or invalid', source: WINDOWS },
  { volts: -11, window: 'F', source: OWN_EDGE },
  { volts: -11.001, window: 'F', source: WINDOWS },
  { volts: -12, window: 'F', source: WINDOWS },
  { volts: -13, window: 'F', source: WINDOWS },
  { volts: -13.001, window: 'outside', source: WINDOWS },
];

const CORNERS = 'IEC 61851-1:2017, Table A.10, at the limits of Tables A.2 and A.3';

/** Corner of the permitted parts, and the measured limit it gives. */
export const CORNER_ROWS: readonly (ReferenceRow & {
  state: 'A' | 'B' | 'C' | 'D';
  end: 'least' | 'greatest';
  open: number;
  sourceResistance: number;
  vehicleResistance: number;
  diodeDrop: number;
  volts: number;
})[] = [
  {
    state: 'A',
    end: 'least',
    open: 11.4,
    sourceResistance: 1030,
    vehicleResistance: Infinity,
    diodeDrop: 0.55,
    volts: 11.4,
    source: CORNERS,
  },
  {
    state: 'A',
    end: 'greatest',
    open: 12.6,
    sourceResistance: 970,
    vehicleResistance: Infinity,
    diodeDrop: 0.85,
    volts: 12.6,
    source: CORNERS,
  },
  {
    state: 'B',
    end: 'least',
    open: 11.4,
    sourceResistance: 1030,
    vehicleResistance: 2658,
    diodeDrop: 0.55,
    volts: 8.37,
    source: CORNERS,
  },
  {
    state: 'B',
    end: 'greatest',
    open: 12.6,
    sourceResistance: 970,
    vehicleResistance: 2822,
    diodeDrop: 0.85,
    volts: 9.59,
    source: CORNERS,
  },
  {
    state: 'C',
    end: 'least',
    open: 11.4,
    sourceResistance: 1030,
    vehicleResistance: 856,
    diodeDrop: 0.55,
    volts: 5.47,
    source: CORNERS,
  },
  {
    state: 'C',
    end: 'greatest',
    open: 12.6,
    sourceResistance: 970,
    vehicleResistance: 908,
    diodeDrop: 0.85,
    volts: 6.53,
    source: CORNERS,
  },
  {
    state: 'D',
    end: 'least',
    open: 11.4,
    sourceResistance: 1030,
    vehicleResistance: 239,
    diodeDrop: 0.55,
    volts: 2.59,
    source: 'calculated from IEC 61851-1:2017, Tables A.2 and A.3; D is not in Table A.10',
  },
  {
    state: 'D',
    end: 'greatest',
    open: 12.6,
    sourceResistance: 970,
    vehicleResistance: 253,
    diodeDrop: 0.85,
    volts: 3.28,
    source: 'calculated from IEC 61851-1:2017, Tables A.2 and A.3; D is not in Table A.10',
  },
];

const OFFERS = 'IEC 61851-1:2017, Table A.7';

/** What the charge point sets. A duty of null: no duty stands for that current. */
export const OFFER_ROWS: readonly (ReferenceRow & { amps: number; percent: number | null })[] = [
  { amps: -1, percent: null, source: OFFERS },
  { amps: 0, percent: 100, source: `${OFFERS}, state x1` },
  { amps: 0.001, percent: null, source: OFFERS },
  { amps: 5.999, percent: null, source: OFFERS },
  { amps: 6, percent: 10, source: OFFERS },
  { amps: 6.001, percent: 6.001 / 0.6, source: OFFERS },
  { amps: 50.999, percent: 50.999 / 0.6, source: OFFERS },
  { amps: 51, percent: 85, source: OFFERS },
  { amps: 51.001, percent: 51.001 / 2.5 + 64, source: OFFERS },
  { amps: 52.5, percent: 85, source: OFFERS },
  { amps: 79.999, percent: 79.999 / 2.5 + 64, source: OFFERS },
  { amps: 80, percent: 96, source: OFFERS },
  { amps: 80.001, percent: null, source: OFFERS },
  { amps: Number.NaN, percent: null, source: OFFERS },
];

const SEEN = 'IEC 61851-1:2017, Table A.8';

/** What the vehicle may take; a number is a current in A. */
export const DUTY_ROWS: readonly (ReferenceRow & {
  percent: number;
  meaning: number | 'digital link' | 'not allowed';
})[] = [
  { percent: 0, meaning: 'not allowed', source: SEEN },
  { percent: 2.999, meaning: 'not allowed', source: SEEN },
  { percent: 3, meaning: 'digital link', source: SEEN },
  { percent: 3.001, meaning: 'digital link', source: SEEN },
  { percent: 5, meaning: 'digital link', source: SEEN },
  { percent: 6.999, meaning: 'digital link', source: SEEN },
  { percent: 7, meaning: 'digital link', source: SEEN },
  { percent: 7.001, meaning: 'not allowed', source: SEEN },
  { percent: 7.999, meaning: 'not allowed', source: SEEN },
  { percent: 8, meaning: 6, source: SEEN },
  { percent: 8.001, meaning: 6, source: SEEN },
  { percent: 9.999, meaning: 6, source: SEEN },
  { percent: 10, meaning: 6, source: SEEN },
  { percent: 10.001, meaning: 6.0006, source: SEEN },
  { percent: 84.999, meaning: 50.9994, source: SEEN },
  { percent: 85, meaning: 51, source: SEEN },
  { percent: 85.001, meaning: 52.5025, source: SEEN },
  { percent: 95.999, meaning: 79.9975, source: SEEN },
  { percent: 96, meaning: 80, source: SEEN },
  { percent: 96.001, meaning: 80, source: SEEN },
  { percent: 97, meaning: 80, source: SEEN },
  { percent: 97.001, meaning: 'not allowed', source: SEEN },
  { percent: 100, meaning: 'not allowed', source: SEEN },
  { percent: -1, meaning: 'not allowed', source: 'no such duty' },
  { percent: 101, meaning: 'not allowed', source: 'no such duty' },
  { percent: Number.NaN, meaning: 'not allowed', source: 'no such duty' },
];
