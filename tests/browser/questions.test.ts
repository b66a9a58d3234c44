// Five minutes of questions, as somebody does them: by keys alone, on a phone by touch, and a quiz that a tutor has set from
// its link to the file that is handed in.

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { markQuiz } from '../../src/quiz/markQuiz.ts';
import { sessionOf } from '../../src/quiz/session.ts';
import { shownState } from '../../src/quiz/shown.ts';
import '../../src/words/allTests.ts';
import { stemParts } from '../../src/words/questions.ts';
import { answer } from './answering.ts';
import { barriersOn } from './axe.ts';
import { openBuiltPage } from './builtPage.ts';
import { sitDown } from './trainee.ts';

const opened = openBuiltPage();
vi.setConfig({ testTimeout: 120_000 });

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const goTo = (page: Page, hash: string) =>
  page.evaluate((to) => {
    location.hash = to;
  }, hash);
const atQuestion = (page: Page, number: number, of: number) =>
  page.getByText(`${number} of ${of} · `, { exact: false }).waitFor();
/** Units stand behind no-break spaces on the page. */
const stem = async (page: Page) => (await page.locator('#question').textContent())?.replaceAll('\u00a0', ' ');

/** What of the page lies beyond the window, px down and across. */
const beyond = (page: Page) =>
  page.evaluate(() => [
    document.documentElement.scrollHeight - innerHeight,
    document.documentElement.scrollWidth - innerWidth,
  ]);

test('a session on a phone: the questions of its seed, one window each, a reload comes back to the same one, and what comes back', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  await page.getByRole('link', { name: /^Five minutes of questions/ }).click();
  await atQuestion(page, 1, 10);
  expect(await page.title()).toBe('Five minutes of questions · Charge point trainer');
  await goTo(page, '#/questions?seed=1');
  const drawn = sessionOf({ count: 10, seed: 1 });
  for (const [i, question] of drawn.entries()) {
    await atQuestion(page, i + 1, 10);
    await page.getByRole('heading', { name: stemParts(question).given, exact: true }).waitFor();
    expect(await beyond(page), question.id).toEqual([0, 0]);
    if (i === 3) {
      await page.reload();
      await atQuestion(page, 4, 10);
      expect(await stem(page)).toBe(stemParts(question).given);
    }
    await answer(page);
    expect(await beyond(page), question.id).toEqual([0, 0]);
    await button(page, /^would sign for it/).click();
    await page.locator('.worked-out').waitFor();
    expect(await beyond(page), question.id).toEqual([0, 0]);
    if (i % 4 === 0) expect(await barriersOn(page), question.id).toEqual([]);
    await button(page, i === 9 ? 'What came of it' : 'Next').click();
  }
  await page.getByRole('heading', { name: /^\d+ of 10 right$/ }).waitFor();
  expect(await barriersOn(page)).toEqual([]);
  await goTo(page, '#/record');
  const table = page.getByRole('table', { name: 'Questions answered, by topic' });
  await table
    .getByRole('link', { name: /^Three questions on/ })
    .first()
    .click();
  await atQuestion(page, 1, 3);
});

test('by keys alone: digits choose and say how sure, Enter goes on, and a wrong answer leads to a unit', async () => {
  const page = await sitDown(opened.browser, opened.url);
  // A topic with nothing to type.
  await goTo(page, '#/questions?topics=dead&count=3&seed=3');
  for (let i = 1; i <= 3; i++) {
    await atQuestion(page, i, 3);
    // An order takes as many digits as it has acts.
    for (const digit of '12345')
      if ((await page.getByRole('heading', { name: /How sure\?/ }).count()) === 0)
        await page.keyboard.press(digit);
    await page.keyboard.press('2');
    await page.locator('.worked-out').waitFor();
    if (i < 3) await page.keyboard.press('Enter');
  }
  await page.getByRole('link', { name: 'See it on the bench' }).click();
  await page.getByRole('heading', { level: 1, name: 'On the bench', exact: true }).waitFor();
  expect(await page.title()).toBe('On the bench · Charge point trainer');
});

