// A short job on each rung of support, in a trainee's words: shown, with the lines filled in, and with the lines to be
// chosen. Lines asked and assessment are the stories of verification.test.ts and record.test.ts.

import { expect, test, vi } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import { testLines } from '../../src/attempt/record/lines.ts';
import { allowedActions } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { lineText } from '../../src/words/actions.ts';
import { testTitle } from '../../src/words/testTitles.ts';
import { openBuiltPage } from './builtPage.ts';
import {
  ANSWER_KEYS,
  actionFor,
  answerAll,
  begin,
  button,
  choose,
  doTest,
  inHand,
  judgeAll,
  setUp,
  sitDown,
  toJudge,
  toPredict,
  toScenarios,
} from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 240_000 });

test('a worked run, step by step, and then one’s own with the lines filled in', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  await toScenarios(page);
  await page.getByRole('radio', { name: 'Fen Barn' }).check();
  await page.getByRole('radio', { name: 'watched' }).check();
  await page.getByRole('button', { name: 'Show me' }).click();
  await page.getByText(/^step 1 of \d+$/).waitFor();
  await page.getByRole('heading', { name: '1. No vehicle (A): what a correct one does' }).waitFor();
  const count = Number(/of (\d+)/.exec((await page.getByText(/^step 1 of/).textContent()) ?? '')?.[1]);
  const on = page.getByRole('button', { name: 'Step on' });
  let written = 0;
  let drawn = 0;
  for (let i = 1; i < count; i++) {
    await on.click();
    written += await page.getByText('written down:').count();
    drawn += await page.getByText(/^leads on /).count();
  }
  expect(written).toBeGreaterThan(3);
  expect(drawn).toBeGreaterThan(3);
  await page.getByRole('heading', { name: 'Concluded' }).waitFor();
  expect(await on.isDisabled()).toBe(true);
  await page.getByRole('button', { name: 'Step back' }).click();
  await page.getByRole('heading', { name: /: judged$/ }).waitFor();
  await page.getByRole('button', { name: 'First' }).click();
  await page.getByText(`step 1 of ${count}`).waitFor();

  await page.getByRole('button', { name: 'Now you: guided' }).click();
  await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
  await page.getByText('guided').first().waitFor();
});

test('lines filled in: the tests in order, locked by one button, the rest one’s own', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await begin(page, 'Fen Barn', 1);
  const { scenario } = await inHand(page);
  const order = allowedActions(scenario);
  const [first, second] = verify(scenario).actions.map(({ action }) => action);
  if (first === undefined || second === undefined) throw new Error('too few tests');
  expect(first).toBe(order[0]);
  await doTest(page, first);
  // Led on to the next in order.
  await page.getByRole('heading', { level: 2, name: testTitle(second.id), exact: true }).waitFor();
  const run = await inHand(page, 3);
  expect(run.attempt).toMatchObject({ rung: 1 });
  expect(run.attempt.entries[0]).toMatchObject({ kind: 'prediction', given: true, sure: null });
  expect(mark(run.scenario, run.attempt).weights.prediction).toBe(0);
});

test('assessment: judged again as long as nothing else is done, and the last judgement counts', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  await begin(page, 'Fen Barn', 4);
  await choose(page, 'No vehicle (A)');
  await setUp(page, {});
  await answerAll(page);
  // What a trade word in the lines means comes when it is asked for.
  await page.getByText('Words used here').click();
  await page.getByRole('term').first().waitFor();
  // One line less sure than the rest.
  await page.getByText('Less sure of one line?').click();
  await page
    .getByRole('combobox')
    .filter({ hasText: 'as sure as of the rest' })
    .first()
    .selectOption('fairly sure');
  await page.getByRole('button', { name: /^would sign for it/ }).click();
  await page.getByRole('heading', { name: 'Measure' }).waitFor();
  const [said] = (await inHand(page, 1)).attempt.entries;
  if (said?.kind !== 'prediction') throw new Error('nothing was predicted');
  expect([said.sure, ...said.lines.flatMap((line) => line.sure ?? [])]).toEqual([
    'would-sign',
    'fairly-sure',
  ]);
  await judgeAll(page, 'not-shown');
  await page.getByText('Judged: No vehicle (A).').waitFor();
  await page.getByRole('button', { name: 'Judge it again' }).click();
  const first = page.getByRole('radio', { name: 'it did', exact: true }).first();
  expect(await first.isChecked()).toBe(false);
  await first.click();
  await page.getByRole('button', { name: 'Finish test' }).click();
  await page.getByText('Judged: No vehicle (A).').waitFor();
  const { attempt } = await inHand(page, 3);
  const judged = attempt.entries.flatMap((entry) => (entry.kind === 'judgement' ? [entry.lines] : []));
  expect(judged.map((lines) => lines.filter((line) => line.judged === 'not-shown').length)).toEqual([3, 2]);
  await choose(page, 'Vehicle connected (B)');
  await page.getByRole('button', { name: 'Another test' }).click();
  await page.getByRole('button', { name: 'Judge it again' }).waitFor();
});

