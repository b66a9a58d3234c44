/*
 * How the built page feels on a device four times slower: by screen the longest task, the longest time from a press
 * or key to the next picture, and how far things shifted by themselves. Prints lines; asserts nothing.
 */
import type { Browser, Page } from 'playwright-core';
import { type Hands, mouse, putHands as workBy } from '../browser/hands.ts';
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

const SLOWER = 4;
/** Three phases, every test of the house. */
const LARGEST = 'Foundry Yard, bay 3';

/** An entry of a list is typed: what is chosen without any key or press, the browser does not hold for an input. */
const hands: Hands = {
  ...mouse,
  choose: async (list, words) => {
    await list.focus();
    // What was typed in a list a moment ago still counts as the beginning of a word.
    await list.page().waitForTimeout(1_200);
    await list.page().keyboard.type(words);
    // A choice may take the list away.
    const [taken = words] = await list.evaluateAll((lists) =>
      lists.map((one) => (one as HTMLSelectElement).selectedOptions[0]?.label),
    );
    if (taken !== words) throw new Error(`typing took "${taken}", not "${words}"`);
  },
};

interface Felt {
  /** ms of the longest task of the page's own scripts, with the layout that it brought about. */
  task: number;
  /** What ran in it. */
  by: string;
  /** ms from an input to the next picture, and which input. */
  paint: number;
  input: string;
  /** Layout shift without an input before it. */
  shift: number;
}

/** Runs in the page: gathers what is felt since it was last asked. */
function watch(): void {
  const fresh = (): Felt => ({ task: 0, by: '', paint: 0, input: '', shift: 0 });
  let felt = fresh();
  const on = (type: string, take: (entry: PerformanceEntry) => void, options: object = {}) =>
    new PerformanceObserver((list) => list.getEntries().forEach(take)).observe({
      type,
      buffered: true,
      ...options,
    });
  interface Script {
    readonly duration: number;
    readonly sourceURL: string;
    readonly invoker: string;
    readonly sourceFunctionName: string;
  }
  // What the driver of the browser evaluates has no address of its own and is left out.
  on('long-animation-frame', (entry) => {
    const { scripts } = entry as unknown as { readonly scripts: readonly Script[] };
    for (const { duration, sourceURL, invoker, sourceFunctionName } of scripts)
      if (sourceURL.startsWith(location.origin) && duration > felt.task)
        Object.assign(felt, { task: duration, by: `${invoker} ${sourceFunctionName}` });
  });
  on(
    'event',
    (entry) => {
      const target = (entry as PerformanceEventTiming).target as Element | null;
      if ((entry as PerformanceEventTiming & { interactionId: number }).interactionId === 0) return;
      if (entry.duration > felt.paint)
        Object.assign(felt, {
          paint: entry.duration,
          input: `${entry.name} ${(target?.textContent ?? '').slice(0, 30)}`,
        });
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
  const press = (name: string | RegExp) =>
    page.getByRole('button', { name, exact: typeof name === 'string' }).click();
  await tell('first screen, loading');
  await toScenarios(page);
  await page.getByRole('radio', { name: LARGEST }).check();
  await tell('choosing a job');
  await begin(page, LARGEST, 2);
  await tell('beginning a job (loads the bench)');
  await choose(page, 'No vehicle (A)');
  await tell('a test chosen');
  await setUp(page, { 'unit’s cover': 'open' });
  await setUp(page, { 'unit’s cover': 'closed' });
  await page.getByLabel('then wait, s').pressSequentially('120');
  await tell('setting up, typing');
  await page.getByLabel('then wait, s').fill('1');
  await setUp(page, {});
  await answerAll(page);
  await tell('predicting');
  await press(/^would sign for it/);
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
  await page.getByRole('radio', { name: 'two-pole detector, voltage', exact: true }).check({ force: true });
  await page.getByRole('radio', { name: 'every pair', exact: true }).check({ force: true });
  await press(/^Read \d+ pairs$/);
  const rows = page.getByRole('form', { name: 'Write down every pair' });
  await rows.waitFor();
  await tell('every pair read');
  for (const field of await rows.getByRole('textbox').all()) await field.pressSequentially('0');
  await rows.getByRole('radio', { name: 'V', exact: true }).check({ force: true });
  await press('Write them down');
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
  await press('Stop…');
  await page.getByLabel('reason').pressSequentially('enough for today');
  await press('Stop the work');
  await tell('stopping');
  await conclude(page, { ...COULD_NOT_FINISH, leftOut: 'no-time' });
  await tell('concluding');
  await page.getByRole('button', { name: 'Cancel' }).waitFor({ state: 'detached', timeout: 240_000 });
  await tell('the debrief works out');
  // On a narrow page it is folded.
  const step = page.getByRole('button', { name: 'Step on', exact: true });
  if (!(await step.isVisible())) await page.getByText('Step by step, beside the correct twin').click();
  for (let i = 0; i < 3; i++) await step.click();
  await tell('stepping through');
  for (const name of ['My record', 'Sources', 'Words', 'Accessibility']) {
    await page.getByRole('contentinfo').getByRole('link', { name, exact: true }).click();
    await page.getByRole('heading', { name, level: 1 }).waitFor();
    await page.getByText('Gathering …').waitFor({ state: 'detached', timeout: 120_000 });
    await tell(name);
  }
  await page.getByRole('contentinfo').getByRole('link', { name: 'Scenarios' }).click();
  await begin(page, 'Bakery Lane, number 9');
  await tell('beginning a job that is handed over');
}

async function printAt(browser: Browser, url: string, width: number, height: number): Promise<void> {
  const page = await sitDown(browser, url, { width, height });
  page.setDefaultTimeout(120_000);
  workBy(page, hands);
  // The runner wraps functions in a call of this name, which the page does not know.
  await page.context().addInitScript({ content: 'globalThis.__name = (named) => named;' });
  await page.context().addInitScript(watch);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  await page.reload();
  await page.getByRole('heading', { name: 'Charge point trainer' }).waitFor();
  console.log(`  ${width} × ${height}`);
  await throughAJob(page, async (screen) => {
    // The last picture is shown and told of before it is asked for.
    await page.waitForTimeout(400);
    const felt = await page.evaluate(() => (globalThis as unknown as { feltSince: () => Felt }).feltSince());
    const over = [
      felt.task > 50 ? `task by ${felt.by}` : '',
      felt.paint > 100 ? `at ${felt.input}` : '',
    ].filter((text) => text !== '');
    console.log(
      `    ${screen}: task ${felt.task.toFixed(0)}, to next picture ${felt.paint.toFixed(0)}, ` +
        `shift ${felt.shift.toFixed(3)}${over.length > 0 ? `; ${over.join(', ')}` : ''}`,
    );
  });
  await page.context().close();
}

export async function printSpeed(browser: Browser, url: string): Promise<void> {
  console.log(`the page at 1/${SLOWER} of this machine's speed, ms`);
  await printAt(browser, url, 1280, 800);
  await printAt(browser, url, 360, 740);
}
