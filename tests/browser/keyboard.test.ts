// One test's card on a phone, from its choice to the next test, by keyboard alone: Tab and its kin, arrows, Enter,
// digits. Whoever works so always sees where the focus is.

import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openBuiltPage } from './builtPage.ts';
import { button, sitDown } from './trainee.ts';

const opened = openBuiltPage();
/** Name of what has the focus, and whether it can be seen: in the window and under no bar. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const at = document.activeElement as HTMLElement;
    const label = at.getAttribute('aria-label') ?? (at as HTMLInputElement).labels?.[0]?.textContent;
    const drawn = at.closest('label') ?? at;
    const box = drawn.getBoundingClientRect();
    return {
      name: (label ?? at.textContent ?? '').trim(),
      // Half a pixel of rounding on either side.
      inView: box.top >= -0.5 && box.bottom <= innerHeight + 0.5,
      onTop: drawn.contains(document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2)),
    };
  });

/** Presses Tab until the focus is on the thing of that name; every stop on the way must be in view. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  const passed: string[] = [];
  for (let i = 0; i < 60; i++) {
    await page.keyboard.press('Tab');
    const stop = await focused(page);
    passed.push(stop.name);
    expect(stop, `the focus on “${stop.name}” cannot be seen`).toMatchObject({ inView: true, onTop: true });
    if (name.test(stop.name)) return;
  }
  throw new Error(`no ${name} among: ${passed.join(' | ')}`);
}

/** Chooses in a list by typing the beginning of the option. */
const pick = (page: Page, typed: string) => page.keyboard.type(typed);

test('a test on a phone by keyboard alone', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  // What this device keeps is read first.
  await page.getByRole('link', { name: /^Whole jobs/ }).waitFor();
  await tabTo(page, /^Whole jobs/);
  await page.keyboard.press('Enter');
  await page.getByRole('radio', { name: /^Abbey Grange/ }).waitFor();
  // One stop for the whole list, at its first entry.
  await tabTo(page, /^Abbey Grange/);
  for (let i = 0; i < 60 && !/^Harbour Mews/.test((await focused(page)).name); i++) {
    await page.keyboard.press('ArrowDown');
    const card = await focused(page);
    expect(card, `not all of the chosen “${card.name}” is seen`).toMatchObject({ inView: true, onTop: true });
  }
  expect((await focused(page)).name).toMatch(/^Harbour Mews/);
  await tabTo(page, /^Begin$/);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Choose a test' }).waitFor();

  await tabTo(page, /^Does it offer the right current\?/);
  await page.keyboard.press('Enter');
  await tabTo(page, /^Vehicle connected \(B\)$/);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Set up' }).waitFor();
  await tabTo(page, /^All of it, in a list$/);
  await page.keyboard.press('Enter');
  await tabTo(page, /^stand-in/);
  await pick(page, 'B');
  await tabTo(page, /^then wait/);
  await page.keyboard.type('4');
  await page.keyboard.press('Enter');

  await expect.poll(async () => (await focused(page)).name).toBe('Predict');
  await tabTo(page, /^should$/);
  const lines = page.getByRole('list', { name: 'Lines to predict' }).getByRole('listitem');
  const figures = await lines.filter({ has: page.getByRole('textbox') }).count();
  const count = (await lines.count()) - figures;
  for (let i = 0; i < count; i++) await page.keyboard.press(String((i % 3) + 1));
  if (figures > 0) await page.keyboard.type('32');
  await tabTo(page, /^fairly sure/);
  await page.keyboard.press('Enter');

  await page.getByRole('heading', { name: 'Measure' }).waitFor();
  await tabTo(page, /^two-pole detector, voltage$/);
  for (let i = 0; i < 12 && !/^pilot/.test((await focused(page)).name); i++)
    await page.keyboard.press('ArrowRight');
  // It only looks at the circuit: there are no leads to check before.
  await tabTo(page, /^Read$/);
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await focused(page)).name).toBe('high half');
  await page.keyboard.type('9,02 V');
  expect(await page.getByRole('radio', { name: 'V', exact: true }).isChecked()).toBe(true);
  await page.keyboard.press('Enter');
  expect((await focused(page)).name).toBe('low half, V');
  // The page's own pad is for fingers: it would stand where the bar is.
  expect(await page.getByRole('region', { name: 'Key pad' }).isVisible()).toBe(false);
  await tabTo(page, /^Write /);
  await page.keyboard.press('Enter');
  await page.getByRole('region', { name: 'readings' }).getByText(/9\.02/).waitFor();
  // A press is answered before all that follows from it is drawn.
  await button(page, 'Judge').click({ trial: true });
  await tabTo(page, /^Judge$/);
  await page.keyboard.press('Enter');

  const judge = page.getByRole('form', { name: 'Judge' });
  await judge.waitFor();
  const groups = await judge.getByRole('group').count();
  for (let i = 0; i < groups; i++) {
    await tabTo(page, /^(it did|within)$/);
    await page.keyboard.press('Space');
  }
  expect(groups).toBeGreaterThan(0);
  // Arrows pass over answers: nothing ends before Enter.
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'What was true' }).waitFor();
  await tabTo(page, /^Next: /);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Set up', exact: true }).waitFor();
  await tabTo(page, /^Another test$/);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
  await tabTo(page, /^Papers$/);
  await page.keyboard.press('Enter');
  await page.getByRole('cell', { name: /9\.02.V/ }).waitFor();
});

test('what is read from the device late pushes no focus out of sight', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740, before: readLate });
  // The page waits no longer than the clock goes on.
  await page.clock.install();
  await page.clock.pauseAt(Date.now() + 60_000);
  await page.reload();
  for (const there of ['#/', '#/jobs']) {
    await page.evaluate((address) => location.assign(address), there);
    const waiting = page.locator('.marking');
    await waiting.waitFor({ state: 'attached' });
    for (let i = 0; i < 4; i++) await page.keyboard.press('Tab');
    await page.clock.runFor(1_000);
    await waiting.waitFor({ state: 'detached' });
    const isSeen = await page.evaluate(() => {
      const { top, bottom } = document.activeElement?.getBoundingClientRect() ?? { top: 0, bottom: 0 };
      return document.activeElement === document.body || (top >= 0 && bottom <= innerHeight);
    });
    expect(isSeen, there).toBe(true);
  }
});

/** For `before`: a device whose database opens slowly. */
function readLate(): void {
  const { addEventListener: listen } = EventTarget.prototype;
  IDBOpenDBRequest.prototype.addEventListener = function (type: string, told: unknown, options?: unknown) {
    const late = (event: Event) => setTimeout(() => (told as (event: Event) => void)(event), 60_000);
    listen.call(this, type, type === 'success' ? late : (told as EventListener), options as boolean);
  };
}