test('weak topic, wrong answer, bench, back: the bench stands as the question shows, the session as it stood, and nothing of it counts', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  const wrongly = async () => {
    await answer(page);
    await button(page, /^guessing/).click();
    await page.locator('.worked-out').waitFor();
  };
  await goTo(page, '#/questions?topics=leakage&count=1&seed=4');
  await atQuestion(page, 1, 1);
  await wrongly();
  await goTo(page, '#/record');
  await page
    .getByRole('link', { name: /^Three questions on/ })
    .first()
    .click();
  await atQuestion(page, 1, 3);
  await goTo(page, '#/questions?topics=offer&count=3&seed=2');
  const drawn = sessionOf({ count: 3, seed: 2, topics: ['offer'] });
  const at = drawn.findIndex((one) => shownState(one)?.left?.some(({ op }) => op === 'vehicle') === true);
  expect(at).toBeGreaterThanOrEqual(0);
  for (let i = 0; i < at; i++) {
    await atQuestion(page, i + 1, 3);
    await wrongly();
    await button(page, 'Next').click();
  }
  const asked = stemParts(drawn[at] as (typeof drawn)[number]).given;
  await page.getByRole('heading', { name: asked, exact: true }).waitFor();
  // Before it is settled the bench would tell its answer.
  const bench = page.getByRole('heading', { level: 1, name: 'On the bench', exact: true });
  await goTo(page, `#/questions/bench?of=${drawn[at]?.id}`);
  await page.getByText('This question is not settled', { exact: false }).waitFor();
  expect(await bench.count()).toBe(0);
  await goTo(page, '#/questions?topics=offer&count=3&seed=2');
  await page.getByRole('heading', { name: asked, exact: true }).waitFor();
  await wrongly();
  await page.getByRole('link', { name: 'See it on the bench' }).click();
  await bench.waitFor();
  await page.getByText('It stands as the question shows it', { exact: false }).waitFor();
  // As it was handed over: the lead is in.
  await page
    .getByText(/plugged in, state B/)
    .first()
    .waitFor();
  expect(await barriersOn(page)).toEqual([]);
  const isBack = async () => {
    await page.locator('.worked-out').waitFor();
    expect(await stem(page)).toBe(asked);
    await atQuestion(page, at + 1, 3);
  };
  await button(page, 'Predict').click();
  await button(page, 'Lock').click();
  await page.getByRole('heading', { name: 'Measure', exact: true }).waitFor();
  await page.getByRole('link', { name: 'Questions', exact: true }).click();
  await isBack();
  await page.getByRole('link', { name: 'See it on the bench' }).click();
  await bench.waitFor();
  await page.reload();
  await bench.waitFor();
  await page.goBack();
  await isBack();
  await page.reload();
  await isBack();
  await goTo(page, '#/record');
  await page.getByRole('table', { name: 'Questions answered, by topic' }).waitFor();
  expect(await page.getByText('On the bench').count()).toBe(0);
  await goTo(page, '#/');
  await page.getByRole('link', { name: /^Start here/ }).waitFor();
  expect(await page.getByRole('heading', { name: 'Unfinished' }).count()).toBe(0);
});

test('during an assessment nothing is asked: in this tab, after a reload, in another tab, and no bench of a question', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await goTo(page, '#/questions?topics=dead&count=3&seed=3');
  await atQuestion(page, 1, 3);
  await goTo(page, '#/aim/dead/single-pme?seed=3&rung=4');
  await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
  const refused = (where: Page) =>
    where.getByText('You are in an assessment: Is it dead?', { exact: false }).waitFor();
  await goTo(page, '#/questions?topics=dead&count=3&seed=3');
  await refused(page);
  expect(await page.locator('#question').count()).toBe(0);
  await page.reload();
  await refused(page);
  const other = await page.context().newPage();
  await other.goto(`${opened.url}#/questions`);
  await refused(other);
  expect(await other.locator('#question').count()).toBe(0);
  const [first] = sessionOf({ count: 3, seed: 3, topics: ['dead'] });
  await goTo(other, `#/questions/bench?of=${first?.id}`);
  await refused(other);
  // Put away before anything was done in it, it is left.
  await goTo(other, '#/');
  await other.getByRole('button', { name: 'Put it away' }).click();
  await goTo(other, '#/questions');
  await atQuestion(other, 1, 10);
});

test('a quiz that is set, from its link to the class table: nothing is told before its end, and its file is marked', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await goTo(page, '#/questions?make=quiz');
  await page.getByLabel('title').fill('Friday');
  await page.getByLabel('how many').fill('3');
  await page.getByRole('checkbox', { name: 'Is it dead?' }).check();
  expect(await barriersOn(page)).toEqual([]);
  await button(page, 'Give it out').click();
  await page.getByText('Your own copy is kept on this device').waitFor();
  await page.getByRole('link', { name: /set=Friday/ }).click();
  for (let i = 1; i <= 3; i++) {
    await atQuestion(page, i, 3);
    await answer(page);
    await button(page, /^fairly sure/).click();
    expect(await page.locator('.worked-out').count()).toBe(0);
  }
  await page.getByLabel(/^your name/).fill('A. B.');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    button(page, 'Write the file to hand in').click(),
  ]);
  const marked = markQuiz(readFileSync((await file.path()) ?? '', 'utf8'));
  if (!marked.ok) throw new Error(JSON.stringify(marked.problems));
  expect(marked.value).toMatchObject({ of: 3, trainee: 'A. B.', doubts: [] });
  expect(marked.value.items.every(({ given }) => given !== null)).toBe(true);
  await page.getByRole('heading', { name: `${marked.value.right} of 3 right` }).waitFor();
  // To the class table, by the tutor's own copy on the same device.
  await goTo(page, '#/collect');
  await page.locator('input[type=file][multiple]').setInputFiles({
    name: 'ab.json',
    mimeType: 'application/json',
    buffer: readFileSync((await file.path()) ?? ''),
  });
  const row = page.getByRole('row').filter({ hasText: 'A. B.' });
  await row.getByText('Friday').waitFor();
  expect(await row.textContent()).toContain(`${marked.value.right} of 3`);
});
