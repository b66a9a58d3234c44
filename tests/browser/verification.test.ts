// A faulty unit through the screens, at the width of a desk: stopped at, and put right. The marks on the page are those
// that the command line gives for the exported attempt.

import { expect, test, vi } from 'vitest';
import { rightConclusion } from '../../src/attempt/marks/worked.ts';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { verify } from '../../src/scenario/verify.ts';
import { testTitle } from '../../src/words/testTitles.ts';
import { verdictTitle } from '../../src/words/verdicts.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { attemptBy } from '../helpers/trainee.ts';
import { openBuiltPage } from './builtPage.ts';
import { EVERY_TEST } from './everyTest.ts';
import { begin, conclude, doTest, inHand, openFile, putRight, sitDown } from './trainee.ts';
import { marksAgreed, scenarioWith } from './wholeJob.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 240_000 });

// By mouse and on a desk, what the other stories do by finger, keys and with a symptom.
if (EVERY_TEST)
  test('a faulty unit, stopped where a faultless person stops', async () => {
    const page = await sitDown(opened.browser, opened.url);
    const scenario = scenarioNamed('mill-race').scenario;
    await begin(page, scenario.title);
    for (const { action } of verify(scenario).actions) await doTest(page, action);
    await page.getByRole('button', { name: 'Stop…' }).click();
    await page
      .getByLabel('reason')
      .fill('The circuit’s protective conductor is above its sum: not to be energised.');
    await page.getByRole('button', { name: 'Stop the work' }).click();
    await conclude(page, {
      verdict: 'not-fit',
      cause: 'Poor joint in the circuit’s protective conductor',
      finding: 'reads length × mΩ/m',
      next: 'lock-off-and-label',
      tell: 'installer',
      repeat: [
        'Protective conductor, earthing terminal to unit',
        'R1 + R2 and polarity at the supply terminals',
        'Insulation of the circuit, unit taken off',
        'Insulation with the unit connected',
      ],
      leftOut: 'not-safe',
    });
    await page.getByRole('heading', { name: '“Not fit for service”: right.' }).waitFor();
    const marks = await marksAgreed(page);
    expect(marks).toMatchObject({ passed: true, differs: [], gates: { critical: [], verdict: true } });
    expect(marks.total).toBeGreaterThan(95);
  });

test('a faulty unit, put right, its due tests repeated, and fit', async () => {
  const page = await sitDown(opened.browser, opened.url);
  // The dead tests of the circuit alone: enough to find the fault, and to repeat. They are done as above by whoever begins
  // here with the file of an attempt that goes on from them.
  const { scenario, text } = scenarioWith('mill-race', 'Mended', [
    ...['isolate', 'prove-dead', 'pe-circuit', 'r1r2-polarity', 'insulation-circuit'],
  ]);
  const actions = verify(scenario).actions.map(({ action }) => action);
  const attempt = attemptBy(scenario, JSON.parse(text));
  expect(attempt.entries.at(-1)?.kind).toBe('conclusion');
  const unfinished = { ...attempt, entries: attempt.entries.slice(0, -1) };
  await openFile(page, 'attempt.json', makeAttemptText(unfinished));
  await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
  expect(await putRight(page, 'Poor joint in the circuit’s protective conductor')).toMatch(/^\d.*put right/);
  const due = actions.filter(({ id }) => ['pe-circuit', 'r1r2-polarity', 'insulation-circuit'].includes(id));
  for (const action of due) await doTest(page, action);
  const { verdict, next, tell } = rightConclusion(await inHand(page));
  await page.getByRole('button', { name: 'Conclude…' }).click();
  await conclude(page, {
    // What was there is mended; with the dead tests alone it is not known to be fit.
    verdict,
    next,
    tell,
    cause: 'Poor joint in the circuit’s protective conductor',
    repeat: due.map(({ id }) => testTitle(id)),
  });
  await page.getByRole('heading', { name: `“${verdictTitle(verdict)}”: right.` }).waitFor();
  await page.getByText('It was there.').waitFor({ state: 'attached' });
  const marks = await marksAgreed(page);
  expect(marks).toMatchObject({ total: 100, passed: true, differs: [], parts: { reasons: 15 } });
  expect(marks.repeats).toMatchObject({
    due: due.map(({ id }) => id),
    named: due.map(({ id }) => id),
    done: due.map(({ id }) => id),
  });
});
