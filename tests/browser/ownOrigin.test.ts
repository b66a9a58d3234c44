// Nobody is told that somebody is at the page, or what is done on it: whoever reads, tries and is assessed, served by the
// worker, asks the page's own host and no other, and sends it nothing. That no other page asks another host, every test
// holds (complaints.ts).

import type { Request } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { openBuiltPage } from './builtPage.ts';
import { throughLeaving, throughReadingPages } from './everyScreen.ts';
import { isServed, openPage } from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 480_000 });

/** What has no host asks nobody. */
const asksAHost = (request: Request): boolean => !/^(data|blob|about):/.test(request.url());

test('only the page’s own host is asked, and sent nothing', async () => {
  const context = await opened.browser.newContext({ reducedMotion: 'reduce' });
  const asked: Request[] = [];
  context.on('request', (request) => {
    if (asksAHost(request)) asked.push(request);
  });
  const page = await openPage(context, opened.url);
  await isServed(page);
  const screens: string[] = [];
  const look = async (screen: string) => {
    screens.push(screen);
  };
  await throughReadingPages(page, look);
  await page.goto(`${opened.url}#/`);
  await page.reload();
  await page.getByRole('contentinfo').getByRole('link', { name: 'Scenarios' }).click();
  await throughLeaving(page, look);
  await context.close();

  expect(screens).toEqual(
    expect.arrayContaining(['Sources', 'worked run', 'debrief of an assessment', 'not handed in']),
  );
  const origins = new Set(asked.map((request) => new URL(request.url()).origin));
  expect([...origins]).toEqual([new URL(opened.url).origin]);
  expect(asked.filter((request) => request.method() !== 'GET' || request.postData() !== null)).toEqual([]);
  const byWorker = asked.filter((request) => request.serviceWorker() !== null);
  expect(byWorker.length).toBeGreaterThan(10);
  expect(asked.length - byWorker.length).toBeGreaterThan(5);
});
