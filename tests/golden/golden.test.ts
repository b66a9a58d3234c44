/** What three old attempts were marked at, they are marked at; see golden.ts. */
import { expect, test } from 'vitest';
import { ENGINE } from '../../src/attempt/record/attempt.ts';
import { expected, GOLDEN, toldToday } from './golden.ts';

const { engine, reason, attempts } = expected();

test('the figures are those of this engine, and their reason is told', () => {
  expect(engine, 'the engine was raised: npm run golden -- "the reason"').toBe(ENGINE);
  expect(reason.length).toBeGreaterThan(10);
});

test.each(GOLDEN)('%s', (name) => {
  expect(toldToday(name)).toEqual(attempts[name]);
});
