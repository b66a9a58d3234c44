/** Figures that are given: units of the same quantity, the edge of the tolerance, misconceptions by their names. */
import { describe, expect, test } from 'vitest';
import type { GivenUnit } from '../../src/quiz/given.ts';
import { isRight, mistakeOf, OTHER_QUANTITY } from '../../src/quiz/given.ts';
import type { Question } from '../../src/quiz/question.ts';
import { CIRCUIT } from '../../src/verification/sources.ts';

const OFFER: Question = {
  id: 'current-of-duty.offer.1',
  kind: 'current-of-duty',
  topic: 'offer',
  way: 'figure',
  values: { percent: 53.3 },
  source: CIRCUIT,
  unit: 'A',
  answer: 32,
  tolerance: 0.3,
  mistakes: [{ id: 'percent-for-amperes', value: 53.3 }],
};
const given = (value: number, unit: GivenUnit) => ({ way: 'figure', value, unit }) as const;

describe('a figure', () => {
  test.each([
    [32, 'A', true],
    [32.3, 'A', true],
    [31.7, 'A', true],
    [32.31, 'A', false],
    [32_000, 'mA', true],
    [32, 'mA', false],
    [32, '%', false],
    [-32, 'A', false],
  ] as const)('%d %s', (value, unit, right) => {
    expect(isRight(OFFER, given(value, unit))).toBe(right);
  });

  test('that a misconception arrives at has its name, whichever unit is put behind it', () => {
    expect(mistakeOf(OFFER, given(53.3, 'A'))).toBe('percent-for-amperes');
    expect(mistakeOf(OFFER, given(53.3, '%'))).toBe('percent-for-amperes');
    expect(mistakeOf(OFFER, given(12, 'A'))).toBeNull();
    // Beside a small mistake the answer's tolerance is large: 3 is not 0.004.
    const small = {
      ...OFFER,
      answer: 258,
      tolerance: 5,
      mistakes: [{ id: 'upside-down', value: 0.89 / 230 }],
    };
    expect(mistakeOf(small, given(0.0039, 'A'))).toBe('upside-down');
    expect(mistakeOf(small, given(3, 'A'))).toBeNull();
    expect(mistakeOf(OFFER, given(12, '%'))).toBe(OTHER_QUANTITY);
    expect(mistakeOf(OFFER, given(32, 'A'))).toBeNull();
  });

  test('is not right in another way than was asked', () => {
    expect(isRight(OFFER, { way: 'choice', id: '32' })).toBe(false);
    expect(mistakeOf(OFFER, { way: 'choice', id: '32' })).toBeNull();
  });
});

test('an order is right as a whole, and the first act out of its place is the mistake', () => {
  const order: Question = {
    ...OFFER,
    way: 'order',
    parts: ['b', 'a', 'c'],
    answer: ['a', 'b', 'c'],
  } as Question;
  expect(isRight(order, { way: 'order', parts: ['a', 'b', 'c'] })).toBe(true);
  expect(isRight(order, { way: 'order', parts: ['a', 'b'] })).toBe(false);
  expect(mistakeOf(order, { way: 'order', parts: ['a', 'c', 'b'] })).toBe('c');
});

test('leads are right either way round', () => {
  const leads: Question = {
    ...OFFER,
    way: 'leads',
    drawing: { site: 'single-tt', part: 'outlet', plugged: false },
    answers: [['outlet.L1', 'outlet.PE']],
    mistakes: [{ id: 'line-neutral', pair: ['outlet.L1', 'outlet.N'] }],
  } as Question;
  expect(isRight(leads, { way: 'leads', pair: ['outlet.PE', 'outlet.L1'] })).toBe(true);
  expect(isRight(leads, { way: 'leads', pair: ['outlet.PE', 'outlet.PE'] })).toBe(false);
  expect(mistakeOf(leads, { way: 'leads', pair: ['outlet.N', 'outlet.L1'] })).toBe('line-neutral');
});
