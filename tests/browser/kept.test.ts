// Nothing is lost: a page that was killed in the middle of anything goes on there, with the same answers and readings;
// two tabs never work on one attempt; a device that keeps nothing, or is full, says so and still exports.

import { readFileSync } from 'node:fs';
import type { BrowserContext, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { parseAttempt } from '../../src/attempt/record/file.ts';
import type { Measurement } from '../../src/bench/operation.ts';
import { barriersOn } from './axe.ts';
import { openBuiltPage } from './builtPage.ts';
import {
  answerAll,
  answerRest,
  begin,
  choose,
  inHand,
  keepNothing,
  keptHere,
  measure,
  openPage,
  setUp,
  sitDown,
  toJudge,
  toPredict,
} from './trainee.ts';

const opened = openBuiltPage();
const JOB = 'Harbour Mews, house 4';
const MEASURED: Measurement = {
  op: 'measure',
  quantity: 'voltage',
  between: ['outlet.L1', 'outlet.PE'],
  tool: 'two-pole',
};

const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' });
const heading = (page: Page, name: string) => page.getByRole('heading', { name, exact: true });

/** Waits until the device keeps a place that holds this text, then kills the page and goes on in another. */
async function killed(page: Page, text: string): Promise<Page> {
  const context = page.context();
  await expect.poll(async () => JSON.stringify((await keptHere(page))?.draft)).toContain(text);
  await page.close({ runBeforeUnload: false });
  return goOnIn(context);
}

async function goOnIn(context: BrowserContext): Promise<Page> {
  const page = await openPage(context, opened.url);
  await button(page, `Go on with ${JOB}`).click();
  return page;
}

/** Through set-up and lock of a test with a reading. */
async function lock(page: Page): Promise<void> {
  await choose(page, 'No vehicle (A)');
  await setUp(page, {});
  await answerAll(page);
  await button(page, /^would sign for it/).click();
  await heading(page, 'Measure').waitFor();
}

test('killed in the middle of a set-up and of a prediction', async () => {
  let page = await sitDown(opened.browser, opened.url);
  await begin(page, JOB);
  await choose(page, 'Vehicle connected (B)');
  await setUp(page, { 'stand-in': 'B: connected, 2.74 kΩ' });
  page = await killed(page, '"state":"B"');
  await heading(page, 'Set up').waitFor();
  await page.getByText('stand-in from unplugged to B: connected, 2.74 kΩ. The rest stays.').waitFor();
  const state = () => page.getByLabel(/^stand-in/).inputValue();
  expect(await state()).toBe('B');

  await setUp(page, { 'then wait, s': '4' });
  await toPredict(page);
  await button(page, 'should').click();
  await button(page, 'should not').click();
  const lines = page.getByRole('list', { name: 'Lines to predict' });
  const answered = (await lines.allInnerTexts()).join();
  expect(answered.match(/Change/g)).toHaveLength(2);
  page = await killed(page, '"should-not"');
  await heading(page, 'Predict').waitFor();
  const after = page.getByRole('list', { name: 'Lines to predict' });
  expect((await after.allInnerTexts()).join()).toBe(answered);
  await page.getByText(/^line 3 of/).waitFor();
  for (const _ of [1, 2]) await button(page, 'Back a line').click();
  await button(page, 'Back to the set-up').click();
  expect(await state()).toBe('B');
  expect(await page.getByLabel('then wait, s').inputValue()).toBe('4');
});

test('killed over a half-typed reading, a judgement, a reason to stop and a conclusion', async () => {
  let page = await sitDown(opened.browser, opened.url);
  await begin(page, JOB);
  await lock(page);
  await measure(page, MEASURED);
  const reading = page.getByRole('form', { name: /two-pole detector/ });
  const shown = (await reading.allInnerTexts()).join().split('\n').slice(0, 3);
  await reading.getByLabel('it shows').fill('23');
  await reading.getByRole('radio', { name: 'mV' }).check();
  const before = await inHand(page, 2);
  page = await killed(page, '"mV"');
  await heading(page, 'Measure').waitFor();
  const again = page.getByRole('form', { name: /two-pole detector/ });
  await again.waitFor();
  expect((await again.allInnerTexts()).join().split('\n').slice(0, 3)).toEqual(shown);
  expect(await again.getByLabel('it shows').inputValue()).toBe('23');
  expect(await again.getByRole('radio', { name: 'mV' }).isChecked()).toBe(true);
  expect((await inHand(page)).attempt).toEqual(before.attempt);

  // What was written down once does not come back into the field.
  await button(page, /^Write 23/).click();
  await button(page, /^Correct it/).click();
  expect(await again.getByLabel('it shows').inputValue()).toBe('');
  await button(page, 'Leave it').click();
  await page.getByRole('radio', { name: 'continuity' }).check();
  page = await killed(page, '"continuity"');
  expect(await page.getByRole('radio', { name: 'continuity' }).isChecked()).toBe(true);
  await toJudge(page);

  await page.getByRole('radio', { name: 'not shown', exact: true }).first().check();
  page = await killed(page, '"not-shown"');
  await heading(page, 'Judge').waitFor();
  expect(await page.getByRole('radio', { name: 'not shown', exact: true }).first().isChecked()).toBe(true);

  await button(page, 'Stop…').click();
  await page.getByLabel('reason').fill('the lid is lo');
  page = await killed(page, 'the lid is lo');
  await heading(page, 'Stop the work').waitFor();
  expect(await page.getByLabel('reason').inputValue()).toBe('the lid is lo');
  await button(page, 'Stop the work').click();
  await page.getByRole('radio', { name: 'could not finish', exact: true }).check();
  await page.getByLabel('because').fill('nobody was th');
  page = await killed(page, 'nobody was th');
  await heading(page, 'Conclude').waitFor();
  expect(await page.getByRole('radio', { name: 'could not finish' }).isChecked()).toBe(true);
  expect(await page.getByLabel('because').inputValue()).toBe('nobody was th');
});

test('left in the same moment as a press: what was pressed is there', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await begin(page, JOB);
  await choose(page, 'No vehicle (A)');
  await setUp(page, {});
  await toPredict(page);
  /** No time passes between the two: whatever keeps it must do so at once. */
  const pressAndReload = async (name: string | RegExp) => {
    await button(page, name).evaluate((key: HTMLButtonElement) => {
      key.click();
      location.reload();
    });
    await page.waitForEvent('load');
  };
  for (const line of [2, 3]) {
    await page.getByText(`line ${line - 1} of`).waitFor();
    await pressAndReload('should');
    await page.getByText(`line ${line} of`).waitFor();
  }
  await answerRest(page);
  // What acts on the bench is drawn later than it is done.
  await pressAndReload(/^would sign for it/);
  await heading(page, 'Measure').waitFor();
  expect((await inHand(page)).attempt.entries[0]).toMatchObject({ kind: 'prediction', sure: 'would-sign' });
});

