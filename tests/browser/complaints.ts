// What no page may do in any test unnoticed: throw, leave a promise rejected, write an error to its console, fail to load
// a file of its own, ask another host. A test that brings such a thing about on purpose says so beforehand.

import type { Page } from 'playwright-core';

let heard: string[] = [];
let expected: RegExp[] = [];
let allowed: RegExp[] = [];

/** Notes what this page does wrong from now on; `url`: where everything is that it may ask for. */
export function listenTo(page: Page, url: string): void {
  page.on('console', (message) => {
    if (message.type() === 'error') heard.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => heard.push(`error: ${error.message}`));
  page.on('request', (request) => {
    if (!request.url().startsWith(url) && !/^(data|blob):/.test(request.url()))
      heard.push(`asked another host: ${request.url()}`);
  });
}

/** The test at hand brings this about, once or more. */
export const expectComplaint = (pattern: RegExp): void => {
  expected.push(pattern);
};

/** The test at hand may bring this about: it depends on what was drawn at that moment. */
export const allowComplaint = (pattern: RegExp): void => {
  allowed.push(pattern);
};

/** Throws what the pages of a test did wrong, or failed to do that it expected; the next test begins with neither. */
export function settleComplaints(): void {
  const wrong = heard.filter(
    (complaint) => ![...expected, ...allowed].some((pattern) => pattern.test(complaint)),
  );
  const missing = expected.filter((pattern) => !heard.some((complaint) => pattern.test(complaint)));
  heard = [];
  expected = [];
  allowed = [];
  if (wrong.length > 0) throw new Error(`the page complained:\n${wrong.join('\n')}`);
  if (missing.length > 0) throw new Error(`the page did not complain of ${missing.join(', ')}`);
}
