/*
 * How the built page feels on a device four times slower: by screen the longest task, the longest time from a press
 * or key to the next picture, and how far things shifted by themselves. Times are the main thread's own, so that what else
 * the machine does counts for little, and the least of several sittings; beside the picture's stands the wall clock's.
 * Prints lines; asserts nothing.
 */
import type { Browser, Locator, Page } from 'playwright-core';
import { type Hands, putHands as workBy } from '../browser/hands.ts';
import {
  act,
  answerAll,
  begin,
  COULD_NOT_FINISH,
  choose,
  conclude,
  judgeAll,
  later,
  measure,
  setUp,
  sitDown,
  toScenarios,
  writeDown,
} from '../browser/trainee.ts';
import { CATEGORIES, workedIn } from './mainThread.ts';

const SLOWER = 4;
/** Of each window; what is once slow for no reason of its own is not in all of them. */
const SITTINGS = 3;
/** Three phases, every test of the house. */
const LARGEST = 'Foundry Yard, bay 3';
/** ms after which a press is answered and drawn: then nothing else is in its picture. */
const QUIET = 400;

/** Presses by themselves: whoever looks for the next thing meanwhile has the page work for it. */
async function press(what: Locator): Promise<void> {
  const page = what.page();
  await what.waitFor({ state: 'attached' });
  await what.scrollIntoViewIfNeeded();
  const [x, y] = await what.evaluate((element) => {
    // A choice is drawn by its label.
    const drawn = element instanceof HTMLInputElement ? (element.closest('label') ?? element) : element;
    const box = drawn.getBoundingClientRect();
    return [box.x + box.width / 2, box.y + box.height / 2] as const;
  });
  await page.mouse.move(x, y);
  await page.waitForTimeout(QUIET / 2);
  await page.mouse.down();
  await page.mouse.up();
  await page.waitForTimeout(QUIET);
}

const hands: Hands = {
  press,
  tick: async (what) => {
    if (!(await what.isChecked())) await press(what);
  },
  type: async (field, text) => {
    await press(field);
    const { keyboard } = field.page();
    await keyboard.press('ControlOrMeta+a');
    await keyboard.press('Delete');
    for (const letter of text) await keyboard.press(letter, { delay: 50 });
    await field.page().waitForTimeout(QUIET);
  },
  end: async (field) => {
    await field.focus();
    await field.page().keyboard.press('Enter');
    await field.page().waitForTimeout(QUIET);
  },
  // An entry of a list is typed: what is chosen without any key or press, the browser does not hold for an input.
  choose: async (list, words) => {
    await list.focus();
    // What was typed in a list a moment ago still counts as the beginning of a word.
    await list.page().waitForTimeout(1_200);
    await list.page().keyboard.type(words, { delay: 30 });
    await list.page().waitForTimeout(QUIET);
    // A choice may take the list away.
    const [taken = words] = await list.evaluateAll((lists) =>
      lists.map((one) => (one as HTMLSelectElement).selectedOptions[0]?.label),
    );
    if (taken !== words) throw new Error(`typing took "${taken}", not "${words}"`);
  },
};

/** By the wall clock, in the page. */
interface Felt {
  /** ms from an input to the next picture. */
  wall: number;
  /** Layout shift without an input before it. */
  shift: number;
}

/** Runs in the page: gathers what is felt since it was last asked. */
function watch(): void {
  const fresh = (): Felt => ({ wall: 0, shift: 0 });
  let felt = fresh();
  const on = (type: string, take: (entry: PerformanceEntry) => void, options: object = {}) =>
    new PerformanceObserver((list) => list.getEntries().forEach(take)).observe({
      type,
      buffered: true,
      ...options,
    });
  on(
    'event',
    (entry) => {
      if ((entry as PerformanceEventTiming & { interactionId: number }).interactionId === 0) return;
      felt.wall = Math.max(felt.wall, entry.duration);
    },
    { durationThreshold: 16 },
  );
  on('layout-shift', (entry) => {
    const shift = entry as unknown as { readonly value: number; readonly hadRecentInput: boolean };
    if (!shift.hadRecentInput) felt.shift += shift.value;
  });
  Object.assign(globalThis, {
    feltSince: () => {
      const now = felt;
      felt = fresh();
      return now;
    },
  });
}

