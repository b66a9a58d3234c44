// What README.md and DEVELOPERS.md name must be there: paths, links and npm scripts, and what they quote of a file.
// Whether what they say of them is true, a reader must judge.

import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const ROOT = join(import.meta.dirname, '..');

/** Made by the build and by npm, so absent from a fresh clone. */
const MADE = /^(dist|node_modules)(\/|$)/;
const FILE_ENDING = /\.(cjs|css|html|js|json|md|mjs|png|svg|toml|ts|tsx|yaml|yml)$/;

/** Scripts named after `npm run` (flags between left out) in a text. */
function scriptsIn(text: string): string[] {
  return [...text.matchAll(/\bnpm run (?:--?[\w-]+ )*([\w:-]+)/g)].map((match) => match[1] ?? '');
}

/**
 * Paths in a text: links that lead into the project, and what stands between single backticks and either ends like
 * a file or folder or begins with a folder of the project. A star stands for any one name.
 */
function pathsIn(text: string): string[] {
  const prose = text.replace(/^```[\s\S]*?^```/gm, '');
  const ticked = [...prose.matchAll(/`([^`\s]+)`/g)].map((match) => match[1] ?? '');
  const linked = [...prose.matchAll(/\]\(([^)\s#]+)[^)]*\)/g)].map((match) => match[1] ?? '');
  const looksLikePath = (name: string) =>
    /^[\w.*][\w.*/-]*$/.test(name) &&
    (FILE_ENDING.test(name) ||
      name.endsWith('/') ||
      (name.includes('/') && exists(name.split('/')[0] ?? '')));
  return [...ticked.filter(looksLikePath), ...linked.filter((name) => !/^\w+:/.test(name))];
}

/** A path is sought from the root and, as the floors are named by their own names, from src. */
function exists(path: string): boolean {
  const upToStar = path.includes('*') ? path.slice(0, path.indexOf('*')).replace(/[^/]*$/, '') : path;
  return MADE.test(path) || ['.', 'src'].some((folder) => existsSync(join(ROOT, folder, upToStar)));
}

function absentIn(text: string): string[] {
  const { scripts } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
  return [
    ...pathsIn(text).filter((path) => !exists(path)),
    ...scriptsIn(text)
      .filter((name) => !(name in scripts))
      .map((name) => `npm run ${name}`),
  ];
}

test('what is not there is reported', () => {
  const text = [
    'See `src/laws/nowhere.ts`, `nowhere.json`, `tests/nothing`, `nothing/` and [a page](docs/none.md).',
    '```sh\nnpm run nonsense\nnpm run --silent nonsuch -- verb\n```',
  ].join('\n');
  expect(absentIn(text)).toEqual([
    'src/laws/nowhere.ts',
    'nowhere.json',
    'tests/nothing',
    'nothing/',
    'docs/none.md',
    'npm run nonsense',
    'npm run nonsuch',
  ]);
});

test('what is there, or is no path, is not reported', () => {
  const text = [
    '`src/laws/quantities.ts`, `laws/`, `tests/*.ts`, `package.json`, `dist/`, `CP/PE`, `N / A`, `1/2`,',
    '[tests](tests/floors.test.ts), [the web](https://example.org/none.md), `npm run build`',
    '```json\n{ "$schema": "../none.json" }\n```',
  ].join('\n');
  expect(absentIn(text)).toEqual([]);
});

describe('names only what is there', () => {
  test.each(['README.md', 'DEVELOPERS.md'])('%s', (file) => {
    expect(absentIn(readFileSync(join(ROOT, file), 'utf8'))).toEqual([]);
  });
});

/** Pieces of files in a text: blocks whose first line names the file in a comment. */
const piecesIn = (text: string) =>
  [...text.matchAll(/^```ts\n\/\/ (\S+)\n([\s\S]*?)^```/gm)].map(([, file = '', piece = '']) => ({
    file,
    piece,
  }));

test('what DEVELOPERS.md quotes of a file stands there word for word', () => {
  const pieces = piecesIn(readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8'));
  expect(pieces.length).toBeGreaterThan(4);
  for (const { file, piece } of pieces) expect(readFileSync(join(ROOT, file), 'utf8')).toContain(piece);
});
