// The debrief as somebody goes through it who took an outlet for dead from line to neutral alone: steps, jumps to what
// was sure and wrong, reads both drawings and the tables that say the same, by keyboard and on a phone, and prints it.

import type { Page } from 'playwright-core';
import { describe, expect, test, vi } from 'vitest';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { allowedActions } from '../../src/scenario/scenario.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { testTitle } from '../../src/words/testTitles.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { attemptBy } from '../helpers/trainee.ts';
import { barriersInBothThemes } from './axe.ts';
import { openBuiltPage } from './builtPage.ts';
import { share } from './everyTest.ts';
import { layAllOpen, layOpen } from './fold.ts';
import { textOfPages } from './pdf.ts';
import { slowDevice } from './slowDevice.ts';
import { openFile, sitDown } from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 240_000 });

/** Harbour Mews with its line pole welded, its outlet read from line to neutral alone while nothing is plugged in. */
function attemptText(): string {
  const { file } = scenarioNamed('harbour-mews');
  const scenarioFile = { ...(file as object), faults: [{ fault: 'line-pole-welded' }] };
  const read = readScenario(scenarioFile);
  if (!read.ok) throw new Error('the scenario does not read');
  const ids = ['papers', 'state-a', 'state-b', 'state-c'];
  return makeAttemptText(
    attemptBy(read.scenario, scenarioFile, {
      tests: () => ids.map((id) => actionNamed(id)).filter((action) => action !== undefined),
      answer: () => 'should-not',
      operations: ({ id }, steps) =>
        id === 'state-a'
          ? steps
              .filter(({ op }) => op !== 'prove-dead')
              .concat({
                op: 'measure',
                quantity: 'voltage',
                between: ['outlet.L1', 'outlet.N'],
                tool: 'two-pole',
              })
          : steps,
    }),
  );
}

/** The whole verification of the sound unit, with every answer wrong: as much as there can be on paper. */
const wholeAttemptText = (): string => {
  const { scenario, file } = scenarioNamed('harbour-mews');
  return makeAttemptText(attemptBy(scenario, file, { answer: () => 'should-not' }));
};
const ACTIONS_DUE = allowedActions(scenarioNamed('harbour-mews').scenario);
/** As letters come out of a page's file. */
const lettered = (text: string): string => text.normalize('NFKC');

async function openDebrief(look: Parameters<typeof sitDown>[2], text = attemptText()) {
  const page = await sitDown(opened.browser, opened.url, look);
  await openFile(page, 'attempt.json', text);
  await page.getByRole('heading', { name: 'Debrief', level: 1 }).waitFor();
  return page;
}

/** With the replay and what was sure and wrong laid open. */
async function openReplay(...asked: Parameters<typeof openDebrief>) {
  const page = await openDebrief(...asked);
  await layOpen(page, 'Sure, and wrong');
  await layOpen(page, 'Step by step');
  await page.getByRole('button', { name: 'Step on' }).waitFor();
  return page;
}

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const where = (page: Page) => page.getByRole('status').filter({ hasText: 'operation' });
const difference = (page: Page) => page.getByRole('region', { name: 'Difference' });

/** Goes to the step where the detector was put from line to neutral. */
async function toReading(page: Page): Promise<void> {
  await page.getByLabel('Go to test').selectOption({ label: '2 No vehicle (A) (sure and wrong)' });
  for (let at = await where(page).textContent(); !/L1–N at the outlet/.test(at ?? ''); ) {
    await button(page, 'Step on').click();
    await expect.poll(() => where(page).textContent()).not.toBe(at);
    at = await where(page).textContent();
  }
}

const rowOf = async (page: Page, table: string, name: string): Promise<string[]> =>
  page
    .getByRole('table', { name: table })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name, exact: true }) })
    .getByRole('cell')
    .allInnerTexts();

const volts = (text: string | undefined): number => Number(/[\d.]+/.exec(text ?? '')?.[0]);

