// A whole verification through the screens, of a sound unit and of a faulty one, at the width of a desk. The marks
// on the page are those that the command line gives for the exported attempt.

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { allowedActions, parseScenario } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { openBuiltPage } from './builtPage.ts';
import { finger, keys, mouse, press, useHands } from './hands.ts';
import { begin, conclude, doTest, putRight, sitDown } from './trainee.ts';

const ROOT = join(import.meta.dirname, '../..');
const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 300_000 });

function scenarioNamed(id: string): Scenario {
  const read = parseScenario(readFileSync(join(ROOT, `scenarios/${id}.json`), 'utf8'));
  if (!read.ok) throw new Error(`${id}: ${read.problems.map(({ message }) => message).join('; ')}`);
  return read.scenario;
}

/** The exported file, and what `mark` says of it. */
async function exportAndMark(page: Page) {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export attempt' }).click(),
  ]);
  const file = join(mkdtempSync(join(tmpdir(), 'attempt-')), download.suggestedFilename());
  await download.saveAs(file);
  const marks = JSON.parse(
    execFileSync(
      process.execPath,
      [join(ROOT, 'node_modules/tsx/dist/cli.mjs'), 'src/cli/main.ts', 'mark', file],
      {
        cwd: ROOT,
        encoding: 'utf8',
      },
    ),
  );
  return { file, marks };
}

/** Marks as the page shows them: by part, and the total. */
async function marksShown(page: Page) {
  const rows = await page.getByRole('table', { name: 'Marks by part' }).getByRole('row').allInnerTexts();
  const parts = rows.map((row) => {
    const [, part = '', mark] = /^(\w+)\s+([\d.]+) of \d+/.exec(row) ?? [];
    return [part, Number(mark)] as const;
  });
  const [whole = ''] = await page.getByText(/of 100/).allInnerTexts();
  return { total: Number(/([\d.]+) of 100/.exec(whole)?.[1]), parts: Object.fromEntries(parts) };
}