test('lines chosen: a line of another test taken for this one’s is told after the judgement', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await begin(page, 'Fen Barn', 3);
  await choose(page, 'No vehicle (A)');
  await setUp(page, {});
  await toPredict(page);
  const list = page.getByRole('list', { name: 'Lines to choose from' });
  expect(await list.getByRole('listitem').count()).toBe(10);
  const key = (name: string) => page.getByRole('button', { name, exact: true });
  const sure = page.getByRole('button', { name: /^would sign for it/ });
  expect(await sure.isDisabled()).toBe(true);
  await key('should not: has voltage on its outlet with no vehicle there (A)').click();
  await key('should: shows ready on its display').click();
  // Taken back by the same key.
  await key('should: shows ready on its display').click();
  expect(await key('should: shows ready on its display').getAttribute('aria-pressed')).toBe('false');
  await key('should: shows ready on its display').click();
  await key('should: holds the pilot at about +12 V (11.4 to 12.6 V) with no vehicle there').click();
  await key('should: has its neutral pole open').click();
  await sure.click();
  await page.getByRole('heading', { name: 'Measure' }).waitFor();
  const { attempt } = await inHand(page, 1);
  const [prediction] = attempt.entries;
  expect(prediction?.kind === 'prediction' && prediction.lines).toHaveLength(4);
  await judgeAll(page, 'not-shown');
  await page.getByText(/^should, .+\. True: can’t tell$/).waitFor();
  await page.getByText(/Told by: Every pole open\.$/).waitFor();
});

test('all lines at once, and judged as said: one press for those that are left, and each is taken back by itself', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  await begin(page, 'Fen Barn', 2);
  await choose(page, 'No vehicle (A)');
  const { scenario } = await inHand(page);
  const action = actionFor('state-a');
  const lines = testLines(scenario, action);
  const [first, second] = lines;
  if (first === undefined || second === undefined) throw new Error('too few lines');
  await toPredict(page);
  await button(page, 'All lines at once').click();
  const key = (answer: string, line: typeof first) =>
    page.getByRole('button', { name: `${answer}: ${lineText(action.id, line)}`, exact: true });
  await key('should not', first).click();
  await button(page, ANSWER_KEYS.should).click();
  // What was said of all is taken back of one, and asked again.
  await key('should', second).click();
  await button(page, /^can’t tell ?the last line/).click();
  await button(page, /^fairly sure/).click();
  await toJudge(page);
  const asSaid = button(page, /^\d+ lines as you said$/);
  const told = lines.filter(({ id, judged }) => judged && id !== second.id);
  expect(await asSaid.textContent()).toBe(`${told.length} lines as you said`);
  await asSaid.click();
  const group = (line: typeof first) => page.getByRole('group', { name: lineText(action.id, line) });
  for (const line of told) {
    const word = line.id === first.id ? 'it did not' : 'it did';
    expect(await group(line).getByRole('radio', { name: word, exact: true }).isChecked()).toBe(true);
  }
  const changed = told.at(-1);
  if (changed === undefined) throw new Error('nothing is judged');
  await group(changed).getByRole('radio', { name: 'not shown', exact: true }).check();
  if (second.judged) await group(second).getByRole('radio', { name: 'not shown', exact: true }).check();
  await button(page, 'Finish test').click();
  const { attempt } = await inHand(page, 2);
  const said = attempt.entries.flatMap((entry) => (entry.kind === 'prediction' ? entry.lines : []));
  expect(said.find(({ id }) => id === first.id)?.answer).toBe('should-not');
  expect(said.find(({ id }) => id === second.id)?.answer).toBe('cant-tell');
  expect(said.filter(({ answer }) => answer === 'should')).toHaveLength(lines.length - 2);
  const judged = attempt.entries.flatMap((entry) => (entry.kind === 'judgement' ? entry.lines : []));
  expect(judged.find(({ id }) => id === changed.id)?.judged).toBe('not-shown');
});