test('steps through it, finds the pole, and is told which reading would have told it', async () => {
  const page = await openReplay({ width: 1280, height: 800 });
  await expect.poll(() => where(page).textContent()).toContain('as it was found');
  await toReading(page);
  const table = 'Voltages at the outlet, through a two-pole detector';
  await expect.poll(async () => volts((await rowOf(page, table, 'L1–N'))[0])).toBeLessThan(5);
  const [read, unit, twin] = await rowOf(page, table, 'L1–PE');
  expect(read).toBe('not measured');
  expect(volts(unit)).toBeGreaterThan(230);
  expect(volts(twin)).toBe(0);

  await expect.poll(() => difference(page).textContent()).toMatch(/1 of \d+: L1 pole.*closed.*Twin: open/s);
  await expect.poll(() => difference(page).textContent()).toContain('though its coil is not driven');
  await button(page, 'Next difference').click();
  await expect.poll(() => difference(page).textContent()).toMatch(/^2 of/);
  await button(page, 'Previous difference').click();
  await expect.poll(() => difference(page).textContent()).toMatch(/^1 of/);
  await difference(page).getByText('L1–PE at the outlet would have left 1').waitFor();

  // By keyboard, a step back and on; and to the start.
  const before = await where(page).textContent();
  await button(page, 'Step back').focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => where(page).textContent()).not.toBe(before);
  await button(page, 'Step on').focus();
  await page.keyboard.press('Space');
  await expect.poll(() => where(page).textContent()).toBe(before);
  await button(page, 'First').click();
  await expect.poll(() => where(page).textContent()).toContain('operation 0 of');
});

test('cards and keys jump to what was sure and wrong; play steps on', async () => {
  const page = await openReplay({ width: 1280, height: 800 });
  await button(page, 'Next sure-and-wrong').click();
  await expect.poll(() => where(page).textContent()).toContain('test 1');
  await button(page, 'Next sure-and-wrong').click();
  await expect.poll(() => where(page).textContent()).toContain('test 2');
  await button(page, /^show/).first().click();
  await expect.poll(() => where(page).textContent()).toMatch(/test \d/);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('replay-heading');

  await button(page, 'First').click();
  // Less motion: one step for each press.
  await button(page, 'Play').click();
  await expect.poll(() => where(page).textContent()).toContain('operation 1 of');
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  await button(page, 'Play').click();
  await where(page).getByText('operation 3 of').waitFor();
  await button(page, 'Stop playing').click();
  await button(page, 'Play').waitFor();
});

test('the working out can be cancelled and taken up again', async () => {
  const { scenario, file } = scenarioNamed('harbour-mews');
  const page = await sitDown(opened.browser, opened.url);
  const quick = await slowDevice(page, 6);
  await openFile(page, 'attempt.json', makeAttemptText(attemptBy(scenario, file)));
  await page.getByRole('heading', { name: 'Debrief', level: 1 }).waitFor();
  await layOpen(page, 'Step by step');
  await button(page, 'Cancel').click();
  await page.getByText('What each test told was not worked out.').waitFor();
  await quick();
  await button(page, 'Work it out').click();
  await page.getByText('Time line in figures: what each test told').click();
  await page.getByText('Left at the end: 1. nothing is wrong.').waitFor({ timeout: 120_000 });
  expect(await button(page, 'Cancel').count()).toBe(0);
});

test('the figures say what the time line says', async () => {
  const page = await openReplay({ width: 1280, height: 800 });
  await page.getByText('Time line in figures: what each test told').click();
  const table = page.getByRole('table', { name: 'Time line in figures' });
  expect(await table.getByRole('row').count()).toBe(5);
  await page.getByText(/^Left at the end: \d+/).waitFor();
  const left = await table.getByRole('row').nth(4).getByRole('cell').nth(4).textContent();
  expect(await page.getByText(/^Left at the end: \d+/).textContent()).toContain(`: ${left}.`);
});

const SIZES = [
  { width: 360, height: 740 },
  { width: 1280, height: 800 },
];

describe.each(share(SIZES, SIZES.slice(0, 1)))('$width × $height', (size) => {
  test('both drawings say what their table says; no barrier, light, dark, laid open', async () => {
    const page = await openReplay(size);
    await toReading(page);
    await layAllOpen(page);
    const cells = await page
      .getByRole('table', { name: 'Both drawings in words' })
      .getByRole('row')
      .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent ?? '')));
    for (const [column, name] of [
      [1, 'This unit, opened'],
      [2, 'Correct twin, same actions'],
    ] as const) {
      const said = cells.map((row) => row[column] ?? '').join('\n');
      const drawn = await page
        .getByRole('figure')
        .filter({ hasText: name })
        .locator('svg text:not(.lead-words)')
        .allTextContents();
      const FIXED =
        /^(L\d|N|PE|CP|PP|MET|V|a\.c\.|d\.c\.|1 kΩ|origin|unit, .*|control|connector|(un)?plugged( in)?|exposed metal|\d)$/;
      const figures = drawn.filter((text) => !FIXED.test(text));
      expect(figures.length).toBeGreaterThan(5);
      for (const text of figures) expect(said, `${name}: ${text}`).toContain(text);
    }
    expect(await barriersInBothThemes(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
  });
});

