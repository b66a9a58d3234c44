// The whole round, as a tutor and a learner go it: a job is given out sealed, by a link that is read off its QR code; the
// learner opens it, does it and hands in; a class of attempts comes back as a platform's zip; the class stands there, one mark is
// defended, and the table goes to a spreadsheet. Presses are counted.

import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { zipSync } from 'fflate';
import type { Download, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { givingText } from '../../src/desk/giving.ts';
import { handedIn } from '../desk/handedIn.ts';
import { readGiving } from '../desk/helpers.ts';
import { seenIn } from '../helpers/qr.ts';
import { barriersOn } from './axe.ts';
import { openBuiltPage } from './builtPage.ts';
import { EVERY_TEST } from './everyTest.ts';
import { outOfSight } from './lost.ts';
import { textOfPages } from './pdf.ts';
import { button, COULD_NOT_FINISH, conclude, sitDown } from './trainee.ts';

const opened = openBuiltPage();
/** Of a class, beside the one whose steps are gone here. */
const OTHERS = EVERY_TEST ? 29 : 9;
const PHONE = { width: 360, height: 740 };
const DESK = { width: 1280, height: 800 };

async function saved(page: Page, name: string): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), button(page, name).click()]);
  return readFileSync((await (download as Download).path()) ?? '', 'utf8');
}

async function withoutBarriers(page: Page, screen: string): Promise<void> {
  for (const size of [DESK, PHONE]) {
    await page.setViewportSize(size);
    expect([...(await barriersOn(page)), ...(await outOfSight(page))], `${screen}, ${size.width}`).toEqual(
      [],
    );
  }
  await page.setViewportSize(DESK);
}

/** The class on paper: whose, when, how many and how marks are made, with its title and number on each page. */
async function onPaper(page: Page): Promise<void> {
  await page.emulateMedia({ media: 'print' });
  const pages = textOfPages(await page.pdf({ preferCSSPageSize: true }));
  await page.emulateMedia({ media: 'screen' });
  for (const [i, text] of pages.entries()) {
    expect(text).toContain(`page ${i + 1} of ${pages.length}`);
    expect(text).toMatch(/The class · Thursday · .* · word .* · collected \d+ /);
    expect(text).toContain('no certificate, no evidence of competence');
  }
  const whole = pages.join(' ');
  expect(whole).toContain('Each log was acted out again on the tutor’s own copy');
  expect(whole).toMatch(
    /prediction 10,\s*observation 10,\s*judgement 20,\s*record 5,\s*diagnosis 40,\s*reasons 15;\s*passed from 70/,
  );
  expect(whole).toContain(`${OTHERS + 1} files`);
  expect(whole).toContain('Marks by part');
}

