// A bench on which much was done before is got ready in slices: a second press begins nothing more, and whoever cancels
// or goes elsewhere meanwhile has begun nothing.

import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openBuiltPage } from './builtPage.ts';
import { slowDevice } from './slowDevice.ts';
import { sitDown, toPage, toScenarios } from './trainee.ts';

const opened = openBuiltPage();
/** Others carried many tests out on it. */
const HANDED_OVER = 'Bakery Lane, number 9';

const begin = (page: Page) => page.getByRole('button', { name: 'Begin', exact: true });
const onBench = (page: Page) => page.getByRole('heading', { name: 'Choose a test' }).waitFor();
const toRecord = (page: Page) => toPage(page, 'My record');
const keepsOne = (page: Page) =>
  expect.poll(() => page.getByRole('heading', { name: '1 attempt', exact: true }).count()).toBe(1);

/** So slow that getting it ready lasts longer than a busy machine keeps a hand waiting. */
const TIMES_SLOWER = 60;

/**
 * The job chosen, on a device so slow that getting it ready lasts; it can be made quick again where that is no matter,
 * since a slow one keeps a core as busy as a quick one.
 */
async function chosen(): Promise<{ readonly page: Page; readonly quick: () => Promise<unknown> }> {
  const page = await sitDown(opened.browser, opened.url);
  await toScenarios(page);
  await page.getByRole('radio', { name: HANDED_OVER }).check();
  return { page, quick: await slowDevice(page, TIMES_SLOWER) };
}

test('two presses begin one attempt', async () => {
  const { page, quick } = await chosen();
  await begin(page).dblclick();
  await quick();
  await onBench(page);
  await toRecord(page);
  await keepsOne(page);
  await page.context().close();
});

test('cancelled, or left for another page, nothing was begun; asked again, it is', async () => {
  const { page, quick } = await chosen();
  await begin(page).click();
  await page.getByRole('heading', { name: 'Getting the bench ready' }).waitFor();
  await page.getByRole('button', { name: 'Cancel' }).click();
  await begin(page).click();
  await page.evaluate(() => {
    location.hash = '#/record';
  });
  await quick();
  await page.getByText('No attempt is kept here yet').waitFor();
  await page.getByRole('link', { name: 'Scenarios' }).first().click();
  await page.getByRole('radio', { name: HANDED_OVER }).check();
  await begin(page).click();
  await onBench(page);
  await toRecord(page);
  await keepsOne(page);
  await page.context().close();
});
