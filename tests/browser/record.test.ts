// My record: what came of every attempt, out to a file, deleted, and in again the same; files that are refused or
// left out in part; one attempt deleted; an assessment handed in, or left without; the goal for next time.

import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, onTestFinished, test } from 'vitest';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import { parseAttempt } from '../../src/attempt/record/file.ts';
import { NO_QUESTIONS } from '../../src/store/questionRecord.ts';
import { makeRecordText } from '../../src/store/recordText.ts';
import { RUNG_NAMES } from '../../src/words/rungs.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import type { Habits } from '../helpers/trainee.ts';
import { attemptBy } from '../helpers/trainee.ts';
import { barriersOn } from './axe.ts';
import { openBuiltPage } from './builtPage.ts';
import {
  begin,
  COULD_NOT_FINISH,
  choose,
  conclude,
  inHand,
  openFile,
  setUp,
  sitDown,
  toPage,
  toPredict,
  toScenarios,
} from './trainee.ts';

const opened = openBuiltPage();
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

/** Attempts at the same faulty unit, a day apart, by people with these habits. */
function recordOf(habits: readonly Habits[]) {
  const { scenario, file } = scenarioNamed('mill-race');
  const items = habits.map((own, i) => ({
    id: `attempt-${i}`,
    began: Date.UTC(2026, 2, 3 + i, 9),
    changed: Date.UTC(2026, 2, 3 + i, 10),
    handedIn: null,
    putAway: false,
    stands: null,
    isGuest: false,
    attempt: attemptBy(scenario, file, own),
    draft: null,
    further: {},
  }));
  return { items, unreadable: [], goal: null, questions: NO_QUESTIONS, further: {} };
}

async function bringIn(page: Page, text: string): Promise<void> {
  await openFile(page, 'record.json', text, 'Bring in a record…');
}

async function exported(page: Page): Promise<string> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    button(page, 'Export everything').click(),
  ]);
  return readFileSync(await file.path(), 'utf8');
}

async function toRecord(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'My record' }).first().click();
  await page.getByRole('heading', { name: 'My record', level: 1 }).waitFor();
}

/** Everything that the record says of so many attempts, once it is worked out. */
async function saidBy(page: Page, attempts: number): Promise<readonly string[]> {
  await page.getByRole('heading', { name: `${attempts} attempts`, exact: true }).waitFor();
  await page.getByText(/^Working out/).waitFor({ state: 'detached' });
  const parts = ['One goal for next time', 'Progress', 'How often sure was right', 'Weak topics'];
  return Promise.all([
    ...parts.map(async (name) => (await page.getByRole('region', { name }).allInnerTexts()).join()),
    (await page.getByRole('list', { name: /^Attempts/ }).allInnerTexts()).join(),
  ]);
}

test('out to a file, everything deleted, in again: the same record', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await begin(page, 'Mill Race, unit 2');
  await choose(page, 'No vehicle (A)');
  await setUp(page, {});
  await toPredict(page);
  await button(page, /^should$/).click();
  await toPage(page, 'My record');
  await page.getByRole('heading', { name: 'My record', level: 1 }).waitFor();
  await button(page, 'Write my own').click();
  await page.getByLabel('my goal for next time').fill('Name the finding before the verdict');
  await button(page, 'Keep my goal').click();
  const wrong = (right: string) => (right === 'should' ? ('cant-tell' as const) : ('should' as const));
  const record = recordOf([
    { answer: wrong },
    { conclude: (right) => ({ ...right, verdict: 'fit' }) },
    { sure: 'fairly-sure' },
  ]);
  await bringIn(page, makeRecordText(record));
  await page.getByText('Attempts: 3 brought in.').waitFor();
  const before = await saidBy(page, 4);
  for (const [width, colorScheme] of [
    [1280, 'light'],
    [360, 'dark'],
  ] as const) {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 740 });
    expect(await barriersOn(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
  }

  // What it says is what the logs say.
  const { scenario } = scenarioNamed('mill-race');
  const told = record.items.map(({ attempt }) => debriefOf(scenario, attempt));
  const [goal = '', progress = '', sure = '', , rows = ''] = before;
  expect(goal).toContain('Name the finding before the verdict');
  for (const { marks } of told) expect(rows).toContain(`${marks.total} of 100`);
  expect(rows.match(/gates not met/g)).toHaveLength(1);
  expect(rows).toContain('Unfinished, predicting: No vehicle (A)');
  expect(progress).toContain('a gate not met');
  const over80 = told.map(({ calibration }) => calibration[2]);
  const sum = (count: 'right' | 'of') => over80.reduce((total, one) => total + (one?.[count] ?? 0), 0);
  expect(sure).toContain(`${sum('right')} of ${sum('of')}`);

  const text = await exported(page);
  const out = JSON.parse(text);
  expect(out).toMatchObject({ format: 1, goal: { text: 'Name the finding before the verdict' } });
  expect(out.attempts).toHaveLength(4);
  expect(text).not.toMatch(/"(summary|marks|total)"/);

  await button(page, 'Delete everything…').click();
  await page.getByText('All 4 attempts').waitFor();
  await page.getByRole('button', { name: 'Delete everything', exact: true }).click();
  await page.getByText('No attempt is kept here yet.').waitFor();
  await page.getByText('No goal is kept.').waitFor();

  // Fields that this version does not know come in and go out again.
  const further = { ...out, college: 'of nowhere' };
  further.attempts[0] = { ...further.attempts[0], room: 7 };
  await bringIn(page, JSON.stringify(further));
  await page.getByText('Attempts: 4 brought in.').waitFor();
  expect(await saidBy(page, 4)).toEqual(before);
  const again = JSON.parse(await exported(page));
  expect(again.college).toBe('of nowhere');
  expect(again.attempts.filter(({ room }: { room?: number }) => room === 7)).toHaveLength(1);
  await bringIn(page, text);
  await page.getByText('Attempts: 4 here already.').waitFor();

  // The unfinished one goes on where it was, answers and all.
  await button(page, /^Go on/).click();
  await page.getByText(/^line 2 of/).waitFor();
});

