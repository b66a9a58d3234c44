// The page is small enough for a phone in a van: what the first screen waits for, and all that can be loaded.

import { expect, test } from 'vitest';
import { openBrowser } from './browsers.ts';
import { serveBuilt } from './serveBuilt.ts';
import { scriptsLoaded, scriptsOfAll, sizeOf } from './size.ts';
import { sitDown } from './trainee.ts';

test('the first screen comes with little, and all of it is bounded', async () => {
  const [browser, built] = await Promise.all([openBrowser(), serveBuilt()]);
  try {
    const page = await sitDown(browser, built.url);
    await page.waitForLoadState('networkidle');
    const first = await scriptsLoaded(page);
    expect(first.length).toBeGreaterThan(0);
    expect(scriptsOfAll()).toEqual(expect.arrayContaining([...first]));
    expect(sizeOf(first).gzip).toBeLessThanOrEqual(95);
    // As an https host sends it to a browser of today; the gzip figure is printed by `npm run bench`.
    expect(sizeOf(scriptsOfAll()).brotli).toBeLessThanOrEqual(290);
  } finally {
    await browser.close();
    await built.close();
  }
});
