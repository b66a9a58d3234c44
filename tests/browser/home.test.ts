// The first screen: one thing to do at a first visit, a job begun from a cell, what it came to afterwards, and the same
// job twice from the same address.

import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { rightConclusion } from '../../src/attempt/marks/worked.ts';
import { verify } from '../../src/scenario/verify.ts';
import { verdictTitle } from '../../src/words/verdicts.ts';
import { barriersOn } from './axe.ts';
import { openBuiltPage } from './builtPage.ts';
import { conclude, doTest, inHand, sitDown, toScenarios } from './trainee.ts';

const opened = openBuiltPage();
vi.setConfig({ testTimeout: 180_000 });

const link = (page: Page, name: string | RegExp) => page.getByRole('link', { name });
const onBench = (page: Page) => page.getByRole('heading', { name: 'Choose a test' }).waitFor();
const goTo = (page: Page, hash: string) =>
  page.evaluate((to) => {
    location.hash = to;
  }, hash);

/** Widest thing on the page, px beyond the window. */
const overhang = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

test('a first visit on a phone: one filled button, in a bar at the bottom, and nothing wider than the screen', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  const start = link(page, /^Start here your first charge point, 4 minutes$/);
  await start.waitFor();
  const box = await start.boundingBox();
  expect((box?.y ?? 0) + (box?.height ?? 0)).toBe(740);
  expect(await page.locator('.filled, button.main').count()).toBe(1);
  expect(await overhang(page)).toBe(0);
  expect(await link(page, /not tried$/).count()).toBe(36);
  expect(await barriersOn(page)).toEqual([]);
  await toScenarios(page);
  await expect.poll(() => page.title()).toBe('Scenarios · Charge point trainer');
  expect(await overhang(page)).toBe(0);
  expect(await barriersOn(page)).toEqual([]);
});

test('a cell begins a job of one aim; afterwards it says what came of it, and what is next has a reason', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await link(page, /^Is the design right\? guided: not tried$/).click();
  await onBench(page);
  expect(await page.title()).toMatch(/^Choose a test · Is the design right\? .+ · Charge point trainer$/);
  const { scenario } = await inHand(page);
  const { actions } = verify(scenario);
  expect(actions.map(({ action }) => action.id)).toEqual(['papers']);
  for (const { action } of actions) await doTest(page, action);
  await page.getByRole('button', { name: 'Conclude…' }).click();
  const { verdict, next, tell } = rightConclusion(await inHand(page));
  expect(['nothing-wrong', 'something-wrong']).toContain(verdict);
  await page.getByRole('group', { name: 'Is the design right? You found' }).waitFor();
  await conclude(page, {
    verdict,
    cause: verdict === 'something-wrong' ? 'something, cause not known' : 'nothing',
    next,
    tell,
  });
  await page.getByRole('heading', { name: `“${verdictTitle(verdict)}”: right.` }).waitFor();
  const bar = page.getByRole('region', { name: 'Next for you' });
  await bar.getByText('Next for you. You have not tried it yet.').waitFor();
  expect(await page.locator('.main:visible').allInnerTexts()).toEqual(['Is it dead? 4 minutes']);
  await bar.getByRole('link', { name: 'Is it dead? 4 minutes' }).click();
  await onBench(page);
  expect(await page.title()).toMatch(/^Choose a test · Is it dead\? .+ · Charge point trainer$/);
  await page.getByRole('link', { name: 'Jobs' }).click();
  await link(page, /^Is the design right\? guided: 1 of 1 \d+ \w+$/).waitFor();
  await link(page, /^Next for you: Is it dead\? 4 minutes You have not tried it yet\.$/).waitFor();
  expect(await page.locator('.filled, button.main').count()).toBe(1);
  expect(await barriersOn(page)).toEqual([]);
});

test('an address begins the same job each time, and one that is wrong says what is', async () => {
  const page = await sitDown(opened.browser, opened.url);
  const files: string[] = [];
  for (let i = 0; i < 2; i++) {
    await goTo(page, '#/aim/outlet-dead/single-tt?seed=12&rung=2');
    await onBench(page);
    files.push(JSON.stringify((await inHand(page)).attempt.scenario));
    await link(page, 'Jobs').click();
    await link(page, /^Start here/).waitFor();
  }
  expect(files[0]).toBe(files[1]);
  expect(files[0]).toContain('aim-outlet-dead-single-tt-12');
  await goTo(page, '#/aim/outlet-ded/single-tt?seed=x');
  const alert = page.getByRole('alert');
  await alert.waitFor();
  const text = await alert.textContent();
  expect(text).toContain('unknown aim "outlet-ded"');
  expect(text).toContain('a whole number from 0 to 2147483647 is expected');
  expect(await barriersOn(page)).toEqual([]);
  await link(page, 'All twelve aims').click();
  await page.getByRole('heading', { name: 'Charge point trainer' }).waitFor();
  expect(await page.getByRole('alert').count()).toBe(0);
});
