// Leads put on the drawing, by tap alone on a phone and by keyboard alone on a desk; drawing and lists say the same.
// Then a pilot's trace, its cursors moved by keys, and the amperes worked out from their times.

import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { barriersInBothThemes } from './axe.ts';
import { openBuiltPage } from './builtPage.ts';
import { act, answerAll, begin, choose, later, measure, setUp, sitDown } from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 240_000 });

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();
const terminal = (page: Page, name: string) => page.getByRole('button', { name: new RegExp(`^${name},`) });
const lead = (page: Page, label: string) => page.getByLabel(label, { exact: true });
/** Leads as the list has them, which is folded beside the drawing. */
const chosen = (page: Page, label: string) =>
  lead(page, label).evaluate((list) => (list as HTMLSelectElement).selectedOptions[0]?.textContent);

/** Isolated, locked and on to Observe. */
async function isolated(page: Page, title: string): Promise<void> {
  await begin(page, title);
  await choose(page, 'Insulation at the outlet, contactor open');
  await setUp(page, { supply: 'off, all poles, locked' });
  await answerAll(page);
  await press(page, /^fairly sure/);
  await act(page, 'check the instruments');
  await act(page, 'prove dead at the outlet');
  await later(page);
  await page.getByRole('radio', { name: 'insulation', exact: true }).check();
  await page.getByRole('radio', { name: '500', exact: true }).check();
}

/** Texts of the drawing that cover each other, as this browser's font draws them. */
const textsInTheWay = (page: Page) =>
  page.locator('.plan svg').evaluate((svg) => {
    const texts = [...svg.querySelectorAll('text')].map((text) => ({
      says: text.textContent,
      box: text.getBBox(),
    }));
    return texts.flatMap(({ says, box: a }, i) =>
      texts
        .slice(i + 1)
        .filter(
          ({ box: b }) =>
            a.x < b.x + b.width &&
            b.x < a.x + a.width &&
            a.y + 3 < b.y + b.height - 3 &&
            b.y + 3 < a.y + a.height - 3,
        )
        .map((other) => `“${says}” and “${other.says}”`),
    );
  });

test('by tap alone on a phone: two terminals joined to one lead, PE under the other', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  await isolated(page, 'Harbour Mews, house 4');
  // A dead test's stage is about the unit: that part is shown, its terminals behind the cover.
  await terminal(page, 'supply L1').click();
  await page.getByText('supply L1: behind the cover').waitFor();
  expect(await chosen(page, 'first lead')).toBe('choose');
  expect(await textsInTheWay(page)).toEqual([]);

  await page.getByRole('radio', { name: 'outlet', exact: true }).check();
  await terminal(page, 'outlet L1').click();
  await page.getByRole('radio', { name: 'join to first' }).check();
  await terminal(page, 'outlet N').click();
  await page.getByRole('radio', { name: 'second', exact: true }).check();
  await terminal(page, 'outlet CP').click();
  // Wrong place: a second tap takes it off, and it is the next to go on.
  await page.getByRole('button', { name: 'outlet CP, second lead' }).click();
  await terminal(page, 'outlet PE').click();
  expect(
    await page
      .getByRole('button', { name: /^outlet .*lead$/ })
      .evaluateAll((all) => all.map((b) => b.ariaLabel)),
  ).toEqual([
    'outlet L1, first lead',
    'outlet N, joined to the first lead',
    'outlet PE, second lead',
    'outlet CP, no lead',
    'outlet PP, no lead',
  ]);
  expect([
    await chosen(page, 'first lead'),
    await chosen(page, 'joined to it (1)'),
    await chosen(page, 'second lead'),
  ]).toEqual(['L1 at the outlet', 'N at the outlet', 'PE at the outlet']);
  expect(await textsInTheWay(page)).toEqual([]);
  expect(await barriersInBothThemes(page)).toEqual([]);

  await press(page, 'Check leads');
  await page.getByText('Your leads: L1 + N at the outlet, PE at the outlet, 500 V d.c.').waitFor();
  await press(page, /^Apply 500 V/);
  await page
    .getByRole('form', { name: 'Write down: insulation, 500 V, L1 + N–PE at the outlet', exact: true })
    .waitFor();
  await later(page);

  // What a list says, the drawing shows, and the part that it is in.
  await page.getByText('Leads, in a list').click();
  await lead(page, 'second lead').selectOption({ label: 'main earthing terminal' });
  await page.getByRole('button', { name: 'MET, second lead' }).waitFor();
  await page.getByText('to the outlet').waitFor();
});

