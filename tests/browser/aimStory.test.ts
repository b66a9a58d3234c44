// A job of one aim from the first screen to what comes next, at four sizes of window, light and dark: on the bench
// nothing is ever wider or higher than the window, elsewhere nothing wider, and the debrief has no barrier.

import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { rightConclusion } from '../../src/attempt/marks/worked.ts';
import { verify } from '../../src/scenario/verify.ts';
import { causeTitle } from '../../src/words/causeTitles.ts';
import { verdictTitle } from '../../src/words/verdicts.ts';
import { barriersOn } from './axe.ts';
import { openBuiltPage } from './builtPage.ts';
import { share } from './everyTest.ts';
import type { Hands } from './hands.ts';
import { finger, mouse } from './hands.ts';
import { conclude, doTest, inHand, sitDown } from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 240_000 });

/** What sticks out of the window, in px: across, and on the bench, where one step is one screen, down. */
const overhang = (page: Page) =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth, scrollHeight, clientHeight } = document.documentElement;
    const isBench = document.querySelector('.bench-screen') !== null;
    return { across: scrollWidth - clientWidth, down: isBench ? scrollHeight - clientHeight : 0 };
  });

/** The same hands, which look after each press whether all of the screen is in sight. */
function looking(hands: Hands): Hands {
  const look = async (page: Page, after: string) =>
    expect({ after, ...(await overhang(page)) }).toEqual({ after, across: 0, down: 0 });
  return {
    ...hands,
    press: async (what) => {
      const page = what.page();
      const name = `${what}`;
      await hands.press(what);
      await look(page, name);
    },
    tick: async (what) => {
      const page = what.page();
      const name = `${what}`;
      await hands.tick(what);
      await look(page, name);
    },
  };
}

const SIZES = [
  [360, 740, 'dark'],
  [1280, 800, 'light'],
  [740, 360, 'light'],
  [820, 1180, 'dark'],
] as const;

test.each(share(SIZES, SIZES.slice(0, 1)))(
  '%d × %d, %s: from home to what is next',
  async (width, height, colorScheme) => {
    const touch = width < 1000;
    const hands = looking(touch ? finger : mouse);
    const page = await sitDown(opened.browser, opened.url, { width, height, colorScheme, touch, hands });
    await hands.press(
      page.getByRole('link', { name: /^Does it offer the right current\? practice: not tried$/ }),
    );
    await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
    const { actions } = verify((await inHand(page)).scenario);
    for (const { action } of actions) await doTest(page, action);
    const { verdict, cause, next, tell } = rightConclusion(await inHand(page));
    await hands.press(page.getByRole('button', { name: 'Conclude…' }));
    await conclude(page, {
      verdict,
      cause: cause === null || cause === 'nothing' ? 'nothing is wrong' : causeTitle(cause),
      next,
      tell,
    });
    await page.getByRole('heading', { name: `“${verdictTitle(verdict)}”: right.` }).waitFor();
    // On the narrowest, dark, and on the widest, light; the widths between are no other page.
    if (width === 360 || width === 1280) expect(await barriersOn(page)).toEqual([]);
    const bar = page.getByRole('region', { name: 'Next for you' });
    await hands.press(bar.getByRole('link', { name: /\? \d minutes$/ }));
    await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
  },
);
