// The house rules on floors, cycles, clocks, dice and words: first on small made-up offenders, so that a rule that
// catches nothing is seen, then on the whole of src. How a breach is found is in findBreaches.ts.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { FLOORS, findBreaches } from './findBreaches.ts';

const ROOT = join(import.meta.dirname, '..');

function breachesOf(files: Record<string, string>): string[] {
  return findBreaches(new Map(Object.entries(files)));
}

/** Every file under src that may hold imports, by path from the root, with its text. */
function sourceFiles(): Map<string, string> {
  return new Map(
    readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
      .map((name) => `src/${name.replaceAll('\\', '/')}`)
      .filter((name) => /\.(ts|tsx|mts|mjs|js|jsx)$/.test(name))
      .map((name) => [name, readFileSync(join(ROOT, name), 'utf8')]),
  );
}

describe('an import is reported', () => {
  test.each([
    ['a value from a floor above', 'src/laws/a.ts', `import { b } from '../site/b.ts';`],
    ['a type from a floor above', 'src/laws/a.ts', `import type { B } from '../site/b.ts';`],
    ['a re-export from a floor above', 'src/laws/a.ts', `export { b } from '../site/b.ts';`],
    ['all of a floor above', 'src/laws/a.ts', `export * from '../site/b.ts';`],
    ['an import for its effect alone', 'src/laws/a.ts', `import '../site/b.ts';`],
    ['an import at run time', 'src/laws/a.ts', `const b = () => import('../site/b.ts');`],
    ['a type named in place', 'src/laws/a.ts', `type B = import('../site/b.ts').B;`],
    ['an import split over lines', 'src/laws/a.ts', `import {\n  b,\n} from '../site/b.ts';`],
    ['the drawing from the flow', 'src/ui/flow/a.ts', `import { b } from '../drawing/b.ts';`],
    ['the drawing from a part', 'src/ui/parts/a.tsx', `import type { B } from '../drawing/b.ts';`],
    ['a screen from the drawing', 'src/ui/drawing/a.ts', `import { b } from '../screens/bench/b.ts';`],
    ['the flow from how figures are written', 'src/ui/format/a.ts', `import type { B } from '../flow/b.ts';`],
    ['the marks from the record', 'src/attempt/record/a.ts', `import { b } from '../marks/b.ts';`],
    ['what is opened from the marks', 'src/attempt/marks/a.ts', `import type { B } from '../opened/b.ts';`],
    ['the whole page from a screen', 'src/ui/screens/a.tsx', `import { b } from '../App.tsx';`],
    ['the flow from the words', 'src/words/a.ts', `import type { B } from '../ui/flow/b.ts';`],
    ['the command line from the screen', 'src/ui/a.tsx', `import { b } from '../cli/b.ts';`],
    ['the screen from the command line', 'src/cli/a.ts', `import { b } from '../ui/b.tsx';`],
    ['words from the attempt', 'src/attempt/a.ts', `import { b } from '../words/b.ts';`],
    ['words from the root file', 'src/main.tsx', `import { b } from './words/b.ts';`],
    ['the root file from the screen', 'src/ui/a.tsx', `import { b } from '../main.tsx';`],
    ['a name only known at run time', 'src/laws/a.ts', 'const b = (name: string) => import(name);'],
    ['a file outside src', 'src/laws/a.ts', `import { b } from '../../tests/b.ts';`],
    ['a file without its ending', 'src/site/a.ts', `import { b } from '../laws/b';`],
    ['the file system', 'src/store/a.ts', `import { readFileSync } from 'node:fs';`],
    ['a screen library', 'src/attempt/a.ts', `import { useState } from 'react';`],
  ])('%s', (_, file, text) => {
    const found = breachesOf({ [file]: `// a comment\n${text}\n` });
    expect(found).toEqual([expect.stringMatching(/^src\/((\w+\/)+a|main)\.tsx?:2: imports /)]);
  });
});

test('a ring of imports is reported where it closes, types included', () => {
  const found = breachesOf({
    'src/laws/a.ts': `import { b } from './b.ts';`,
    'src/laws/b.ts': `import { c } from './c.ts';`,
    'src/laws/c.ts': `\nimport type { A } from './a.ts';`,
  });
  expect(found).toEqual([
    'src/laws/c.ts:2: imports in a ring: src/laws/a.ts → src/laws/b.ts → src/laws/c.ts → src/laws/a.ts',
  ]);
});

test('a file that imports itself is reported', () => {
  expect(breachesOf({ 'src/laws/a.ts': `import { a } from './a.ts';` })).toHaveLength(1);
});

test.each(['src/laws/index.ts', 'src/ui/parts/index.tsx'])('the barrel file %s is reported', (file) => {
  expect(breachesOf({ [file]: 'export const a = 1;' })).toEqual([expect.stringContaining('barrel')]);
});

test('a file in no room of the screen is reported', () => {
  expect(breachesOf({ 'src/ui/helpers/a.ts': 'export const a = 1;' })).toEqual([
    expect.stringContaining('no room'),
  ]);
});

