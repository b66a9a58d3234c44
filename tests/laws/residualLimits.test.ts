/**
 * Bands and times demanded of residual current devices and d.c. detectors, row by row. How the
 * simulated devices keep them is in residualCurves.test.ts.
 */

import { expect, test } from 'vitest';
import {
  alternatingBand,
  breakTimeLimit,
  DIRECT,
  DIRECT_BAND,
  directBreakTimeLimit,
  HALF_WAVE_ANGLES,
  halfWaveBand,
  halfWaveBreakTimeLimit,
  leastNonActuatingTime,
  leastNonOperatingTime,
  smoothDirectBand,
  smoothDirectBreakTimeLimit,
  toleratedDirect,
} from '../../src/laws/residualLimits.ts';
import {
  ALTERNATING_HOLD,
  BREAK_ROWS,
  DIRECT_TIMES,
  HALF_WAVE_ROWS,
  HALF_WAVE_TIMES,
  SMOOTH_DIRECT_TIMES,
  TOLERATED_DIRECT,
} from '../references/residualTables.ts';

test.each(BREAK_ROWS)('$delay at $multiple IΔn: $least to $greatest s ($source)', (row) => {
  expect(leastNonActuatingTime(row.delay, row.multiple)).toBe(row.least);
  expect(breakTimeLimit(row.delay, row.multiple)).toBe(row.greatest);
});

test('no current is asked to hold longer than it may last', () => {
  for (const delay of ['general', 'S'] as const) {
    for (let multiple = 0.51; multiple < 200; multiple += 0.01) {
      expect(leastNonActuatingTime(delay, multiple)).toBeLessThan(breakTimeLimit(delay, multiple));
    }
  }
});

test('an alternating ramp trips in 15 to 30 mA at 30 mA rated (BS EN 61008-1)', () => {
  expect(alternatingBand(0.03)).toEqual({ least: 0.015, greatest: 0.03 });
});

test.each(HALF_WAVE_ROWS)('type $type, $rated A, $angle°: $least to $greatest A ($source)', (row) => {
  const band = halfWaveBand(row.type, row.rated, row.angle);
  expect(band?.least).toBeCloseTo(row.least, 9);
  expect(band?.greatest).toBeCloseTo(row.greatest, 9);
});

test('nothing is demanded of type AC on half waves', () => {
  for (const angle of HALF_WAVE_ANGLES) expect(halfWaveBand('AC', 0.03, angle)).toBeUndefined();
});

test.each(HALF_WAVE_TIMES)('half wave at $multiple IΔn: $greatest s ($source)', ({ multiple, greatest }) => {
  expect(halfWaveBreakTimeLimit(multiple)).toBe(greatest);
});

test.each(SMOOTH_DIRECT_TIMES)('type B, d.c. at $multiple IΔn: $general s, S $S s ($source)', (row) => {
  expect(smoothDirectBreakTimeLimit('general', row.multiple)).toBe(row.general);
  expect(smoothDirectBreakTimeLimit('S', row.multiple)).toBe(row.S);
});

test('a d.c. ramp trips type B in 15 to 60 mA at 30 mA rated (BS EN 62423, from memory)', () => {
  expect(smoothDirectBand(0.03)).toEqual({ least: 0.015, greatest: 0.06 });
});

test.each(TOLERATED_DIRECT)('type $type bears $amps A d.c. ($source)', ({ type, amps }) => {
  expect(toleratedDirect(type, 0.03)).toBeCloseTo(amps, 9);
});

test.each(DIRECT_TIMES)('$amps A d.c.: $greatest s ($source)', ({ amps, greatest }) => {
  expect(directBreakTimeLimit(amps)).toBe(greatest);
});

test.each(ALTERNATING_HOLD)('$amps A a.c. on a d.c. detector: $least s ($source)', ({ amps, least }) => {
  expect(leastNonOperatingTime(amps)).toBe(least);
});

test('a d.c. detector acts before a type A device is blinded (IEC 62955:2018, scope)', () => {
  expect(DIRECT_BAND.greatest).toBeLessThanOrEqual(toleratedDirect('A', 0.03));
  expect(DIRECT.slowRise.from).toBeLessThan(DIRECT_BAND.least);
});
