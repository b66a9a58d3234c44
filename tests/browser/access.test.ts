// Every screen, light and dark, on a desk and on a phone, without barriers; and nothing wider than the phone.

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { barriersOn } from './axe.ts';
import { openBrowser, serveBuilt } from './browser.ts';
import {
  answerAll,
  begin,
  choose,
  conclude,
  judgeAll,
  measure,
  setUp,
  sitDown,
  writeDown,
} from './trainee.ts';

let browser: Browser;
let built: Awaited<ReturnType<typeof serveBuilt>>;

beforeAll(async () => {
  [browser, built] = await Promise.all([openBrowser(), serveBuilt()]);
});
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 240_000 });

afterAll(async () => {
  await browser?.close();
  await built?.close();
});

const DESK = { width: 1280, height: 860 };
const PHONE = { width: 360, height: 740 };

/** Goes through every screen and calls `look` on each. */
async function throughEveryScreen(page: Page, look: (screen: string) => Promise<void>): Promise<void> {
  const press = (name: string | RegExp) =>
    page.getByRole('button', { name, exact: typeof name === 'string' }).click();
  await look('choose');
  await press('Cautions');
  await look('cautions');
  await press('Back');
  await begin(page, 'Harbour Mews, house 4');
  await look('choose a test');
  await press('Unit’s sheet');
  await look('unit’s sheet');
  await press('Back');
  await choose(page, 'No vehicle (A)');
  await look('set up');
  await setUp(page, { 'then wait, s': '1' });
  await look('predict');
  await answerAll(page);
  await look('how sure');
  await press(/^over 80 %/);
  await measure(
    page,
    { op: 'measure', quantity: 'voltage', between: ['outlet.L1', 'outlet.N'], tool: 'two-pole' },
    () => look('leads checked'),
  );
  await look('observe');
  await writeDown(page, undefined);
  await look('written down');
  await press('Judge');
  await look('judge');
  await judgeAll(page, 'not shown');
  await look('what was true');
  await press('Next test');
  await press('Put something right…');
  await look('put right');
  await press('Back to the tests');
  await press('Stop…');
  await look('stop');
  await press('Go on testing');
  await choose(page, 'Prove it dead');
  await setUp(page, { 'unit’s cover': 'open' });
  await answerAll(page);
  await press(/^under 67 %/);
  await page.getByRole('heading', { name: 'Stopped' }).waitFor();
  await look('harm');
  await press('Make safe and go on');
  await page.getByLabel('act', { exact: true }).selectOption({ label: 'prove dead at the outlet' });
  await press('Do it');
  await look('every pair');
  await press('Stop…');
  await page.getByLabel('reason').fill('enough');
  await press('Stop the work');
  await look('conclude');
  await page.getByRole('radio', { name: 'not fit for service', exact: true }).check();
  await page.getByLabel('cause', { exact: true }).selectOption({ label: 'Labels missing' });
  await page.getByRole('group', { name: /which tests are repeated/ }).waitFor();
  await look('conclude, with repeats');
  await conclude(page, {
    verdict: 'could not finish',
    cause: 'something, cause not known',
    next: 'isolate, lock off and label',
    tell: 'the client',
    leftOut: 'stopped',
  });
  await look('debrief');
  for (const folded of await page.getByRole('group').locator('summary').all()) await folded.click();
  await look('debrief, all laid open');
  await page.getByRole('link', { name: 'Sources' }).click();
  await page.getByRole('heading', { name: 'Sources', level: 1 }).waitFor();
  await look('sources');
}

describe.each([DESK, PHONE])('$width × $height', (size) => {
  test('no barrier on any screen, light or dark', async () => {
    const { page, complaints } = await sitDown(browser, built.url, size);
    const found: string[] = [];
    await throughEveryScreen(page, async (screen) => {
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        found.push(...(await barriersOn(page)).map((barrier) => `${screen}, ${colorScheme}: ${barrier}`));
      }
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      if (over > 0) found.push(`${screen}: ${over} px wider than the window`);
    });
    expect(found).toEqual([]);
    expect(complaints).toEqual([]);
    await page.context().close();
  });
});
