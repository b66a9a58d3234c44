/** No file makes the program throw, good or bad: `npm run soak` takes two hundred thousand of the same. */
import { expect, test } from 'vitest';
import { KINDS } from './spoiltFiles.ts';
import { takeFile } from './takenFile.ts';

const SEED = 41_008;
const BLOCK = 50;
const BLOCKS = Array.from({ length: 12 }, (_, i) => BLOCK * i);

const taken = BLOCKS.map((first) => Array.from({ length: BLOCK }, (_, i) => first + i));

test.each(taken.map((block) => [`${block[0]} to ${block.at(-1)}`, block] as const))(
  'files %s',
  { timeout: 240_000 },
  (_, block) => {
    const files = block.map((index) => takeFile(SEED, index));
    expect(files.flatMap(({ wrong }) => wrong ?? [])).toEqual([]);
  },
);

test('some of each kind are taken, some refused', () => {
  const files = Array.from({ length: 60 }, (_, index) => takeFile(SEED, index));
  for (const kind of KINDS)
    for (const isTaken of [true, false])
      expect(
        files.some((file) => file.kind === kind && file.taken === isTaken),
        kind,
      ).toBe(true);
});
