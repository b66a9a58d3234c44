// What a typed figure says of its reading, alike for a single reading and for a row of a table.

import { describe, expect, test } from 'vitest';
import type { Reading } from '../../src/bench/reading.ts';
import { figureTyped } from '../../src/ui/screens/measure/typedFigure.ts';

const reading = (of: Partial<Reading>): Reading =>
  ({ at: 0, quantity: 'voltage', value: 230, ...of }) as Reading;
const volts = reading({});
const time = reading({ quantity: 'residual', value: null, mode: 'fixed', tripMs: 23 });

describe('a typed figure', () => {
  test.each([
    ['236', 'V', { value: 236, qualifier: null, unit: 'V' }],
    ['0,37 kV', 'V', 'A figure is expected, as 0.37 or 0,37.'],
    // The unit behind the figure goes before the key.
    ['12 mV', 'V', { value: 12, qualifier: null, unit: 'mV' }],
    ['> 600', 'V', { value: 600, qualifier: '>', unit: 'V' }],
    ['=5', 'V', { value: 5, qualifier: null, unit: 'V' }],
    ['no reading', '', { value: null, qualifier: 'no-reading', unit: 'V' }],
    ['236', '', 'Choose the unit that belongs to the figure.'],
    ['', 'V', 'A figure is expected, as 0.37 or 0,37.'],
  ] as const)('of a voltage: "%s" with %s', (text, unit, says) => {
    expect(figureTyped(volts, text, unit)).toEqual(says);
  });

  test.each([
    ['23', { value: null, qualifier: null, unit: 'ms', tripMs: 23 }],
    ['23 ms', { value: null, qualifier: null, unit: 'ms', tripMs: 23 }],
    ['23 V', 'The time is expected in milliseconds.'],
    ['no trip', { value: null, qualifier: '>', unit: 'ms' }],
    ['no reading', { value: null, qualifier: 'no-reading', unit: 'ms' }],
    ['', 'The time is expected, as 23, or “no trip”.'],
  ] as const)('of a time: "%s"', (text, says) => {
    expect(figureTyped(time, text, '')).toEqual(says);
  });

  test('a quantity of one unit needs no key', () => {
    const order = reading({ quantity: 'phase-sequence', value: 1 });
    expect(figureTyped(order, '1', '')).toEqual({ value: 1, qualifier: null, unit: '' });
  });
});
