// How much a fluent person has to do for one test: taps, choices and figures typed, counted in the page itself.

import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { testTitle } from '../../src/words/actions.ts';
import { openBuiltPage } from './builtPage.ts';
import {
  act,
  actionFor,
  begin,
  choose,
  doTest,
  inHand,
  judgeRightly,
  measure,
  predict,
  setUp,
  sitDown,
  writeDown,
  writeDownPairs,
} from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 480_000 });

/**
 * A press is one action, a choice that changes a list one, a figure typed into a field one; each by its name. The Enter
 * that ends a figure belongs to it.
 */
function noteActions(): void {
  const actions: string[] = [];
  const values = new WeakMap<HTMLSelectElement, string>();
  const typed = new WeakSet<EventTarget>();
  const nameOf = (at: Element): string =>
    at.getAttribute('aria-label') ??
    ('labels' in at ? (at as HTMLInputElement).labels?.[0]?.textContent : null) ??
    at.textContent ??
    '';
  const note = () => {
    for (const list of document.querySelectorAll('select')) values.set(list, list.value);
  };
  const look = () => {
    note();
    requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
  new MutationObserver(note).observe(document, { childList: true, subtree: true });
  addEventListener(
    'click',
    ({ target, detail }) => {
      const at = (target as Element).closest(
        'button, summary, a, input[type="radio"], input[type="checkbox"]',
      );
      // Enter in a field presses the form's button too, without the focus ever being there.
      const isByEnter = detail === 0 && at !== document.activeElement;
      if (at !== null && !isByEnter) actions.push(`press ${nameOf(at)}`);
    },
    true,
  );
  addEventListener(
    'change',
    ({ target }) => {
      if (target instanceof HTMLSelectElement && values.get(target) !== target.value)
        actions.push(`choose ${nameOf(target)}: ${target.selectedOptions[0]?.text ?? ''}`);
    },
    true,
  );
  addEventListener(
    'input',
    ({ target }) => {
      if (!(target instanceof HTMLInputElement) || target.type !== 'text' || typed.has(target)) return;
      typed.add(target);
      actions.push(`type ${nameOf(target)}`);
    },
    true,
  );
  Object.assign(window, { actionsTaken: () => actions });
}

const taken = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => (window as unknown as { actionsTaken: () => readonly string[] }).actionsTaken());

/** What a test may take on each rung, on an average of these. */
const BUDGET = { 1: 19, 2: 24, 3: 24, 4: 23 } as const;

/**
 * What each takes on each rung, and no more: nothing is in it but what the person decides, says, types or judges.
 *
 * No vehicle: every pair of the outlet and the pilot's high half, which on the first rung is one over. Connected: one
 * setting, a figure to be said, one reading of four figures, four lines to judge. A shorted diode: three settings and the
 * fold that one of them is in, one reading of one figure, three lines to judge.
 */
const TAKES = {
  'state-a': { 1: 20, 2: 24, 3: 23, 4: 23 },
  'state-b': { 1: 19, 2: 24, 3: 23, 4: 23 },
  diode: { 1: 18, 2: 21, 3: 20, 4: 20 },
} as const;
const TESTS = ['state-a', 'state-b', 'diode'] as const;
/** The unit taken off and put back, three readings with their test voltage, five judgements. */
const INSULATION = 39;

async function counted(page: Page, what: () => Promise<void>) {
  const before = { taken: await taken(page), readings: (await inHand(page)).readings.length };
  await what();
  return {
    actions: (await taken(page)).slice(before.taken.length),
    readings: (await inHand(page)).readings.length - before.readings,
  };
}

/** One test, with a reading of the pilot after what was looked at before. */
async function withThePilot(
  page: Page,
  id: keyof typeof TAKES,
  settings: Readonly<Record<string, string>>,
  before: () => Promise<void> = async () => {},
) {
  const action = actionFor(id);
  await choose(page, testTitle(action.id));
  await setUp(page, settings);
  await predict(page, await inHand(page), action, 'fairly-sure');
  await before();
  await measure(page, { op: 'measure', quantity: 'pilot' });
  await writeDown(page, undefined);
  await judgeRightly(page, await inHand(page), action);
}

/** Every pair of the outlet, and their figures. */
async function provesDead(page: Page) {
  await act(page, 'prove dead at the outlet');
  await writeDownPairs(page);
}

test.each([1, 2, 3, 4] as const)(
  'rung %d: no vehicle, a vehicle connected, and a shorted diode',
  async (rung) => {
    const page = await sitDown(opened.browser, opened.url, { before: noteActions });
    await begin(page, 'Harbour Mews, house 4', rung);
    const found = {
      'state-a': await counted(page, () => withThePilot(page, 'state-a', {}, () => provesDead(page))),
      'state-b': await counted(page, () =>
        withThePilot(page, 'state-b', { 'stand-in': 'B: connected, 2.74 kΩ' }),
      ),
      diode: await counted(page, () =>
        withThePilot(page, 'diode', {
          'stand-in': 'C: asks, 1.3 kΩ added',
          'its diode': 'shorted',
          'then wait, s': '3',
        }),
      ),
    };
    expect(found['state-a'].readings).toBe(4);
    for (const id of TESTS)
      expect(found[id].actions.length, `${id}: ${found[id].actions.join(' · ')}`).toBeLessThanOrEqual(
        TAKES[id][rung],
      );
    const all = TESTS.map((id) => found[id].actions.length);
    expect(all.reduce((sum, x) => sum + x, 0) / all.length).toBeLessThanOrEqual(BUDGET[rung]);
  },
);

test('rung 2: the circuit’s insulation, pair by pair', async () => {
  const page = await sitDown(opened.browser, opened.url, { before: noteActions });
  await begin(page, 'Signal Cottage', 2);
  for (const id of ['isolate', 'prove-dead']) await doTest(page, actionFor(id));
  const { actions, readings } = await counted(page, () => doTest(page, actionFor('insulation-circuit')));
  expect(readings).toBe(3);
  expect(actions.length, actions.join(' · ')).toBeLessThanOrEqual(INSULATION);
});
