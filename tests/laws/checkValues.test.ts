/** Every published check value is there once and the laws agree with it. */

import { describe, expect, test } from 'vitest';
import { CHECK_VALUES } from '../references/checkValues.ts';

const ALL = Array.from({ length: 78 }, (_, index) => `V${index + 1}`);

test('the table holds V1 to V78, each once', () => {
  expect(CHECK_VALUES.map((row) => row.id).sort()).toEqual([...ALL].sort());
});

const rows = CHECK_VALUES.flatMap(({ id, input, source, checks }) =>
  checks.map((check) => ({ id, input, source, ...check })),
);

describe('the laws agree', () => {
  test.each(rows)('$id $input: $what = $expected ($source)', ({ expected, tolerance, compute }) => {
    const result = compute();
    if (tolerance === undefined) {
      expect(result).toBe(expected);
    } else {
      expect(result).toBeTypeOf('number');
      expect(Math.abs(Number(result) - Number(expected))).toBeLessThanOrEqual(tolerance);
    }
  });
});
