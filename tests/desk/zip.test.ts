// What a zip holds, however it was made: by the system's own tool, by a library, or by somebody who means harm.

import { readFileSync } from 'node:fs';
import { zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { Came } from '../../src/desk/zip.ts';
import { filesOfZip, MOST_FILES } from '../../src/desk/zip.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (data: Uint8Array): readonly Came[] => [...filesOfZip('class.zip', data)];
const problemsIn = (data: Uint8Array) =>
  read(data).map((came) => ('problem' in came ? came.problem : came.text));

/** The zip with a field of its list of files changed, for the first file in it. */
function doctored(data: Uint8Array, offset: number, value: number): Uint8Array {
  const copy = Uint8Array.from(data);
  const view = new DataView(copy.buffer);
  const list = view.getUint32(copy.length - 22 + 16, true);
  view.setUint32(list + offset, value, true);
  return copy;
}
const SIZE = 24;

// Made by Info-ZIP 3.0, `zip -r`, of four folders.
test('made by a system’s own tool, a folder a learner at any depth', () => {
  const came = read(readFileSync(new URL('class.zip', import.meta.url)));
  expect(Object.fromEntries(came.map((one) => [one.name, 'text' in one ? one.text : one.problem]))).toEqual({
    'class.zip/ash-07_assignsubmission_file/attempt.json': `{"of":"ash-07","more":"${'a'.repeat(400)}"}`,
    'class.zip/elm-19/late/second try/attempt.json': '{"of":"elm-19"}',
    'class.zip/yew-22/über.json': '{"of":"yew-22"}',
    'class.zip/oak-03/notes.txt': 'no-attempt-file',
  });
});

describe('a zip that means harm', () => {
  test('a bomb is told by its ratio, before anything is unpacked', () => {
    expect(problemsIn(zipSync({ 'a.json': new Uint8Array(900_000) }))).toEqual(['packed-too-tightly']);
    expect(problemsIn(zipSync({ 'a.json': new Uint8Array(50_000_000) }, { level: 1 }))).toEqual([
      'too-large',
    ]);
  });

  test('one that says less than it holds is stopped there', () => {
    const liar = doctored(zipSync({ 'a.json': new Uint8Array(900_000) }), SIZE, 9_000);
    expect(problemsIn(liar)).toEqual(['says-another-size']);
  });

  test('so many files, or so much in all, is not begun', () => {
    const many = Object.fromEntries(
      Array.from({ length: MOST_FILES + 1 }, (_, i) => [`${i}.json`, bytes('{}')]),
    );
    expect(problemsIn(zipSync(many, { level: 0 }))).toEqual(['too-many-files']);
    const heavy = Object.fromEntries(
      Array.from({ length: 230 }, (_, i) => [`${i}.json`, new Uint8Array(900_000)]),
    );
    expect(problemsIn(zipSync(heavy, { level: 1 }))).toEqual(['too-much-in-all']);
  });

  test.each(['../a.json', 'x/../../a.json', '/etc/a.json', 'C:/a.json', 'x\\..\\a.json'])(
    'a path that climbs out: %s',
    (path) => {
      expect(problemsIn(zipSync({ [path]: bytes('{}') }))).toEqual(['climbs-out']);
    },
  );

  test('what is within a zip again, closed, or packed otherwise is named', () => {
    const zip = zipSync({ 'a.json': bytes('{}') });
    expect(problemsIn(zipSync({ 'a.zip': zip }))).toEqual(['zip-within']);
    expect(problemsIn(doctored(zip, 8, 1))).toEqual(['encrypted']);
    expect(problemsIn(doctored(zip, 10, 12))).toEqual(['packed-in-another-way']);
  });

  test('any damage is told, and never throws', () => {
    const zip = zipSync({ 'a.json': bytes('{"a":1}'), 'b/b.json': bytes('{"b":2}') });
    for (let at = 0; at < zip.length; at += 1)
      for (const value of [0, 255]) {
        const copy = Uint8Array.from(zip);
        copy[at] = value;
        expect(read(copy).length).toBeLessThanOrEqual(2);
      }
    for (let end = 0; end < zip.length; end += 1)
      expect(problemsIn(zip.subarray(0, end))).toEqual(['no-zip']);
  });
});
