// Before the first test: looks for browsers, unpacks the one that comes inside a package once and not by two tests at a
// time, tries each, and says what the tests run in.

import type { TestProject } from 'vitest/node';
import type { Found } from './browsers.ts';
import { findBrowsers, launch } from './browsers.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** The browser that all tests run in, then those that run one story each. */
    readonly browsers: readonly (Found & { readonly name: string })[];
  }
}

const NAMES = { chromium: 'Chromium', firefox: 'Firefox' } as const;

export async function setup(project: TestProject): Promise<void> {
  const browsers = [];
  const found = await findBrowsers();
  for (const one of found) {
    const browser = await launch(one);
    browsers.push({ ...one, name: `${NAMES[one.engine]} ${browser.version()}` });
    await browser.close();
  }
  project.provide('browsers', browsers);
  const told = browsers.map(
    ({ name, path, isCarried }) => `${name} (${isCarried ? 'from a package' : path})`,
  );
  console.log(
    `All tests in ${told[0]}; the story of a first visit also in ${told.slice(1).join(', ') || 'no other'}.`,
  );
  if (!found.some(({ engine }) => engine === 'firefox'))
    console.log('No Firefox is installed: nothing is tried in it.');
}
