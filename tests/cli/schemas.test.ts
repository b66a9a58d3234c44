/** The schemas in public/ are the ones that the code reads with. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { schemaFiles } from '../../src/cli/schemas.ts';

test.each(Object.entries(schemaFiles))('public/%s is up to date: npm run schema', (name, text) => {
  expect(readFileSync(new URL(`../../public/${name}`, import.meta.url), 'utf8')).toBe(text);
});
