/** What `mark` says of files that were changed to earn what was not learnt; the page's words are in tests/browser/cheats.test.ts. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { markFiles } from '../../src/cli/mark.ts';
import { aimJob } from '../../src/scenario/aimJobs.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { aimJobWords } from '../../src/words/aimJobs.ts';
import { CHEATS, file, REFUSED, scenario } from '../helpers/cheats.ts';
import { attemptBy, faultlessAttempt } from '../helpers/trainee.ts';

const folder = mkdtempSync(join(tmpdir(), 'trainer-'));
afterAll(() => rmSync(folder, { recursive: true }));
const written = (name: string, value: unknown): string => {
  const path = join(folder, name);
  writeFileSync(path, typeof value === 'string' ? value : JSON.stringify(value));
  return path;
};
const GIVEN = ['scenarios/mill-race.json'];
const marked = (path: string, against: readonly string[] | null) => {
  const { text, errors, exit } = markFiles([path], against);
  expect({ errors, exit }).toEqual({ errors: [], exit: 0 });
  return JSON.parse(text);
};
const whole = faultlessAttempt(scenario, file);

describe.each(CHEATS)('$name', ({ attempt, marked: fields, told, against }) => {
  test('by the scenario that it carries', () => {
    const path = written('carried.json', attempt);
    const { differs, untimely, ...result } = marked(path, null);
    expect(result).toMatchObject(fields);
    for (const line of told) expect([...differs, ...untimely]).toContainEqual(expect.stringMatching(line));
  });

  test('by the scenario that is given', () => {
    const path = written('against.json', attempt);
    const result = marked(path, GIVEN);
    expect(result).toMatchObject({ ...against, scenario: { id: 'mill-race', from: 'against' } });
    expect(result.scenario.sha256).toBe(marked(written('whole.json', whole), null).scenario.sha256);
  });
});

test.each(REFUSED)('$name is refused', ({ attempt, said }) => {
  const { text, errors, exit } = markFiles([written('refused.json', attempt)], null);
  expect({ text, exit }).toEqual({ text: '', exit: 2 });
  expect(errors.join('\n')).toMatch(said);
});

test('an honest file raises none of it', () => {
  const { differs, untimely } = marked(written('honest.json', makeAttemptText(whole)), GIVEN);
  expect([...differs, ...untimely]).toEqual([]);
});

describe('many at once', () => {
  const other = attemptBy(scenario, file, { answer: () => 'should' });

  test('an array; a broken file is named and the rest is done', () => {
    const paths = [written('a.json', whole), written('b.json', '{"entries": '), written('c.json', other)];
    const { text, errors, exit } = markFiles(paths, null);
    expect(exit).toBe(2);
    expect(errors).toEqual([expect.stringContaining(`${paths[1]}: `)]);
    expect(JSON.parse(text).map(({ file: name }: { file: string }) => name)).toEqual([paths[0], paths[2]]);
  });

  test('one log under two names is flagged, by its code', () => {
    const [one, two] = [written('one.json', whole), written('two.json', { ...whole, marks: { total: 100 } })];
    const [first, second] = JSON.parse(markFiles([one, two], null).text);
    expect(first.differs).toEqual([`code: that of ${two} too`]);
    expect(second.differs).toEqual([`code: that of ${one} too`]);
    expect(first.code).toBe(second.code);
  });

  test('a folder of attempts, a folder of scenarios; one that none of them is for is said to be that', () => {
    const attempts = mkdtempSync(join(folder, 'attempts-'));
    writeFileSync(join(attempts, 'one.json'), makeAttemptText(whole));
    const [own] = JSON.parse(markFiles([attempts], ['scenarios']).text);
    expect(own).toMatchObject({ total: 100, scenario: { from: 'against' }, differs: [] });
    const [foreign] = JSON.parse(markFiles([attempts], ['scenarios/harbour-mews.json']).text);
    expect(foreign.scenario.from).toBe('known');
    expect(foreign.differs).toEqual(['scenario.id: none of the given scenarios is "mill-race"']);
  });

  test('two given scenarios with one id: which one decides cannot be known', () => {
    const twice = ['scenarios/mill-race.json', written('again.json', { ...(file as object), seed: 1 })];
    expect(() => markFiles([written('a.json', whole)], twice)).toThrow(/id: "mill-race" is that of/);
  });
});

test('a job of one aim is made again from its id: as the program makes it, or not', () => {
  const job = { aim: 'dead', site: 'single-tt', seed: 7 } as const;
  const made = aimJob(job, aimJobWords(job));
  const read = readScenario(made);
  if (!read.ok) throw new Error('the job of an aim cannot be read');
  const own = faultlessAttempt(read.scenario, made);
  const { id } = read.scenario;
  expect(marked(written('aim.json', own), null).scenario).toMatchObject({ id, from: 'known' });
  const eased = written('eased.json', { ...own, scenario: { ...made, marking: { pass: 10 } } });
  expect(marked(eased, null)).toMatchObject({
    scenario: { id, from: 'carried' },
    differs: expect.arrayContaining([expect.stringMatching(/marking/)]),
  });
});

test('label, rung, weights and thinking time are told', () => {
  const labelled = { ...whole, trainee: 'bench 7' };
  const result = marked(written('labelled.json', labelled), null);
  expect(result).toMatchObject({ label: 'bench 7', rung: 2, thinking: 0, weights: { judgement: 30 } });
  expect(result.scenario.sha256).toMatch(/^[0-9a-f]{64}$/);
});

test('an assessment that was given out as one is marked as one, whatever rung the file chose', () => {
  const given = written('assessment.json', { ...(file as object), support: 'assessment' });
  const result = marked(written('a.json', whole), [given]);
  expect(result.rung).toBe(4);
  expect(result.differs).toEqual([
    'scenario.support: the file says "practice", the given scenario "assessment"',
  ]);
});
