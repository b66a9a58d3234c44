// A seed asks the same questions in every browser that is here and on the command line, to the byte: the key of a quiz
// of sixty, which has each question with its choices, its answer and how that is worked out.

import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { quizCsv } from '../../src/words/quizRows.ts';
import { launch } from './browsers.ts';
import { share } from './everyTest.ts';
import { serveBuilt } from './serveBuilt.ts';
import { button, sitDown } from './trainee.ts';

const SEEDS = share([1, 4711, 2_147_483_647], [4711]);
const COUNT = 60;

/** What the page last handed to the browser as a file. */
declare global {
  var lastFile: Promise<string> | undefined;
}

/** By its keys: what is put into a field at once, Firefox does not tell the page of. */
async function retype(page: Page, label: string, figure: number): Promise<void> {
  await page.getByLabel(label).focus();
  await page.keyboard.press('Control+A');
  await page.keyboard.type(String(figure));
}

const [first, ...more] = inject('browsers');
/** In the browser of all other tests the questions on the page are held against Node’s too. */
const others = more.filter(({ engine }) => engine !== first?.engine);
const some = others.length > 0 || first === undefined ? others : [first];

test.each(share(inject('browsers'), some))('$name', async (found) => {
  const [browser, built] = await Promise.all([launch(found), serveBuilt()]);
  try {
    const page = await sitDown(browser, built.url);
    await page.goto(`${built.url}#/questions?make=quiz`);
    await page.getByRole('heading', { name: 'Set a quiz' }).waitFor();
    await page.evaluate(() => {
      const make = URL.createObjectURL;
      URL.createObjectURL = (blob: Blob) => {
        globalThis.lastFile = blob.text();
        return make.call(URL, blob);
      };
    });
    await retype(page, 'how many', COUNT);
    for (const seed of SEEDS) {
      await retype(page, 'seed', seed);
      const title = await page.getByLabel('title').inputValue();
      const quiz = { format: 1, title, count: COUNT, seed, minutes: null, sure: true } as const;
      await page
        .getByLabel('seed')
        .and(page.locator(`[value="${seed}"]`))
        .waitFor();
      await button(page, /CSV/).click();
      expect(await page.evaluate(() => globalThis.lastFile), `seed ${seed}`).toBe(quizCsv(quiz));
    }
  } finally {
    await browser.close();
    await built.close();
  }
});
