/** Hurdles: each by itself keeps an attempt from passing. */
import { describe, expect, test } from 'vitest';
import type { Reached } from '../../../src/attempt/marks/hurdles.ts';
import { hurdlesNotMet } from '../../../src/attempt/marks/hurdles.ts';
import { PARTS } from '../../../src/scenario/tasks.ts';

const least: Reached = {
  isRightVerdict: true,
  shares: { prediction: 0.5, observation: 0.5, judgement: 0.6, record: 0, diagnosis: 0.5, reasons: 0 },
  ofFigures: 0.5,
  judgement: { rejected: 0.5, leastOfLines: 0.5 },
  weights: PARTS,
};

test('exactly enough is enough, and record and reasons are no hurdles', () => {
  expect(hurdlesNotMet(least)).toEqual([]);
});

describe('a little less', () => {
  test.each([
    ['verdict', { isRightVerdict: false }],
    ['prediction', { shares: { ...least.shares, prediction: 0.49 } }],
    ['observation', { shares: { ...least.shares, observation: 0.49 } }],
    ['observation', { ofFigures: 0.49 }],
    ['judgement', { shares: { ...least.shares, judgement: 0.59 } }],
    ['judgement', { judgement: { rejected: 0.49, leastOfLines: 1 } }],
    ['judgement', { judgement: { rejected: 1, leastOfLines: 0.49 } }],
    ['diagnosis', { shares: { ...least.shares, diagnosis: 0.49 } }],
  ] as const)('%s', (name, change) => {
    expect(hurdlesNotMet({ ...least, ...change })).toEqual([name]);
  });
});

test('what was not asked, or does not weigh, is none', () => {
  const shares = { ...least.shares, prediction: 0, diagnosis: 0 };
  const weights = { ...PARTS, prediction: 0, diagnosis: 0 };
  expect(hurdlesNotMet({ ...least, shares, weights })).toEqual([]);
});
