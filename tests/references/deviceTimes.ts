/**
 * Every tabled break time and non-operating time of residual current devices (IEC 61008-1) and of d.c. detectors
 * (IEC 62955), at the tabled currents. A, ms. `least`: how long it has to hold, Infinity: for good; `greatest`: by when it
 * has to have opened, null: nothing demanded.
 */

import type { ReferenceRow } from './row.ts';

export interface DeviceTime extends ReferenceRow {
  readonly current: string;
  readonly amps: number;
  readonly least: number;
  readonly greatest: number | null;
}

const row =
  (source: string, rated: number, at: (multiple: number) => string = (m) => `${m} IΔn`) =>
  (multiple: number, least: number, greatest: number | null): DeviceTime => ({
    current: at(multiple),
    amps: multiple * rated,
    least,
    greatest,
    source,
  });

/** The same for a current that the table gives in amperes. */
const absolute = (source: string, amps: number, least: number, greatest: number | null): DeviceTime => ({
  current: `${amps} A`,
  amps,
  least,
  greatest,
  source,
});

const ALTERNATING = 'IEC 61008-1, table of break times, alternating current, general type';
const SMALL = `${ALTERNATING}; 0.25 A for 5 IΔn from memory`;
const DELAYED =
  'IEC 61008-1, table of break and non-actuating times, alternating current, S type, from memory';
const PULSATING = 'IEC 61008-1, table of break times, half-wave pulsating current, from memory';

export interface RatedDevice {
  readonly name: string;
  readonly rated: number;
  readonly delay: 'general' | 'S';
  readonly alternating: readonly DeviceTime[];
  /** R.m.s. of the half-wave. */
  readonly pulsating: readonly DeviceTime[];
}

const ten = row(ALTERNATING, 0.01);
const thirty = row(ALTERNATING, 0.03);
const hundred = row(ALTERNATING, 0.1);
const delayed = row(DELAYED, 0.1);
const tenPulsating = row(PULSATING, 0.01);
const thirtyPulsating = row(PULSATING, 0.03);
const hundredPulsating = row(PULSATING, 0.1);

/** From 5 A to 500 A one time holds. */
const above = (source: string, least: number, greatest: number): readonly DeviceTime[] =>
  [5, 50, 500].map((amps) => absolute(source, amps, least, greatest));

export const RATED_DEVICES: readonly RatedDevice[] = [
  {
    name: '10 mA, general',
    rated: 0.01,
    delay: 'general',
    alternating: [
      ten(0.5, Infinity, null),
      ten(1, 0, 300),
      ten(2, 0, 150),
      absolute(SMALL, 0.25, 0, 40),
      ...above(ALTERNATING, 0, 40),
    ],
    pulsating: [tenPulsating(2, 0, 300), tenPulsating(4, 0, 150), absolute(PULSATING, 0.5, 0, 40)],
  },
  {
    name: '30 mA, general',
    rated: 0.03,
    delay: 'general',
    alternating: [
      thirty(0.5, Infinity, null),
      thirty(1, 0, 300),
      thirty(2, 0, 150),
      thirty(5, 0, 40),
      absolute(SMALL, 0.25, 0, 40),
      ...above(ALTERNATING, 0, 40),
    ],
    pulsating: [
      thirtyPulsating(0.35, Infinity, null),
      thirtyPulsating(1.4, 0, 300),
      thirtyPulsating(2.8, 0, 150),
      absolute(PULSATING, 0.35, 0, 40),
    ],
  },
  {
    name: '100 mA, general',
    rated: 0.1,
    delay: 'general',
    alternating: [
      hundred(0.5, Infinity, null),
      hundred(1, 0, 300),
      hundred(2, 0, 150),
      hundred(5, 0, 40),
      ...above(ALTERNATING, 0, 40),
    ],
    pulsating: [
      hundredPulsating(0.35, Infinity, null),
      hundredPulsating(1.4, 0, 300),
      hundredPulsating(2.8, 0, 150),
      hundredPulsating(7, 0, 40),
    ],
  },
  {
    name: '100 mA, S',
    rated: 0.1,
    delay: 'S',
    alternating: [
      delayed(0.5, Infinity, null),
      delayed(1, 130, 500),
      delayed(2, 60, 200),
      delayed(5, 50, 150),
      ...above(DELAYED, 40, 150),
    ],
    pulsating: [
      hundredPulsating(0.35, Infinity, null),
      hundredPulsating(1.4, 130, 500),
      hundredPulsating(2.8, 60, 200),
      hundredPulsating(7, 50, 150),
    ],
  },
];

/** A d.c. detector on smooth direct current, either way round. */
export const DETECTOR_TIMES: readonly DeviceTime[] = [
  absolute('IEC 62955:2018, 5.3.4', 0.003, Infinity, null),
  absolute('IEC 62955:2018, Table 2', 0.006, 0, 10_000),
  absolute('IEC 62955:2018, Table 2', 0.06, 0, 300),
  absolute('IEC 62955:2018, Table 2', 0.2, 0, 100),
];

/** What a detector of the monitoring kind has to bear of alternating current, so that the a.c. device goes first. */
export const DETECTOR_HOLDS: readonly DeviceTime[] = [
  absolute('IEC 62955:2018, Table 3 and 9.9.3: held for 10 s', 0.03, 10_000, null),
  absolute('IEC 62955:2018, Table 3', 0.06, 300, null),
  absolute('IEC 62955:2018, Table 3', 0.15, 80, null),
  absolute('IEC 62955:2018, Table 3', 5, 80, null),
];

/** Slow rises, A. The bench has no rectified currents of two or three phases; the laws hold their bands. */
export const DETECTOR_RISES: readonly (ReferenceRow & {
  current: 'smooth' | 'rectified, two-phase' | 'rectified, three-phase';
  least: number;
  greatest: number;
})[] = [
  { current: 'smooth', least: 0.003, greatest: 0.006, source: 'IEC 62955:2018, 9.9.2.1' },
  { current: 'rectified, two-phase', least: 0.0035, greatest: 0.007, source: 'IEC 62955:2018, 9.9.2.6' },
  { current: 'rectified, three-phase', least: 0.0031, greatest: 0.0062, source: 'IEC 62955:2018, 9.9.2.7' },
];

/** Mean over r.m.s. of a half-wave: peak / π over peak / 2. */
export const MEAN_OF_HALF_WAVE: ReferenceRow & { readonly share: number } = {
  share: 0.637,
  source: 'arithmetic: mean and r.m.s. of a half-wave rectified sine over whole periods, 2/π',
};