const focused = (page: Page) => page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');

/** Presses a key until what has the focus is called so. */
async function until(page: Page, key: string, name: RegExp): Promise<void> {
  const passed: string[] = [];
  for (let i = 0; i < 40; i++) {
    const at = await focused(page);
    if (name.test(at)) return;
    passed.push(at);
    await page.keyboard.press(key);
  }
  throw new Error(`${key} comes to no ${name}: ${passed.join(' | ')}`);
}

test('by keyboard alone on a desk: one stop for all terminals, arrows, Enter, Escape', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await isolated(page, 'Foundry Yard, bay 3');
  await page.getByRole('button', { name: 'Stop…' }).focus();
  await page.keyboard.press('Tab');
  await until(page, 'Tab', /, no lead$/);
  await until(page, 'ArrowRight', /^outlet PE, no lead$/);
  await until(page, 'ArrowUp', /^outlet L1, no lead$/);
  await page.keyboard.press('Enter');
  expect(await focused(page)).toBe('outlet L1, first lead');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Space');
  expect(await focused(page)).toBe('outlet L2, second lead');
  await page.keyboard.press('Escape');
  expect(await focused(page)).toBe('outlet L2, no lead');
  await until(page, 'ArrowDown', /^outlet PE/);
  await page.keyboard.press('Enter');
  expect(await focused(page)).toBe('outlet PE, second lead');
  await page.getByRole('radio', { name: 'join to first' }).focus();
  await page.keyboard.press('Space');
  expect(await page.getByRole('radio', { name: 'join to first' }).isChecked()).toBe(true);
  await page.getByRole('button', { name: /^outlet PE/ }).focus();
  await until(page, 'ArrowUp', /^outlet L2/);
  await page.keyboard.press('Enter');
  expect(await focused(page)).toBe('outlet L2, joined to the first lead');
  expect(await textsInTheWay(page)).toEqual([]);
  expect(await barriersInBothThemes(page)).toEqual([]);
  await page.getByRole('button', { name: 'Check leads' }).focus();
  await page.keyboard.press('Enter');
  await page.getByText('Your leads: L1 + L2 at the outlet, PE at the outlet, 500 V d.c.').waitFor();
});

test('a pilot’s cursors by keyboard give the times, and the amperes follow from them', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await begin(page, 'Harbour Mews, house 4');
  await choose(page, 'Vehicle connected (B)');
  await setUp(page, { 'stand-in': 'B: connected, 2.74 kΩ', 'then wait, s': '4' });
  expect(await page.getByRole('slider').count()).toBe(0);
  await answerAll(page);
  await press(page, /^fairly sure/);
  expect(await page.getByRole('slider').count()).toBe(0);
  await measure(page, { op: 'measure', quantity: 'pilot' });
  const cursor = page.getByRole('slider', { name: 'cursor b' });
  const at = async () => Number.parseFloat((await cursor.getAttribute('aria-valuetext')) ?? '');
  await cursor.focus();
  const high = await at();
  await page.keyboard.press('PageUp');
  const period = await at();
  await page.keyboard.press('ArrowLeft');
  expect(await at()).toBeCloseTo(period - 0.01, 6);
  await page.keyboard.press('Shift+ArrowLeft');
  expect(await at()).toBeCloseTo(period - 0.011, 6);
  await page.keyboard.press('PageDown');
  expect(await at()).toBe(high);
  // 53.3 % is 32 A: 0.6 A to a percentage point (IEC 61851-1:2017 Table A.7); the instrument is ±0.2 % off.
  const duty = (100 * high) / period;
  expect(Math.abs(duty - 100 * (32 / 60))).toBeLessThan(0.4);
  const reading = page.getByRole('form', { name: /pilot against time/ });
  const [text = ''] = await reading.allInnerTexts();
  expect(text).not.toMatch(/\d\s?A\b|%(?!: work)/);
  expect(await barriersInBothThemes(page)).toEqual([]);

  await reading.getByLabel('high half').fill('9');
  await reading.getByRole('radio', { name: 'V', exact: true }).check();
  await reading.getByLabel(/^duty/).fill(duty.toFixed(1));
  await reading.getByLabel(/^so it offers/).fill(String(Math.round(0.6 * duty)));
  await press(page, /^Write 9/);
  await page
    .getByRole('region', { name: 'readings' })
    .getByText(/^9.V, duty 53\.\d.%, 32.A$/)
    .waitFor();
  expect(await cursor.isVisible()).toBe(false);
});
