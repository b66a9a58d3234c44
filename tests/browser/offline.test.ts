// Without a network after the first visit: the whole page works, an attempt and the record with it. A newer version
// waits until no attempt is open and somebody takes it. On plain http all but that works.

import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openBrowser } from './browsers.ts';
import { expectComplaint } from './complaints.ts';
import { serveBuilt } from './serveBuilt.ts';
import {
  answerAll,
  begin,
  COULD_NOT_FINISH,
  choose,
  conclude,
  isServed,
  judgeAll,
  measure,
  openPage,
  setUp,
  sitDown,
  writeDown,
} from './trainee.ts';

/** A copy of the built page in a folder below the host's root, so that a newer version can be put in its place. */
const site = mkdtempSync(join(tmpdir(), 'charge-trainer-site-'));
const folder = join(site, 'college/trainer');
let browser: Browser;
let served: Awaited<ReturnType<typeof serveBuilt>>;

beforeAll(async () => {
  cpSync(join(import.meta.dirname, '../../dist'), folder, { recursive: true });
  cpSync(join(folder, 'index.html'), join(site, 'index.html'));
  [browser, served] = await Promise.all([openBrowser(), serveBuilt(site)]);
});
afterAll(async () => {
  await browser?.close();
  await served?.close();
  rmSync(site, { recursive: true, force: true });
});

const address = () => `${served.url}college/trainer/`;
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

/** A test with a reading. */
async function oneTest(page: Page): Promise<void> {
  await choose(page, 'No vehicle (A)');
  await setUp(page, {});
  await answerAll(page);
  await button(page, /^would sign for it/).click();
  await measure(page, {
    op: 'measure',
    quantity: 'voltage',
    between: ['outlet.L1', 'outlet.PE'],
    tool: 'two-pole',
  });
  await writeDown(page, undefined);
  await judgeAll(page, 'did');
}

async function stopAndConclude(page: Page): Promise<void> {
  await button(page, 'Stop…').click();
  await page.getByLabel('reason').fill('dinner');
  await button(page, 'Stop the work').click();
  await conclude(page, COULD_NOT_FINISH);
}

test('with the network off after the first visit: a whole attempt, the record, the sources', async () => {
  const page = await sitDown(browser, address(), { worker: true });
  await isServed(page);
  const manifest = await page.evaluate(async () => {
    const link = document.querySelector<HTMLLinkElement>('link[rel="manifest"]');
    const { start_url, icons } = await (await fetch(link?.href ?? '')).json();
    const found = await Promise.all(icons.map(async ({ src }: { src: string }) => (await fetch(src)).ok));
    return { start: new URL(start_url, link?.href).href, found };
  });
  expect(manifest).toEqual({ start: address(), found: [true, true, true, true] });
  await page.context().setOffline(true);
  await page.reload();
  await page.getByRole('heading', { name: 'Charge point trainer' }).waitFor();
  await begin(page, 'Mill Race, unit 2');
  await oneTest(page);
  await stopAndConclude(page);
  await page.getByRole('link', { name: 'My record' }).click();
  await page.getByRole('heading', { name: '1 attempt' }).waitFor();
  await page.getByText(/^“Could not finish”:/).waitFor();
  await page.getByRole('link', { name: 'Sources' }).click();
  await page.getByRole('heading', { name: 'Sources', level: 1 }).waitFor();
  await page.getByRole('link', { name: 'Licences' }).click();
  await page.getByText('react-dom').waitFor();
  await page.goBack();
  await page.getByRole('heading', { name: 'Sources', level: 1 }).waitFor();
  // What the page does not need is not there: so the network was off.
  expectComplaint(/ERR_INTERNET_DISCONNECTED/);
  const got = await page.evaluate(() =>
    fetch('play.schema.json').then(
      ({ ok }) => ok,
      () => false,
    ),
  );
  expect(got).toBe(false);
  await page.context().close();
});

test('a newer version waits for the end of an attempt, and for somebody to take it', async () => {
  const page = await sitDown(browser, address(), { worker: true });
  await isServed(page);
  await begin(page, 'Mill Race, unit 2');
  appendFileSync(join(folder, 'sw.js'), '\n// newer\n');
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).waiting !== null);
  const offer = page.getByText('A newer version is ready.');
  await choose(page, 'No vehicle (A)');
  expect(await offer.count()).toBe(0);

  await page.goto(`${address()}#/`);
  await page.getByText('It waits until the unfinished attempt is concluded or put away.').waitFor();
  expect(await button(page, 'Take the new version').count()).toBe(0);
  const other = await openPage(page.context(), address());
  await offer.waitFor();
  await button(other, 'Take the new version').click();
  await other.getByText('It waits: an attempt is open in another tab.').waitFor();
  await other.close();

  await button(page, 'Put it away').click();
  await page.evaluate(() => Object.assign(globalThis, { isOld: true }));
  await button(page, 'Take the new version').click();
  await page.waitForFunction(() => !('isOld' in globalThis));
  await page.getByRole('heading', { name: 'Charge point trainer' }).waitFor();
  expect(await page.evaluate(async () => (await navigator.serviceWorker.ready).waiting)).toBeNull();
  expect(await offer.count()).toBe(0);
  await page.getByRole('link', { name: 'My record' }).first().click();
  await page.getByText('Unfinished, setting up: No vehicle (A)').waitFor();
  await page.context().close();
});

test('on plain http everything but offline', async () => {
  const page = await sitDown(browser, `${served.plainUrl}college/trainer/`, { worker: true });
  expect(await page.evaluate(() => [isSecureContext, 'serviceWorker' in navigator])).toEqual([false, false]);
  await begin(page, 'Mill Race, unit 2');
  await stopAndConclude(page);
  const [file] = await Promise.all([page.waitForEvent('download'), button(page, 'Export attempt').click()]);
  expect(JSON.parse(readFileSync(await file.path(), 'utf8')).entries.at(-1).kind).toBe('conclusion');
  await page.context().close();
});