test('the first screen is whole on a phone: verdict, gates, three reasons, one goal, one button', async () => {
  const page = await openDebrief({ width: 360, height: 740 });
  await page.getByRole('heading', { name: '“Not fit for service”: right.' }).waitFor();
  const first = page.locator('.debrief-first');
  await first.getByText('Gates: both met.').waitFor();
  const reasons = await first.getByRole('listitem').allInnerTexts();
  expect(reasons).toHaveLength(3);
  // Test, line and figure.
  expect(reasons[1]).toMatch(/^No vehicle \(A\)\. “holds the pilot.*you wrote \+12\.\d+\u202fV/);
  await first.getByRole('heading', { name: 'One goal for next time' }).waitFor();
  await expect(first.locator('section').last().textContent()).resolves.toMatch(
    /Next time, in “[^”]+”: “[^”]+”/,
  );
  const bar = page.getByRole('region', { name: 'Next for you' });
  await bar.getByRole('button', { name: 'Practise this again' }).waitFor();
  const [end, top, bottom] = await page.evaluate(() =>
    ['.debrief-first', '.next-bar', '.next-bar'].map((name, i) => {
      const box = document.querySelector(name)?.getBoundingClientRect();
      return (i === 1 ? box?.top : box?.bottom) ?? Number.NaN;
    }),
  );
  expect(end).toBeLessThanOrEqual(top ?? 0);
  expect(bottom).toBe(740);
  expect(await page.evaluate(() => scrollY)).toBe(0);
  // One filled button on the whole screen.
  expect(await page.locator('.main:visible').allInnerTexts()).toEqual(['Practise this again']);
});

test('on paper: a summary of two pages, each with its title and number, and nothing to be pressed', async () => {
  const page = await openDebrief({ width: 1280, height: 800 }, wholeAttemptText());
  await page.emulateMedia({ media: 'print' });
  expect(await page.getByRole('button').count()).toBe(0);
  expect(await page.getByRole('table', { name: 'Both drawings in words' }).count()).toBe(0);
  const rules = await page.evaluate(() =>
    document.adoptedStyleSheets
      .flatMap(({ cssRules }) => [...cssRules])
      .map(({ cssText }) => cssText)
      .join('\n'),
  );
  expect(rules).toContain('counter(page) " of " counter(pages)');
  expect(rules).toContain('no certificate, no evidence of competence on real equipment');
  expect(rules).toContain('Harbour Mews');
  // A browser that knows no margin boxes drops them; the page's own drawing still has its title block.
  expect(rules).toContain('@bottom-left');

  const pages = textOfPages(await page.pdf({ preferCSSPageSize: true }));
  expect(pages).toHaveLength(2);
  titled(pages);
  const paper = pages.join(' ');
  expect(paper).toContain('What mattered most');
  expect(paper).toContain('One goal for next time');
  expect(paper).toMatch(/judgement.*\d of 30.*accepted \d+ of \d+/);
  for (const { id } of ACTIONS_DUE) expect(paper, id).toContain(lettered(testTitle(id)));
  expect(paper).not.toContain('Practise this again');
});

test('on paper on request: the full record, all laid open', async () => {
  const page = await openReplay({ width: 1280, height: 800 });
  // Nothing is printed here; the file below is what the printer would get.
  await page.evaluate(() => Object.assign(globalThis, { print: () => {} }));
  await button(page, 'Print the full record').click();
  await page.emulateMedia({ media: 'print' });
  await page.getByRole('table', { name: 'Both drawings in words' }).waitFor();
  expect(await page.getByText('why').last().isVisible()).toBe(true);
  expect(await page.getByRole('button').count()).toBe(0);
  const pages = textOfPages(await page.pdf({ preferCSSPageSize: true }));
  expect(pages.length).toBeGreaterThan(2);
  titled(pages);
  // What is folded on the screen.
  expect(pages.join(' ')).toContain('common practice, no source');
  // The next print is a summary again.
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  expect(textOfPages(await page.pdf({ preferCSSPageSize: true }))).toHaveLength(2);
});

/** Every page has its title and its number. */
function titled(pages: readonly string[]): void {
  for (const [i, text] of pages.entries()) {
    expect(text).toContain(`page ${i + 1} of ${pages.length}`);
    expect(text).toMatch(/Harbour Mews, house 4 · BS 7671.*bench time.*record [0-9A-F]{8}/u);
    expect(text).toContain('Training record: no certificate, no evidence of competence on real equipment');
  }
}
