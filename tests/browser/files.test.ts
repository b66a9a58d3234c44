// Files opened in the page: good ones are taken, bad ones are refused in words, every fault of theirs named, and the
// attempt in progress stays. A page that was closed in mid-attempt goes on where it was.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Measurement } from '../../src/bench/operation.ts';
import { openBuiltPage } from './builtPage.ts';
import {
  answerAll,
  begin,
  choose,
  inHand,
  measure,
  setUp,
  sitDown,
  toScenarios,
  writeDown,
} from './trainee.ts';

const ROOT = join(import.meta.dirname, '../..');
const opened = openBuiltPage();
const scenarioFile = () => JSON.parse(readFileSync(join(ROOT, 'scenarios/harbour-mews.json'), 'utf8'));

async function open(page: Page, name: string, text: string): Promise<void> {
  await toScenarios(page);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open a file…' }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

async function alertText(page: Page): Promise<string> {
  const alert = page.getByRole('alert');
  await alert.waitFor();
  return (await alert.allInnerTexts()).join(' ');
}

const MEASURED: Measurement = {
  op: 'measure',
  quantity: 'voltage',
  between: ['outlet.L1', 'outlet.PE'],
  tool: 'two-pole',
};

/** An attempt with one reading, taken and written down. */
async function halfWay(page: Page): Promise<void> {
  await begin(page, 'Harbour Mews, house 4');
  await choose(page, 'No vehicle (A)');
  await setUp(page, {});
  await answerAll(page);
  await page.getByRole('button', { name: /^would sign for it/ }).click();
  await measure(page, MEASURED);
  await writeDown(page, undefined);
  await page.getByRole('region', { name: 'readings' }).waitFor();
}

const toHome = (page: Page) => page.goto(`${new URL(page.url()).origin}/#/`);

test('bad files are refused in words and the attempt in progress stays', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await halfWay(page);
  await toHome(page);
  const goOn = page.getByRole('button', { name: 'Go on with Harbour Mews, house 4' });
  await goOn.waitFor();

  const twice = scenarioFile();
  twice.site.circuit.length = -4;
  twice.faults = [{ fault: 'no-such-fault' }];
  twice.unit.ratedCurrent = 'much';
  await open(page, 'bad.json', JSON.stringify(twice));
  const scenarioAlert = await alertText(page);
  expect(scenarioAlert).toContain('bad.json was not opened.');
  expect(scenarioAlert).toContain('The attempt in progress is unchanged.');
  expect(scenarioAlert).toContain('site.circuit.length');
  expect(scenarioAlert).toContain('unit.ratedCurrent');

  await open(page, 'newer.json', JSON.stringify({ ...scenarioFile(), format: 2 }));
  await page.getByText(/newer version \(format 2\)/).waitFor();

  const entries = [{ kind: 'guess', at: 0, wall: 0, hash: '' }];
  await open(page, 'attempt.json', JSON.stringify({ format: 1, engine: '1', scenario: twice, entries }));
  await page.getByText('attempt.json was not opened.').waitFor();
  const attemptAlert = await alertText(page);
  expect(attemptAlert).toContain('entries[0]');
  expect(attemptAlert).toContain('scenario.site.circuit.length');

  await open(page, 'broken.json', '{ "format": 1, ');
  await page.getByText('broken.json was not opened.').waitFor();
  expect(await alertText(page)).toContain('not JSON at line 1, column 16: the text ends here, a name');

  await open(page, 'large.json', ' '.repeat(1_000_001));
  await page.getByText('large.json was not opened.').waitFor();
  expect(await alertText(page)).toContain('larger than 1 MB');

  await toHome(page);
  await goOn.click();
  await page.getByRole('heading', { name: 'Measure' }).waitFor();
  await page.getByRole('region', { name: 'readings' }).waitFor();
});

test('a scenario from a file is offered and begun', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await open(page, 'mine.json', JSON.stringify({ ...scenarioFile(), id: 'mine', title: 'My own yard' }));
  await begin(page, 'My own yard');
  await page.getByRole('heading', { name: 'My own yard', level: 1 }).waitFor();
  expect((await inHand(page)).scenario.id).toBe('mine');
});

