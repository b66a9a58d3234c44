// What is wrong with it? By tap on a phone from the list to the debrief, along the way that one symptom leads; and with
// a mouse, where another cause is named.

import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { rightConclusion } from '../../src/attempt/marks/worked.ts';
import { causeTitle } from '../../src/words/causeTitles.ts';
import { testTitle } from '../../src/words/testTitles.ts';
import { barriersOn } from './axe.ts';
import { openBuiltPage } from './builtPage.ts';
import { EVERY_TEST } from './everyTest.ts';
import { finger, mouse } from './hands.ts';
import { actionFor, begin, conclude, doTest, inHand, sitDown } from './trainee.ts';

const opened = openBuiltPage();
vi.setConfig({ testTimeout: 240_000 });

const JOB = 'Weavers’ Green, number 18';
const SYMPTOM = /^It trips every other evening/;
const SHOWS = 'residual-half';

const overhang = (page: Page) =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth, scrollHeight, clientHeight } = document.documentElement;
    const isBench = document.querySelector('.bench-screen') !== null;
    return { across: scrollWidth - clientWidth, down: isBench ? scrollHeight - clientHeight : 0 };
  });
const isInSight = async (page: Page) => expect(await overhang(page)).toEqual({ across: 0, down: 0 });

async function sitDownTo(width: number, height: number, touch: boolean): Promise<Page> {
  const hands = touch ? finger : mouse;
  const page = await sitDown(opened.browser, opened.url, { width, height, touch, hands });
  await hands.press(
    page.getByRole('region', { name: 'What is wrong with it?' }).getByRole('link', { name: /^Choose/ }),
  );
  const list = page.getByRole('group', { name: 'What is wrong with it? Ten minutes at most' });
  await list.getByText(SYMPTOM).waitFor();
  expect(await list.getByRole('radio').count()).toBeGreaterThanOrEqual(20);
  await isInSight(page);
  await begin(page, JOB);
  await page.getByText(SYMPTOM).waitFor();
  // All of its tests at hand, and none of them the next one.
  for (const id of ['insulation-outlet', 'state-c', SHOWS, 'residual-rated', 'residual-ramp', 'dc-ramp'])
    expect(await page.getByRole('button', { name: testTitle(id), exact: true }).count()).toBe(1);
  expect(await page.getByRole('button', { name: /^Next/ }).count()).toBe(0);
  await isInSight(page);
  return page;
}

test('by tap on a phone: one test of six leads to the cause, and the debrief says what it ruled out', async () => {
  const page = await sitDownTo(360, 740, true);
  expect(await barriersOn(page)).toEqual([]);
  await doTest(page, actionFor(SHOWS));
  await page.getByText(SYMPTOM).waitFor();
  const right = rightConclusion(await inHand(page));
  await page.getByRole('button', { name: 'Conclude…' }).tap();
  await page.getByRole('group', { name: 'You found' }).waitFor();
  expect(await page.getByRole('heading', { name: 'Tests left out, and why' }).count()).toBe(0);
  await isInSight(page);
  await conclude(page, {
    verdict: 'something-wrong',
    cause: causeTitle('residual-trips-early'),
    next: right.next,
    tell: right.tell,
  });
  await page.getByRole('heading', { name: '“Something wrong”: right.' }).waitFor();
  await page.getByText(SYMPTOM).waitFor();
  const folds = page.getByRole('group');
  await page.getByRole('heading', { name: 'What each test ruled out' }).tap();
  const ruledOut = folds.filter({ has: page.getByRole('heading', { name: 'What each test ruled out' }) });
  await ruledOut.getByText(/ruled out \d+, \d+ left/).waitFor({ timeout: 120_000 });
  await ruledOut.getByText(/^Left at the end: \d+\./).waitFor();
  // One test that tells it is no detour.
  await ruledOut.getByText(/^Your way was about as short/).waitFor({ timeout: 120_000 });
  await page.getByRole('heading', { name: 'Marks by part' }).tap();
  await page.getByRole('row', { name: /^diagnosis .*40 of 40$/ }).waitFor();
  await isInSight(page);
  expect(await barriersOn(page)).toEqual([]);
  await page.context().close();
});

// On a phone the whole of it is gone through at every run; what a wrong cause earns is in tests/attempt too.
if (EVERY_TEST)
  test('on a desk: a wrong cause earns the diagnosis nothing', async () => {
    const page = await sitDownTo(1280, 800, false);
    await doTest(page, actionFor(SHOWS));
    const right = rightConclusion(await inHand(page));
    await page.getByRole('button', { name: 'Conclude…' }).click();
    await conclude(page, {
      verdict: 'something-wrong',
      cause: causeTitle('neutral-joint'),
      next: right.next,
      tell: right.tell,
    });
    await page.getByText(/: not yet\.$/).waitFor();
    await page.getByRole('heading', { name: 'Marks by part' }).click();
    await page.getByRole('row', { name: /^diagnosis .*0 of 40$/ }).waitFor();
    await isInSight(page);
    await page.context().close();
  });
