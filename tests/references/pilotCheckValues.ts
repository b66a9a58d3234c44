/** Check values of the control pilot and the proximity contact: V1 to V47. */

import { currentForDuty, DUTY_TOLERANCE, dutyForCurrent, greatestOffer } from '../../src/laws/pilotDuty.ts';
import {
  meanPilot,
  PILOT_SOURCE,
  parallel,
  pilotHigh,
  pilotLow,
  pilotWindow,
  shunted,
  VEHICLE,
} from '../../src/laws/pilotLevels.ts';
import { sourceResistanceFrom } from '../../src/laws/pilotSourceResistance.ts';
import { codingResistance, readCoding } from '../../src/laws/proximity.ts';
import { isWithin } from '../../src/laws/quantities.ts';
import * as timing from '../../src/laws/timing.ts';
import type { Check, CheckValue } from './checkValueRow.ts';

const TABLE_A7 = 'IEC 61851-1:2017, Table A.7';
const TABLE_A8 = 'IEC 61851-1:2017, Table A.8';
const CIRCUIT = 'pilot circuit of IEC 61851-1:2017 with the parts of Tables A.2 and A.3';
const TABLE_A9 = 'IEC 61851-1:2017, Table A.9, judged by Table A.4';
const TABLE_A10 = 'IEC 61851-1:2017, Table A.10';
const TABLE_B2 = 'IEC 61851-1:2017, Table B.2';

const source = { open: PILOT_SOURCE.open, sourceResistance: PILOT_SOURCE.resistance };
const vehicleC = parallel(VEHICLE.permanent, VEHICLE.stateC);

const percent = (amps: number) => 100 * dutyForCurrent(amps);
const amps = (dutyPercent: number): number | string => {
  const meaning = currentForDuty(dutyPercent / 100);
  return meaning.kind === 'current' ? meaning.amps : meaning.kind;
};
const nominal = (vehicleResistance: number) =>
  pilotHigh({ ...source, vehicleResistance, diodeDrop: VEHICLE.diodeDrop });
const lowest = (vehicleResistance: number) =>
  pilotHigh({ open: 11.4, sourceResistance: 1030, vehicleResistance, diodeDrop: 0.55 });
const highest = (vehicleResistance: number) =>
  pilotHigh({ open: 12.6, sourceResistance: 970, vehicleResistance, diodeDrop: 0.85 });
const to2 = (volts: number) => Math.round(volts * 100) / 100;

const offer = (id: string, current: number, expected: number): CheckValue => ({
  id,
  input: `offer ${current} A`,
  source: TABLE_A7,
  checks: [{ what: 'duty, %', expected, tolerance: 0.005, compute: () => percent(current) }],
});

const seen = (id: string, duties: readonly [number, ...number[]], expected: number | string): CheckValue => {
  const check = (duty: number): Check => ({
    what: `A at ${duty} %`,
    expected,
    ...(typeof expected === 'number' ? { tolerance: 1e-9 } : {}),
    compute: () => amps(duty),
  });
  const [first, ...others] = duties;
  return {
    id,
    input: `duty ${duties.join(' % and ')} %`,
    source: TABLE_A8,
    checks: [check(first), ...others.map(check)],
  };
};

const level = (what: string, expected: number, compute: () => number): Check => ({
  what: `${what}, V`,
  expected,
  tolerance: 0.005,
  compute,
});

/** The window of the voltage as it is printed, to 0.01 V. */
const window = (what: string, expected: string, compute: () => number): Check => ({
  what: `${what}, window`,
  expected,
  compute: () => pilotWindow(to2(compute())),
});

/** A permitted time that the laws hold; that the unit keeps it is the bench's matter. */
const time = (id: string, input: string, where: string, expected: number, limit: number): CheckValue => ({
  id,
  input,
  source: `IEC 61851-1:2017, ${where}`,
  checks: [{ what: 'limit, s', expected, compute: () => limit }],
});

