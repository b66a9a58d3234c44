// What tests of whole jobs have in common: a scenario opened from a file, the marks on the page, and those that the
// command line gives for the exported attempt.

import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { parseScenario } from '../../src/scenario/scenarioText.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { layOpen } from './fold.ts';
import { openFile } from './trainee.ts';

const ROOT = join(import.meta.dirname, '../..');

/** What `mark` says of the exported file. */
async function exportAndMark(page: Page) {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export attempt' }).click(),
  ]);
  // Goes with the browser.
  const file = await download.path();
  return JSON.parse(
    execFileSync(
      process.execPath,
      [join(ROOT, 'node_modules/tsx/dist/cli.mjs'), 'src/cli/main.ts', 'mark', file],
      {
        cwd: ROOT,
        encoding: 'utf8',
      },
    ),
  );
}

/** Marks as the page shows them: by part, and the total. */
async function marksShown(page: Page) {
  await layOpen(page, 'Marks by part');
  // Under each part's row is one that says how it comes about, which has no header.
  const rows = page.getByRole('table', { name: 'Marks by part' }).getByRole('row');
  const ofParts = rows.filter({ has: page.getByRole('rowheader') });
  const parts = (await ofParts.allInnerTexts()).map((row) => {
    const [, part = '', mark] = /^(\w+)\s+([\d.]+) of \d+/.exec(row) ?? [];
    return [part, Number(mark)] as const;
  });
  const [whole = ''] = await page.getByText(/of 100/).allInnerTexts();
  return { total: Number(/([\d.]+) of 100/.exec(whole)?.[1]), parts: Object.fromEntries(parts) };
}

/** The marks on the page, which are those that the command line gives for the exported attempt. */
export async function marksAgreed(page: Page) {
  const shown = await marksShown(page);
  const marks = await exportAndMark(page);
  expect(shown).toEqual({ total: marks.total, parts: marks.parts });
  return marks;
}

/** The scenario of that name with these tests alone, as a file of somebody's own. */
export function scenarioWith(id: string, title: string, allowed: readonly string[]) {
  const text = JSON.stringify({
    ...JSON.parse(scenarioNamed(id).text),
    id: 'mine',
    title,
    allowed,
  });
  const read = parseScenario(text);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('; '));
  return { scenario: read.scenario, text };
}

/** The same opened from its file. */
export async function openedWith(page: Page, id: string, title: string, allowed: readonly string[]) {
  const { scenario, text } = scenarioWith(id, title, allowed);
  await openFile(page, 'mine.json', text);
  await page.getByRole('radio', { name: title }).waitFor();
  return scenario;
}