test.each(['src/helpers/a.ts', 'src/a.ts'])('%s, on no floor, is reported', (file) => {
  expect(breachesOf({ [file]: 'export const a = 1;' })).toEqual([expect.stringContaining('no floor')]);
});

test('a file that cannot be read is reported', () => {
  expect(breachesOf({ 'src/laws/a.ts': 'const a = ;' })).toEqual([expect.stringContaining('cannot be read')]);
});

const UNREPEATABLE = [
  ...['Date.now()', 'new Date()', 'performance.now()', 'setTimeout(f, 1)', 'setInterval(f, 1)'],
  ...['Math.random()', 'window.open()', 'document.title', 'new Intl.NumberFormat()', 'globalThis.Date'],
  ...['(1.5).toLocaleString()', 'n?.toLocaleString()', `'a'.localeCompare('b')`, 'crypto.randomUUID()'],
  ...['sin', 'cos', 'tan', 'atan2', 'pow', 'exp', 'log', 'log10', 'hypot', 'cbrt'].map((f) => `Math.${f}(2)`),
  ...[`Math['sin'](2)`, 'const { sin } = Math', '2 ** 3', 'n **= 2', '`$' + '{Math.sin(1)}`'],
];

describe('below the two top floors, what may differ from browser to browser is reported', () => {
  test.each(UNREPEATABLE)('%s', (text) => {
    const found = breachesOf({ 'src/bench/a.ts': `\n\n${text};` });
    expect(found).toEqual([expect.stringMatching(/^src\/bench\/a\.ts:3: (uses|passes) /)]);
  });

  test('a type that names the clock', () => {
    expect(breachesOf({ 'src/bench/a.ts': 'export type At = { at: Date };' })).toEqual([
      'src/bench/a.ts:1: uses Date',
    ]);
  });

  test.each(UNREPEATABLE)('%s is free on the screen', (text) => {
    expect(breachesOf({ 'src/ui/a.ts': text, 'src/main.tsx': text })).toEqual([]);
  });
});

describe('below the words, a text that somebody reads is reported', () => {
  const TEXTS = [
    `const why = 'The lock follows the control.'`,
    `const refused = 'this unit has no arrester'`,
    'const refused = `no $' + '{of} between the leads`',
    `const names = { electrode: 'the site’s electrode' }`,
    `const act = () => refuse('a link is expected here')`,
  ];
  test.each(TEXTS)('%s', (text) => {
    expect(breachesOf({ 'src/bench/a.ts': `\n${text};` })).toEqual([
      expect.stringMatching(/^src\/bench\/a\.ts:2: words what somebody reads: /),
    ]);
    for (const file of ['src/words/a.ts', 'src/ui/a.tsx', 'src/cli/a.ts', 'src/scenario/checks.ts'])
      expect(breachesOf({ [file]: text }), file).toEqual([]);
  });

  test.each([
    'throw new Error(`no part of this name: $' + '{name}`)',
    `const heard = 'contactor closed'`,
    `const found = { source: 'IEC 61008-1: more than half the rating' }`,
    'const key = `digits $' + '{key} duty`',
    `// what this comment says is read by nobody else`,
  ])('%s is none', (text) => {
    expect(breachesOf({ 'src/faults/a.ts': text })).toEqual([]);
  });
});

test('what is sound is not reported', () => {
  const found = breachesOf({
    'src/laws/a.ts': `
      // Date.now() in a comment, Math.sin too
      /** 2 ** 3 and window.open */
      export const texts = ['new Date(), Math.pow(2, 3)', 'document.title'];
      export const r = Math.sqrt(2) + Math.max(1, Math.abs(-1)) + Math.floor(Math.PI);
      export type Row = { window: number; Date: string };
      export function inside(window: { low: number }, row: Row) { return window.low < row.window; }
    `,
    'src/site/b.ts': `import { r } from '../laws/a.ts'; export type { Row } from '../laws/a.ts'; export const s = r;`,
    'src/ui/C.tsx': `import { useState } from 'react'; import { s } from '../site/b.ts'; export const C = () => <p>{s}</p>;`,
    'src/words/b.ts': `import type { s } from '../site/b.ts'; import { t } from './t.ts';`,
    'src/words/t.ts': `export const t = 1;`,
    'src/ui/D.tsx': `import { t } from '../words/t.ts';`,
    'src/cli/main.ts': `import { t } from '../words/t.ts'; import { readFileSync } from 'node:fs'; import { s } from '../site/b.ts';`,
    'src/main.tsx': `import { C } from './ui/C.tsx'; import './ui/page.css';`,
  });
  expect(found).toEqual([]);
});

test('src keeps to the rules', () => {
  const files = sourceFiles();
  expect(files.size).toBeGreaterThan(FLOORS.length);
  expect(findBreaches(files)).toEqual([]);
});

test('the words, which come to the page before any attempt, take nothing but types from it', () => {
  const values = [...sourceFiles()].filter(
    ([name, text]) =>
      name.startsWith('src/words/') && /^import (?!type\b)[^;]*from '(\.\.\/)+attempt\//m.test(text),
  );
  expect(values.map(([name]) => name)).toEqual([]);
});
