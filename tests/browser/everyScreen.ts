// Goes through every screen and state of the page as one person would, for whoever looks at each: the tests of what
// would keep somebody out, and the pictures.

import type { Page } from 'playwright-core';
import { layAllOpen } from './fold.ts';
import {
  answerAll,
  begin,
  COULD_NOT_FINISH,
  choose,
  conclude,
  judgeAll,
  later,
  measure,
  setUp,
  toJudge,
  toPredict,
  toScenarios,
  unfold,
  writeDown,
} from './trainee.ts';

/** Looks at the page as it stands; the screen's name is for telling where something was found. */
export type Look = (screen: string) => Promise<void>;

export const press = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' }).click();

/** The button that writes a reading down: in its form, on a phone on the key pad. */
const pressWrite = (page: Page) =>
  page
    .getByRole('button', { name: /^Write / })
    .filter({ visible: true })
    .first()
    .click();

/** The pages beside an attempt, and the beginning of the first run. */
export async function throughReadingPages(page: Page, look: Look): Promise<void> {
  for (const name of ['My record', 'Sources', 'Words', 'Accessibility']) {
    await page.getByRole('contentinfo').getByRole('link', { name, exact: true }).click();
    await page.getByRole('heading', { name, level: 1 }).waitFor();
    await page.getByText('Gathering …').waitFor({ state: 'detached' });
    await look(name);
  }
  for (const [hash, name] of [
    ['#/desk', 'Set work'],
    ['#/desk/marks', 'How marks are made'],
    ['#/give', 'Give out'],
    ['#/collect', 'Collect'],
    ['#/questions', 'Five minutes of questions'],
  ] as const) {
    await page.evaluate((to) => {
      location.hash = to;
    }, hash);
    await page.getByRole('heading', { name, level: 1 }).waitFor();
    await look(name);
  }
  await page.evaluate(() => {
    location.hash = '#/first-run';
  });
  await page.getByRole('heading', { name: /^Nothing is plugged in/ }).waitFor();
  await look('first minute');
  await press(page, 'can’t tell yet');
  await look('first minute, one pair');
  await press(page, 'safe to touch');
  await look('first minute, another pair');
  await page.getByRole('button', { name: 'Skip' }).click();
  await page.getByRole('button', { name: 'Take the bench over' }).waitFor();
  await look('first run');
  await press(page, 'Take the bench over');
  await page.getByRole('heading', { name: 'Vehicle connected (B)' }).waitFor();
  await look('first run, bench handed over');
  await page.getByRole('link', { name: 'Jobs' }).click();
  await toScenarios(page);
  await page.getByRole('radio', { name: 'Fen Barn' }).check();
  await page.getByRole('radio', { name: 'watched' }).check();
  await press(page, 'Show me');
  await page.getByText(/^step 1 of \d+$/).waitFor();
  await look('worked run');
  while ((await page.getByText('written down:').count()) === 0) await press(page, 'Step on');
  await look('worked run, a reading');
  await page.getByRole('contentinfo').getByRole('link', { name: 'Scenarios' }).click();
}

/** An assessment that is left before it is handed in. */
export async function throughLeaving(page: Page, look: Look): Promise<void> {
  await begin(page, 'Fen Barn', 4);
  await press(page, 'Stop…');
  await page.getByLabel('reason').fill('enough');
  await press(page, 'Stop the work');
  await conclude(page, { ...COULD_NOT_FINISH, leftOut: 'no-time' });
  await look('debrief of an assessment');
  await page.getByRole('contentinfo').getByRole('link', { name: 'Scenarios' }).click();
  await page.getByRole('heading', { name: 'Not handed in' }).waitFor();
  await look('not handed in');
  await press(page, 'Leave without handing in');
}

/** One test from its choice to what was true of it. */
async function throughATest(page: Page, look: Look): Promise<void> {
  await choose(page, 'No vehicle (A)');
  await look('set up');
  await unfold(page);
  await look('set up, unfolded');
  await page.getByLabel('then wait, s').fill('x');
  await look('set up, with an error');
  await setUp(page, { 'then wait, s': '1' });
  await toPredict(page);
  await look('predict');
  await press(page, 'All lines at once');
  await look('predict, all lines at once');
  await press(page, 'Line by line');
  await press(page, 'Back to the set-up');
  await answerAll(page);
  await look('how sure');
  await press(page, /^would sign for it/);
  await page.getByRole('heading', { name: 'Measure' }).waitFor();
  await look('observe, no leads');
  await press(page, 'Check leads');
  await look('observe, with an error');
  await measure(page, { op: 'measure', quantity: 'coding' }, () => look('leads checked'));
  await look('a reading');
  await pressWrite(page);
  await look('a reading, with an error');
  await writeDown(page, undefined);
  await measure(page, { op: 'measure', quantity: 'pilot' });
  await look('a trace');
  await later(page);
  await look('readings');
  await toJudge(page);
  await page.getByRole('radio', { name: 'not shown', exact: true }).first().click();
  await look('judge');
  await press(page, 'Back to the readings');
  await judgeAll(page, 'not-shown');
  await page.getByRole('heading', { name: 'What was true' }).waitFor();
  await look('what was true');
  await press(page, /^Next/);
  await press(page, 'Another test');
}

export async function throughAnAttempt(page: Page, look: Look): Promise<void> {
  await look('choose');
  await press(page, 'Cautions');
  await look('cautions');
  await press(page, 'Back');
  await begin(page, 'Harbour Mews, house 4');
  await look('choose a test');
  // On a phone the sheet is among the papers.
  if (await page.getByRole('button', { name: 'Unit’s sheet', exact: true }).isVisible()) {
    await press(page, 'Unit’s sheet');
    await look('unit’s sheet');
    await press(page, 'Back');
  }
  await press(page, 'Papers');
  await look('papers');
  await press(page, 'Back');
  await throughATest(page, look);
  await press(page, 'Put something right…');
  await look('put right');
  await press(page, 'Back to the tests');
  await press(page, 'Stop…');
  await look('stop');
  await press(page, 'Go on testing');
  await choose(page, 'Prove it dead');
  await setUp(page, { 'unit’s cover': 'open' });
  await answerAll(page);
  await press(page, /^guessing/);
  await page.getByRole('heading', { name: 'Stopped' }).waitFor();
  await look('harm');
  await press(page, 'Make safe and go on');
  await press(page, 'Do…');
  await look('acts');
  await press(page, 'prove dead at the outlet');
  await press(page, 'Prove the detector, test, prove it again');
  await look('every pair');
  await press(page, 'Stop…');
  await page.getByLabel('reason').fill('enough');
  await press(page, 'Stop the work');
  await page.getByRole('heading', { name: 'Conclude' }).waitFor();
  await look('conclude');
  await page.getByRole('radio', { name: 'not fit for service', exact: true }).check();
  await page.getByLabel('cause', { exact: true }).selectOption({ label: 'Labels missing' });
  await page.getByRole('group', { name: /which tests are repeated/ }).waitFor();
  await look('conclude, with repeats');
  await conclude(page, { ...COULD_NOT_FINISH, leftOut: 'no-time' });
  await look('debrief');
  await layAllOpen(page);
  await press(page, 'Step on');
  await look('debrief, all laid open');
}
