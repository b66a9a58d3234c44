// How much a fluent person has to do for one test: taps, choices and figures typed, counted in the page itself.

import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { openBuiltPage } from './builtPage.ts';
import {
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
} from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 480_000 });

/** A press is one action, a choice that changes a list one, a figure typed into a field one. */
function countActions(): void {
  let count = 0;
  const values = new WeakMap<HTMLSelectElement, string>();
  const typed = new WeakSet<EventTarget>();
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
    ({ target }) => {
      const at = target as Element;
      if (at.closest('button, summary, a, input[type="radio"], input[type="checkbox"]') !== null) count++;
    },
    true,
  );
  addEventListener(
    'change',
    ({ target }) => {
      if (target instanceof HTMLSelectElement && values.get(target) !== target.value) count++;
    },
    true,
  );
  addEventListener(
    'input',
    ({ target }) => {
      if (!(target instanceof HTMLInputElement) || target.type !== 'text' || typed.has(target)) return;
      typed.add(target);
      count++;
    },
    true,
  );
  Object.assign(window, { actionsTaken: () => count });
}

const taken = (page: Page): Promise<number> =>
  page.evaluate(() => (window as unknown as { actionsTaken: () => number }).actionsTaken());

/** Of one test with one reading and nothing to set up. */
const PER_TEST = { 1: 13, 2: 20, 3: 22, 4: 20 } as const;
/** Leads, check, apply, figure: what one more reading may cost. */
const PER_READING = 4;

/** With three settings changed, one reading of four figures and a figure to be said: what it takes, and no more. */
const CONNECTED = { 1: 23, 2: 31, 3: 30, 4: 30 } as const;
/** The unit taken off and put back, three readings with their test voltage. */
const INSULATION = 38;

async function counted(page: Page, what: () => Promise<void>) {
  const before = { taken: await taken(page), readings: (await inHand(page)).readings.length };
  await what();
  return {
    actions: (await taken(page)) - before.taken,
    readings: (await inHand(page)).readings.length - before.readings,
  };
}

test.each([1, 2, 3, 4] as const)('rung %d: no vehicle, and a vehicle connected', async (rung) => {
  const { page } = await sitDown(opened.browser, opened.url, { before: countActions });
  await begin(page, 'Fen Barn', rung);
  const stateA = await counted(page, () => doTest(page, actionFor('state-a')));
  expect(stateA.actions).toBeLessThanOrEqual(PER_TEST[rung] + PER_READING * (stateA.readings - 1));

  const stateB = await counted(page, async () => {
    await choose(page, actionFor('state-b').title);
    await setUp(page, {
      'stand-in': 'plugged in',
      'its state': 'B: connected, 2.74 kΩ',
      'then wait, s': '2',
    });
    await predict(page, await inHand(page), actionFor('state-b'), '67 to 80 %');
    await measure(page, { op: 'measure', quantity: 'pilot' });
    await writeDown(page, undefined);
    await judgeRightly(page, await inHand(page), actionFor('state-b'));
  });
  expect(stateB.actions).toBeLessThanOrEqual(CONNECTED[rung]);
});

test('rung 2: the circuit’s insulation, pair by pair', async () => {
  const { page } = await sitDown(opened.browser, opened.url, { before: countActions });
  await begin(page, 'Signal Cottage', 2);
  for (const id of ['isolate', 'prove-dead']) await doTest(page, actionFor(id));
  const { actions, readings } = await counted(page, () => doTest(page, actionFor('insulation-circuit')));
  expect(readings).toBe(3);
  expect(actions).toBeLessThanOrEqual(INSULATION);
});
