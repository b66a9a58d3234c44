// What else is dropped where attempts are collected: fifty megabytes, a bomb, a path that climbs, a folder, a class and its
// giving-out at once. Each is told by name, nothing is lost, and a tutor can stop it. Then gates set aside, on screen,
// in the table and in the file that is saved. And where a browser has nothing to seal with, that is said in words.

import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { zipSync } from 'fflate';
import type { Download, Page } from 'playwright-core';
import { afterAll, expect, test } from 'vitest';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { givingText } from '../../src/desk/giving.ts';
import { handedIn, labelled, labelOf } from '../desk/handedIn.ts';
import { givingOf, readGiving } from '../desk/helpers.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { openBuiltPage } from './builtPage.ts';
import { button, sitDown } from './trainee.ts';

const opened = openBuiltPage();
const DESK = { width: 1280, height: 800 };

const own = readGiving(givingOf([scenarioNamed('find-dyers-row').file as object]));
const worked = handedIn(own, 30);
const folder = mkdtempSync(join(tmpdir(), 'dropped-'));
afterAll(() => rmSync(folder, { recursive: true }));

function put(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, content);
  return path;
}

const bytes = (text: string) => new TextEncoder().encode(text);
const ownCopy = put('own copy.json', givingText(own.giving));

const files = (page: Page) => page.locator('input[type=file][multiple]');
const table = (page: Page) => page.getByRole('table', { name: /^The class/ });

async function collecting(page: Page, ...paths: readonly string[]): Promise<void> {
  await files(page).setInputFiles([...paths]);
  await page.getByRole('list', { name: 'What came' }).waitFor();
}

/** Dropped as by a hand where a browser can be told to; else chosen. */
async function handFolder(page: Page, path: string): Promise<void> {
  if (opened.browser.browserType().name() !== 'chromium')
    return page.locator('input[type=file][webkitdirectory]').setInputFiles(path);
  const session = await page.context().newCDPSession(page);
  const box = await page.locator('.drop').boundingBox();
  if (box === null) throw new Error('nothing to drop on');
  const data = { items: [], files: [path], dragOperationsMask: 1 };
  for (const type of ['dragEnter', 'dragOver', 'drop'] as const)
    await session.send('Input.dispatchDragEvent', { type, x: box.x + 40, y: box.y + 20, data });
}

async function atCollect(): Promise<Page> {
  const page = await sitDown(opened.browser, opened.url, DESK);
  await page.goto(`${opened.url}#/collect`);
  await page.getByRole('heading', { name: /^Drop files/ }).waitFor();
  return page;
}

test('what is no attempt is told by name, what is one beside it is marked, and a folder is read to its depth', async () => {
  const page = await atCollect();
  const [ash, elm, oak, fir] = worked.map(makeAttemptText) as [string, string, string, string];
  await collecting(
    page,
    ownCopy,
    put('large.json', `{"entries":["${'x'.repeat(50_000_000)}"]}`),
    put('bomb.zip', zipSync({ 'a.json': new Uint8Array(900_000) }, { level: 9 })),
    put('climbs.zip', zipSync({ '../../etc/passwd.json': bytes(ash), 'fine/a.json': bytes(elm) })),
    put('newer.json', JSON.stringify({ ...JSON.parse(ash), format: 3 })),
    put('none.zip', 'no zip'),
  );
  const said = (file: string) => table(page).getByRole('row', { name: new RegExp(file) });
  await expect.poll(() => said('large.json').textContent()).toMatch(/larger than 1 MB/);
  expect(await said('bomb.zip').textContent()).toMatch(/packed more than a hundredfold/);
  expect(await said('etc/passwd.json').textContent()).toMatch(/leads out of the zip/);
  expect(await said('newer.json').textContent()).toMatch(/newer version \(format 3\)/);
  expect(await said('none.zip').textContent()).toMatch(/no zip that can be read/);
  expect(await said('elm-02').textContent()).toMatch(/Dyers’ Row/);
  put('class/oak/submitted/attempt.json', oak);
  put('class/fir/attempt.json', fir);
  put('class/fir/photo.jpg', 'no attempt');
  await handFolder(page, join(folder, 'class'));
  await said('oak-03').waitFor();
  await said('fir-04').waitFor();
  await expect.poll(() => said('photo.jpg').textContent()).toMatch(/a file that ends in .json is expected/);
});

const MANY = 900;

test('hundreds at once move on and can be stopped; the giving-out among them decides, and what was read stands', async () => {
  const page = await atCollect();
  // So many that no machine is through with them before a hand is at the button.
  const many = Array.from({ length: MANY }, (_, i) =>
    makeAttemptText(
      i < 30 ? (worked[i] as (typeof worked)[number]) : labelled(worked[i % 30] as never, labelOf(i)),
    ),
  );
  const paths = many.map((text, i) => put(`many/${i}.json`, text));
  await files(page).setInputFiles([...paths, ownCopy]);
  await page.getByText(new RegExp(`^Replaying [1-9]\\d* of ${MANY}`)).waitFor();
  await button(page, 'Cancel').click();
  await page.getByText('stopped by you').waitFor();
  await expect.poll(() => table(page).getByRole('row').count()).toBeGreaterThan(2);
  expect(await table(page).textContent()).not.toMatch(/no giving-out|Not marked/);
});