test('a file that is hostile, newer, too large or none is refused; an attempt that cannot be read is left out', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await toRecord(page);
  const record = makeRecordText(recordOf([{}]));
  const alert = page.getByRole('alert');
  const refused = async (text: string, words: string | RegExp) => {
    await bringIn(page, text);
    await alert.getByText(words).waitFor();
    await alert.getByText('Nothing here was changed.').waitFor();
  };
  const folder = mkdtempSync(join(tmpdir(), 'record-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const large = join(folder, 'large.json');
  writeFileSync(large, '');
  truncateSync(large, 50_000_001);
  await page.locator('input[type="file"]').setInputFiles(large);
  await alert.getByText('larger than 50 MB').waitFor();
  await refused(record.replace('"id"', '"__proto__": {}, "id"'), /this name is not allowed/);
  await refused(
    record.replace('"format":1', '"format":2'),
    /this record is from a newer version \(format 2\)/,
  );
  await refused(
    '{"format":1,"goal":null,"attempts":[{"id":"<b>"}]}',
    /up to 60 letters, digits and - are expected/,
  );
  await page.getByText('No attempt is kept here yet.').waitFor();

  const out = JSON.parse(makeRecordText(recordOf([{}, { sure: 'guessing' }])));
  out.attempts[0].attempt.entries[0].kind = 'guess';
  await bringIn(page, JSON.stringify(out));
  await page.getByText('Attempts: 1 brought in.').waitFor();
  await alert.getByText('attempts[0].attempt.entries[0].kind').waitFor();
  await page.getByRole('heading', { name: '1 attempt', exact: true }).waitFor();

  await button(page, /^Delete… 1,/).click();
  await button(page, 'Keep it').click();
  await button(page, /^Delete… 1,/).click();
  await button(page, 'Delete this attempt').click();
  await expect.poll(() => page.getByText('No attempt is kept here yet.').count()).toBe(1);
});

test('an assessment is handed in, or left without: asked once', async () => {
  const page = await sitDown(opened.browser, opened.url, {
    before: () => {
      navigator.storage.persist = async () => {
        window.name = 'asked to keep';
        return true;
      };
    },
  });
  const concluded = async () => {
    await toScenarios(page);
    await page.getByRole('radio', { name: 'Mill Race, unit 2' }).check();
    await page.getByRole('radio', { name: RUNG_NAMES[4] }).check();
    await button(page, 'Begin').click();
    await button(page, 'Stop…').click();
    await page.getByLabel('reason').fill('dinner');
    await button(page, 'Stop the work').click();
    await conclude(page, COULD_NOT_FINISH);
  };
  await concluded();
  await expect.poll(() => page.evaluate(() => window.name)).toBe('asked to keep');
  const { attempt } = await inHand(page, 2);
  const number = attempt.entries.at(-1)?.hash.slice(0, 8).toUpperCase() ?? '';
  await page.getByText(`record ${number.slice(0, 4)}\u202f${number.slice(4)}`).waitFor();
  await button(page, 'Practise this again').click();
  await page.getByRole('heading', { name: 'Not handed in' }).waitFor();
  expect(await barriersOn(page)).toEqual([]);
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('dialog').getByRole('button', { name: 'Hand in', exact: true }).click(),
  ]);
  expect(file.suggestedFilename()).toBe('mill-race-hand-in.json');
  const read = parseAttempt(readFileSync(await file.path(), 'utf8'));
  expect(read.ok && read.value.attempt.entries).toEqual(attempt.entries);
  await page.getByText('See that it is among your downloads').waitFor();
  await button(page, 'Leave').click();
  await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
  await page.getByRole('link', { name: 'Jobs' }).click();

  await concluded();
  await page.goBack();
  await button(page, 'Leave without handing in').click();
  await toRecord(page);
  await page.getByRole('heading', { name: '2 attempts', exact: true }).waitFor();
  const rows = page.getByRole('list', { name: /^Attempts/ }).getByRole('listitem');
  expect((await rows.allInnerTexts()).filter((text) => text.includes('handed in'))).toHaveLength(1);
  await button(page, /^Debrief 2/).click();
  await page.getByRole('heading', { name: 'Debrief' }).waitFor();
  await page.getByRole('link', { name: 'Scenarios' }).click();
  await page.getByRole('radio', { name: 'Mill Race, unit 2' }).waitFor();
  expect(await page.getByRole('dialog').count()).toBe(0);
  expect(await page.evaluate(() => window.name)).toBe('asked to keep');
});
