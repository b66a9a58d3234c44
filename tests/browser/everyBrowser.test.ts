// One story in every browser that is here, Firefox by the WebDriver BiDi that it has itself: somebody who has never seen
// the page goes through the first run, does one job to its debrief, prints that, finds it in the record, and opens it
// once more without a network. All other tests are done in one browser.

import { Buffer } from 'node:buffer';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test, vi } from 'vitest';
import { verify } from '../../src/scenario/verify.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { launch } from './browsers.ts';
import { share } from './everyTest.ts';
import { throughFirstRun } from './firstRun.ts';
import { mouseAndKeyboard, putHands } from './hands.ts';
import { serveBuilt } from './serveBuilt.ts';
import { begin, conclude, doTest, isServed, sitDown } from './trainee.ts';

/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 400_000 });

/**
 * The first is the one that all other tests are done in, and goes without where there are others: one of another make,
 * and, where every test is asked for, the same make with a window too.
 */
const [first, ...more] = inject('browsers');
const others = share(
  more,
  more.filter(({ engine }, i) => engine !== first?.engine || (i === 0 && more.length === 1)),
);

describe.each(others.length > 0 || first === undefined ? others : [first])('$name', (found) => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch(found);
  });
  afterAll(async () => {
    await browser?.close();
  });

  test('first run, one job, its debrief on paper, the record, and all of it without a network', async () => {
    const served = await serveBuilt();
    const page = await sitDown(browser, served.url, { width: 360, height: 740, worker: true });
    putHands(page, mouseAndKeyboard);
    await isServed(page);
    await throughFirstRun(page);

    await page.setViewportSize({ width: 1280, height: 860 });
    await page.getByRole('link', { name: 'Jobs' }).click();
    const { scenario } = scenarioNamed('fen-barn');
    await begin(page, scenario.title);
    for (const { action } of verify(scenario).actions) await doTest(page, action);
    await page.getByRole('button', { name: 'Conclude…' }).click();
    await conclude(page, {
      verdict: 'fit',
      cause: 'nothing',
      next: 'hand-over',
      tell: 'client',
    });
    await page.getByRole('heading', { name: '“Fit for service”: right.' }).waitFor();
    await page.getByText('100 of 100').first().waitFor();
    const paper = await page.pdf({ preferCSSPageSize: true });
    expect(paper.subarray(0, 5)).toEqual(Buffer.from('%PDF-'));
    expect(paper.length).toBeGreaterThan(20_000);

    await served.close();
    await page.getByRole('link', { name: 'My record' }).click();
    await page.getByRole('heading', { name: '1 attempt', exact: true }).waitFor();
    await page.reload();
    await page.getByRole('heading', { name: '1 attempt', exact: true }).waitFor();
    await page.getByRole('button', { name: /^Debrief 1/ }).click();
    await page.getByRole('heading', { name: '“Fit for service”: right.' }).waitFor();
    await page.context().close();
  });
});
