// Waits on the bench, for somebody who wants them to last: named, skipped by name, at rest behind another tab; and the
// record is the same as where they pass at once.

import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { benchTime } from '../../src/words/benchTime.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { openBuiltPage } from './builtPage.ts';
import { act, actWith, answerAll, begin, choose, inHand, setUp, sitDown } from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 240_000 });

const skip = (page: Page) => page.getByRole('button', { name: 'Skip to then' });

async function lockWithWait(page: Page, seconds: string, test = 'No vehicle (A)', set = {}): Promise<void> {
  await begin(page, 'Harbour Mews, house 4');
  await choose(page, test);
  await setUp(page, { ...set, 'then wait, s': seconds });
  await answerAll(page);
  await page.getByRole('button', { name: /^would sign for it/ }).click();
  await page.getByRole('heading', { name: 'Measure' }).waitFor();
}

const isOutOfReach = (page: Page, name: string): Promise<boolean> =>
  page.getByRole('button', { name }).evaluate((button) => button.closest('[inert]') !== null);

const done = async (page: Page, least: number): Promise<readonly object[]> =>
  (await inHand(page, least)).attempt.entries.map((entry) => {
    const { wall: _wall, hash: _hash, ...rest } = entry;
    return rest;
  });

async function behindAnotherTab(page: Page, hidden: boolean): Promise<void> {
  await page.evaluate(
    (state) => {
      Object.defineProperty(document, 'visibilityState', { configurable: true, get: () => state });
      document.dispatchEvent(new Event('visibilitychange'));
    },
    hidden ? 'hidden' : 'visible',
  );
}

test('a wait lasts, stands still behind another tab, is skipped by name, and is logged as any other', async () => {
  const page = await sitDown(opened.browser, opened.url);
  expect(await page.getByLabel('Waits').inputValue()).toBe('at once');
  await page.getByLabel('Waits').selectOption({ label: 'last as on site (×1)' });
  await lockWithWait(page, '600');
  await page.getByText('Waiting 600 s on the bench.').waitFor();
  // Nothing is done meanwhile; stopping is in reach, and going on goes on waiting.
  expect(await isOutOfReach(page, 'Judge')).toBe(true);
  await page.getByRole('button', { name: 'Stop…' }).click();
  await page.getByRole('button', { name: 'Go on testing' }).click();
  expect(await done(page, 1)).toHaveLength(1);
  await skip(page).click();
  await skip(page).waitFor({ state: 'detached' });
  expect(await isOutOfReach(page, 'Judge')).toBe(false);
  expect((await done(page, 2)).at(-1)).toMatchObject({ operation: { op: 'wait', seconds: 600 } });

  // A second by itself, though not while the page is out of sight.
  await behindAnotherTab(page, true);
  await actWith(page, 'wait', 'seconds', 1);
  await skip(page).waitFor();
  await page.waitForTimeout(1500);
  expect(await skip(page).count()).toBe(1);
  await behindAnotherTab(page, false);
  await skip(page).waitFor({ state: 'detached' });
  await act(page, 'look it over');
  const lasting = await done(page, 4);
  await page.context().close();

  const other = await sitDown(opened.browser, opened.url);
  await lockWithWait(other, '600');
  await actWith(other, 'wait', 'seconds', 1);
  expect(await skip(other).count()).toBe(0);
  await act(other, 'look it over');
  expect(await done(other, 4)).toEqual(lasting);
  await other.context().close();
});

test('what is heard in a wait that lasts is told when it happens; who stops in it has waited so long', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await page.getByLabel('Waits').selectOption({ label: 'last as on site (×1)' });
  await lockWithWait(page, '600', 'Vehicle asks (C)', { 'stand-in': 'C: asks, 1.3 kΩ added' });
  const meanwhile = page.getByRole('log', { name: 'heard meanwhile' });
  expect(await meanwhile.getByText('heard: contactor closes').count()).toBe(0);
  await meanwhile.getByText('heard: contactor closes').waitFor({ timeout: 30_000 });
  const told = await meanwhile.textContent();
  const [{ at } = { at: 0 }] = (await inHand(page, 1)).attempt.entries.slice(-1);
  await page.getByRole('button', { name: 'Stop…' }).click();
  await page.getByLabel('reason').fill('heard enough');
  await page.getByRole('button', { name: 'Stop the work' }).click();
  await page.getByRole('heading', { name: 'Conclude' }).waitFor();
  const { attempt, samples } = await inHand(page, 2);
  const [waited, stopped] = attempt.entries.slice(-2);
  expect(stopped).toMatchObject({ operation: { op: 'stop', why: 'heard enough' } });
  if (waited?.kind !== 'operation' || waited.operation.op !== 'wait') throw new Error('nobody waited');
  expect(waited.operation.seconds).toBeGreaterThanOrEqual(1);
  expect(waited.operation.seconds).toBeLessThan(600);
  // What was foreseen is what came.
  const closed = samples
    .flatMap(({ sample }) => sample.events)
    .find(({ what }) => what === 'contactor closed');
  expect(closed?.at).toBeGreaterThan(at);
  expect(told).toContain(benchTime(closed?.at ?? 0));
});

test('a start delay on the unit’s sheet is passed by its name', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await begin(page, scenarioNamed('chapel-row').scenario.title);
  await choose(page, 'Vehicle connected (B)');
  await setUp(page, {});
  await answerAll(page);
  await page.getByRole('button', { name: /^would sign for it/ }).click();
  await page.getByRole('heading', { name: 'Measure' }).waitFor();
  const starts = page.getByText(/^Starts within \d+ s/);
  // Nothing is plugged in yet.
  expect(await starts.count()).toBe(0);
  await act(page, 'stand-in: plug in');
  await starts.waitFor();
  const { startDelay } = (await inHand(page)).papers.sheet;
  await page.getByRole('button', { name: `Wait ${startDelay} s`, exact: true }).click();
  await starts.waitFor({ state: 'detached' });
  const { attempt, papers } = await inHand(page, 3);
  expect(papers.sheet.startDelay).toBeGreaterThan(0);
  expect(attempt.entries.at(-1)).toMatchObject({
    operation: { op: 'wait', seconds: papers.sheet.startDelay },
  });
});

test('where the set-up does harm nobody waits any more', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await page.getByLabel('Waits').selectOption({ label: 'last as on site (×1)' });
  await begin(page, 'Harbour Mews, house 4');
  await choose(page, 'No vehicle (A)');
  await setUp(page, { 'unit’s cover': 'open', 'then wait, s': '6' });
  await answerAll(page);
  await page.getByRole('button', { name: /^would sign for it/ }).click();
  await page.getByRole('button', { name: 'Make safe and go on' }).click();
  await page.getByRole('heading', { name: 'Measure' }).waitFor();
  expect(await skip(page).count()).toBe(0);
  await act(page, 'look it over');
  const operations = (await inHand(page, 5)).attempt.entries.flatMap((entry) =>
    entry.kind === 'operation' ? [entry.operation.op] : [],
  );
  expect(operations).toEqual(['open-cover', 'isolate', 'prove-dead', 'inspect']);
});
