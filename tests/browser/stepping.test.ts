// The browser's own *back* and *reload* within a test: one step back as long as there is one, the page before only from
// the first step, and nothing lost by either. And what the tab is called meanwhile.

import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import { testLines } from '../../src/attempt/record/lines.ts';
import { offAt } from '../../src/bench/plant.ts';
import { openBuiltPage } from './builtPage.ts';
import {
  ANSWER_KEYS,
  actionFor,
  begin,
  choose,
  inHand,
  judgeAll,
  judgeRightly,
  measure,
  predict,
  sayFigures,
  setUp,
  sitDown,
  toJudge,
  toPredict,
  writeDown,
} from './trainee.ts';

const opened = openBuiltPage();
vi.setConfig({ testTimeout: 180_000 });

const step = (page: Page, name: string) =>
  page.getByRole('heading', { name, level: 3, exact: true }).waitFor();
const choosing = (page: Page) => page.getByRole('heading', { name: 'Choose a test' }).waitFor();
/** By a person, whose hand takes longer from one press to the next than the page from a press to its keeping. */
async function reloaded(page: Page): Promise<void> {
  await page.waitForTimeout(300);
  await page.reload();
}
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();
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
  await reloaded(page);
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
  await reloaded(page);
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
});

test('a mistake at every step is taken back, and the record shows what was meant', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  const action = actionFor('state-a');
  await begin(page, 'Fen Barn');
  // Another test than was meant.
  await choose(page, 'Vehicle connected (B)');
  await press(page, 'Another test');
  await choosing(page);
  await choose(page, 'No vehicle (A)');
  // The supply switched off in the set-up, and on again before it acts.
  await setUp(page, { supply: 'off, all poles, locked' });
  await page.getByLabel(/^supply/).selectOption({ label: 'on' });
  await page.getByText('At the lock: everything stays as you left it.').waitFor();
  await toPredict(page);
  await press(page, 'Back to the set-up');
  await toPredict(page);
  // The first line answered wrongly, and again.
  await press(page, /^can’t tell/);
  await press(page, 'Back a line');
  const before = await inHand(page);
  for (const { right } of testLines(before.scenario, action)) await press(page, ANSWER_KEYS[right]);
  await sayFigures(page, before, action, 'fairly-sure');
  // A lead on the wrong terminal, moved before anything is read; a figure written wrongly, and corrected.
  const reading = { op: 'measure', quantity: 'voltage', tool: 'two-pole' } as const;
  await measure(page, { ...reading, between: ['outlet.L1', 'outlet.N'] });
  const field = page.getByRole('form', { name: /^Write down/ }).getByRole('textbox');
  await field.fill('23 V');
  await field.press('Enter');
  await press(page, /^Correct it/);
  await writeDown(page, undefined);
  // Judged wrongly, looked at the readings once more, and judged again.
  await toJudge(page);
  await page.getByRole('radio', { name: 'it did not', exact: true }).first().check();
  await press(page, 'Back to the readings');
  await judgeRightly(page, await inHand(page, 3), action);
  // The test that is offered next is not taken; stopping and concluding are thought better of.
  await press(page, 'Another test');
  await choosing(page);
  await press(page, 'Stop…');
  await press(page, 'Go on testing');
  await press(page, 'Conclude…');
  await press(page, 'Go on testing');
  await choosing(page);

  const run = await inHand(page, 5);
  expect(offAt(run.world.plant)).toEqual([]);
  const { tests } = debriefOf(run.scenario, run.attempt);
  const test = tests.find(({ test: id }) => id === action.id);
  const said = run.attempt.entries.flatMap((entry) => (entry.kind === 'prediction' ? [entry] : []));
  expect(said).toHaveLength(1);
  expect(test?.lines.map(({ predicted }) => predicted)).toEqual(test?.lines.map(({ right }) => right));
  expect(test?.lines.map(({ judged }) => judged)).toEqual(test?.lines.map(({ judgement }) => judgement));
});
