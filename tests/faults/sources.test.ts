// Where a fault is from stands above its id: a clause, or that there is none. Nobody asks for it on the bench, so it is a
// comment, and this test sees to it that none is without.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { CATALOGUE } from '../../src/faults/catalogue.ts';
import { NOT_FAULT_SOURCES } from '../../src/faults/notFaultSources.ts';

const FOLDER = join(import.meta.dirname, '../../src/faults');
const NAMED =
  /\/\/ (IEC|BS|EAWR|ESQCR|HSE|HSG|SI|The unit’s sheet|[^\n]*\b(from memory|[Cc]ommon practice, no source))/;

test('every fault of the catalogue says where it is from', () => {
  const text = readdirSync(FOLDER)
    .map((name) => readFileSync(join(FOLDER, name), 'utf8'))
    .join('\n');
  const without = CATALOGUE.filter(({ kind }) => kind === 'fault').filter(({ id }) => {
    const above = new RegExp(`\\n([^\\n]*)\\n\\s*id: '${id}',\\n`).exec(text)?.[1] ?? '';
    return !NAMED.test(above);
  });
  expect(without.map(({ id }) => id)).toEqual([]);
});

test('and whatever is no fault', () => {
  const ids = CATALOGUE.filter(({ kind }) => kind === 'not-fault').map(({ id }) => id);
  expect(Object.keys(NOT_FAULT_SOURCES).toSorted()).toEqual(ids.toSorted());
});
