/**
 * JSON text that is none, said with its place: held against the engine's own reading of the same texts (ECMA-404 by
 * JSON.parse), for any text at all.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseJson } from '../../src/scenario/json.ts';
import { problemText } from '../../src/words/problems.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';

const SEED = 61_119;

function said(text: string): readonly string[] {
  const read = parseJson(text);
  return read.ok
    ? []
    : read.problems.map((one) => `${one.path === '' ? '' : `${one.path}: `}${problemText(one)}`);
}

describe('what is there and what was expected, with line and column', () => {
  test.each([
    [
      'a comma left out',
      '{\n  "a": 1\n  "b": 2\n}',
      'line 3, column 3: """ is there, a comma or } is expected',
    ],
    ['a comma left out of a list', '[1 2]', 'line 1, column 4: "2" is there, a comma or ] is expected'],
    ['cut off', '{ "a": [1, {', 'line 1, column 13: the text ends here, a name in double quotes is expected'],
    ['cut off after a value', '{ "a": 1', 'line 1, column 9: the text ends here, a comma or } is expected'],
    ['cut off before a value', '{ "a": ', 'line 1, column 8: the text ends here, a value is expected'],
    [
      'cut off inside quotes',
      '{\n "a": "b',
      'line 2, column 9: the text ends here, but the quotes at line 2, column 7 are not closed',
    ],
    [
      'quotes not closed in the line',
      '{ "a": "b,\n"c": 1 }',
      'line 1, column 11: the line ends inside double quotes: close them, or write \\n',
    ],
    ['a tab in quotes', '["a\tb"]', 'line 1, column 4: a tab inside double quotes: write \\t'],
    ['a bell in quotes', '["a\u0007b"]', 'line 1, column 4: U+0007 inside double quotes is not allowed'],
    [
      'no escape',
      '["C:\\data"]',
      'line 1, column 5: "\\d" is no escape: \\" \\\\ \\/ \\b \\f \\n \\r \\t or \\u with four digits is expected',
    ],
    ['no colon', '{ "a" 1 }', 'line 1, column 7: "1" is there, a colon after the name is expected'],
    [
      'an unquoted name',
      '{ abc: 1 }',
      'line 1, column 3: "abc" is there, a name in double quotes is expected',
    ],
    ['single quotes', "{ 'a': 1 }", 'line 1, column 3: double quotes are expected, not single ones'],
    ['printed quotes', '{ “a”: 1 }', 'line 1, column 3: straight double quotes (") are expected'],
    ['a comma too many', '[1, 2, ]', 'line 1, column 6: the comma after the last of them is one too many'],
    [
      'a comma too many in an object',
      '{"a":1,}',
      'line 1, column 7: the comma after the last of them is one too many',
    ],
    ['a comment', '{ // the site\n}', 'line 1, column 3: comments are no part of JSON: leave them out'],
    ['a long comment', '[1, /* two */ 2]', 'line 1, column 5: comments are no part of JSON: leave them out'],
    ['not a number', '{ "a": NaN }', 'line 1, column 8: NaN and Infinity are no JSON numbers'],
    ['less than every number', '[-Infinity]', 'line 1, column 2: NaN and Infinity are no JSON numbers'],
    [
      'a word of another language',
      '[True]',
      'line 1, column 2: only true, false and null are known, in small letters',
    ],
    [
      'a leading nought',
      '[007]',
      'line 1, column 2: "007" is no number as JSON writes it, such as 0.5, -3 or 1e6',
    ],
    [
      'no digit after the point',
      '[1.]',
      'line 1, column 2: "1." is no number as JSON writes it, such as 0.5, -3 or 1e6',
    ],
    ['no digit before the point', '[.5]', 'line 1, column 2: ".5" is there, a value is expected'],
    ['other digits', '[0xFF]', 'line 1, column 2: numbers are written with ten digits only'],
    ['two values', '{}\n{}', 'line 2, column 1: "{" is there, nothing more is expected'],
    ['a space of print', '[1,\u00a02]', 'line 1, column 4: U+00A0 is there, a value is expected'],
    [
      'another encoding',
      '\ufffd\ufffd{\0"',
      'line 1, column 1: this is not plain UTF-8 text: save the file as UTF-8',
    ],
  ])('%s', (_, text, message) => {
    expect(said(text)).toEqual([`not JSON at ${message}`]);
  });

  test('what is quoted is short, and steers no terminal', () => {
    expect(said(`[${'x'.repeat(5000)}]`)[0]?.length).toBeLessThan(150);
    expect(said('[\u009b31m]')).toEqual([
      'not JSON at line 1, column 2: U+009B is there, a value is expected',
    ]);
  });
});

