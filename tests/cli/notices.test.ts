/** The page goes out with the licence of everything that is in it. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { noticesText } from '../../src/cli/notices.ts';

const read = (name: string) => readFileSync(new URL(`../../${name}`, import.meta.url), 'utf8');
const LICENCES = read('public/licences.txt');

test('public/licences.txt is up to date: npm run notices', async () => {
  expect(await noticesText()).toBe(LICENCES);
});

describe('it names, in the version of the lock file,', () => {
  const { packages } = JSON.parse(read('package-lock.json'));
  test.each(Object.keys(JSON.parse(read('package.json')).dependencies))('%s', (name) => {
    expect(LICENCES.split('\n')).toContain(`${name} ${packages[`node_modules/${name}`].version}`);
  });
});

test('the trainer’s own licence is the one that package.json names', () => {
  expect(JSON.parse(read('package.json')).license).toBe('MIT');
  expect(read('LICENSE')).toMatch(/^MIT License\n/);
  expect(LICENCES).toContain(read('LICENSE').trim());
});
