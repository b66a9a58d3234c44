// Every screen and state, light and dark, on a desk and on a phone, without barriers; enlarged to 200 and 400 per cent
// and in the system's own colours with nothing lost. One person goes through them once; each is looked at in turn.

import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { barriersOn } from './axe.ts';
import { openBuiltPage } from './builtPage.ts';
import type { Look } from './everyScreen.ts';
import { press, throughAnAttempt, throughLeaving, throughReadingPages } from './everyScreen.ts';
import { EVERY_TEST, share } from './everyTest.ts';
import { lostInForcedColours, outOfSight } from './lost.ts';
import { answerAll, begin, choose, later, setUp, sitDown, toJudge, writeDown } from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 480_000 });
/** Longer than any look at a screen takes, ms. */
const STALLED = 60_000;

const DESK = { width: 1280, height: 800 };
const PHONE = { width: 360, height: 740 };
/** A window of 1280 × 1024 enlarged to 200 and to 400 per cent (WCAG 2.2, 1.4.4 and 1.4.10). */
const ENLARGED = [
  { width: 640, height: 512 },
  { width: 320, height: 256 },
];

/** A browser that no longer draws answers nothing, and playwright waits for it: this says where. */
async function answered<T>(where: string, looking: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const stalled = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`${where}: the browser does not answer`)), STALLED);
  });
  try {
    return await Promise.race([looking, stalled]);
  } finally {
    clearTimeout(timer);
  }
}

async function lookingAtAll(through: (page: Page, look: Look) => Promise<void>): Promise<string[]> {
  const page = await sitDown(opened.browser, opened.url, DESK);
  const found: string[] = [];
  const note = (where: string, what: readonly string[]) =>
    found.push(...what.map((barrier) => `${where}: ${barrier}`));
  let count = 0;
  const look = async (screen: string) => {
    count += 1;
    for (const [i, [name, size]] of Object.entries({ desk: DESK, phone: PHONE }).entries()) {
      await page.setViewportSize(size);
      // Where not all is asked for, turn about: one screen at a desk, the next one on a phone.
      if (EVERY_TEST || count % 2 === i) note(`${screen}, ${name}, light`, await barriersOn(page));
      note(`${screen}, ${name}`, await outOfSight(page));
    }
    // Colours are the same at every width: the dark ones are looked at once.
    await page.emulateMedia({ colorScheme: 'dark' });
    note(`${screen}, dark`, await barriersOn(page, 'colour'));
    await page.emulateMedia({ colorScheme: 'light' });
    // What fits the narrowest fits the wider one.
    for (const size of share(ENLARGED, ENLARGED.slice(-1))) {
      await page.setViewportSize(size);
      note(`${screen}, ${size.width} px`, await outOfSight(page));
    }
    await page.setViewportSize(DESK);
    // What a change of width sets off in the page is over by then.
    await page.waitForTimeout(50);
    note(`${screen}, forced colours`, await lostInForcedColours(page));
  };
  await through(page, (screen) => answered(screen, look(screen)));
  return found;
}

test('no barrier on the pages that are read', async () => {
  expect(await lookingAtAll(throughReadingPages)).toEqual([]);
});

test('no barrier in an attempt, from its choice to its debrief', async () => {
  expect(await lookingAtAll(throughAnAttempt)).toEqual([]);
});

test('no barrier when an assessment is left', async () => {
  expect(await lookingAtAll(throughLeaving)).toEqual([]);
});

/** What a screen reader is told from now on: every new text of a region that speaks. */
async function listen(page: Page): Promise<() => Promise<readonly string[]>> {
  await page.evaluate(() => {
    const heard: string[] = [];
    const speaking = '[role="status"], [role="alert"], [aria-live]';
    new MutationObserver((changes) => {
      const regions = new Set(
        changes.flatMap(({ target }) => {
          const element = target instanceof Element ? target : target.parentElement;
          return element?.closest(speaking) ?? [];
        }),
      );
      for (const region of regions) heard.push(region.textContent.trim());
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
    Object.assign(globalThis, { heardSince: () => heard.splice(0) });
  });
  return () =>
    page.evaluate(() => (globalThis as unknown as { heardSince: () => readonly string[] }).heardSince());
}

test('each reading is announced once, the same one twice as well, and never again', async () => {
  const page = await sitDown(opened.browser, opened.url, PHONE);
  await begin(page, 'Harbour Mews, house 4');
  await choose(page, 'No vehicle (A)');
  await setUp(page, {});
  await answerAll(page);
  await press(page, /^would sign for it/);
  await page.getByRole('heading', { name: 'Measure' }).waitFor();
  const heardSince = await listen(page);
  const apply = async () => {
    await heardSince();
    await press(page, /^Read$/);
    const heard: string[] = [];
    await expect.poll(async () => heard.push(...(await heardSince()))).toBeGreaterThan(0);
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn, 50))));
    return [...heard, ...(await heardSince())];
  };
  await page.getByRole('radio', { name: 'pilot against time' }).click();
  const first = await apply();
  await later(page);
  const second = await apply();
  expect(first).toHaveLength(1);
  expect(first[0]).toMatch(/^Reading 1: .*pilot.*[+−]1[12]\.\d+\sV/u);
  expect(second).toHaveLength(1);
  expect(second[0]).toMatch(/^Reading 2: .*pilot.*[+−]1[12]\.\d+\sV/u);
  await writeDown(page, undefined);
  // A line judged says nothing of the readings again.
  await toJudge(page);
  await page.getByRole('radio', { name: 'not shown', exact: true }).first().click();
  expect((await heardSince()).join()).not.toContain('Reading');
});