describe('what JSON.parse lets pass in silence', () => {
  test.each([
    ['given twice', '{\n"a": 1,\n"a": 2\n}', 'a: given twice, at line 2, column 1 and at line 3, column 1'],
    [
      'given twice, once with an escape',
      '{"a": [{"b": 1, "\\u0062": 2}]}',
      'a[0].b: given twice, at line 1, column 9 and at line 1, column 17',
    ],
    ['too large a number', '{"a": {"b": [1, -1e999]}}', 'a.b[1]: -1e999 is larger than any number here'],
    ['too long a number', `[${'9'.repeat(400)}]`, `[0]: ${'9'.repeat(60)}… is larger than any number here`],
    [
      'half a character',
      '{"a": "\ud83d"}',
      'a: half a character (a lone surrogate) at line 1, column 8: whole ones are expected',
    ],
    [
      'half a character, escaped',
      '["\\udE00x"]',
      '[0]: half a character (a lone surrogate) at line 1, column 3: whole ones are expected',
    ],
    [
      'a name of half a character',
      '{"\\ud83d": 1}',
      '\\ud83d: half a character (a lone surrogate) at line 1, column 8: whole ones are expected',
    ],
    ['a prototype', '{"a": {"\\u005f_proto__": 1}}', 'a.__proto__: this name is not allowed'],
    ['too deep', `${'['.repeat(41)}${']'.repeat(41)}`, 'nested deeper than 40 levels at line 1, column 41'],
  ])('%s', (_, text, message) => {
    expect(said(text)).toEqual([message]);
  });

  // As this program writes its own files, which are taken without being gone through where nothing can be hidden in them.
  const asWritten = (value: string) => `{\n "a": ${value}\n}\n`;
  const deep = (levels: number): string => `{\n "a": ${nested(levels, 1)}\n}\n`;
  const nested = (levels: number, at: number): string =>
    levels === 0 ? '[]' : `[\n${' '.repeat(at + 1)}${nested(levels - 1, at + 1)}\n${' '.repeat(at)}]`;

  test.each([
    [
      'given twice',
      '{\n "a": 1,\n "a": 2\n}\n',
      'a: given twice, at line 2, column 2 and at line 3, column 2',
    ],
    ['too large a number', asWritten('1e999'), 'a: 1e999 is larger than any number here'],
    [
      'half a character',
      asWritten('"\\ude00"'),
      'a: half a character (a lone surrogate) at line 2, column 8: whole ones are expected',
    ],
    [
      'half a character that is none yet',
      asWritten('"\ud83d"'),
      'a: half a character (a lone surrogate) at line 2, column 8: whole ones are expected',
    ],
    ['a prototype', asWritten('{\n  "__proto__": 1\n }'), 'a.__proto__: this name is not allowed'],
    ['too deep', deep(39), 'nested deeper than 40 levels at line 41, column 41'],
  ])('also in a file of our own form: %s', (_, text, message) => {
    expect(said(text)).toEqual([message]);
  });

  test('a file of our own form is read', () => {
    expect(parseJson(deep(38)).ok).toBe(true);
    const text = `${JSON.stringify({ a: ['é😀"\\', 0.1, null], b: {} }, null, 1)}\n`;
    expect(parseJson(text)).toEqual({ ok: true, value: JSON.parse(text) });
  });

  test('the same name in two objects is fine, and so are whole characters in any spelling', () => {
    expect(parseJson('[{"a": 1, "b": {"a": 2}}, {"a": 3}]').ok).toBe(true);
    expect(parseJson('["😀", "\\ud83d\\ude00", "\ud83d\\ude00", "\\ud83d\ude00"]').ok).toBe(true);
    expect(parseJson(`${'['.repeat(40)}${']'.repeat(40)}`).ok).toBe(true);
    expect(parseJson(`[1e308, 1e-999, ${'9'.repeat(308)}]`).ok).toBe(true);
  });

  test('every one of them, to fifty, then their count', () => {
    const twice = `{"a": 0${', "a": 0'.repeat(367)}}`;
    expect(said(twice)).toHaveLength(51);
    expect(said(twice).at(-1)).toBe('and 317 more problems');
    // That it is no JSON is said first of all.
    expect(said(twice.slice(0, -1))[0]).toMatch(/^not JSON at /);
  });
});

