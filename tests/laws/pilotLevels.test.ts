/**
 * Pilot voltages: windows at every edge, measured limits at the corners of the permitted parts, and
 * the circuit's own ends.
 */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  MEASURED_PILOT,
  PILOT_SOURCE,
  parallel,
  pilotHigh,
  pilotLow,
  pilotWindow,
  shunted,
  VEHICLE,
} from '../../src/laws/pilotLevels.ts';
import { sourceResistanceFrom } from '../../src/laws/pilotSourceResistance.ts';
import { isWithin } from '../../src/laws/quantities.ts';
import { CORNER_ROWS, WINDOW_ROWS } from '../references/pilotTables.ts';

test.each(WINDOW_ROWS)('$volts V: $window ($source)', ({ volts, window }) => {
  expect(pilotWindow(volts)).toBe(window);
});

test('what is no voltage lies in no window', () => {
  expect(pilotWindow(Number.NaN)).toBe('outside');
  expect(pilotWindow(Infinity)).toBe('outside');
});

test.each(CORNER_ROWS)('state $state $end: $volts V ($source)', (row) => {
  expect(Math.abs(pilotHigh(row) - row.volts)).toBeLessThanOrEqual(0.005);
  expect(MEASURED_PILOT[row.state][row.end]).toBe(row.volts);
});

test('the measured low half is the permitted no-load voltage', () => {
  for (const end of [PILOT_SOURCE.openRange.least, PILOT_SOURCE.openRange.greatest]) {
    const low = pilotLow({ open: end, sourceResistance: 1000, vehicleResistance: 2740, diode: 'sound' });
    expect([MEASURED_PILOT.low.least, MEASURED_PILOT.low.greatest]).toContain(low);
  }
});

test('the combined ranges are the permanent and switched limits in parallel, to the ohm', () => {
  const { permanentRange, stateCRange, stateDRange, combinedCRange, combinedDRange } = VEHICLE;
  for (const end of ['least', 'greatest'] as const) {
    expect(Math.abs(parallel(permanentRange[end], stateCRange[end]) - combinedCRange[end])).toBeLessThan(1);
    expect(Math.abs(parallel(permanentRange[end], stateDRange[end]) - combinedDRange[end])).toBeLessThan(1);
  }
});

const inside = (range: { least: number; greatest: number }) =>
  fc.double({ min: range.least, max: range.greatest, noNaN: true });

test('permitted parts never leave the measured limits', () => {
  const states = [
    { state: 'B', resistance: VEHICLE.permanentRange },
    { state: 'C', resistance: VEHICLE.combinedCRange },
    { state: 'D', resistance: VEHICLE.combinedDRange },
  ] as const;
  fc.assert(
    fc.property(
      inside(PILOT_SOURCE.openRange),
      inside(PILOT_SOURCE.resistanceRange),
      inside(VEHICLE.diodeDropRange),
      fc
        .constantFrom(...states)
        .chain(({ state, resistance }) =>
          inside(resistance).map((vehicleResistance) => ({ state, vehicleResistance })),
        ),
      (open, sourceResistance, diodeDrop, { state, vehicleResistance }) => {
        const volts = pilotHigh({ open, sourceResistance, vehicleResistance, diodeDrop });
        const { least, greatest } = MEASURED_PILOT[state];
        expect(isWithin({ least: least - 0.005, greatest: greatest + 0.005 }, volts)).toBe(true);
      },
    ),
  );
});

test('the source resistance comes back from two readings', () => {
  fc.assert(
    fc.property(
      inside(PILOT_SOURCE.openRange),
      fc.double({ min: 100, max: 3000, noNaN: true }),
      (open, r) => {
        const loaded = pilotHigh({ open, sourceResistance: r, vehicleResistance: 2740, diodeDrop: 0.7 });
        expect(sourceResistanceFrom(open, loaded)).toBeCloseTo(r, 6);
      },
    ),
  );
  expect(() => sourceResistanceFrom(12, 0.7)).toThrow(RangeError);
  expect(() => sourceResistanceFrom(12, Number.NaN)).toThrow(RangeError);
});

test('ends: no vehicle, a short, a source below the diode drop', () => {
  const source = { open: 12, sourceResistance: 1000 };
  expect(pilotHigh({ ...source, vehicleResistance: Infinity, diodeDrop: 0.7 })).toBe(12);
  expect(pilotLow({ ...source, vehicleResistance: Infinity, diode: 'shorted' })).toBe(-12);
  expect(pilotHigh({ ...source, vehicleResistance: 0, diodeDrop: 0.7 })).toBe(0.7);
  expect(pilotHigh({ open: 0.5, sourceResistance: 1000, vehicleResistance: 880, diodeDrop: 0.7 })).toBe(0.5);
  expect(shunted(source, Infinity)).toEqual(source);
  expect(shunted(source, 0)).toEqual({ open: 0, sourceResistance: 0 });
  expect(shunted(source, 1000)).toEqual({ open: 6, sourceResistance: 500 });
});

test('parallel: ends and a pair', () => {
  expect(parallel(100, 100)).toBe(50);
  expect(parallel(100, 0)).toBe(0);
  expect(parallel(100, Infinity)).toBe(100);
  expect(parallel()).toBe(Infinity);
});
