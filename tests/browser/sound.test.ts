// The bench's sound: off at first, one switch, and then nothing before the lock and what moves after it, each with its line
// in words. Whether the page's policy is kept is looked at as on every page.

import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { openBuiltPage } from './builtPage.ts';
import { press } from './hands.ts';
import { answerAll, begin, choose, setUp, sitDown } from './trainee.ts';

const opened = openBuiltPage();
vi.setConfig({ testTimeout: 120_000 });

/** In place of the browser's own: counts the tones that are begun. */
function countTones(): void {
  const param = { setValueAtTime: () => {}, exponentialRampToValueAtTime: () => {} };
  const node = { connect: (to: unknown) => to };
  class Counting {
    currentTime = 0;
    destination = node;
    createGain = () => ({ ...node, gain: param });
    createOscillator = () => ({
      ...node,
      frequency: param,
      start: () => {
        const { dataset: counted } = document.documentElement;
        counted.tones = String(Number(counted.tones ?? 0) + 1);
      },
      stop: () => {},
    });
    resume = () => Promise.resolve();
  }
  Object.assign(globalThis, { AudioContext: Counting });
}

const tonesOn = (page: Page) => page.evaluate(() => Number(document.documentElement.dataset.tones ?? 0));

/** To the lock of a test in which the contactor closes; what was heard by then, and after it. */
async function heardAtTheLock(page: Page): Promise<readonly [number, number]> {
  await choose(page, 'Vehicle asks (C)');
  await setUp(page, { 'stand-in': 'C: asks, 1.3 kΩ added', 'then wait, s': '30' });
  await answerAll(page);
  const before = await tonesOn(page);
  await press(page.getByRole('button', { name: /^would sign for it/ }));
  await page.getByText('heard: contactor closes').first().waitFor();
  return [before, await tonesOn(page)];
}

test('off at first; switched on, the contactor is heard after the lock, and not before', async () => {
  const silent = await sitDown(opened.browser, opened.url, { before: countTones });
  await begin(silent, 'Harbour Mews, house 4');
  expect(await heardAtTheLock(silent)).toEqual([0, 0]);
  await silent.context().close();

  const page = await sitDown(opened.browser, opened.url, { before: countTones });
  await begin(page, 'Harbour Mews, house 4');
  await press(page.getByRole('button', { name: /^Unfold/ }));
  await press(page.getByRole('button', { name: 'Sound off' }));
  await page.getByRole('button', { name: 'Sound on', pressed: true }).waitFor();
  await press(page.getByRole('button', { name: 'Back', exact: true }));
  const [before] = await heardAtTheLock(page);
  expect(before).toBe(0);
  await expect.poll(() => tonesOn(page)).toBeGreaterThan(0);
});