test('entries of one title are told apart, and each is chosen by itself', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await toScenarios(page);
  const card = (apart: string) => page.locator('label.card').filter({ hasText: apart });
  await page.getByText('Harbour Mews, house 4').first().waitFor();
  expect(await card('opened from').count()).toBe(0);
  const file = { ...scenarioFile(), brief: 'The same house, another day.' };
  await open(page, 'my-\u202ehouse.json', `\ufeff${JSON.stringify(file)}`);
  const mine = card('harbour-mews, opened from my-\\u202ehouse.json');
  await mine.waitFor();
  await open(page, 'other.json', JSON.stringify({ ...file, id: 'other' }));
  await card('other, opened from other.json').waitFor();
  const own = page.locator('label.card').filter({ has: page.getByText('harbour-mews', { exact: true }) });
  await own.getByRole('radio').check();
  expect(await mine.getByRole('radio').isChecked()).toBe(false);
  await mine.getByRole('radio').check();
  expect(await own.getByRole('radio').isChecked()).toBe(false);
  expect(await mine.textContent()).toContain('The same house, another day.');
});

test('of a hostile file no more is shown than anyone reads', async () => {
  const page = await sitDown(opened.browser, opened.url);
  const allowed = Array.from({ length: 80 }, (_, i) => `${'x'.repeat(5000)}${i}`);
  await open(page, 'hostile.json', JSON.stringify({ ...scenarioFile(), allowed }));
  const text = await alertText(page);
  expect(text).toContain('80 things are wrong with it');
  expect(text).toContain('and 30 more problems');
  expect(text).not.toContain('x'.repeat(61));
  expect(await page.getByRole('alert').getByRole('listitem').count()).toBe(51);
});

test('after a reload the attempt goes on at the same readings', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await halfWay(page);
  const reading = page.getByRole('region', { name: 'readings' });
  const before = await reading.allInnerTexts();
  const kept = await inHand(page);
  await page.reload();
  await page.getByRole('heading', { name: 'Measure' }).waitFor();
  expect(await reading.allInnerTexts()).toEqual(before);
  const { attempt, readings } = await inHand(page);
  expect({ attempt, readings }).toEqual({ attempt: kept.attempt, readings: kept.readings });

  await measure(page, MEASURED);
  const after = await inHand(page, kept.attempt.entries.length + 1);
  expect(after.attempt.entries.slice(0, -1)).toEqual(kept.attempt.entries);
});

test('an exported attempt opens again where it was left', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await halfWay(page);
  const { attempt } = await inHand(page);
  const other = await sitDown(opened.browser, opened.url);
  await open(other, 'attempt.json', JSON.stringify(attempt));
  await other.getByRole('heading', { name: 'Measure' }).waitFor();
  expect((await inHand(other)).attempt).toEqual(attempt);
});

test('an attempt that an earlier version wrote: concluded it is told, unfinished it is read and exported as it came', async () => {
  const earlier = JSON.parse(readFileSync(join(ROOT, 'tests/golden/hasty.json'), 'utf8'));
  const page = await sitDown(opened.browser, opened.url);
  await open(page, 'earlier.json', JSON.stringify(earlier));
  await page.getByRole('heading', { name: 'Debrief' }).waitFor();
  await toHome(page);

  const begun = { ...earlier, entries: earlier.entries.slice(0, -1) };
  // Another attempt than the one above, by its first entry.
  begun.entries[0] = { ...begun.entries[0], hash: 'another' };
  await open(page, 'begun.json', JSON.stringify(begun));
  await page.getByRole('heading', { name: 'Read only' }).waitFor();
  await page.getByText(/begun in an earlier version/).waitFor();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export attempt' }).click(),
  ]);
  expect(JSON.parse(readFileSync((await download.path()) ?? '', 'utf8'))).toEqual(begun);
  await page.getByRole('button', { name: 'To the scenarios' }).click();
  // It stays among what is kept, as it came, and can be put away.
  await page.getByRole('button', { name: /^Go on with / }).click();
  await page.getByRole('heading', { name: 'Read only' }).waitFor();
});
