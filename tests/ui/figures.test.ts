// Readings as an instrument would show them, and typed figures taken for what they say.

import { describe, expect, test } from 'vitest';
import type { Reading } from '../../src/bench/reading.ts';
import { RULES } from '../../src/bench/readings/quantities.ts';
import type { Quantity } from '../../src/bench/readings/quantity.ts';
import {
  furtherFacts,
  shownText,
  typedNumber,
  typedWithUnit,
  uncertaintyText,
} from '../../src/ui/format/figures.ts';
import { benchTime } from '../../src/words/benchTime.ts';

const reading = (quantity: Quantity, value: number | null, more: Partial<Reading> = {}): Reading => ({
  quantity,
  value,
  unit: RULES[quantity].unit,
  uncertainty: null,
  qualifier: null,
  at: 0,
  ...more,
});
/** Spaces of every width as plain ones. */
const plain = (text: string): string => text.replaceAll(/\s/gu, ' ');

describe('a reading is shown with as many digits as the instrument has, its unit and its sign', () => {
  test.each([
    [reading('continuity', 0.3), '0.30 Ω'],
    [reading('continuity', 24.5), '24.5 Ω'],
    [reading('continuity', null, { qualifier: '>', limit: 2000 }), '> 2000 Ω'],
    [reading('insulation', 550_000), '0.55 MΩ'],
    [reading('insulation', 2.1e6), '2.1 MΩ'],
    [reading('insulation', null, { qualifier: '>', limit: 200e6 }), '> 200 MΩ'],
    [reading('voltage', 236), '236 V'],
    [reading('pilot', 8.9), '+8.90 V'],
    [reading('pilot', -11.97), '−11.97 V'],
    [reading('coding', 680), '680 Ω'],
    [reading('loop', 0.4), '0.40 Ω'],
    [reading('residual', 0.021, { mode: 'ramp' }), '21.0 mA'],
    // A test at a fixed current shows the time in which it tripped.
    [reading('residual', 0.0312, { mode: 'fixed', tripMs: 23 }), '23 ms'],
    [reading('residual', null, { mode: 'fixed', qualifier: '>', limit: 0.0312 }), 'no trip'],
    [reading('residual', null, { qualifier: '>', limit: 0.033 }), '> 33.0 mA'],
    [reading('opening-time', 0.024), '24 ms'],
    [reading('opening-time', null, { qualifier: '>', limit: 5 }), '> 5000 ms'],
    [
      reading('loop', null, { qualifier: 'unable', reason: { id: 'not-live', place: 'outlet' } }),
      'no reading: outlet not live',
    ],
  ])('%j: %s', (given, text) => expect(plain(shownText(given))).toBe(text));
});

test('the uncertainty has the digits of its reading, or one more where it is smaller than the last', () => {
  expect(plain(uncertaintyText(reading('loop', 0.36, { uncertainty: 0.048 })))).toBe('±0.05 Ω');
  expect(plain(uncertaintyText(reading('voltage', 236, { uncertainty: 3.36 })))).toBe('±3 V');
  expect(plain(uncertaintyText(reading('residual', 0.001, { uncertainty: 0.00005 })))).toBe('±0.05 mA');
  expect(uncertaintyText(reading('continuity', null, { qualifier: '>', limit: 2000 }))).toBe('');
});

test('of a pilot both halves are figures; its times are on the trace, duty and amperes are left to work out', () => {
  const facts = furtherFacts(reading('pilot', 8.9, { low: -11.97, frequency: 1000, duty: 0.533, amps: 32 }));
  expect(facts.map(({ term, text }) => `${term} ${plain(text)}`)).toEqual(['low −11.97 V']);
  const steady = furtherFacts(reading('pilot', 12, { low: 12, frequency: null, duty: 1 }));
  expect(steady).toEqual([{ term: 'against time', text: 'steady, no period' }]);
});

describe('a typed figure', () => {
  test.each([
    ['0,37', 0.37],
    ['0.37', 0.37],
    [' 1 200 ', 1200],
    ['−11,97', -11.97],
    ['+9', 9],
    ['.5', 0.5],
    ['', null],
    ['12 V', null],
    ['1,2,3', null],
    ['1e3', null],
    ['NaN', null],
  ])('“%s” is %s', (text, value) => expect(typedNumber(text)).toBe(value));
});

describe('a unit typed behind a figure is taken for the unit', () => {
  test.each([
    ['8,98 V', '8,98', 'V'],
    ['> 200MΩ', '> 200', 'MΩ'],
    ['0.37 ohm', '0.37', 'Ω'],
    ['1.5 kΩ', '1.5', 'kΩ'],
    ['2.1 Mohm', '2.1', 'MΩ'],
    ['−4 mV', '−4', 'mV'],
    ['24 ms', '24', 'ms'],
  ])('“%s”', (text, figure, unit) => expect(typedWithUnit(text)).toEqual({ figure, unit }));
  test.each(['8.98', '24 m', '2.1 mΩ', '3 MV', 'no reading', 'V', '12 volts'])('“%s” has none', (text) =>
    expect(typedWithUnit(text)).toBeNull(),
  );
});

test('bench time is minutes and whole seconds', () => {
  expect([0, 59.9, 61, 6000].map(benchTime)).toEqual(['00:00', '00:59', '01:01', '100:00']);
});
