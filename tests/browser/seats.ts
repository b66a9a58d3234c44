// Where people sit down one after another in one browser. Who gets up leaves the page open and everything of it empty, so
// that the next finds what a new browser would show: to open another page takes a process and reading all scripts anew,
// which is as much work as many a test is.

import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';

interface Seat {
  readonly page: Page;
  /** What cannot be changed in a page that is open, as text. */
  readonly kind: string;
  /** Where the page is served. */
  readonly url: string;
}

const taken = new Map<BrowserContext, Seat>();
const free = new Map<BrowserContext, Seat>();

/** Options that can be changed while the page is open. */
const kindOf = ({ viewport: _, colorScheme: __, ...rest }: BrowserContextOptions): string =>
  JSON.stringify(rest);

/** A page that was left in this browser and is as these options ask; null where there is none. */
export async function freeSeat(
  browser: Browser,
  url: string,
  options: BrowserContextOptions,
): Promise<Page | null> {
  const kind = kindOf(options);
  for (const [context, seat] of free) {
    if (context.browser() !== browser || seat.kind !== kind || seat.url !== url) continue;
    free.delete(context);
    if (seat.page.isClosed()) continue;
    taken.set(context, seat);
    const { viewport = null, colorScheme = null, reducedMotion = null } = options;
    if (viewport !== null) await seat.page.setViewportSize(viewport);
    await seat.page.emulateMedia({
      colorScheme,
      reducedMotion,
      media: null,
      forcedColors: null,
      contrast: null,
    });
    return seat.page;
  }
  return null;
}

/** Whoever sits here leaves nothing behind that outlasts the page: it can be emptied for the next. */
export function takeSeat(page: Page, url: string, options: BrowserContextOptions): void {
  taken.set(page.context(), { page, url, kind: kindOf(options) });
}

/** Everybody gets up: what can be emptied is, everything else in the browser is closed. */
export async function everybodyLeaves(browser: Browser): Promise<void> {
  for (const context of browser.contexts()) {
    if (free.has(context)) continue;
    const seat = taken.get(context);
    taken.delete(context);
    if (seat !== undefined && (await isEmptied(seat))) free.set(context, seat);
    else await context.close();
  }
}

/** Away from the page itself, to a picture of the same host; false where something is left all the same. */
async function isEmptied({ page, url }: Seat): Promise<boolean> {
  if (page.isClosed()) return false;
  const context = page.context();
  for (const other of context.pages()) if (other !== page) await other.close();
  await page.unrouteAll({ behavior: 'ignoreErrors' });
  await page.goto(`${url}icon.svg`);
  await page.mouse.move(0, 0);
  const session = await context.newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', { origin: new URL(url).origin, storageTypes: 'all' });
  await session.detach();
  return page.evaluate(async () => {
    sessionStorage.clear();
    window.name = '';
    return localStorage.length === 0 && (await indexedDB.databases()).length === 0;
  });
}
