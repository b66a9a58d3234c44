// What stands below the fold of the desk, and equal variants: the task, what was handed over, a limit of one's own and a gate
// set aside go into a file that stands; variants are proved beside the page, and each learner gets figures of their own.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { textInLink } from '../../src/desk/link.ts';
import { variantFor } from '../../src/desk/variantOf.ts';
import { parseScenario } from '../../src/scenario/scenarioText.ts';
import { readGiving } from '../desk/helpers.ts';
import { barriersOn } from './axe.ts';
import { openBuiltPage } from './builtPage.ts';
import { outOfSight } from './lost.ts';
import { button, inHand, openFile, sitDown } from './trainee.ts';

const ROOT = join(import.meta.dirname, '../..');
const opened = openBuiltPage();

async function saved(page: Page, name: string): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), button(page, name).click()]);
  return readFileSync(await download.path(), 'utf8');
}

test('task, handover, own limit and a gate set aside are in the file', async () => {
  const page = await sitDown(opened.browser, opened.url, { width: 360, height: 740 });
  await page.goto(`${opened.url}#/desk`);
  await button(page, /^Change one thing: Abbey Grange/).click();
  await page.getByRole('heading', { name: 'Is it fair?' }).waitFor();
  for (const fold of await page.locator('details.fold > summary').all()) await fold.click();
  await page.getByLabel('they have to find out').selectOption('verify');
  await page.getByLabel('the tests that are not theirs').selectOption('some');
  await page
    .getByRole('group', { name: 'handed over as done' })
    .getByLabel(/^Is it dead\?/)
    .check();
  await page.getByLabel('value to replace').selectOption('loop/loop');
  await page.getByLabel(/^at most, Ω/).fill('0.7');
  await page.getByLabel('where it is from').fill('our network');
  await page.getByLabel('why it is another here').fill('long feeders');
  await button(page, 'Set this value').click();
  await page.getByLabel('critical act to set aside').selectOption('cover-circuit-on');
  await page.getByLabel('the reason, which trainees see').fill('this rig has no screws');
  await button(page, 'Set this gate aside').click();
  await page.getByText('Set aside: cover opened with the circuit on. this rig has no screws').waitFor();
  expect([...(await barriersOn(page)), ...(await outOfSight(page))]).toEqual([]);
  const read = parseScenario(await saved(page, 'Save the file'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { scenario } = read;
  expect(scenario).toMatchObject({
    task: 'verify',
    symptom: null,
    own: [{ limit: 'loop/loop', value: 0.7, source: 'our network', why: 'long feeders' }],
  });
  expect(scenario.marking.setAside).toEqual([{ gate: 'cover-circuit-on', reason: 'this rig has no screws' }]);
  expect(scenario.handover?.done).toEqual(expect.arrayContaining(['instruments', 'isolate', 'prove-dead']));
  // One aim has its own tests alone.
  await page.getByLabel('they have to find out').selectOption('aim');
  await page.getByLabel('the aim').selectOption('clears');
  const aim = parseScenario(await saved(page, 'Save the file'));
  if (!aim.ok) throw new Error(JSON.stringify(aim.problems));
  expect(aim.scenario).toMatchObject({ task: 'aim', aim: 'clears', allowed: ['loop', 'volt-drop'] });
});

test('equal variants are proved beside the page, and two learners get figures of their own', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await page.goto(`${opened.url}#/give`);
  await page.getByLabel('a job that comes with the page').selectOption('find-quay-steps');
  await page.getByText('4', { exact: true }).click();
  await button(page, 'Make equal variants').click();
  await page.getByText(/^Proving them: [1-3] of 4 equal/).waitFor();
  await page.getByText('4 equal variants are proved:').waitFor({ timeout: 60_000 });
  expect(await barriersOn(page)).toEqual([]);
  await page.getByText('of 4 people about 2 have the same as somebody else').waitFor();
  await page.getByLabel(/^everybody’s labels/).fill('ash-01\nelm-02\noak-03, fir-04');
  await page.getByText('Each of your 4 labels gets another one.').waitFor();
  await page.getByLabel('group').fill('Thursday');
  const word = await page.getByLabel('a word for the board').inputValue();
  // What was typed and proved outlives the page, as long as it is not given out.
  await page.getByRole('link', { name: 'Collect' }).click();
  await page.getByRole('heading', { name: 'Collect' }).waitFor();
  await page.reload();
  await page.goto(`${opened.url}#/give`);
  await page.getByText('Each of your 4 labels gets another one.').waitFor();
  expect(await page.getByLabel('group').inputValue()).toBe('Thursday');
  expect(await page.getByLabel('a word for the board').inputValue()).toBe(word);
  await button(page, 'Give it out').click();
  const link = (await page.locator('.link-text').textContent()) ?? '';
  const { giving } = readGiving(JSON.parse(await saved(page, 'Save your own copy')));
  expect(giving.variants).toHaveLength(4);
  const sites = new Set<string>();
  const labels = ['ash-01', 'elm-02', 'oak-03', 'fir-04'];
  expect(new Set(labels.map((label) => variantFor(giving, label))).size).toBe(4);
  expect(textInLink(link.split('/given/')[1] ?? '')).not.toContain('elm-02');
  for (const label of ['elm-02', 'fir-04']) {
    const learner = await sitDown(opened.browser, opened.url);
    await learner.goto(link);
    await learner.getByLabel(/^your label/).fill('nobody');
    await learner.getByText('“nobody” is not on your tutor’s list.').waitFor();
    await learner.getByLabel(/^your label/).fill(label);
    await learner.getByText('is not on your tutor’s list').waitFor({ state: 'detached' });
    await button(learner, /^Begin/).click();
    await button(learner, 'Stop…').waitFor();
    sites.add(JSON.stringify((await inHand(learner)).scenario.site));
  }
  expect(sites.size).toBe(2);
  // The next lesson has another word and job; the group and its labels are the same.
  await page.goto(`${opened.url}#/collect`);
  await page.getByRole('heading', { name: 'Collect' }).waitFor();
  await page.goto(`${opened.url}#/give`);
  await expect.poll(() => page.getByLabel(/^everybody’s labels/).inputValue()).toContain('elm-02');
  expect(await page.getByLabel('a word for the board').inputValue()).not.toBe(word);
  await page.getByText('Choose a job: then it stands here').waitFor();
});

test('every file that the desk makes opens in the trainer and passes check: jobs, a giving-out, sealed and not', async () => {
  const page = await sitDown(opened.browser, opened.url);
  const made = new Map<string, { readonly text: string; readonly shows: RegExp }>();
  const onBench = /^Stop…$/;
  const jobs = [
    ['changed', /^Change one thing: Abbey Grange/],
    ['drawn', 'Draw one'],
    ['blank', 'Begin from blank'],
  ] as const;
  for (const [name, by] of jobs) {
    await page.goto(`${opened.url}#/desk`);
    await button(page, by).click();
    await page.getByRole('heading', { name: 'Is it fair?' }).waitFor();
    if (name === 'changed') {
      await page.locator('summary').filter({ hasText: 'A limit or value of your own' }).click();
      await page.getByLabel('value to replace').selectOption('state-b/high-least');
      await page.getByLabel(/^at least, V/).fill('8.5');
      await page.getByLabel('where it is from').fill('maker’s manual, page 7');
      await page.getByLabel('why it is another here').fill('this make is set so');
      await button(page, 'Set this value').click();
      await page.getByText('at least 8.5').first().waitFor();
    }
    made.set(name, { text: await saved(page, 'Save the file'), shows: onBench });
  }
  await page.goto(`${opened.url}#/give`);
  await page.getByText('Word on the board:').waitFor();
  await button(page, 'Give it out').click();
  made.set('learners', { text: await saved(page, 'Save the learners’ file'), shows: /^Begin/ });
  made.set('tutor', { text: await saved(page, 'Save your own copy'), shows: /^Begin/ });
  await page.getByLabel(/^passphrase/).fill('Bay 3, please');
  await button(page, 'Give it out').click();
  made.set('sealed', { text: await saved(page, 'Save the learners’ file'), shows: /^Open$/ });
  await page.goto(`${opened.url}#/collect`);
  made.set('with comments', { text: await saved(page, 'Save with comments'), shows: /^Begin/ });
  expect(JSON.parse(made.get('changed')?.text ?? '')).toMatchObject({
    own: [{ limit: 'state-b/high-least', value: 8.5 }],
  });
  const folder = mkdtempSync(join(tmpdir(), 'desk-'));
  try {
    const files = [...made].map(([name, { text }]) => {
      const path = join(folder, `${name}.json`);
      writeFileSync(path, text);
      return path;
    });
    const program = ['--import', 'tsx', join(ROOT, 'src/cli/main.ts'), 'check', ...files];
    const { stdout, status } = spawnSync(process.execPath, program, { cwd: ROOT, encoding: 'utf8' });
    for (const file of files) expect(stdout).toContain(`${file}: ok`);
    expect(status).toBe(0);
  } finally {
    rmSync(folder, { recursive: true });
  }
  for (const [name, { text, shows }] of made) {
    const trainee = await sitDown(opened.browser, opened.url);
    await openFile(trainee, `${name}.json`, text);
    if (shows === onBench) {
      // What was opened stands first, and is chosen; where another has its title, it says from where it is.
      const { title } = JSON.parse(text) as { title: string };
      const told = name === 'changed' ? 'opened from changed.json' : title;
      await trainee.getByText(told).first().waitFor();
      await button(trainee, /^Begin/)
        .first()
        .click();
    }
    await button(trainee, shows).first().waitFor();
    expect(await trainee.getByRole('alert').count(), name).toBe(0);
    if (shows === onBench)
      expect((await inHand(trainee)).scenario).toMatchObject({ id: JSON.parse(text).id });
    await trainee.context().close();
  }
});
