// Attempt files that were changed to earn what was not learnt, opened in the page: what it says of them. What `mark` says
// of the same files is in tests/cli/cheats.test.ts.

import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { CHEATS, file, REFUSED, scenario } from '../helpers/cheats.ts';
import { faultlessAttempt } from '../helpers/trainee.ts';
import { openBuiltPage } from './builtPage.ts';
import { share } from './everyTest.ts';
import { layOpen } from './fold.ts';
import { openFile, sitDown } from './trainee.ts';

const opened = openBuiltPage();

/** Terms and what stands beside them with a space between. */
const textOf = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const words: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) words.push(walker.currentNode.textContent ?? '');
    return words.join(' ').replaceAll(/\s+/g, ' ');
  });

// Each is caught by the same replay as on the command line (tests/cli/cheats.test.ts): every third one is looked at here.
test.each(
  share(
    CHEATS,
    CHEATS.filter((_, i) => i % 3 === 0),
  ),
)('$name: the page says so', async ({ attempt, onPage }) => {
  const page = await sitDown(opened.browser, opened.url);
  await openFile(page, 'attempt.json', JSON.stringify(attempt));
  await page.getByRole('heading', { name: 'Debrief' }).waitFor();
  await layOpen(page, 'Marks by part');
  await layOpen(page, 'What it was marked by');
  const text = await textOf(page);
  for (const said of onPage)
    if (typeof said === 'string') expect(text).toContain(said);
    else expect(text).toMatch(said);
});

test('an honest file raises none of it, and what it was marked by is told', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await openFile(page, 'attempt.json', JSON.stringify(faultlessAttempt(scenario, file)));
  await page.getByRole('heading', { name: 'Debrief' }).waitFor();
  await layOpen(page, 'Marks by part');
  await layOpen(page, 'What it was marked by');
  const text = await textOf(page);
  expect(text).not.toMatch(/differ\.|wrong time|not the one of that name/);
  expect(text).toMatch(/mill-race, as it comes with this page/);
  expect(text).toMatch(/pass mark\s*70, with every gate and hurdle met/);
  expect(text).toMatch(/gates set aside\s*none/);
});

test('a scenario of the file’s own is said to be carried', async () => {
  const page = await sitDown(opened.browser, opened.url);
  const own = { ...(file as object), id: 'of-our-own' };
  const attempt = faultlessAttempt(scenario, file);
  await openFile(page, 'attempt.json', JSON.stringify({ ...attempt, scenario: own }));
  await page.getByText('The scenario is the file’s own.').waitFor();
  expect(await textOf(page)).toContain('of-our-own, carried: the file’s own, which nobody vouches for');
});

test.each(REFUSED)('$name: the file is refused', async ({ attempt, said }) => {
  const page = await sitDown(opened.browser, opened.url);
  await openFile(page, 'attempt.json', JSON.stringify(attempt));
  await page.getByText('attempt.json was not opened.').waitFor();
  expect(await page.getByRole('alert').textContent()).toMatch(said);
});
