// The page is small enough for a phone in a van: what the first screen waits for, what a whole test on a bench has
// loaded with it, and each piece that comes later, when it is asked for. As any host sends it, by gzip.

import { expect, test } from 'vitest';
import { openBrowser } from './browsers.ts';
import { serveBuilt } from './serveBuilt.ts';
import { scriptsLoaded, scriptsOfAll, sizeOf } from './size.ts';
import { actionFor, doTest, sitDown } from './trainee.ts';

/** KiB by gzip. */
const FIRST_SCREEN = 90;
const BENCH_IN_ALL = 284;
const LATER_PIECE = 60;

test('the first screen comes with little, a bench with what is done there, all else when it is asked for', async () => {
  const [browser, built] = await Promise.all([openBrowser(), serveBuilt()]);
  try {
    const page = await sitDown(browser, built.url);
    await page.waitForLoadState('networkidle');
    const first = await scriptsLoaded(page);
    expect(first.length).toBeGreaterThan(0);
    expect(scriptsOfAll()).toEqual(expect.arrayContaining([...first]));
    expect(sizeOf(first).gzip).toBeLessThanOrEqual(FIRST_SCREEN);

    // From the first screen, not by the list of scenarios.
    await page.getByRole('link', { name: /^Is the design right\? practice/ }).click();
    await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
    await doTest(page, actionFor('papers'));
    await page.waitForLoadState('networkidle');
    const atBench = await scriptsLoaded(page);
    expect(atBench.length).toBeGreaterThan(first.length);
    expect(sizeOf(atBench).gzip).toBeLessThanOrEqual(BENCH_IN_ALL);

    const later = scriptsOfAll().filter((name) => !atBench.includes(name));
    // Among them what is opened where a line was wrong, the list of scenarios, files, and the conclusion with the debrief.
    for (const piece of ['told', 'jobs', 'files', 'conclusion'])
      expect(
        later.some((name) => name.startsWith(piece)),
        piece,
      ).toBe(true);
    for (const name of later) expect(sizeOf([name]).gzip, name).toBeLessThanOrEqual(LATER_PIECE);
  } finally {
    await browser.close();
    await built.close();
  }
});