export const PILOT_CHECK_VALUES: readonly CheckValue[] = [
  offer('V1', 6, 10),
  offer('V2', 10, 16.67),
  offer('V3', 13, 21.67),
  offer('V4', 16, 26.67),
  offer('V5', 20, 33.33),
  offer('V6', 32, 53.33),
  offer('V7', 51, 85),
  offer('V8', 63, 89.2),
  offer('V9', 70, 92),
  offer('V10', 80, 96),
  { ...seen('V11', [20], 12), source: 'SAE J1772, worked example' },
  seen('V12', [2.9], 'not allowed'),
  seen('V13', [5], 'digital link'),
  seen('V14', [7.5], 'not allowed'),
  seen('V15', [8, 9.9], 6),
  seen('V16', [86], 55),
  seen('V17', [90], 65),
  seen('V18', [96.5], 80),
  seen('V19', [97.1, 100], 'not allowed'),
  {
    id: 'V20',
    input: 'duty of 32 A with the permitted error at the source',
    source: 'IEC 61851-1:2017, Tables A.2 and A.8',
    checks: [
      {
        what: 'least, A',
        expected: 31.7,
        tolerance: 0.005,
        compute: () => amps(100 * (dutyForCurrent(32) - DUTY_TOLERANCE)),
      },
      {
        what: 'greatest, A',
        expected: 32.3,
        tolerance: 0.005,
        compute: () => amps(100 * (dutyForCurrent(32) + DUTY_TOLERANCE)),
      },
    ],
  },
  {
    id: 'V21',
    input: 'nominal circuit, 2740 ohms',
    source: CIRCUIT,
    checks: [
      level('state B', 8.98, () => nominal(VEHICLE.permanent)),
      window('state B', 'B', () => nominal(VEHICLE.permanent)),
    ],
  },
  {
    id: 'V22',
    input: 'nominal circuit, 2740 and 1300 ohms in parallel',
    source: CIRCUIT,
    checks: [
      { what: 'ohms', expected: 881.7, tolerance: 0.05, compute: () => vehicleC },
      level('state C', 5.99, () => nominal(vehicleC)),
      window('state C', 'C', () => nominal(vehicleC)),
    ],
  },
  {
    id: 'V23',
    input: 'nominal circuit, 2740 and 270 ohms in parallel',
    source: CIRCUIT,
    checks: [
      {
        what: 'ohms',
        expected: 245.8,
        tolerance: 0.05,
        compute: () => parallel(VEHICLE.permanent, VEHICLE.stateD),
      },
      level('state D', 2.93, () => nominal(parallel(VEHICLE.permanent, VEHICLE.stateD))),
      window('state D', 'D', () => nominal(parallel(VEHICLE.permanent, VEHICLE.stateD))),
    ],
  },
  {
    id: 'V24',
    input: 'state B, lowest corner',
    source: TABLE_A10,
    checks: [level('B', 8.37, () => lowest(VEHICLE.permanentRange.least))],
  },
  {
    id: 'V25',
    input: 'state B, highest corner',
    source: TABLE_A10,
    checks: [level('B', 9.59, () => highest(VEHICLE.permanentRange.greatest))],
  },
  {
    id: 'V26',
    input: 'state C, both corners',
    source: TABLE_A10,
    checks: [
      level('C lowest', 5.47, () => lowest(VEHICLE.combinedCRange.least)),
      level('C highest', 6.53, () => highest(VEHICLE.combinedCRange.greatest)),
    ],
  },
  {
    id: 'V27',
    input: 'state D, both corners',
    source: CIRCUIT,
    checks: [
      level('D lowest', 2.59, () => lowest(VEHICLE.combinedDRange.least)),
      level('D highest', 3.28, () => highest(VEHICLE.combinedDRange.greatest)),
    ],
  },
  {
    id: 'V28',
    input: 'test resistors 1870 and 4610 ohms',
    source: TABLE_A9,
    checks: [
      level('1870 ohms', 8.06, () => nominal(1870)),
      window('1870 ohms', 'B', () => nominal(1870)),
      level('4610 ohms', 9.99, () => nominal(4610)),
      window('4610 ohms', 'B', () => nominal(4610)),
    ],
  },
  {
    id: 'V29',
    input: 'test resistors 1870 with 909 and 4610 with 1723 ohms; within rounding at the lower edge',
    source: TABLE_A9,
    checks: [
      level('1870 with 909', 4.99, () => nominal(parallel(1870, 909))),
      {
        what: '1870 with 909, below the edge of C by at most 0.02 V',
        expected: true,
        compute: () => isWithin({ least: 4.98, greatest: 5 }, nominal(parallel(1870, 909))),
      },
      level('4610 with 1723', 6.99, () => nominal(parallel(4610, 1723))),
      window('4610 with 1723', 'C', () => nominal(parallel(4610, 1723))),
    ],
  },
  {
    id: 'V30',
    input: 'test resistors 1870 with 140 and 4610 with 448 ohms',
    source: TABLE_A9,
    checks: [
      level('1870 with 140', 2, () => nominal(parallel(1870, 140))),
      window('1870 with 140', 'D', () => nominal(parallel(1870, 140))),
      level('4610 with 448', 3.98, () => nominal(parallel(4610, 448))),
      window('4610 with 448', 'D', () => nominal(parallel(4610, 448))),
    ],
  },
  {
    id: 'V31',
    input: 'UA 12.0 V, UB 8.98 V',
    source: 'IEC 61851-1:2017, A.4.4',
    checks: [
      { what: 'ohms', expected: 999, tolerance: 0.5, compute: () => sourceResistanceFrom(12, 8.98) },
      {
        what: 'pass',
        expected: true,
        compute: () => isWithin(PILOT_SOURCE.resistanceRange, sourceResistanceFrom(12, 8.98)),
      },
    ],
  },
  {
    id: 'V32',
    input: 'UA 11.9 V, UB 8.6 V',
    source: 'IEC 61851-1:2017, A.4.4',
    checks: [
      { what: 'ohms', expected: 1145, tolerance: 0.5, compute: () => sourceResistanceFrom(11.9, 8.6) },
      {
        what: 'pass',
        expected: false,
        compute: () => isWithin(PILOT_SOURCE.resistanceRange, sourceResistanceFrom(11.9, 8.6)),
      },
    ],
  },
  {
    id: 'V33',
    input: '120 ohms from CP to PE in state C',
    source: 'IEC 61851-1:2017, A.4.9, and the pilot circuit',
    checks: [
      level('high', 1.22, () =>
        pilotHigh({ ...shunted(source, 120), vehicleResistance: vehicleC, diodeDrop: VEHICLE.diodeDrop }),
      ),
      level('low', -1.29, () =>
        pilotLow({ ...shunted(source, 120), vehicleResistance: vehicleC, diode: 'sound' }),
      ),
      { what: 'off, s', expected: 3, compute: () => timing.GREATEST_OFF_AFTER_PILOT_SHORT },
    ],
  },
  {
    id: 'V34',
    input: 'diode shorted',
    source: 'IEC 61851-1:2017, Table A.4 note c, and the pilot circuit',
    checks: [
      level('low in B', -8.79, () =>
        pilotLow({ ...source, vehicleResistance: VEHICLE.permanent, diode: 'shorted' }),
      ),
      window('low in B', 'invalid', () =>
        pilotLow({ ...source, vehicleResistance: VEHICLE.permanent, diode: 'shorted' }),
      ),
      level('low in C', -5.62, () => pilotLow({ ...source, vehicleResistance: vehicleC, diode: 'shorted' })),
      window('low in C', 'invalid', () =>
        pilotLow({ ...source, vehicleResistance: vehicleC, diode: 'shorted' }),
      ),
    ],
  },
  {
    id: 'V35',
    input: 'd.c. meter on the pilot of a 16 A offer, state C (6 V)',
    source: 'arithmetic on IEC 61851-1:2017, Tables A.4 and A.7',
    checks: [
      {
        what: 'mean, V',
        expected: -7.2,
        tolerance: 0.05,
        compute: () => meanPilot(dutyForCurrent(16), 6, -12),
      },
    ],
  },
  {
    id: 'V36',
    input: 'd.c. meter on the pilot of a 16 A offer, state B (9 V)',
    source: 'arithmetic on IEC 61851-1:2017, Tables A.4 and A.7',
    checks: [
      {
        what: 'mean, V',
        expected: -6.4,
        tolerance: 0.05,
        compute: () => meanPilot(dutyForCurrent(16), 9, -12),
      },
    ],
  },
  time('V37', 'C2 to B2', 'Table A.6, 8.1', 0.1, timing.GREATEST_OFF_AFTER_NOT_READY),
  time('V38', 'B2 to C2', 'Table A.6, 4', 3, timing.GREATEST_ON_AFTER_READY),
  time('V39', 'PE opened while charging', '6.3.1.2 and A.4.8', 0.1, timing.GREATEST_OFF_AFTER_EARTH_LOSS),
  time('V40', 'x2 to x1, vehicle ignores', 'Table A.6, 10.2', 6, timing.LEAST_OPEN_UNDER_LOAD),
  time('V41', 'duty lowered', 'Table A.6, 6', 5, timing.GREATEST_VEHICLE_FOLLOW),
  time('V42', 'state F entered, lock', 'Table A.6, 12', 30, timing.GREATEST_UNLOCK_AFTER_FAULT),
  {
    id: 'V43',
    input: 'Rc 680 ohms',
    source: TABLE_B2,
    checks: [{ what: 'A', expected: 20, compute: () => readCoding(680) }],
  },
  {
    id: 'V44',
    input: 'Rc 220 ohms, unit rated 32 A',
    source: `${TABLE_B2}; 6.3.1.6; Table A.7`,
    checks: [
      { what: 'A', expected: 32, compute: () => greatestOffer(32, Number(readCoding(220))) },
      {
        what: 'duty, %',
        expected: 53.33,
        tolerance: 0.005,
        compute: () => percent(greatestOffer(32, Number(readCoding(220)))),
      },
    ],
  },
  {
    id: 'V45',
    input: 'Rc 1500 ohms, unit rated 32 A',
    source: `${TABLE_B2}; 6.3.1.6; Table A.7`,
    checks: [
      { what: 'A', expected: 13, compute: () => greatestOffer(32, Number(readCoding(codingResistance(13)))) },
      {
        what: 'duty, %',
        expected: 21.67,
        tolerance: 0.005,
        compute: () => percent(greatestOffer(32, Number(readCoding(1500)))),
      },
    ],
  },
  {
    id: 'V46',
    input: 'Rc 164 and 308 ohms',
    source: TABLE_B2,
    checks: [
      { what: 'A at 164', expected: 32, compute: () => readCoding(164) },
      { what: 'A at 308', expected: 32, compute: () => readCoding(308) },
    ],
  },
  {
    id: 'V47',
    input: 'Rc 50 and 4600 ohms',
    source: TABLE_B2,
    checks: [
      { what: '50', expected: 'invalid', compute: () => readCoding(50) },
      { what: '4600', expected: 'none', compute: () => readCoding(4600) },
    ],
  },
];