async function throughAJob(page: Page, tell: (screen: string) => Promise<void>): Promise<void> {
  const button = (name: string | RegExp) =>
    press(page.getByRole('button', { name, exact: typeof name === 'string' }));
  await tell('first screen, loading');
  await toScenarios(page);
  await hands.tick(page.getByRole('radio', { name: LARGEST }));
  await tell('choosing a job');
  await begin(page, LARGEST, 2);
  await tell('beginning a job (loads the bench)');
  await choose(page, 'No vehicle (A)');
  await tell('a test chosen');
  await setUp(page, { 'unit’s cover': 'open' });
  await setUp(page, { 'unit’s cover': 'closed' });
  await hands.type(page.getByLabel('then wait, s'), '120');
  await tell('setting up, typing');
  await hands.type(page.getByLabel('then wait, s'), '1');
  await answerAll(page);
  await tell('predicting');
  await button(/^would sign for it/);
  await page.getByRole('heading', { name: 'Measure', level: 3 }).waitFor();
  await tell('locking (the bench acts)');
  await measure(page, {
    op: 'measure',
    quantity: 'voltage',
    between: ['outlet.L1', 'outlet.N'],
    tool: 'two-pole',
  });
  await tell('leads and a reading');
  await writeDown(page, undefined);
  await tell('writing it down');
  await measure(page, { op: 'measure', quantity: 'pilot' });
  await writeDown(page, undefined);
  await tell('a pilot with its trace');
  await hands.tick(page.getByRole('radio', { name: 'two-pole detector, voltage', exact: true }));
  await hands.tick(page.getByRole('radio', { name: 'every pair', exact: true }));
  await button(/^Read \d+ pairs$/);
  const rows = page.getByRole('form', { name: 'Write down every pair' });
  await rows.waitFor();
  await tell('every pair read');
  for (const field of await rows.getByRole('textbox').all()) await hands.type(field, '0');
  await hands.tick(rows.getByRole('radio', { name: 'V', exact: true }));
  await button('Write them down');
  await tell('rows written');
  await measure(page, {
    op: 'measure',
    quantity: 'opening-time',
    of: 'C-to-B',
  });
  await later(page);
  await tell('a time with its trace');
  await act(page, 'look it over');
  await tell('an act');
  await judgeAll(page, 'did');
  await page.getByRole('heading', { name: 'What was true' }).waitFor();
  await page.locator('.place-to-come').first().waitFor({ state: 'detached' });
  await tell('judging, and told');
  await button('Stop…');
  await hands.type(page.getByLabel('reason'), 'enough');
  await button('Stop the work');
  await tell('stopping');
  await conclude(page, { ...COULD_NOT_FINISH, leftOut: 'no-time' });
  await tell('concluding');
  await page.getByRole('button', { name: 'Cancel' }).waitFor({ state: 'detached', timeout: 240_000 });
  await tell('the debrief works out');
  // On a narrow page it is folded.
  const step = page.getByRole('button', { name: 'Step on', exact: true });
  if (!(await step.isVisible())) await press(page.getByText('Step by step, beside the correct twin'));
  for (let i = 0; i < 3; i++) await press(step);
  await tell('stepping through');
  for (const name of ['My record', 'Sources', 'Words', 'Accessibility']) {
    await press(page.getByRole('contentinfo').getByRole('link', { name, exact: true }));
    await page.getByRole('heading', { name, level: 1 }).waitFor();
    await page.getByText('Gathering …').waitFor({ state: 'detached', timeout: 120_000 });
    await tell(name);
  }
  await press(page.getByRole('contentinfo').getByRole('link', { name: 'Scenarios' }));
  await begin(page, 'Bakery Lane, number 9');
  await tell('beginning a job that is handed over');
}

interface Screen extends Felt {
  readonly name: string;
  readonly task: number;
  readonly by: string;
  readonly picture: number;
  readonly input: string;
}

/** One person with an empty browser, from the first screen to the last. */
async function sitting(browser: Browser, url: string, width: number, height: number): Promise<Screen[]> {
  const page = await sitDown(browser, url, { width, height });
  page.setDefaultTimeout(120_000);
  workBy(page, hands);
  // The runner wraps functions in a call of this name, which the page does not know.
  await page.context().addInitScript({ content: 'globalThis.__name = (named) => named;' });
  await page.context().addInitScript(watch);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  const trace = () => browser.startTracing(page, { categories: CATEGORIES });
  await trace();
  await page.reload();
  await page.getByRole('heading', { name: 'Charge point trainer' }).waitFor();
  const screens: Screen[] = [];
  await throughAJob(page, async (name) => {
    // The last picture is shown and told of before it is asked for.
    await page.waitForTimeout(QUIET);
    const worked = workedIn(await browser.stopTracing());
    const felt = await page.evaluate(() => (globalThis as unknown as { feltSince: () => Felt }).feltSince());
    screens.push({ name, ...worked, ...felt });
    await trace();
  });
  await browser.stopTracing();
  await page.context().close();
  return screens;
}

const least = <K extends 'task' | 'picture' | 'wall'>(tries: readonly Screen[], by: K): Screen | undefined =>
  tries.toSorted((x, y) => x[by] - y[by])[0];

async function printAt(browser: Browser, url: string, width: number, height: number): Promise<void> {
  const all: Screen[][] = [];
  for (let i = 0; i < SITTINGS; i++) all.push(await sitting(browser, url, width, height));
  console.log(`  ${width} × ${height}`);
  for (const [i, { name }] of all[0]?.entries() ?? []) {
    const tries = all.flatMap((screens) => screens[i] ?? []);
    const [task, picture, wall] = [least(tries, 'task'), least(tries, 'picture'), least(tries, 'wall')];
    if (task === undefined || picture === undefined || wall === undefined) continue;
    const over = [
      task.task > 50 ? `task of ${task.by}` : '',
      picture.picture > 100 ? `at ${picture.input}` : '',
    ].filter((text) => text !== '');
    console.log(
      `    ${name}: task ${task.task.toFixed(0)}, to next picture ${picture.picture.toFixed(0)} ` +
        `(wall clock ${wall.wall.toFixed(0)}), shift ${Math.max(...tries.map(({ shift }) => shift)).toFixed(3)}` +
        `${over.length > 0 ? `; ${over.join(', ')}` : ''}`,
    );
  }
}

export async function printSpeed(browser: Browser, url: string): Promise<void> {
  console.log(
    `the page at 1/${SLOWER} of this machine's speed, ms of its main thread, the least of ${SITTINGS} sittings`,
  );
  await printAt(browser, url, 1280, 800);
  await printAt(browser, url, 360, 740);
}
