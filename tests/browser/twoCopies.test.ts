// Two copies of the page on one host, one below the other's folder: each keeps its own files and takes its own newer
// version, whichever is opened and updated first, and both open when the host is gone.

import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { openBrowser } from './browsers.ts';
import { expectComplaint } from './complaints.ts';
import { share } from './everyTest.ts';
import { type Served, serveBuilt } from './serveBuilt.ts';
import { isServed, openPage, sitDown } from './trainee.ts';

const BUILT = join(import.meta.dirname, '../../dist');
const PATHS = ['', 'tools/charge/'] as const;
type Path = (typeof PATHS)[number];

let browser: Browser;
let site: string;
let served: Served;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  site = mkdtempSync(join(tmpdir(), 'charge-trainer-two-'));
  for (const path of PATHS) {
    cpSync(BUILT, join(site, path), { recursive: true });
    release(path, 'first');
  }
  served = await serveBuilt(site);
});
afterEach(async () => {
  await served?.close();
  rmSync(site, { recursive: true, force: true });
});

/** Puts a version of the page in a copy's place, told from others by its description. */
function release(path: Path, version: string): void {
  const page = readFileSync(join(BUILT, 'index.html'), 'utf8');
  // By this the worker knows whether it has a file in its newest version.
  const revision = createHash('md5').update(page).digest('hex');
  const rewrite = (name: string, what: string | RegExp, to: string) => {
    const text = readFileSync(join(BUILT, name), 'utf8');
    const changed = text.replace(what, to);
    if (changed === text) throw new Error(`${name} has nothing like ${what}`);
    writeFileSync(join(site, path, name), changed);
  };
  rewrite('index.html', /(name="description" content=")[^"]*/, `$1${version} at /${path}`);
  rewrite('sw.js', revision, version);
}

/** Which version stands on the screen, and whose files it runs on. */
const shownBy = (page: Page) =>
  page.evaluate(() => ({
    version: document.querySelector('meta[name="description"]')?.getAttribute('content'),
    worker: navigator.serviceWorker.controller?.scriptURL,
    files: [
      ...new Set(
        performance
          .getEntriesByType('resource')
          .filter(({ name }) => name.includes('/assets/'))
          .map(({ name }) => name.replace(/assets\/.*/, '')),
      ),
    ],
  }));

const expected = (path: Path, version: string) => ({
  version: `${version} at /${path}`,
  worker: `${served.url}${path}sw.js`,
  files: [`${served.url}${path}`],
});

const isServedByItsOwn = (page: Page, path: Path) =>
  page.waitForFunction(
    (own) => navigator.serviceWorker.controller?.scriptURL === own,
    `${served.url}${path}sw.js`,
  );

const [UPPER, LOWER] = PATHS;

const ORDERS = [
  { opened: [UPPER, LOWER], updated: LOWER },
  { opened: [UPPER, LOWER], updated: UPPER },
  { opened: [LOWER, UPPER], updated: UPPER },
] as const;

test.each(share(ORDERS, ORDERS.slice(0, 1)))(
  'opened $opened, a newer version of "$updated"',
  async ({ opened, updated }) => {
    const other = updated === UPPER ? LOWER : UPPER;
    const page = await sitDown(browser, `${served.url}${opened[0]}`, { worker: true });
    await isServed(page);
    const second = await openPage(page.context(), `${served.url}${opened[1]}`);
    await page.evaluate(() => Object.assign(globalThis, { isUntouched: true }));
    await second.evaluate(() => Object.assign(globalThis, { isUntouched: true }));
    await isServedByItsOwn(second, opened[1]);

    const former = (path: Path) => `workbox-precache-v2-${served.url}${path}`;
    await page.evaluate(
      async (names) => Promise.all(names.map((name) => caches.open(name))),
      PATHS.map(former),
    );

    const [updating, waiting] = opened[0] === updated ? [page, second] : [second, page];
    release(updated, 'newer');
    await updating.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    await updating.getByRole('button', { name: 'Take the new version' }).click();
    await updating.waitForFunction(() => !('isUntouched' in globalThis));
    await updating.getByRole('heading', { name: 'Charge point trainer' }).waitFor();
    expect(await waiting.evaluate(() => 'isUntouched' in globalThis)).toBe(true);
    expect(await waiting.getByRole('button', { name: 'Take the new version' }).count()).toBe(0);
    const left = await waiting.evaluate(() => caches.keys());
    expect(left.toSorted()).toEqual([
      ...PATHS.map((path) => `charge-point-trainer ${served.url}${path}`),
      former(other),
    ]);
    await updating.close();
    await waiting.close();

    await served.close();
    const open = (path: Path) => openPage(page.context(), `${served.url}${path}`);
    expect(await shownBy(await open(updated))).toEqual(expected(updated, 'newer'));
    expect(await shownBy(await open(other))).toEqual(expected(other, 'first'));

    expectComplaint(/404/);
    const lost = await open(LOWER);
    await lost.goto(`${served.url}${LOWER}none`);
    await lost.getByRole('link').click();
    await lost.getByRole('heading', { name: 'Charge point trainer' }).waitFor();
    expect(lost.url()).toBe(`${served.url}${LOWER}`);
  },
);
