// What the tests of one file need of the world: a browser, and the built page served. Both are there from the first test
// to the last.

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { openBrowser } from './browsers.ts';
import { type Served, serveBuilt } from './serveBuilt.ts';

/** To be called once in a file; what it gives is there while tests run. */
export function openBuiltPage(): {
  readonly browser: Browser;
  readonly url: string;
  readonly plainUrl: string;
} {
  let open: readonly [Browser, Served] | null = null;
  const opened = (): readonly [Browser, Served] => {
    if (open === null) throw new Error('no test is running');
    return open;
  };
  beforeAll(async () => {
    open = await Promise.all([openBrowser(), serveBuilt()]);
  });
  afterAll(async () => {
    await open?.[0].close();
    await open?.[1].close();
  });
  return {
    get browser() {
      return opened()[0];
    },
    get url() {
      return opened()[1].url;
    },
    get plainUrl() {
      return opened()[1].plainUrl;
    },
  };
}
