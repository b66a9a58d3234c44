/**
 * The whole table of greatest loop impedances with its 0.8 column, and that the simulated breaker
 * trips inside the limits of its type.
 */

import { describe, expect, test } from 'vitest';
import {
  BREAKER_TYPES,
  breakerTripTime,
  greatestLoopImpedance,
  instantaneousMultiple,
  measuredLoopLimit,
} from '../../src/laws/overcurrent.ts';
import { LOOP_IMPEDANCES } from '../references/loopImpedances.ts';

const rows = LOOP_IMPEDANCES.flatMap((row) =>
  BREAKER_TYPES.map((type) => ({
    type,
    rating: row.rating,
    table: row[type][0],
    cold: row[type][1],
    source: row.source,
  })),
);

test.each(rows)('$type$rating: $table ohms, cold $cold ($source)', ({ type, rating, table, cold }) => {
  expect(greatestLoopImpedance(type, rating)).toBe(table);
  expect(measuredLoopLimit(type, rating)).toBe(cold);
  const unrounded = (0.8 * 218.5) / (instantaneousMultiple(type) * rating);
  expect(Math.abs(measuredLoopLimit(type, rating) - unrounded)).toBeLessThanOrEqual(0.01);
});

test('a breaker without a rating is refused', () => {
  for (const rating of [0, -6, Number.NaN]) {
    expect(() => greatestLoopImpedance('B', rating)).toThrow(RangeError);
    expect(() => measuredLoopLimit('B', rating)).toThrow(RangeError);
    expect(() => breakerTripTime('B', rating, 100)).toThrow(RangeError);
  }
});

/** BS EN 60898-1, Table 7, from memory: at this multiple the trip lies between the two times. */
const LIMITS = [
  { type: 'B', multiple: 1.13, least: 3600, greatest: Infinity },
  { type: 'B', multiple: 1.45, least: 0, greatest: 3600 },
  { type: 'B', multiple: 2.55, least: 1, greatest: 60 },
  { type: 'B', multiple: 3, least: 0.1, greatest: 45 },
  { type: 'B', multiple: 5, least: 0, greatest: 0.1 },
  { type: 'C', multiple: 1.13, least: 3600, greatest: Infinity },
  { type: 'C', multiple: 1.45, least: 0, greatest: 3600 },
  { type: 'C', multiple: 2.55, least: 1, greatest: 60 },
  { type: 'C', multiple: 5, least: 0.1, greatest: 15 },
  { type: 'C', multiple: 10, least: 0, greatest: 0.1 },
  { type: 'D', multiple: 1.13, least: 3600, greatest: Infinity },
  { type: 'D', multiple: 1.45, least: 0, greatest: 3600 },
  { type: 'D', multiple: 2.55, least: 1, greatest: 60 },
  { type: 'D', multiple: 10, least: 0.1, greatest: 4 },
  { type: 'D', multiple: 20, least: 0, greatest: 0.1 },
] as const;

describe('the simulated breaker', () => {
  test.each(LIMITS)('type $type at $multiple times: $least to $greatest s', (row) => {
    const time = breakerTripTime(row.type, 32, 32 * row.multiple);
    expect(time).toBeGreaterThanOrEqual(row.least);
    expect(time).toBeLessThanOrEqual(row.greatest);
  });

  test.each(BREAKER_TYPES)('type %s never takes longer at a higher current', (type) => {
    let last = Infinity;
    for (let current = 0; current <= 1000; current += 0.5) {
      const time = breakerTripTime(type, 32, current);
      expect(time).toBeGreaterThan(0);
      expect(time).toBeLessThanOrEqual(last);
      last = time;
    }
  });

  test('it carries its rating for ever', () => {
    expect(breakerTripTime('B', 32, 32)).toBe(Infinity);
    expect(breakerTripTime('B', 32, 0)).toBe(Infinity);
  });

  test.each(BREAKER_TYPES)('type %s trips within 0.4 s at the greatest loop impedance', (type) => {
    for (const { rating } of LOOP_IMPEDANCES) {
      const current = 230 / greatestLoopImpedance(type, rating);
      expect(breakerTripTime(type, rating, current)).toBeLessThanOrEqual(0.4);
    }
  });
});