test('the verdict’s gate is set aside with its reason: in the table, in the CSV, in the saved file, and taken back', async () => {
  const page = await atCollect();
  const zip = put(
    '30.zip',
    zipSync(Object.fromEntries(worked.map((one, i) => [`${i}.json`, bytes(makeAttemptText(one))]))),
  );
  await collecting(page, ownCopy, zip);
  const row = table(page)
    .getByRole('row', { name: /called fit, not shown to be sound/ })
    .first();
  await row.getByRole('link').first().click();
  const reason = page.getByLabel(/^set this gate aside, because \(called fit/);
  await reason.fill('agreed: the sheet was wrong');
  await button(page, 'Set aside').first().click();
  await page.getByText('The gate is set aside.').waitFor();
  await page.getByRole('link', { name: 'The class' }).click();
  await table(page).getByText('(set aside: agreed: the sheet was wrong)').waitFor();
  const saved = async (name: RegExp | string) => {
    const [download] = await Promise.all([page.waitForEvent('download'), button(page, name).click()]);
    return readFileSync((await (download as Download).path()) ?? '', 'utf8');
  };
  const rows = parse(await saved('Save as CSV'), { bom: true, columns: true }) as Record<string, string>[];
  expect(rows.filter(({ gates }) => gates?.includes('set aside: agreed'))).toHaveLength(1);
  const { tutor } = readGiving(JSON.parse(await saved(/^Save with comments/))).giving;
  expect(Object.values(tutor?.notes ?? {})).toEqual([
    { comment: '', setAside: [{ gate: 'verdict', reason: 'agreed: the sheet was wrong' }] },
  ]);
  await row.getByRole('link').first().click();
  await button(page, 'Let it count again').click();
  await page.getByText('The gate counts again.').waitFor();
});

test('a set stands by its rule, learner by learner, with what was not handed in', async () => {
  const page = await atCollect();
  const jobs = ['find-dyers-row', 'fen-barn'].map((id) => scenarioNamed(id).file as object);
  const set = readGiving(givingOf(jobs, { rule: { pass: 1, noCritical: true, noUnsound: true } }));
  const two = handedIn(set, 6).map((one) => put(`set/${one.trainee}.json`, makeAttemptText(one)));
  await collecting(page, put('set.json', givingText(set.giving)), ...two);
  const standing = page.getByRole('region', { name: 'The set heron-42' }).getByRole('listitem');
  await expect.poll(() => standing.count()).toBe(6);
  for (const text of await standing.allTextContents())
    expect(text).toMatch(/: [01] of 2 passed, 1 not handed in, .*: (met|not met)$/);
});

test('on plain http giving out and opening say that there is no seal; a link too long offers the file', async () => {
  const page = await sitDown(opened.browser, opened.plainUrl, DESK);
  await page.goto(`${opened.plainUrl}#/give`);
  await page.getByText('The page came by plain http').waitFor();
  expect(await page.getByLabel(/^passphrase/).count()).toBe(0);
  await page.getByLabel('a job that comes with the page').selectOption('fen-barn');
  const job = JSON.parse(
    readFileSync(join(import.meta.dirname, '../../scenarios/tannery-wharf.json'), 'utf8'),
  );
  const brief = Array.from({ length: 150 }, (_, i) => `bay ${i * i}`).join(', ');
  const file = put('ours.json', JSON.stringify({ ...job, id: 'our-own', brief }));
  await page.locator('input[type=file]').first().setInputFiles(file);
  await page.getByRole('heading', { name: 'A set of 2 jobs' }).waitFor();
  await button(page, 'Give it out').click();
  await page.getByText('Too long for a link').waitFor();
  expect(await page.locator('.qr').count()).toBe(0);
  expect(await button(page, 'Save the learners’ file').getAttribute('class')).toBe('main');

  const tutor = await sitDown(opened.browser, opened.url, DESK);
  await tutor.goto(`${opened.url}#/give`);
  await tutor.getByLabel('a job that comes with the page').selectOption('fen-barn');
  await tutor.getByLabel(/^passphrase/).fill('Bay 3, please');
  await button(tutor, 'Give it out').click();
  const link = (await tutor.locator('.link-text').textContent()) ?? '';
  const learner = await sitDown(opened.browser, opened.plainUrl, DESK);
  await learner.goto(`${opened.plainUrl}${link.slice(link.indexOf('#'))}`);
  await learner.getByText('This is sealed, and cannot be opened here.').waitFor();
  // Nor is the link shown without its seal, where the tutor's own copy is brought.
  const [copy] = await Promise.all([
    tutor.waitForEvent('download'),
    button(tutor, 'Save your own copy').click(),
  ]);
  await page.goto(`${opened.plainUrl}#/collect`);
  await page
    .locator('input[type=file][multiple]')
    .setInputFiles(put('sealed, own copy.json', readFileSync(await copy.path(), 'utf8')));
  await page.getByText(/^The giving-out .* is open/).waitFor();
  const { word } = JSON.parse(readFileSync(await copy.path(), 'utf8'));
  await page.getByRole('link', { name: `Link and code ${word}` }).click();
  await page.getByText('It was sealed, and the page came by plain http').waitFor();
  expect(await page.locator('.qr, .link-text').count()).toBe(0);
});
