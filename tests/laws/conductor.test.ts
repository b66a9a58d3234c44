/**
 * Copper resistances, pairs and temperature factors against the published tables, and what is
 * refused.
 */

import { expect, test } from 'vitest';
import {
  CONDUCTOR_AREAS,
  conductorResistance,
  fromTwenty,
  OPERATING_FACTORS,
  resistancePerMetre,
  toTwenty,
} from '../../src/laws/conductor.ts';
import { FROM_TWENTY, PAIR_RESISTANCES, RESISTANCES, TO_TWENTY } from '../references/conductorResistances.ts';

test('the areas are those of the table', () => {
  expect(CONDUCTOR_AREAS).toEqual(RESISTANCES.map((row) => row.area));
});

test.each(RESISTANCES)('$area mm²: $class2 and $class5 ohms per kilometre ($source)', (row) => {
  expect(resistancePerMetre(row.area, 2) * 1000).toBeCloseTo(row.class2, 9);
  expect(resistancePerMetre(row.area, 5) * 1000).toBeCloseTo(row.class5, 9);
  expect(conductorResistance({ length: 1000, area: row.area, class: 2 })).toBeCloseTo(row.class2, 9);
  expect(conductorResistance({ length: 20, area: row.area, class: 5 })).toBeCloseTo(row.class5 / 50, 9);
});

test.each(PAIR_RESISTANCES)('$line/$protective mm²: $milliohmsPerMetre mΩ/m ($source)', (row) => {
  const pair = resistancePerMetre(row.line, 2) + resistancePerMetre(row.protective, 2);
  expect(pair * 1000).toBeCloseTo(row.milliohmsPerMetre, 9);
});

test.each(TO_TWENTY)('$celsius °C to 20 °C: $factor ($source)', ({ celsius, factor }) => {
  expect(Math.abs(toTwenty(celsius) - factor)).toBeLessThanOrEqual(0.0005);
});

test.each(FROM_TWENTY)('20 °C to $celsius °C: $factor ($source)', ({ celsius, factor }) => {
  expect(Math.abs(fromTwenty(celsius) - factor)).toBeLessThanOrEqual(0.005);
});

test('the operating factors are those of 70 and 90 °C', () => {
  expect(OPERATING_FACTORS.thermoplastic).toBeCloseTo(fromTwenty(70), 9);
  expect(OPERATING_FACTORS.thermosetting).toBeCloseTo(fromTwenty(90), 9);
});

test('an unknown area is refused by naming the known ones', () => {
  expect(() => resistancePerMetre(3, 2)).toThrow(/known areas: 1, 1\.5, 2\.5, 4, 6, 10/);
  expect(() => conductorResistance({ length: -1, area: 6, class: 2 })).toThrow(RangeError);
  expect(() => conductorResistance({ length: Number.NaN, area: 6, class: 2 })).toThrow(RangeError);
  expect(() => toTwenty(-230)).toThrow(RangeError);
});
