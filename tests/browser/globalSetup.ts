// Before the first test: looks for browsers, unpacks the one that comes inside a package once and not by two tests at a
// time, tries each, and says what the tests run in. One beside the first that cannot be driven, as an old Firefox or one
// kept in a box of its own, is said and left out; in CI it fails the run, so that nothing is left out there unseen.

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
  // Beside each other: to start takes each of them longer than all else that is done before the first test.
  const tried = await Promise.allSettled(found.map(versionOf));
  for (const [i, one] of found.entries()) {
    const outcome = tried[i];
    if (outcome?.status === 'fulfilled')
      browsers.push({ ...one, name: `${NAMES[one.engine]} ${outcome.value}` });
    else if (i === 0 || process.env.CI) throw outcome?.reason;
    else
      console.log(
        `${one.path} is left out, since it cannot be driven: ${String(outcome?.reason).split('\n')[0]}`,
      );
  }
  project.provide('browsers', browsers);
  const told = browsers.map(
    ({ name, path, isCarried }) => `${name} (${isCarried ? 'from a package' : path})`,
  );
  console.log(
    `All tests in ${told[0]}; the story of a first visit also in ${told.slice(1).join(', ') || 'no other'}.`,
  );
  if (!browsers.some(({ engine }) => engine === 'firefox')) console.log('Nothing is tried in Firefox.');
}

/** Rejects where it does not start or opens no page. */
async function versionOf(one: Found): Promise<string> {
  const browser = await launch(one);
  try {
    await (await browser.newContext()).newPage();
    return browser.version();
  } finally {
    await browser.close();
  }
}