test('the one attempt that an earlier version kept is the first of many', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await begin(page, JOB);
  await lock(page);
  const { attempt } = await inHand(page, 1);
  const context = await opened.browser.newContext({ serviceWorkers: 'block' });
  const bare = await context.newPage();
  await bare.goto(`${opened.url}icon.svg`);
  await bare.evaluate(
    (text) =>
      new Promise<void>((resolve) => {
        const request = indexedDB.open('charge-point-trainer', 1);
        request.onupgradeneeded = () => {
          request.result.createObjectStore('attempts').put(text, 'current');
        };
        request.onsuccess = () => {
          request.result.close();
          resolve();
        };
      }),
    JSON.stringify(attempt),
  );
  const after = await goOnIn(context);
  await heading(after, 'Measure').waitFor();
  expect((await inHand(after)).attempt).toEqual(attempt);
});

// At a safe address by the browser's locks, on plain http by asking each other.
test.each(['a safe address', 'plain http'])(
  'two tabs at %s: one holds the attempt; the other reads it, then takes it over',
  async (where) => {
    const url = where === 'plain http' ? opened.plainUrl : opened.url;
    const first = await sitDown(opened.browser, url);
    await begin(first, JOB);
    await lock(first);
    await inHand(first, 1);
    const second = await openPage(first.context(), url);
    await button(second, `Go on with ${JOB}`).click();
    await heading(second, 'Open in another tab').waitFor();
    if (url === opened.url) expect(await barriersOn(second)).toEqual([]);
    await button(second, 'Read only').click();
    await heading(second, 'Read only').waitFor();
    await second.getByText('observing: No vehicle (A)').waitFor();
    if (url === opened.url) expect(await barriersOn(second)).toEqual([]);
    expect(await button(second, 'Judge').count()).toBe(0);
    expect(await button(second, 'Stop…').count()).toBe(0);

    await button(second, 'Take it over').click();
    await heading(second, 'Measure').waitFor();
    await heading(first, 'Taken over by another tab').waitFor();
    await measure(second, MEASURED);
    expect((await inHand(second, 2)).readings).toHaveLength(1);
    await button(first, 'Take it back').click();
    await first.getByRole('form', { name: /two-pole detector/ }).waitFor();
    await heading(second, 'Taken over by another tab').waitFor();
  },
);

test('a browser that keeps nothing says so, and exports all the same', async () => {
  const page = await sitDown(opened.browser, opened.url, {
    before: keepNothing,
  });
  await page.getByText('Nothing is kept here.').waitFor();
  await begin(page, JOB);
  const alert = page.getByRole('alert').filter({ hasText: 'Not kept on this device.' });
  await alert.waitFor();
  await lock(page);
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    alert.getByRole('button', { name: 'Export attempt' }).click(),
  ]);
  const read = parseAttempt(readFileSync(await file.path(), 'utf8'));
  expect(read.ok && read.value.attempt.entries.map(({ kind }) => kind)).toEqual(['prediction']);
});

test('a full device says so while it is full; then nothing of what was done meanwhile is missing', async () => {
  const page = await sitDown(opened.browser, opened.url, {
    before: () => {
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = function (...args) {
        if ('isFull' in globalThis) throw new DOMException('no room', 'QuotaExceededError');
        return put.apply(this, args);
      };
    },
  });
  await begin(page, JOB);
  await inHand(page);
  await page.evaluate(() => Object.assign(globalThis, { isFull: true }));
  await lock(page);
  await page.getByRole('alert').filter({ hasText: 'No room is left on this device' }).waitFor();
  expect((await inHand(page)).attempt.entries).toEqual([]);
  await page.evaluate(() => Reflect.deleteProperty(globalThis, 'isFull'));
  await measure(page, MEASURED);
  expect((await inHand(page, 2)).attempt.entries.map(({ kind }) => kind)).toEqual([
    'prediction',
    'operation',
  ]);
  await expect.poll(() => page.getByRole('alert').count()).toBe(0);
});
