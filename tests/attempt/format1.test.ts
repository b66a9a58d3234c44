/** Attempts of format 1: read, told and marked as before, checked and handed on as they were written, never gone on with. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import { mark } from '../../src/attempt/marks/mark.ts';
import { summaryOf } from '../../src/attempt/marks/summary.ts';
import type { Attempt, EntryOf } from '../../src/attempt/record/attempt.ts';
import { appended, digestOf, headOf } from '../../src/attempt/record/attempt.ts';
import { parseAttempt } from '../../src/attempt/record/file.ts';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { FORMAT_1_LINES } from '../../src/attempt/record/format1Lines.ts';
import { isConverted } from '../../src/attempt/record/written.ts';
import { doubtText } from '../../src/words/doubts.ts';
import { problemText } from '../../src/words/problems.ts';

const textOf = (name: string): string =>
  readFileSync(new URL(`../golden/${name}.json`, import.meta.url), 'utf8');
// biome-ignore lint/suspicious/noExplicitAny: a file as it was written, changed at will
const fileOf = (name: string): any => JSON.parse(textOf(name));

function read(file: unknown) {
  const result = parseAttempt(JSON.stringify(file));
  if (!result.ok)
    throw new Error(result.problems.map((one) => `${one.path}: ${problemText(one)}`).join('\n'));
  return result.value;
}
const problemsOf = (file: unknown) => {
  const result = parseAttempt(JSON.stringify(file));
  return result.ok ? [] : result.problems;
};
const entriesOf = <K extends Attempt['entries'][number]['kind']>({ entries }: Attempt, kind: K) =>
  entries.filter((entry) => entry.kind === kind) as unknown as EntryOf<K>[];

describe('a hasty attempt of format 1', () => {
  const file = fileOf('hasty');
  const { attempt, scenario } = read(file);

  test('is read in today’s ids', () => {
    const [papers] = entriesOf(attempt, 'prediction');
    expect(papers).toMatchObject({ test: 'papers', sure: 'would-sign' });
    expect(new Set(papers?.lines.map(({ answer }) => answer))).toEqual(new Set(['should', 'should-not']));
    expect(entriesOf(attempt, 'conclusion')).toMatchObject([
      { verdict: 'fit', next: 'lock-off-and-label', tell: 'installer', sure: 'would-sign' },
    ]);
    expect(attempt.format).toBe(2);
    expect(isConverted(attempt)).toBe(true);
  });

  test('“as it should” becomes what the unit did, by what the line was then', () => {
    const [papers] = entriesOf(attempt, 'judgement');
    expect(papers?.lines).toEqual([
      { id: 'type-ac', judged: 'did-not' },
      { id: 'over-rating', judged: 'did-not' },
      { id: 'additional', judged: 'did' },
      { id: 'direct', judged: 'did' },
    ]);
  });

  test('keeps its record code, and its chain is that of the file', () => {
    expect(headOf(attempt)).toBe(file.entries.at(-1).hash.slice(0, 8));
    expect(mark(scenario, attempt).differs.map(doubtText)).toEqual([
      expect.stringMatching(/^engine: the file was made by 1/),
    ]);
  });

  test('a word of it that was changed afterwards is told', () => {
    const forged = fileOf('hasty');
    const at = forged.entries.findIndex(({ kind }: { kind: string }) => kind === 'judgement');
    forged.entries[at].lines[0].judged = 'not as it should';
    const changed = read(forged);
    expect(mark(changed.scenario, changed.attempt).differs.map(doubtText)).toContain(
      `entries[${at}].hash: does not follow from the entries before it`,
    );
  });

  test('goes out as it came', () => {
    expect(JSON.parse(makeAttemptText(attempt))).toEqual(file);
    const marks = { total: 3 };
    expect(JSON.parse(makeAttemptText({ ...attempt, marks }))).toEqual({ ...file, marks });
  });

  test('takes no further entry: its chain cannot go on in another format', () => {
    expect(() => appended(attempt, { kind: 'record', test: 'loop', leftOut: 'no-time' }, 0, 0)).toThrow(
      'older format',
    );
  });

  test('how sure its trainee was is not counted among today’s', () => {
    const { calibration } = summaryOf(debriefOf(scenario, attempt));
    expect(calibration.map(({ of }) => of)).toEqual([0, 0, 0]);
  });
});

describe('what was said', () => {
  const [first] = fileOf('hasty').entries.filter(({ kind }: { kind: string }) => kind === 'judgement');
  const judged = (line: object) => {
    const file = fileOf('hasty');
    const at = file.entries.findIndex(({ kind }: { kind: string }) => kind === 'judgement');
    file.entries[at] = { ...first, lines: [line] };
    return (read(file).attempt.entries[at] as EntryOf<'judgement'>).lines[0]?.judged;
  };

  test.each([
    ['additional', 'as it should', 'did'],
    ['additional', 'not as it should', 'did-not'],
    ['type-ac', 'as it should', 'did-not'],
    ['type-ac', 'not as it should', 'did'],
    ['type-ac', 'not shown', 'not-shown'],
    // Of no line of that format: it was marked nowhere, and what it did is not known.
    ['toString', 'as it should', 'not-shown'],
  ])('papers, %s: %s is %s', (id, said, did) => {
    expect(judged({ id, judged: said })).toBe(did);
  });

  test('a reason in words stays one, and stays true', () => {
    const file = fileOf('hasty');
    const at = file.entries.length - 1;
    const record = { kind: 'record', at: 459, wall: 452000, hash: '', test: 'loop', leftOut: 'no lamp' };
    file.entries.splice(at, 0, record);
    expect(read(file).attempt.entries[at]).toMatchObject({ leftOut: 'in-words', words: 'no lamp' });
  });

  test('a word that format 1 did not have is named with its place', () => {
    const file = fileOf('hasty');
    file.entries[0].lines[0].answer = 'perhaps';
    expect(problemsOf(file)).toMatchObject([{ path: 'entries[0].lines[0].answer' }]);
    file.entries[0].lines = 5;
    expect(problemsOf(file)).toMatchObject([{ path: 'entries[0].lines' }]);
    expect(problemsOf({ ...file, entries: 'none' })).toMatchObject([{ path: 'entries' }]);
    expect(problemsOf({ ...fileOf('hasty'), entries: [7] })).toMatchObject([{ path: 'entries[0]' }]);
  });
});

test('the lines of format 1 are frozen', () => {
  expect(digestOf(FORMAT_1_LINES)).toBe('e44071ef29e09ef67cd10bba7af07b6642b8a090e4af0dd77c8e2961145be3c0');
});

test('a newer format than this one is refused, and says so', () => {
  expect(problemsOf({ ...fileOf('hasty'), format: 3 })).toEqual([
    {
      path: 'format',
      message:
        'this attempt is from a newer version (format 3); this version reads formats 1 to 2. Update, or ask for format 2',
    },
  ]);
});
