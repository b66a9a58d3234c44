// What the tests of one file need of the world: a browser, and the built page served. Both are there from the first test
// to the last. They are those of the file before, where the same process has run one: to start them takes longer than
// many a test. What a test left open in the browser is closed or emptied, and every person sits down with an empty one.

import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll } from 'vitest';
import { openBrowser } from './browsers.ts';
import { everybodyLeaves } from './seats.ts';
import { type Served, serveBuilt } from './serveBuilt.ts';

type Open = readonly [Browser, Served];

/** End with the process. */
let kept: Open | null = null;

/** To be called once in a file; what it gives is there while tests run. */
export function openBuiltPage(): {
  readonly browser: Browser;
  readonly url: string;
  readonly plainUrl: string;
} {
  let open: Open | null = null;
  const opened = (): Open => {
    if (open === null) throw new Error('no test is running');
    return open;
  };
  beforeAll(async () => {
    // One that a test has brought down is not used again.
    if (kept !== null && !kept[0].isConnected()) {
      await kept[1].close();
      kept = null;
    }
    kept ??= await Promise.all([openBrowser(), serveBuilt()]);
    open = kept;
  });
  afterEach(async () => {
    if (open?.[0].isConnected()) await everybodyLeaves(open[0]);
  });
  afterAll(() => {
    open = null;
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
