// Figures of a class against worked examples from elsewhere, and CSV against another reader.

import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvOf } from '../../src/desk/csv.ts';
import { discrimination, shareOf } from '../../src/desk/items.ts';
import { setOutcome } from '../../src/desk/rule.ts';

describe('difficulty of a line', () => {
  // R. G. Newcombe, Two-sided confidence intervals for the single proportion, Statistics in Medicine 17 (1998),
  // table I, method 3: the score interval without correction.
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%i of %i', (right, of, from, to) => {
    const share = shareOf(right, of);
    expect(share.from).toBeCloseTo(from, 4);
    expect(share.to).toBeCloseTo(to, 4);
  });

  test('of none at all nothing is known', () => {
    expect(shareOf(0, 0)).toMatchObject({ from: 0, to: 1 });
  });
});

describe('whether a line tells the good from the weak', () => {
  const answers = (right: readonly number[], wrong: readonly number[]) => [
    ...right.map((rest) => ({ right: true, rest })),
    ...wrong.map((rest) => ({ right: false, rest })),
  ];

  test('as the formula of the point-biserial correlation has it', () => {
    const [right, wrong] = [
      [6, 8, 7, 7],
      [3, 5, 4, 4],
    ] as const;
    const s = Math.sqrt(22 / 8);
    expect(discrimination(answers(right, wrong), 8)).toBeCloseTo(((7 - 4) / s) * Math.sqrt(0.25), 10);
  });

  test('is not said of fewer than thirty, nor where all did alike', () => {
    const right = Array.from({ length: 15 }, (_, i) => i);
    expect(discrimination(answers(right, right.slice(1)))).toBeNull();
    expect(discrimination(answers(right, right))).toBeCloseTo(0, 10);
    expect(discrimination(answers([...right, ...right], []))).toBeNull();
  });
});

describe('CSV', () => {
  test('is read by another reader as it was written', () => {
    const field = fc.string({ unit: 'binary' }).filter((text) => !/^\s*[=+\-@|%]|^[\t\r]/.test(text));
    fc.assert(
      fc.property(fc.array(fc.array(field, { minLength: 2, maxLength: 4 }), { minLength: 1 }), (rows) => {
        const even = rows.map((row) => row.slice(0, 2));
        const seen = parse(csvOf(even), { record_delimiter: '\r\n', skip_empty_lines: false });
        expect(seen).toEqual(even);
      }),
      { numRuns: 300 },
    );
  });

  test.each(['=1+1', '+1', '-1', '@SUM(A1)', ' =1', '\t=1', '=HYPERLINK("http://x","y")'])(
    'nothing that somebody typed is worked out: %j',
    (text) => {
      const [[cell]] = parse(csvOf([[text, 'x']])) as [[string]];
      expect(cell).toBe(`'${text}`);
      expect(csvOf([[text, 'x']])).toMatch(/^"'/);
    },
  );
});

describe('the rule of a set', () => {
  const well = { passed: true, critical: 0, unsoundAccepted: false };
  const rule = { pass: 8, noCritical: true, noUnsound: true };
  const of = (passed: number, ...rest: readonly (typeof well | null)[]) => [
    ...Array.from({ length: passed }, () => well),
    ...rest,
  ];

  test('8 of 10, no critical act, no unsound unit accepted', () => {
    expect(setOutcome(rule, of(8, null, { ...well, passed: false }))).toMatchObject({
      met: true,
      handedIn: 9,
    });
    expect(setOutcome(rule, of(7, null, null, null)).met).toBe(false);
    expect(setOutcome(rule, of(9, { ...well, critical: 1 })).met).toBe(false);
    expect(setOutcome(rule, of(9, { ...well, passed: false, unsoundAccepted: true })).met).toBe(false);
    expect(setOutcome({ ...rule, noCritical: false }, of(9, { ...well, critical: 1 })).met).toBe(true);
  });
});
