// A job taken up at one of its tests, by the file of an attempt in which a faultless person has done all before it: like
// readings in one press, as somebody takes them who counts their taps.

import type { Page } from 'playwright-core';
import { rightJudgement, typedAsShown } from '../../src/attempt/marks/worked.ts';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { rightPrediction } from '../../src/attempt/record/prediction.ts';
import type { Run } from '../../src/attempt/record/run.ts';
import { act, note, startRun } from '../../src/attempt/record/run.ts';
import type { Rung } from '../../src/attempt/record/rung.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { allowedActions } from '../../src/scenario/scenario.ts';
import { isLike } from '../../src/ui/flow/rows.ts';
import { procedure } from '../../src/verification/procedure.ts';
import type { TestAction } from '../../src/verification/testAction.ts';
import { testTitle } from '../../src/words/testTitles.ts';
import { press } from './hands.ts';
import { choose, openFile, toPredict } from './trainee.ts';

interface Job {
  readonly scenario: Scenario;
  readonly file: unknown;
  readonly rung: Rung;
}

/** With a test done; what is shown is written down before anything else is done or read. */
function withTest(start: Run, action: TestAction): Run {
  const written = (run: Run, from: number): Run =>
    run.readings.slice(from).reduce((at, taken, i) => note(at, typedAsShown(taken, from + i), 0), run);
  let run = note(start, rightPrediction(start, action), 0);
  let open = run.readings.length;
  // At which angle a test current begins is nothing that the page asks.
  const steps = procedure(run.world, action, run.papers).map((step) =>
    step.op === 'measure' && step.quantity === 'residual' ? { ...step, angle: undefined } : step,
  );
  for (const [i, step] of steps.entries()) {
    run = act(run, action.id, step, 0).run;
    const next = steps[i + 1];
    if (step.op === 'measure' && next?.op === 'measure' && isLike(step, next)) continue;
    run = written(run, open);
    open = run.readings.length;
  }
  return note(run, rightJudgement(run, action), 0);
}

/** Opens it with `test` chosen, and nothing of it done; lines are asked all at once, as by whoever chose that before. */
export async function takeUpAt(page: Page, { scenario, file, rung }: Job, test: string): Promise<void> {
  const all = allowedActions(scenario);
  const before = all.slice(
    0,
    all.findIndex(({ id }) => id === test),
  );
  const { attempt } = before.reduce(withTest, startRun(scenario, file, { rung }));
  await openFile(page, 'attempt.json', makeAttemptText(attempt));
  await page.getByRole('heading', { name: 'Choose a test' }).waitFor();
  await choose(page, testTitle(test));
  // Given lines, and those to be chosen from ten, stand there at once.
  if (rung === 1 || rung === 3) return;
  await toPredict(page);
  const atOnce = page.getByRole('button', { name: 'All lines at once' });
  if (await atOnce.isVisible()) await press(atOnce);
  await press(page.getByRole('button', { name: 'Back to the set-up' }));
  await page.getByRole('heading', { name: 'Set up', exact: true }).waitFor();
}
