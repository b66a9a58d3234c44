// What a test takes of a fluent person on a phone, counted in the page itself: a job of a single-phase site at practice,
// and on the first rung. What every test of every site takes is `npm run bench -- taps`; here is a share of them, those
// that teach the rows that the others go by and the longest.

import { expect, test, vi } from 'vitest';
import { openBuiltPage } from './builtPage.ts';
import { fluently } from './fluent.ts';
import { finger } from './hands.ts';
import { noteTaps, PHONE, takenBy } from './taps.ts';
import { actionFor, begin, sitDown } from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 480_000 });

/** The most taps that each takes, digits apart, in the order in which they are done; another aim is one more. */
const TAKES: Readonly<Record<1 | 2, Readonly<Record<string, number>>>> = {
  1: { 'state-a': 18, 'state-b': 20, 'state-c': 22 },
  2: { 'state-a': 25, 'state-b': 33, 'state-c': 40, 'c-to-b': 42 },
};

test.each([1, 2] as const)('rung %d: no test takes more taps than it may', async (rung) => {
  const page = await sitDown(opened.browser, opened.url, { ...PHONE, hands: finger, before: noteTaps });
  await begin(page, 'Harbour Mews, house 4', rung);
  for (const [id, most] of Object.entries(TAKES[rung])) {
    const { taps } = await takenBy(page, () => fluently(page, actionFor(id)));
    expect(taps.length, `${id}: ${taps.join(' · ')}`).toBeLessThanOrEqual(most);
  }
  await page.context().close();
});
