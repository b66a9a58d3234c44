// A file that no longer loads fails every test file that needs it, but the runner of mutants counts failed tests alone.
// This test fails in their place.

import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const FLOOR = join(import.meta.dirname, '../../src', process.env.MUTATED_FLOOR ?? '');

// Outside the test, as the imports of every test file are.
const loaded = await Promise.allSettled(
  readdirSync(FLOOR, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => import(join(FLOOR, name))),
);

test('every file of the floor loads', () => {
  expect(loaded.filter(({ status }) => status === 'rejected')).toEqual([]);
});
