// A sound unit verified through the screens, on a phone and on a desk, in the light and in the dark: by keys alone, and
// with a mouse. A file each, so that they run side by side. By tap alone it is done where taps are counted (budget.test.ts).

import { expect, test } from 'vitest';
import { rightConclusion } from '../../../src/attempt/marks/worked.ts';
import { allowedActions } from '../../../src/scenario/scenario.ts';
import { verdictTitle } from '../../../src/words/verdicts.ts';
import { scenarioNamed } from '../../helpers/scenarios.ts';
import { openBuiltPage } from '../builtPage.ts';
import { keys, mouse, press, putHands } from '../hands.ts';
import { begin, conclude, doTest, inHand, sitDown } from '../trainee.ts';
import { marksAgreed, openedWith } from '../wholeJob.ts';

const FROM_ISOLATION = ['isolate', 'prove-dead', 'inspect', 'make-good'];

/** All that is not in it: what each takes is counted, but not by a story with the mouse at every run. */
const REST = [
  ...['papers', 'instruments', 'pe-circuit', 'pe-outlet', 'ze', 'pfc', 'supply-volts', 'supply-return'],
  ...['poles-open', 'state-b', 'stop', 'loop', 'volt-drop', 'residual-half', 'residual-five', 'dc-ramp'],
  ...['residual-again', 'diode-in-c', 'pe-open', 'unplug', 'limit', 'half-wave', 'pilot-open', 'diode'],
  ...['insulation-unit', 'coding', 'pilot-short', 'c-to-b', 'state-d', 'dc-step', 'residual-rated'],
  ...['r1r2-polarity', 'insulation-circuit', 'residual-ramp', 'open-pen', 'insulation-outlet', 'recovery'],
] as const;

/** A whole job from isolation to handing over, and the tests that are not in it. */
export const SOUND = {
  keys: {
    how: 'by keys alone, from isolation',
    hands: keys,
    tests: [...FROM_ISOLATION, ...['energise', 'state-a', 'state-c', 'finish']],
  },
  mouse: {
    how: 'with a mouse, the tests beside these',
    hands: mouse,
    tests: REST,
  },
} as const;

/** Of both stories, the second of which is told only where every test is asked for. */
export const TOLD: readonly string[] = Object.values(SOUND).flatMap(
  ({ tests }) => tests as readonly string[],
);

export function holdSoundUnit({ how, hands, tests }: (typeof SOUND)[keyof typeof SOUND]): void {
  const opened = openBuiltPage();
  // A slow machine under load gets the time it needs; nothing is measured by the clock.
  test(`a sound unit, ${how}`, { timeout: 480_000 }, async () => {
    const page = await sitDown(opened.browser, opened.url);
    putHands(page, hands);
    const wanted = new Set<string>(tests);
    const every = allowedActions(scenarioNamed('harbour-mews').scenario).map(({ id }) => id);
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
    // With part of the tests and nothing wrong, the right verdict is that it could not be finished.
    const { verdict, next, tell } = rightConclusion(await inHand(page));
    await press(page.getByRole('button', { name: 'Conclude…' }));
    await conclude(page, {
      verdict,
      cause: 'nothing is wrong',
      next,
      tell,
    });
    await page.getByRole('heading', { name: `“${verdictTitle(verdict)}”: right.` }).waitFor();
    await page.getByText('Gates: both met.').waitFor();
    const marks = await marksAgreed(page);
    expect(marks).toMatchObject({
      total: 100,
      passed: true,
      differs: [],
      gates: { critical: [], verdict: true },
    });
  });
}