/** Opened from a file: the scenario of that name with these tests alone. */
async function openedWith(page: Page, id: string, title: string, allowed: readonly string[]) {
  const text = JSON.stringify({
    ...JSON.parse(readFileSync(join(ROOT, `scenarios/${id}.json`), 'utf8')),
    id: 'mine',
    title,
    allowed,
  });
  const read = parseScenario(text);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('; '));
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    press(page.getByRole('button', { name: 'Open a file…' })),
  ]);
  await chooser.setFiles({ name: 'mine.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.getByRole('radio', { name: title }).waitFor();
  return read.scenario;
}

const FROM_ISOLATION = [
  'isolate',
  'prove-dead',
  'inspect',
  'r1r2-polarity',
  'insulation-circuit',
  'make-good',
];

/** Two whole jobs from isolation to handing over, and the tests that are in neither. */
const SOUND = [
  {
    how: 'by keys alone, from isolation',
    hands: keys,
    tests: [
      ...FROM_ISOLATION,
      ...['papers', 'instruments', 'pe-circuit', 'ze', 'supply-volts', 'energise', 'state-a', 'state-b'],
      ...['state-c', 'unplug', 'loop', 'residual-rated', 'finish'],
    ],
  },
  {
    how: 'by tap alone, from isolation',
    hands: finger,
    tests: [
      ...FROM_ISOLATION,
      ...['pe-outlet', 'insulation-unit', 'coding', 'pfc', 'energise', 'c-to-b', 'state-d', 'residual-half'],
      ...['dc-step', 'pilot-short', 'stop', 'finish'],
    ],
  },
  {
    how: 'with a mouse, the tests beside these',
    hands: mouse,
    tests: [
      ...['insulation-outlet', 'poles-open', 'limit', 'volt-drop', 'residual-five', 'residual-ramp'],
      ...['half-wave', 'dc-ramp', 'residual-again', 'open-pen', 'pilot-open', 'diode', 'diode-in-c'],
      ...['pe-open', 'recovery', 'supply-return'],
    ],
  },
];

test('every test is done in one of them', () => {
  const done = new Set(SOUND.flatMap(({ tests }) => tests));
  const every = allowedActions(scenarioNamed('harbour-mews')).map(({ id }) => id);
  expect(every.filter((id) => !done.has(id))).toEqual([]);
});

test.each(SOUND)('a sound unit, $how', async ({ hands, tests }) => {
  const { page, complaints } = await sitDown(opened.browser, opened.url, { touch: hands === finger });
  useHands(page, hands);
  const wanted = new Set(tests);
  const every = allowedActions(scenarioNamed('harbour-mews')).map(({ id }) => id);
  const scenario = await openedWith(
    page,
    'harbour-mews',
    'My house',
    every.filter((id) => wanted.has(id)),
  );
  await begin(page, scenario.title);
  const actions = allowedActions(scenario);
  expect(actions).toHaveLength(wanted.size);
  for (const [i, action] of actions.entries()) {
    // On a phone and on a desk, in the light and in the dark, each with each.
    await page.setViewportSize(i % 2 === 0 ? { width: 360, height: 740 } : { width: 1280, height: 800 });
    await page.emulateMedia({ colorScheme: i % 4 < 2 ? 'light' : 'dark' });
    await doTest(page, action);
  }
  await press(page.getByRole('button', { name: 'Conclude…' }));
  await conclude(page, {
    verdict: 'fit for service',
    cause: 'nothing is wrong',
    next: 'hand over',
    tell: 'the client',
  });
  await page.getByRole('heading', { name: '“Fit for service”: right.' }).waitFor();
  await page.getByText('Gates: both met.').waitFor();
  const shown = await marksShown(page);
  const { marks } = await exportAndMark(page);
  expect(shown).toEqual({ total: marks.total, parts: marks.parts });
  expect(marks).toMatchObject({
    total: 100,
    passed: true,
    differs: [],
    gates: { critical: [], verdict: true },
  });
  expect(complaints).toEqual([]);
});

test('a faulty unit, stopped where a faultless person stops', async () => {
  const { page, complaints } = await sitDown(opened.browser, opened.url);
  const scenario = scenarioNamed('mill-race');
  await begin(page, scenario.title);
  for (const { action } of verify(scenario).actions) await doTest(page, action);
  await page.getByRole('button', { name: 'Stop…' }).click();
  await page
    .getByLabel('reason')
    .fill('The circuit’s protective conductor is above its sum: not to be energised.');
  await page.getByRole('button', { name: 'Stop the work' }).click();
  await conclude(page, {
    verdict: 'not fit for service',
    cause: 'Poor joint in the circuit’s protective conductor',
    finding: 'reads within',
    next: 'isolate, lock off and label',
    tell: 'whoever installed the circuit',
    repeat: [
      'Protective conductor, earthing terminal to unit',
      'R1 + R2 and polarity at the supply terminals',
      'Insulation of the circuit, unit taken off',
      'Insulation with the unit connected',
    ],
    leftOut: 'not to be energised with a failed dead test',
  });
  await page.getByRole('heading', { name: '“Not fit for service”: right.' }).waitFor();
  const shown = await marksShown(page);
  const { marks } = await exportAndMark(page);
  expect(shown).toEqual({ total: marks.total, parts: marks.parts });
  expect(marks).toMatchObject({ passed: true, differs: [], gates: { critical: [], verdict: true } });
  expect(marks.total).toBeGreaterThan(95);
  expect(complaints).toEqual([]);
});

test('a faulty unit, put right, its due tests repeated, and fit', async () => {
  const { page, complaints } = await sitDown(opened.browser, opened.url);
  // The dead tests of the circuit alone: enough to find the fault, and to repeat.
  const scenario = await openedWith(page, 'mill-race', 'Mended', [
    ...['isolate', 'prove-dead', 'pe-circuit', 'r1r2-polarity', 'insulation-circuit'],
  ]);
  await begin(page, 'Mended');
  const actions = verify(scenario).actions.map(({ action }) => action);
  for (const action of actions) await doTest(page, action);
  expect(await putRight(page, 'Poor joint in the circuit’s protective conductor')).toMatch(/^\d.*put right/);
  const due = actions.filter(({ id }) => ['pe-circuit', 'r1r2-polarity', 'insulation-circuit'].includes(id));
  for (const action of due) await doTest(page, action);
  await page.getByRole('button', { name: 'Conclude…' }).click();
  await conclude(page, {
    verdict: 'fit for service',
    cause: 'Poor joint in the circuit’s protective conductor',
    repeat: due.map(({ title }) => title),
    next: 'hand over',
    tell: 'the client',
  });
  await page.getByRole('heading', { name: '“Fit for service”: right.' }).waitFor();
  await page.getByText('It was there.').waitFor();
  const shown = await marksShown(page);
  const { marks } = await exportAndMark(page);
  expect(shown).toEqual({ total: marks.total, parts: marks.parts });
  expect(marks).toMatchObject({ total: 100, passed: true, differs: [], parts: { reasons: 10 } });
  expect(marks.repeats).toMatchObject({
    due: due.map(({ id }) => id),
    named: due.map(({ id }) => id),
    done: due.map(({ id }) => id),
  });
  expect(complaints).toEqual([]);
});
