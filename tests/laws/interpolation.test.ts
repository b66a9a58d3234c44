/**
 * Reading a table by straight lines, and the small conversions of quantities.ts.
 * The curves that use them have their own tests.
 */

import { expect, test } from 'vitest';
import { interpolated } from '../../src/laws/interpolation.ts';
import { isWithin, microseconds, seconds } from '../../src/laws/quantities.ts';

test('a table is read on the straight lines between its points', () => {
  const knots = [
    { at: 1, value: 10 },
    { at: 3, value: 4 },
    { at: 4, value: 4 },
  ] as const;
  const read = [0, 1, 1.5, 2, 3, 3.5, 4, 100].map((at) => interpolated(knots, at));
  expect(read).toEqual([10, 10, 8.5, 7, 4, 4, 4, 4]);
});

test('one point is a constant', () => {
  expect([-1, 2, 5].map((at) => interpolated([{ at: 2, value: 7 }], at))).toEqual([7, 7, 7]);
});

test('times are whole microseconds and come back', () => {
  expect(microseconds(0.036_336_4)).toBe(36_336);
  expect(seconds(microseconds(12.5))).toBe(12.5);
});

test('a range holds its ends and never NaN', () => {
  const range = { least: -1, greatest: 2 };
  expect([-1.1, -1, 0, 2, 2.1, Number.NaN].map((value) => isWithin(range, value))).toEqual([
    false,
    true,
    true,
    true,
    false,
    false,
  ]);
});