test('a byte-order mark at the start is taken, another is not', () => {
  expect(parseJson('\ufeff{"a": 1}')).toEqual({ ok: true, value: { a: 1 } });
  expect(said('\ufeff\ufeff{}')).toEqual([
    'not JSON at line 1, column 1: this is not plain UTF-8 text: save the file as UTF-8',
  ]);
});

/** What JSON.parse takes and no file here may hold, found in the value that it makes. */
function isRefusedHere(text: string, value: unknown): boolean {
  const names = [...text.matchAll(/"(?:[^"\\]|\\.)*"(\s*:)?/g)].filter(([, colon]) => colon !== undefined);
  let keys = 0;
  const isBad = (it: unknown, depth: number): boolean => {
    if (typeof it === 'number') return !Number.isFinite(it);
    if (typeof it === 'string') return /\p{Cs}/u.test(it);
    if (typeof it !== 'object' || it === null) return false;
    if (depth > 40) return true;
    return Object.entries(it).reduce((bad, [key, inner]) => {
      if (!Array.isArray(it)) keys += 1;
      return isBad(inner, depth + 1) || /\p{Cs}/u.test(key) || key === '__proto__' || bad;
    }, false);
  };
  return isBad(value, 1) || keys !== names.length;
}

/** Takes what JSON.parse takes, to the same value; refuses what it refuses, at a place inside the text. */
function agrees(text: string): void {
  const read = parseJson(text);
  let value: unknown;
  let takes = true;
  try {
    value = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    takes = false;
  }
  if (takes && isRefusedHere(text, value)) expect(read.ok, text).toBe(false);
  else if (takes) expect(read, text).toEqual({ ok: true, value });
  else if (text.replace(/^\ufeff/, '').trim() === '') expect(read.ok).toBe(false);
  else {
    const message = read.ok ? 'taken' : read.problems.map(problemText).join();
    const [, line, column] =
      /^(?:not JSON|nested deeper than 40 levels) at line (\d+), column (\d+)/.exec(message) ?? [];
    const lines = text.split('\n');
    expect(Number(line), `${text}: ${message}`).toBeLessThanOrEqual(lines.length);
    const most = (lines[Number(line) - 1]?.length ?? -1) + 1;
    expect(Number(column), `${text}: ${message}`).toBeLessThanOrEqual(most);
  }
}

/** Pieces of which JSON is made, and of what is almost JSON. */
const PIECES = [
  ...[
    '{',
    '}',
    '[',
    ']',
    ',',
    ':',
    '"a"',
    '"b"',
    '"',
    '\\',
    '1',
    '-',
    '0',
    '.5',
    'e9',
    'E+400',
    '\n',
    ' ',
    'true',
    'nul',
  ],
  ...[
    '\\u00',
    '\\ud83d',
    '\ude00',
    '😀',
    '\u0000',
    '"__proto__":',
    "'",
    '//',
    'NaN',
    '{"a":1}',
    '[[',
    '"a":',
    '\ufeff',
    '\u2028',
  ],
];
const pieced = fc.array(fc.constantFrom(...PIECES), { maxLength: 12 }).map((pieces) => pieces.join(''));
const value = fc.json({ maxDepth: 5 });
/** JSON with some of it replaced. */
const changed = fc
  .tuple(value, fc.nat(), fc.nat({ max: 3 }), fc.constantFrom('', ...PIECES))
  .map(([text, at, cut, piece]) => {
    const from = at % (text.length + 1);
    return text.slice(0, from) + piece + text.slice(from + cut);
  });

test.each([
  ['any JSON', value, 2000],
  ['JSON with some of it replaced', changed, 10_000],
  ['pieces in any order', pieced, 10_000],
  ['any text', fc.string({ unit: 'binary', maxLength: 30 }), 3000],
] as const)(`the engine and this agree: %s, seed ${SEED}`, (_, texts, numRuns) => {
  expect(() => fc.assert(fc.property(texts, agrees), { seed: SEED, numRuns })).not.toThrow();
});

test('every scenario here is taken', () => {
  for (const id of scenarioIds) agrees(scenarioNamed(id).text);
});
