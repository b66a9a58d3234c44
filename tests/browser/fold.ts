// What is folded below the first screen of a debrief, laid open as somebody would.

import type { Page } from 'playwright-core';

/** The part with this heading; one that stands open stays so. */
export async function layOpen(page: Page, title: string): Promise<void> {
  const part = page.locator('details', { has: page.locator('> summary', { hasText: title }) }).last();
  if ((await part.getAttribute('open')) === null) await part.locator('> summary').click();
}

export async function layAllOpen(page: Page): Promise<void> {
  const folded = page.locator('main details:not([open]) > summary:visible');
  while ((await folded.count()) > 0) await folded.first().click();
}
