/** Giving-outs for tests, of jobs that ship. */
import { webcrypto } from 'node:crypto';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import type { Giving, ReadGiving } from '../../src/desk/giving.ts';
import { readingGiving } from '../../src/desk/giving.ts';
import type { Crypto } from '../../src/desk/seal.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';

export const SHIPPED: readonly object[] = scenarioIds.map((id) => scenarioNamed(id).file as object);

export const givingOf = (jobs: readonly object[], more: Partial<Giving> = {}): Giving => ({
  format: 1,
  giving: 'c0ffee0123',
  group: 'Thursday',
  word: 'heron-42',
  rung: 2,
  jobs: [...jobs],
  variants: [],
  clears: false,
  ...more,
});

export function readGiving(giving: unknown): ReadGiving {
  const read = toItsEnd(readingGiving(giving));
  if (!read.ok) throw new Error(read.problems.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  return read.value;
}

export const CRYPTO: Crypto = {
  subtle: webcrypto.subtle as unknown as SubtleCrypto,
  drawn: (length) => webcrypto.getRandomValues(new Uint8Array(length)),
};
