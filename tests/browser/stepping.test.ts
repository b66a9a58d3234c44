// The browser's own *back* and *reload* within a test: one step back as long as there is one, the page before only from
// the first step, and nothing lost by either. And what the tab is called meanwhile.

import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { openBuiltPage } from './builtPage.ts';
import {
  actionFor,
  begin,
  choose,
  inHand,
  judgeAll,
  predict,
  sitDown,
  toJudge,
  toPredict,
} from './trainee.ts';

const opened = openBuiltPage();
vi.setConfig({ testTimeout: 180_000 });

const step = (page: Page, name: string) =>
  page.getByRole('heading', { name, level: 3, exact: true }).waitFor();
const choosing = (page: Page) => page.getByRole('heading', { name: 'Choose a test' }).waitFor();
const titled = (page: Page) => expect.poll(() => page.title());

test('back, reload and title at every step of a test, on a phone', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  const job = 'Fen Barn';
  await begin(page, job);
  const named = (words: string) => new RegExp(`^${words} · ${job}.* · Charge point trainer$`);
  await titled(page).toMatch(named('Choose a test'));

  await choose(page, 'No vehicle (A)');
  await titled(page).toMatch(named('Set up: No vehicle \\(A\\)'));
  await page.goBack();
  await choosing(page);
  await choose(page, 'No vehicle (A)');
  await toPredict(page);
  await titled(page).toMatch(named('Predict: No vehicle \\(A\\)'));
  await page.getByRole('button', { name: /^should$/ }).click();
  await page.reload();
  await step(page, 'Predict');
  await page.getByRole('button', { name: 'Change: should', exact: true }).waitFor();
  await page.goBack();
  await step(page, 'Set up');
  await page.goBack();
  await choosing(page);

  await choose(page, 'No vehicle (A)');
  await predict(page, await inHand(page), actionFor('state-a'), 'fairly-sure');
  await titled(page).toMatch(named('Measure: No vehicle \\(A\\)'));
  // What is locked is not undone: back leaves the attempt, which goes on where it was.
  await page.goBack();
  await page.getByRole('heading', { name: 'Scenarios', level: 1 }).waitFor();
  await page.goForward();
  await step(page, 'Measure');
  await toJudge(page);
  await titled(page).toMatch(named('Judge: No vehicle \\(A\\)'));
  await page.getByRole('radio', { name: 'not shown', exact: true }).first().check();
  await page.reload();
  await step(page, 'Judge');
  expect(await page.getByRole('radio', { name: 'not shown', exact: true }).first().isChecked()).toBe(true);
  await page.goBack();
  await step(page, 'Measure');
  await judgeAll(page, 'not-shown');
  await page.getByRole('button', { name: 'Try this test again' }).waitFor();
  await titled(page).toMatch(named('What was true: No vehicle \\(A\\)'));
  await page.goBack();
  await choosing(page);
  // The sheet for stopping is a step too.
  await page.getByRole('button', { name: 'Stop…' }).click();
  await page.getByRole('dialog').waitFor();
  await page.goBack();
  await page.getByRole('dialog').waitFor({ state: 'hidden' });
  await page.getByRole('button', { name: 'Conclude…' }).click();
  await page.getByRole('heading', { name: 'Conclude' }).waitFor();
  await titled(page).toMatch(named('Conclude'));
  await page.goBack();
  await choosing(page);
  const { attempt } = await inHand(page, 2);
  expect(attempt.entries.map(({ kind }) => kind)).toEqual(['prediction', 'judgement']);
  await page.context().close();
});
