/** No order of operations makes a sound unit unsafe. `npm run soak` does a million of the same. */
import { expect, test } from 'vitest';
import { runSequence } from './sequences.ts';

const SEED = 41_007;
const BLOCK = 1000;
const BLOCKS = Array.from({ length: 20 }, (_, i) => BLOCK * i);

test.each(BLOCKS.map((first) => [`${first} to ${first + BLOCK - 1}`, first] as const))(
  'sequences %s',
  { timeout: 240_000 },
  (_, first) => {
    const wrong = Array.from({ length: BLOCK }, (_, i) => runSequence(SEED, first + i));
    expect(wrong.filter((text) => text !== null).slice(0, 3)).toEqual([]);
  },
);
