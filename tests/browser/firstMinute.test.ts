// The first minute on a phone: one window high, every part reached without a mouse's precision, its pins to be touched,
// the unit opened when asked for, come to once by itself and from the cautions later.

import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { barriersOn } from './axe.ts';
import { openBuiltPage } from './builtPage.ts';
import { sitDown } from './trainee.ts';

const opened = openBuiltPage();
vi.setConfig({ testTimeout: 120_000 });

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const question = (page: Page) =>
  page.getByRole('heading', { name: 'Nothing is plugged in. Is it safe to touch the pins?' });
/** What of the page lies beyond the window, px down. */
const beyond = (page: Page) =>
  page.evaluate(() => {
    const main = document.querySelector('.minute-body');
    return Math.max(
      document.documentElement.scrollHeight - innerHeight,
      (main?.scrollHeight ?? 0) - (main?.clientHeight ?? 0),
    );
  });

test('three screens of one window, pins to be touched, the unit opened, and come to once', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  await page.getByRole('link', { name: /^Start here/ }).click();
  await question(page).waitFor();
  expect(await beyond(page)).toBe(0);
  await button(page, /^not safe$/).click();
  await page.getByText(/from L to N shows/).waitFor();
  expect(await beyond(page)).toBe(0);
  await button(page, /^PE pin/).click();
  await page.getByText(/from N to PE shows/).waitFor();
  await button(page, /^L pin/).click();
  await page.getByText(/^L to PE shows/).waitFor();
  expect(await beyond(page)).toBe(0);
  expect(await barriersOn(page)).toEqual([]);
  await button(page, 'See it opened').click();
  await page.getByRole('img', { name: /^This unit, opened/ }).waitFor();
  expect(await beyond(page)).toBe(0);
  await button(page, 'Skip').click();
  await button(page, 'Take the bench over').waitFor();

  // A second time there is no first minute.
  await page.getByRole('contentinfo').getByRole('link', { name: 'Home', exact: true }).click();
  await page.getByRole('link', { name: /^Start here/ }).click();
  await button(page, 'Take the bench over').waitFor();
  await page.getByRole('contentinfo').getByRole('link', { name: 'Home', exact: true }).click();
  await button(page, 'Cautions').click();
  await page.getByRole('link', { name: /first minute$/ }).click();
  await question(page).waitFor();
  await button(page, /^safe$/).click();
  await button(page, 'safe to touch').click();
  await page.getByText(/^You would have touched \d{3}\sV to earth/).waitFor();
  await button(page, 'Skip').click();
  await page.getByRole('link', { name: /^Start here/ }).waitFor();
});
