// The first minute and four more, as somebody who has never seen the page: three screens before any explaining, then a
// bench that is handed over, two tests on it and a third on another unit, whose line pole is welded. Taps are counted.

import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { later, measure, setUp, toJudge, toPredict, writeDown } from './trainee.ts';

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

async function answer(page: Page, ...answers: readonly RegExp[]): Promise<void> {
  for (const words of answers) await button(page, words).click();
  await button(page, /^would sign for it/).click();
  await page.getByRole('heading', { name: 'Measure' }).waitFor();
}

/** Each line's answer, in the order in which the page happens to ask. */
async function linesAsked(page: Page): Promise<readonly string[]> {
  await toPredict(page);
  const list = page.getByRole('list', { name: 'Lines to predict' });
  await list.waitFor();
  return list.getByRole('listitem').allInnerTexts();
}

/** From here on every tap is counted, and a choice from a list as two: on a phone it is opened first. */
const countTaps = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const root = document.documentElement;
    const count = (by: number) => {
      root.dataset.taps = String(Number(root.dataset.taps ?? 0) + by);
    };
    addEventListener('pointerdown', () => count(1), true);
    addEventListener('change', ({ target }) => target instanceof HTMLSelectElement && count(2), true);
  });
const tapsOn = (page: Page): Promise<number> =>
  page.evaluate(() => Number(document.documentElement.dataset.taps ?? 0));

/** Words that stand on the page. */
const wordsOn = async (page: Page): Promise<number> =>
  (await page.locator('.minute').allInnerTexts())
    .join(' ')
    .split(/\s+/u)
    .filter((word) => /\p{L}|\d/u.test(word)).length;

/** Of the first minute. */
const MOST_TAPS = 10;
const MOST_SECONDS = 60;
/** How long a tap takes, s, and how many words are read in a minute: slow, for somebody new to it. */
const TAP = 1.2;
const WORDS_A_MINUTE = 250;
/** Of the whole first run, the first minute with it; digits typed apart. */
const MOST_TAPS_IN_ALL = 60;

/** From the first screen to the first charge point, every word of it read. */
async function throughFirstMinute(page: Page): Promise<void> {
  await page.getByRole('link', { name: /^Start here/ }).click();
  await page.getByRole('heading', { name: 'Nothing is plugged in. Is it safe to touch the pins?' }).waitFor();
  let words = await wordsOn(page);
  await button(page, /^safe$/).click();
  await page.getByRole('heading', { name: 'Would you touch them?' }).waitFor();
  words += await wordsOn(page);
  const [, first] =
    /L to N shows (\d+)\sV/u.exec((await page.getByRole('status').allInnerTexts()).join(' ')) ?? [];
  expect(Number(first)).toBeLessThan(5);
  await button(page, 'another pair first').click();
  await page.getByRole('heading', { name: 'One pair proves nothing.' }).waitFor();
  words += await wordsOn(page);
  const [, second] =
    /L to PE shows (\d+)\sV/u.exec((await page.getByRole('status').allInnerTexts()).join(' ')) ?? [];
  expect(Number(second)).toBeGreaterThan(200);
  await button(page, /^First charge point/).click();
  const taps = await tapsOn(page);
  expect(taps).toBeGreaterThan(3);
  expect(taps).toBeLessThanOrEqual(MOST_TAPS);
  expect(words).toBeGreaterThan(60);
  expect(taps * TAP + (words / WORDS_A_MINUTE) * 60).toBeLessThanOrEqual(MOST_SECONDS);
}

const SHOULD = /^should$/;
const SHOULD_NOT = /^should not$/;

/** From nothing known, on the first screen, to a welded pole, and on to a whole job. */
export async function throughFirstRun(page: Page): Promise<void> {
  await countTaps(page);
  await throughFirstMinute(page);

  // The bench stands in B: two lines, one reading.
  await page.getByRole('heading', { name: 'Vehicle connected (B)' }).waitFor();
  const asked = await linesAsked(page);
  expect(asked).toHaveLength(2);
  await answer(page, ...asked.map((text) => (text.includes('more than the least') ? SHOULD_NOT : SHOULD)));
  await measure(page, { op: 'measure', quantity: 'pilot' });
  await writeDown(page, undefined);
  // The unit does each as it was answered.
  await toJudge(page);
  for (const text of asked) {
    const did = text.includes('more than the least') ? 'it did not' : 'it did';
    const [, words = ''] = /(?:unit|circuit) (.+)$/s.exec(text.split('\n')[0] ?? '') ?? [];
    await page
      .getByRole('group', { name: words.trim() })
      .getByRole('radio', { name: did, exact: true })
      .click();
  }
  await button(page, 'Finish test').click();
  await button(page, 'Next test').click();

  // State C: the contactor is heard.
  await page.getByRole('heading', { name: 'Vehicle asks (C)' }).waitFor();
  await setUp(page, { 'stand-in': 'C: asks, 1.3 kΩ added', 'then wait, s': '3' });
  await answer(
    page,
    ...(await linesAsked(page)).map((text) => (text.includes('between') ? SHOULD_NOT : SHOULD)),
  );
  await page.getByText('heard: contactor closes').first().waitFor();
  await toJudge(page);
  for (const line of await page.getByRole('radio', { name: 'not shown', exact: true }).all())
    await line.click();
  await button(page, 'Finish test').click();
  await button(page, 'Next test').click();

  // Another unit, in A: next to nothing between line and neutral, all of it to PE.
  await page.getByRole('heading', { name: 'No vehicle (A)' }).waitFor();
  await answer(
    page,
    ...(await linesAsked(page)).map((text) => (text.includes('pole') ? /^can’t tell/ : SHOULD_NOT)),
  );
  const shown = async (second: 'outlet.N' | 'outlet.PE') => {
    await measure(page, {
      op: 'measure',
      quantity: 'voltage',
      tool: 'two-pole',
      between: ['outlet.L1', second],
    });
    const [text = ''] = await page.getByRole('form', { name: /^Write down/ }).allInnerTexts();
    await later(page);
    // What was left for later stands above it.
    return Number([...text.matchAll(/(\d+)\s?V/gu)].at(-1)?.[1]);
  };
  expect(await shown('outlet.N')).toBeLessThan(5);
  expect(await shown('outlet.PE')).toBeGreaterThan(230);
  await toJudge(page);
  await page.getByRole('radio', { name: 'it did', exact: true }).click();
  await button(page, 'Finish test').click();
  await button(page, 'Next test').click();

  await page.getByRole('heading', { name: 'What the third test showed' }).waitFor();
  expect(await tapsOn(page)).toBeLessThanOrEqual(MOST_TAPS_IN_ALL);
  await button(page, 'Now a whole job, from isolation').click();
  await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
  await expect.poll(() => page.getByText('Harbour Mews, house 4').count()).toBeGreaterThan(0);
}
