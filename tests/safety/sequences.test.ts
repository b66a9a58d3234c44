/** No order of operations makes a sound unit unsafe. `npm run soak` does a million of the same. */
import { expect, test } from 'vitest';
import { runSequence } from './sequences.ts';

const SEED = 41_007;

test.each(Array.from({ length: 20 }, (_, i) => i))(
  'sequences %i000 to %i999',
  { timeout: 60_000 },
  (block) => {
    const wrong = Array.from({ length: 1000 }, (_, i) => runSequence(SEED, 1000 * block + i));
    expect(wrong.filter((text) => text !== null).slice(0, 3)).toEqual([]);
  },
);
