// Five minutes of questions, as somebody does them: by keys alone, on a phone by touch, and a quiz that a tutor has set from
// its link to the file that is handed in.

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { markQuiz } from '../../src/quiz/markQuiz.ts';
import { sessionOf } from '../../src/quiz/session.ts';
import '../../src/words/allTests.ts';
import { stemParts } from '../../src/words/questions.ts';
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
const stem = (page: Page) => page.locator('#question').textContent();

/** An answer, whichever, by keys and names alone, up to how sure. */
async function answer(page: Page): Promise<void> {
  const field = page.getByRole('textbox', { name: 'your answer' });
  const slider = page.getByRole('slider', { name: /^your touch/ });
  const terminals = page.getByRole('group', { name: /^Terminals/ });
  if ((await field.count()) > 0) {
    await field.fill('3');
    const [unit] = await page.getByRole('group', { name: 'unit' }).getByRole('radio').all();
    await unit?.check();
    await page
      .getByRole('button', { name: /^Answer/ })
      .filter({ visible: true })
      .first()
      .click();
  } else if ((await slider.count()) > 0) {
    await slider.press('ArrowRight');
  } else if ((await terminals.count()) > 0) {
    for (const terminal of (await terminals.getByRole('button').all()).slice(0, 2))
      if ((await button(page, /^guessing/).count()) === 0) await terminal.click();
  } else {
    const next = page.getByRole('group', { name: /^(your answer|what comes next)$/ }).getByRole('button');
    while ((await next.count()) > 0) await next.and(page.locator(':enabled')).first().click();
  }
}

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
  await page.getByRole('link', { name: 'Try on a unit' }).click();
  await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
  expect(await page.title()).toMatch(/Is it dead\?/);
});

test('a quiz that is set: nothing is told before its end, and its file is marked', async () => {
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
});