test('changed, told apart, given out sealed, done, handed in by a class, collected, defended and written out', async () => {
  const tutor = await sitDown(opened.browser, opened.url, DESK);
  let presses = 0;
  const press = async (name: string | RegExp) => {
    presses += 1;
    await button(tutor, name).click();
  };
  await tutor.getByRole('link', { name: /^Set work/ }).click();
  presses += 1;
  await press(/^Change one thing: Abbey Grange/);
  await press('change: What is wrong');
  await tutor.getByLabel('cause', { exact: true }).selectOption({ label: 'Main earthing conductor loose' });
  presses += 1;
  await tutor.getByText('It can be seen, but 1 other reads the same.').waitFor({ timeout: 60_000 });
  await press('Allow it');
  await tutor.getByText('no other cause reads the same').waitFor({ timeout: 60_000 });
  await tutor.getByRole('link', { name: 'Give it out…' }).click();
  presses += 1;
  await tutor.getByText('Abbey Grange').first().waitFor();
  await tutor.getByLabel('group').fill('Thursday');
  await tutor.getByText('held until a second word').click();
  presses += 1;
  await tutor.getByLabel('the second word').fill('otter-17');
  await tutor.getByLabel(/^passphrase/).fill('Bay 3, please');
  await press('Give it out');
  await tutor.locator('.qr').waitFor();
  await withoutBarriers(tutor, 'give');
  // Every file that is made, and the sheets; all of it within fifteen presses.
  const own = readGiving(JSON.parse(await saved(tutor, 'Save your own copy')));
  expect(JSON.parse(await saved(tutor, 'Save the learners’ file'))).toHaveProperty('sealed.rounds', 600_000);
  presses += 2;
  expect(presses).toBeLessThanOrEqual(15);
  const link = seenIn((await tutor.locator('.qr').evaluate((code) => code.outerHTML)) ?? '') ?? '';
  expect(link).toBe(await tutor.locator('.link-text').textContent());
  expect(link.startsWith(`${opened.url}#/given/`)).toBe(true);

  const learner = await sitDown(opened.browser, opened.url, PHONE);
  await learner.goto(link);
  await learner.getByLabel('passphrase').fill('bay 3');
  await button(learner, 'Open').click();
  await learner.getByText('It does not open by this passphrase').waitFor();
  await learner.getByLabel('passphrase').fill('Bay 3, please');
  await button(learner, 'Open').click();
  await learner.getByText(own.giving.word).waitFor();
  await button(learner, /^Begin/).click();
  await learner.getByText('Without a label nobody knows').waitFor();
  await learner.getByLabel(/^your label/).fill('ash-99');
  await button(learner, /^Begin/).click();
  await button(learner, 'Stop…').click();
  await learner.getByLabel('reason').fill('=enough');
  await button(learner, 'Stop the work').click();
  await conclude(learner, { ...COULD_NOT_FINISH, verdict: 'cannot-tell' });
  await learner.getByRole('heading', { name: 'The debrief waits' }).waitFor();
  const file = await saved(learner, 'Hand in');
  await learner.getByLabel('the second word').fill('heron');
  await button(learner, 'Open the debrief').click();
  await learner.getByText('That is not the word').waitFor();
  await learner.getByLabel('the second word').fill('Otter-17 ');
  await button(learner, 'Open the debrief').click();
  await learner.getByRole('heading', { name: 'What mattered most' }).waitFor();

  const others = handedIn(own, OTHERS);
  const folders = {
    'ash-99_assignsubmission_file/attempt.json': new TextEncoder().encode(file),
    ...Object.fromEntries(
      others.map((one) => [
        `${one.trainee}_assignsubmission_file/attempt.json`,
        new TextEncoder().encode(makeAttemptText(one)),
      ]),
    ),
  };
  await tutor.goto(`${opened.url}#/collect`);
  // The link can be shown again, sealed as it was: never without its seal.
  await tutor.getByRole('link', { name: /^Link and code/ }).click();
  await tutor.getByRole('heading', { name: 'Sealed' }).waitFor();
  expect(await tutor.locator('.qr').count()).toBe(0);
  await tutor.getByLabel('passphrase').fill('Bay 3, please');
  await button(tutor, 'Seal it again').click();
  await tutor.locator('.qr').waitFor();
  await withoutBarriers(tutor, 'given out, again');
  const again = seenIn((await tutor.locator('.qr').evaluate((code) => code.outerHTML)) ?? '') ?? '';
  await learner.goto(again);
  await learner.getByLabel('passphrase').fill('Bay 3, please');
  await button(learner, 'Open').click();
  await learner.getByText(own.giving.word).first().waitFor();
  await tutor.getByRole('link', { name: 'Collect' }).click();
  await tutor
    .locator('input[type=file][multiple]')
    .setInputFiles({ name: 'class.zip', mimeType: 'application/zip', buffer: Buffer.from(zipSync(folders)) });
  await tutor.getByText('marks as filed').waitFor();
  await withoutBarriers(tutor, 'collect');
  await onPaper(tutor);
  const table = tutor.getByRole('table', { name: /^The class/ });
  expect(await table.getByRole('row', { name: /ash-99/ }).textContent()).toMatch(/cannot tell|can’t tell/);
  const text = await saved(tutor, 'Save as CSV');
  const rows = parse(text, { bom: true, columns: true }) as Record<string, string>[];
  expect(rows).toHaveLength(OTHERS + 1);
  const scenario = own.jobs[0]?.scenario as NonNullable<(typeof own.jobs)[0]>['scenario'];
  for (const one of others)
    expect(rows.find(({ label }) => label === one.trainee)).toMatchObject({
      total: String(mark(scenario, one).total),
      counted: 'yes',
    });
  expect(rows.find(({ label }) => label === 'ash-99')?.['needs a look']).toMatch(/stopped at .*: "?=enough/);

  // From a mark to its reading, line and source in at most three: the label, the part, and the moment of it.
  const weak = others[0]?.trainee ?? '';
  presses = 0;
  await table.getByRole('link', { name: weak, exact: true }).click();
  presses += 1;
  const judgement = tutor.locator('summary').filter({ hasText: /^judgement/ });
  await judgement.click();
  presses += 1;
  const item = tutor.locator('.lost-items > li').filter({ visible: true }).first();
  expect(await item.textContent()).toMatch(/said .*, true: .*read: .*(IEC|BS|sheet|practice)/);
  await item.getByRole('button', { name: /^At that moment/ }).click();
  presses += 1;
  await tutor.locator('.replay').waitFor();
  expect(presses).toBeLessThanOrEqual(3);
  await withoutBarriers(tutor, 'one attempt');
  await tutor.getByRole('textbox', { name: 'comment' }).fill('Ask about the pilot.');
  await button(tutor, 'Keep the comment').click();
  await tutor.getByText('Comment kept.').waitFor();
  await tutor.getByRole('link', { name: 'The class' }).click();
  await tutor.getByText('“Ask about the pilot.”').waitFor();

  // On another computer the tutor's own copy comes along with what it decides, in one go.
  const elsewhere = await sitDown(opened.browser, opened.url, DESK);
  await elsewhere.goto(`${opened.url}#/collect`);
  const dropped = [
    ['own copy.json', givingText(own.giving)],
    ['attempt.json', file],
  ] as const;
  await elsewhere
    .locator('input[type=file][multiple]')
    .first()
    .setInputFiles(
      dropped.map(([name, of]) => ({ name, mimeType: 'application/json', buffer: Buffer.from(of) })),
    );
  const row = elsewhere.getByRole('table', { name: /^The class/ }).getByRole('row', { name: /ash-99/ });
  expect(await row.textContent()).not.toMatch(/no giving-out/);
});
