/**
 * Numbers drawn by key from a seed: the same key always gives the same number, so that one reading more or less
 * never shifts another. SHA-256 of seed and key, first 32 bits.
 *
 * Whatever is drawn is kept for the seeds in use: benches of one scenario, with its faults and without, and the same
 * job done once more ask for much the same keys.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import type { Draw } from '../unit/design.ts';
import { Recent } from './recent.ts';

export type Seed = number;

/** Seeds whose numbers are kept. */
const inUse = new Recent<Seed, Map<string, number>>(8);

export function drawer(seed: Seed): Draw {
  const drawn = inUse.of(seed, () => new Map());
  return (key) => {
    const known = drawn.get(key);
    if (known !== undefined) return known;
    const [a = 0, b = 0, c = 0, d = 0] = sha256(utf8ToBytes(`${seed}:${key}`));
    const number = (((a * 256 + b) * 256 + c) * 256 + d) / 4294967296;
    drawn.set(key, number);
    return number;
  };
}

/** The same things in the order of a share that is drawn for each. */
export const inDrawnOrder = <T>(
  things: readonly T[],
  shareOf: (thing: T, i: number) => number,
): readonly T[] =>
  things
    .map((thing, i) => ({ thing, at: shareOf(thing, i) }))
    .sort((x, y) => x.at - y.at)
    .map(({ thing }) => thing);
