/** Numbers by key: against another implementation of SHA-256, and evenly spread. */
import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { drawer } from '../../src/bench/draw.ts';

const KEYS = Array.from({ length: 2000 }, (_, i) => `gain ${i}`);

test('the first 32 bits of SHA-256 of seed and key, as a share of 2³²', () => {
  for (const seed of [0, 7, 123_456])
    for (const key of KEYS.slice(0, 50)) {
      const bits = createHash('sha256').update(`${seed}:${key}`).digest().readUInt32BE(0);
      expect(drawer(seed)(key)).toBe(bits / 2 ** 32);
    }
});

test('from 0 to below 1, with a mean of a half', () => {
  const drawn = KEYS.map(drawer(31));
  expect(Math.min(...drawn)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...drawn)).toBeLessThan(1);
  const mean = drawn.reduce((sum, x) => sum + x, 0) / drawn.length;
  // Four standard errors of an even spread: 4 · √(1/12) / √2000.
  expect(Math.abs(mean - 0.5)).toBeLessThan(0.026);
});

test('a seed asked for again, after many others, gives what it gave', () => {
  const before = drawer(1)('gain');
  for (let seed = 100; seed < 130; seed++) drawer(seed)('gain');
  expect(drawer(1)('gain')).toBe(before);
});
