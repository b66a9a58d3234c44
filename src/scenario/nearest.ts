/**
 * The valid name that a wrong one was meant to be. It is offered only where the two are one name: alike but for case,
 * hyphens, spaces and the like, or a slip of spelling in a long word. A short word that differs is another thing (Ze
 * and Zs, TN-S and TN-C-S, L1 and L2, C and D): nobody is led from one to the other.
 */
import { distance } from 'fastest-levenshtein';

/** Shortest word in which a slip is a slip, letters. */
const SHORTEST = 5;
/** Longer than any name here. */
export const LONGEST = 60;
/** How an answer begins that knows which name was meant. */
export const DID_YOU_MEAN = 'did you mean';

/** The name meant, or all that are valid, for a message; empty where none is. */
export function nearest(name: string, valid: readonly string[]): string {
  if (valid.length === 0) return '';
  const meant = name.length > LONGEST ? undefined : meantBy(name, valid);
  return meant === undefined ? `one of: ${valid.join(', ')}` : `${DID_YOU_MEAN} "${meant}"?`;
}

function meantBy(name: string, valid: readonly string[]): string | undefined {
  const words = wordsOf(name);
  const same = valid.filter((other) => wordsOf(other).join('') === words.join(''));
  if (same.length > 0) return same.length === 1 ? same[0] : undefined;
  const slips = valid
    .map((other) => ({ other, slips: slipsBetween(words, wordsOf(other)) }))
    .sort((a, b) => a.slips - b.slips);
  const [best, second] = slips;
  if (best === undefined || best.slips === Number.POSITIVE_INFINITY) return undefined;
  return best.slips === second?.slips ? undefined : best.other;
}

/** `setCurrent`, `set-current` and `Set current` are the same two words. */
const wordsOf = (name: string): readonly string[] =>
  name
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');

/** Slips of spelling from one name to another; infinite where what differs is another word. */
function slipsBetween(name: readonly string[], other: readonly string[]): number {
  const [a, b] = differing(name, other);
  const most = Math.floor(Math.min(a.length, b.length) / 4);
  if (Math.min(a.length, b.length) < SHORTEST || a[0] !== b[0]) return Number.POSITIVE_INFINITY;
  const slips = areSwapped(a, b) ? 1 : distance(a, b);
  return slips <= most ? slips : Number.POSITIVE_INFINITY;
}

/** What is left of two names without the words that they share at either end. */
function differing(name: readonly string[], other: readonly string[]): readonly [string, string] {
  const shortest = Math.min(name.length, other.length);
  let before = 0;
  while (before < shortest && name[before] === other[before]) before += 1;
  let after = 0;
  while (after < shortest - before && name.at(-1 - after) === other.at(-1 - after)) after += 1;
  const middle = (words: readonly string[]) => words.slice(before, words.length - after).join('');
  return [middle(name), middle(other)];
}

/** Two letters that stand next to each other have changed places: one slip. */
function areSwapped(a: string, b: string): boolean {
  const apart = [...a].findIndex((letter, i) => letter !== b[i]);
  return apart >= 0 && a.slice(0, apart) + a[apart + 1] + a[apart] + a.slice(apart + 2) === b;
}
