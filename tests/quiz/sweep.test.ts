/** A share of the ten thousand seeds of the soak. */
import { expect, test } from 'vitest';
import { sweepQuestions } from './sweep.ts';

test('questions of the first seeds are whole, and answered as they should be', () => {
  expect(sweepQuestions(700)).toBeNull();
});
