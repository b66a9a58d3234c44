// Before the lock the page tells nothing of what is wrong: with a fault of each family its markup, its fields and what
// assistive technology is given are, byte by byte, those of the sound unit's page, and nothing else is asked for. Every
// fault, through a whole sequence, is in tests/ui/noLeak.test.tsx.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Request } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { CATALOGUE } from '../../src/faults/catalogue.ts';
import { parseScenario } from '../../src/scenario/scenarioText.ts';
import { openBuiltPage } from './builtPage.ts';
import { everybodyLeaves } from './seats.ts';
import { answerAll, begin, choose, openFile, setUp, sitDown } from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 240_000 });

const file = JSON.parse(readFileSync(join(import.meta.dirname, '../../scenarios/harbour-mews.json'), 'utf8'));
const withFault = (faults: readonly object[]): string =>
  JSON.stringify({ ...file, id: 'twin', title: 'Twin', faults });

/** The whole page, as markup, at each step up to the last before the lock. */
async function pagesBeforeLock(text: string): Promise<readonly string[]> {
  const page = await sitDown(opened.browser, opened.url);
  const asked: string[] = [];
  const note = (request: Request) => asked.push(request.url());
  page.on('request', note);
  const pages: string[] = [];
  // What is in a field is no markup, so it is written beside it.
  const keep = async () =>
    pages.push(
      await page.evaluate(() =>
        [
          document.body.innerHTML,
          ...[...document.querySelectorAll('select, input')].map((x) => (x as HTMLInputElement).value),
          document.title,
        ].join('\n'),
      ),
      await page.locator('body').ariaSnapshot(),
    );
  await openFile(page, 'twin.json', text);
  await page.getByRole('radio', { name: 'Twin' }).waitFor();
  await keep();
  await begin(page, 'Twin');
  await keep();
  await page.getByRole('button', { name: 'Put something right…' }).click();
  await page.getByRole('button', { name: 'Put it right' }).waitFor();
  await keep();
  await page.getByRole('button', { name: 'Back to the tests' }).click();
  await choose(page, 'No vehicle (A)');
  await keep();
  await setUp(page, { 'then wait, s': '2' });
  await keep();
  await answerAll(page);
  await keep();
  page.off('request', note);
  await everybodyLeaves(opened.browser);
  return [...pages.map(renumbered), asked.join('\n')];
}

/** React numbers the names of fields by all that it ever drew, and threw away by the clock: here by their first place. */
function renumbered(page: string): string {
  const names: string[] = [];
  return page.replace(/_r_\w+?_/g, (name) => {
    if (!names.includes(name)) names.push(name);
    return `_r_${names.indexOf(name)}_`;
  });
}

test('no page before the lock differs from the sound unit’s, whatever the fault', async () => {
  const sound = await pagesBeforeLock(withFault([]));
  expect(sound).toHaveLength(13);
  expect(sound.join('\n')).not.toMatch(/seen:|heard:|you wrote|\d\s?(kΩ|MΩ) ±/u);
  const possible = CATALOGUE.filter(
    // A wrong design stands in the papers, which are there to be read before any test.
    ({ id, kind, alter }) =>
      kind === 'fault' && alter === undefined && parseScenario(withFault([{ fault: id }])).ok,
  );
  const oneOfEach = possible.filter(
    ({ family }, i) => possible.findIndex((other) => other.family === family) === i,
  );
  expect(oneOfEach.length).toBeGreaterThan(6);
  for (const { id } of oneOfEach)
    expect(await pagesBeforeLock(withFault([{ fault: id }])), id).toEqual(sound);
});
