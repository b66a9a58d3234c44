// What a test takes of a fluent person on a phone, counted in the page itself, against what it may take (taps.ts): the
// longest of a single-phase job at practice up to state B, and on an island’s earth those with a trip; where every test is asked for, those after it too, all of such a job with the median of them, and
// the longest of a three-phase job after those that teach the rows which they go by. What every test of every site takes on every rung is `npm run bench -- taps`.

import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { rightConclusion } from '../../src/attempt/marks/worked.ts';
import { rungOf } from '../../src/attempt/record/rung.ts';
import { allowedActions } from '../../src/scenario/scenario.ts';
import { verdictTitle } from '../../src/words/verdicts.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { openBuiltPage } from './builtPage.ts';
import { EVERY_TEST, share } from './everyTest.ts';
import { fluently } from './fluent.ts';
import { finger, press } from './hands.ts';
import { takeUpAt } from './takenUp.ts';
import { MEDIAN_BAR, medianOf, noteTaps, PHONE, takenBy, tapsBar } from './taps.ts';
import { actionFor, begin, conclude, inHand, sitDown } from './trainee.ts';
import { marksAgreed } from './wholeJob.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 900_000 });

const sitWithPhone = (): Promise<Page> =>
  sitDown(opened.browser, opened.url, { ...PHONE, hands: finger, before: noteTaps });

/** Taps of a test in the attempt in hand; what it takes too much, with every tap of it. */
async function countedOne(page: Page, id: string) {
  const before = await inHand(page);
  const { taps } = await takenBy(page, () => fluently(page, actionFor(id)));
  const after = await inHand(page);
  const bar = tapsBar({
    rung: rungOf(after.scenario.support, after.attempt),
    phases: after.scenario.site.phases,
    readings: after.readings.length - before.readings.length,
  });
  const { length } = taps;
  return { count: length, over: length > bar ? [`${id}: ${length} of ${bar}: ${taps.join(' · ')}`] : [] };
}

/** Taps of each test, and those that are over their bar. */
async function counted(site: string, ids: readonly string[]) {
  const page = await sitWithPhone();
  await begin(page, scenarioNamed(site).scenario.title, 2);
  const counts: number[] = [];
  const over: string[] = [];
  for (const id of ids) {
    const one = await countedOne(page, id);
    counts.push(one.count);
    over.push(...one.over);
  }
  return { page, counts, over };
}

/** In the order of the job: those that leave the bench as the next needs it, and the longest. */
const SINGLE_PHASE = [
  'isolate',
  'prove-dead',
  'insulation-outlet',
  'make-good',
  'supply-volts',
  'energise',
  'state-b',
  ...share(['state-c', 'unplug', 'residual-rated'], []),
];

test('the longest of a single-phase job by tap alone: none takes more than it may', async () => {
  const { page, over } = await counted('harbour-mews', SINGLE_PHASE);
  expect(over).toEqual([]);
  await page.context().close();
});

// Two devices to be reset, where the unit has none of its own for a.c.: taken up at them.
test.each([
  ['at practice', 2, share(['recovery', 'residual-again'], ['recovery'])],
  ['guided', 1, ['residual-again']],
] as const)('nor does a test with a trip that the device at the origin clears, %s', async (_, rung, ids) => {
  for (const id of ids) {
    const page = await sitWithPhone();
    await takeUpAt(page, { ...scenarioNamed('curlew-house'), rung }, id);
    expect((await countedOne(page, id)).over).toEqual([]);
    await page.context().close();
  }
});

if (EVERY_TEST)
  test('a whole single-phase job by tap alone: no test takes more than it may, half of them no more than 28', async () => {
    const { scenario } = scenarioNamed('harbour-mews');
    const { page, counts, over } = await counted(
      'harbour-mews',
      allowedActions(scenario).map(({ id }) => id),
    );
    expect(over).toEqual([]);
    expect(medianOf(counts)).toBeLessThanOrEqual(MEDIAN_BAR);
    const { verdict, next, tell } = rightConclusion(await inHand(page));
    await press(page.getByRole('button', { name: 'Conclude…' }));
    await conclude(page, { verdict, cause: 'nothing is wrong', next, tell });
    await page.getByRole('heading', { name: `“${verdictTitle(verdict)}”: right.` }).waitFor();
    expect(await marksAgreed(page)).toMatchObject({
      passed: true,
      differs: [],
      gates: { critical: [], verdict: true },
    });
  });

/** In the order of the job: those that teach a row or leave the bench as the next needs it, and the six longest. */
const THREE_PHASES = [
  'isolate',
  'prove-dead',
  'r1r2-polarity',
  'make-good',
  'supply-volts',
  'energise',
  'state-b',
  'state-c',
  'residual-half',
  'residual-rated',
  'residual-ramp',
  'recovery',
] as const;

// As long as the whole job above: done where every test is asked for, and at each `npm run bench -- taps`.
if (EVERY_TEST)
  test('nor do the longest of a three-phase job', async () => {
    const { over } = await counted('foundry-yard', THREE_PHASES);
    expect(over).toEqual([]);
  });
