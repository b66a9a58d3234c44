// What somebody loses who enlarges the page or lets the system set its colours: lettering cut off or beyond the edge,
// lines and grounds that vanish.

import type { Page } from 'playwright-core';

/** What is wider than the window or cut off at it, one line each. A box that scrolls by itself loses nothing. */
export const outOfSight = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const over = document.documentElement.scrollWidth - innerWidth;
    if (over > 0) found.push(`page ${over} px wider than the window`);
    const scrolls = (element: Element): boolean => {
      for (let at = element.parentElement; at !== null && at !== document.body; at = at.parentElement)
        if (/auto|scroll/.test(getComputedStyle(at).overflowX) && at.tagName !== 'DIALOG') return true;
      return false;
    };
    for (const element of document.body.querySelectorAll('*')) {
      if (element.closest('.unseen, select') !== null || !element.checkVisibility()) continue;
      const box = element.getBoundingClientRect();
      if (box.width === 0 || box.height === 0) continue;
      const name = `<${element.tagName.toLowerCase()} class="${element.getAttribute('class') ?? ''}"> ${element.textContent.trim().slice(0, 40)}`;
      if ((box.right > innerWidth + 1 || box.left < -1) && !scrolls(element))
        found.push(`beyond the edge: ${name}`);
      const style = getComputedStyle(element);
      if (
        element instanceof HTMLElement &&
        ((/hidden|clip/.test(style.overflowX) && element.scrollWidth > element.clientWidth + 1) ||
          (/hidden|clip/.test(style.overflowY) && element.scrollHeight > element.clientHeight + 1))
      )
        found.push(`cut off: ${name}`);
    }
    return found;
  });

/**
 * Lines, lettering and dark grounds that somebody sees in the page's own colours and not in the system's. A ground
 * that is gone has a border in its place, or is missed.
 */
export async function lostInForcedColours(page: Page): Promise<string[]> {
  const seen = () =>
    page.evaluate(() => {
      const channels = (colour: string): readonly number[] =>
        (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map((part) => Number(part) / 255);
      const light = (colour: string): number =>
        [0.2126, 0.7152, 0.0722].reduce((sum, share, i) => {
          const c = channels(colour)[i] ?? 0;
          return sum + share * (c <= 0.03928 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
        }, 0);
      const paper = light(getComputedStyle(document.documentElement).backgroundColor);
      /** Three to one, as WCAG 2.2, 1.4.11 has it for what must be told apart. */
      const stands = (colour: string): boolean => {
        if (colour === 'none' || /^rgba.*, 0\)$/.test(colour) || colour === '') return false;
        const [low = 0, high = 0] = [light(colour), paper].toSorted((x, y) => x - y);
        return (high + 0.05) / (low + 0.05) >= 3;
      };
      // The same elements both times, whatever else the page does in between.
      const kept = globalThis as unknown as { lookedAt?: readonly Element[] };
      kept.lookedAt ??= [...document.body.querySelectorAll('*')];
      return kept.lookedAt.map((element) => {
        const name = `<${element.tagName.toLowerCase()} class="${element.getAttribute('class') ?? ''}"> ${element.textContent.trim().slice(0, 40)}`;
        const gone = !element.isConnected;
        if (!element.checkVisibility()) return { name, gone, lines: false, ground: false, border: false };
        const style = getComputedStyle(element);
        const border =
          Number.parseFloat(style.borderTopWidth) > 0 &&
          style.borderTopStyle !== 'none' &&
          stands(style.borderTopColor);
        if (element instanceof SVGElement)
          return { name, gone, lines: stands(style.stroke) || stands(style.fill), ground: false, border };
        return { name, gone, lines: border, ground: stands(style.backgroundColor), border };
      });
    });
  const before = await seen();
  await page.emulateMedia({ forcedColors: 'active' });
  const after = await seen();
  await page.emulateMedia({ forcedColors: null });
  await page.evaluate(() => Reflect.deleteProperty(globalThis, 'lookedAt'));
  return before.flatMap(({ name, lines, ground }, i) => {
    const now = after[i];
    if (now?.gone !== false) return [];
    if (lines && !now.lines) return [`line lost: ${name}`];
    return ground && !now.ground && !now.border ? [`ground lost: ${name}`] : [];
  });
}
