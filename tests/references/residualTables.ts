/** Bands and times of residual current devices and d.c. detectors, row by row. A, s, multiples of IΔn. */

import type { ReferenceRow } from './row.ts';

const GENERAL = 'BS EN 61008-1 and BS EN 61009-1, table of break times, general type';
const S_TYPE = 'BS EN 61008-1 and BS EN 61009-1, table of break times, S type, from memory';

/** `least` is the time without actuating (Infinity: must not trip), `greatest` the break time. */
export const BREAK_ROWS: readonly (ReferenceRow & {
  delay: 'general' | 'S';
  multiple: number;
  least: number;
  greatest: number;
})[] = [
  { delay: 'general', multiple: 0.5, least: Infinity, greatest: Infinity, source: GENERAL },
  { delay: 'general', multiple: 0.501, least: 0, greatest: Infinity, source: GENERAL },
  { delay: 'general', multiple: 0.999, least: 0, greatest: Infinity, source: GENERAL },
  { delay: 'general', multiple: 1, least: 0, greatest: 0.3, source: GENERAL },
  { delay: 'general', multiple: 1.999, least: 0, greatest: 0.3, source: GENERAL },
  { delay: 'general', multiple: 2, least: 0, greatest: 0.15, source: GENERAL },
  { delay: 'general', multiple: 4.999, least: 0, greatest: 0.15, source: GENERAL },
  { delay: 'general', multiple: 5, least: 0, greatest: 0.04, source: GENERAL },
  { delay: 'general', multiple: 166, least: 0, greatest: 0.04, source: GENERAL },
  { delay: 'S', multiple: 0.5, least: Infinity, greatest: Infinity, source: S_TYPE },
  { delay: 'S', multiple: 1, least: 0.13, greatest: 0.5, source: S_TYPE },
  { delay: 'S', multiple: 2, least: 0.06, greatest: 0.2, source: S_TYPE },
  { delay: 'S', multiple: 5, least: 0.05, greatest: 0.15, source: S_TYPE },
  { delay: 'S', multiple: 50, least: 0.04, greatest: 0.15, source: S_TYPE },
];

const HALF_WAVE = 'BS EN 61008-1, 9.9, table of pulsating currents';
const HALF_WAVE_MEMORY = `${HALF_WAVE}, from memory`;

/** Band of the half-wave ramp, A r.m.s. */
export const HALF_WAVE_ROWS: readonly (ReferenceRow & {
  type: 'A' | 'F' | 'B';
  rated: number;
  angle: 0 | 90 | 135;
  least: number;
  greatest: number;
})[] = [
  { type: 'A', rated: 0.03, angle: 0, least: 0.0105, greatest: 0.042, source: HALF_WAVE },
  { type: 'A', rated: 0.03, angle: 90, least: 0.0075, greatest: 0.042, source: HALF_WAVE_MEMORY },
  { type: 'A', rated: 0.03, angle: 135, least: 0.0033, greatest: 0.042, source: HALF_WAVE_MEMORY },
  { type: 'F', rated: 0.03, angle: 0, least: 0.0105, greatest: 0.042, source: HALF_WAVE },
  { type: 'B', rated: 0.03, angle: 0, least: 0.0105, greatest: 0.042, source: HALF_WAVE },
  { type: 'A', rated: 0.1, angle: 0, least: 0.035, greatest: 0.14, source: HALF_WAVE },
  { type: 'A', rated: 0.01, angle: 0, least: 0.0035, greatest: 0.02, source: HALF_WAVE_MEMORY },
];

/** Break times on half-wave current. */
export const HALF_WAVE_TIMES: readonly (ReferenceRow & { multiple: number; greatest: number })[] = [
  { multiple: 1.399, greatest: Infinity, source: HALF_WAVE_MEMORY },
  { multiple: 1.4, greatest: 0.3, source: HALF_WAVE_MEMORY },
  { multiple: 2.8, greatest: 0.15, source: HALF_WAVE_MEMORY },
  { multiple: 7, greatest: 0.04, source: HALF_WAVE_MEMORY },
  { multiple: 0.35 / 0.03, greatest: 0.04, source: HALF_WAVE_MEMORY },
];

const TYPE_B = 'BS EN 62423, smooth direct current, from memory';

/** Break times of type B on smooth direct current. */
export const SMOOTH_DIRECT_TIMES: readonly (ReferenceRow & {
  multiple: number;
  general: number;
  S: number;
})[] = [
  { multiple: 1.999, general: Infinity, S: Infinity, source: TYPE_B },
  { multiple: 2, general: 0.3, S: 0.5, source: TYPE_B },
  { multiple: 4, general: 0.15, S: 0.2, source: TYPE_B },
  { multiple: 10, general: 0.04, S: 0.15, source: TYPE_B },
];

/** Smooth direct current a 30 mA device bears. */
export const TOLERATED_DIRECT: readonly (ReferenceRow & {
  type: 'AC' | 'A' | 'F' | 'B';
  amps: number;
})[] = [
  { type: 'AC', amps: 0, source: 'BS 7671:2018+A2:2022, 531.3.3' },
  { type: 'A', amps: 0.006, source: 'BS 7671:2018+A2:2022, 531.3.3' },
  { type: 'F', amps: 0.01, source: 'BS 7671:2018+A2:2022, 531.3.3' },
  { type: 'B', amps: 0.012, source: 'BS EN 62423, from memory' },
];

/** Break times of a d.c. detector. */
export const DIRECT_TIMES: readonly (ReferenceRow & { amps: number; greatest: number })[] = [
  { amps: 0.0059, greatest: Infinity, source: 'IEC 62955:2018, Table 2' },
  { amps: 0.006, greatest: 10, source: 'IEC 62955:2018, Table 2' },
  { amps: 0.0599, greatest: 10, source: 'IEC 62955:2018, Table 2' },
  { amps: 0.06, greatest: 0.3, source: 'IEC 62955:2018, Table 2' },
  { amps: 0.1999, greatest: 0.3, source: 'IEC 62955:2018, Table 2' },
  { amps: 0.2, greatest: 0.1, source: 'IEC 62955:2018, Table 2' },
];

/** Least times without operating on alternating current, monitoring kind. */
export const ALTERNATING_HOLD: readonly (ReferenceRow & { amps: number; least: number })[] = [
  { amps: 0.03, least: Infinity, source: 'IEC 62955:2018, Table 3 and 9.9.3' },
  { amps: 0.0301, least: 0.3, source: 'IEC 62955:2018, Table 3, held as at the next row' },
  { amps: 0.06, least: 0.3, source: 'IEC 62955:2018, Table 3' },
  { amps: 0.15, least: 0.08, source: 'IEC 62955:2018, Table 3' },
  { amps: 5, least: 0.08, source: 'IEC 62955:2018, Table 3' },
  { amps: 5.01, least: 0, source: 'IEC 62955:2018, Table 3 ends at 5 A' },
];
