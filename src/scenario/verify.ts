/**
 * The whole verification of a scenario as a faultless trainee does it: every action that applies and is allowed, in
 * order, stopping where that trainee stops, and without the tests that need a supply where the unit gives none. What was handed over as done is not done again. Looks at readings alone.
 */

import { isIsolated } from '../bench/plant.ts';
import { Recent } from '../bench/recent.ts';
import { toItsEnd } from '../bench/toItsEnd.ts';
import type { UnsafeAct } from '../bench/unsafe.ts';
import type { World } from '../bench/world.ts';
import type { FaultChoice } from '../faults/catalogue.ts';
import type { JudgedExpectation } from '../verification/assess.ts';
import '../verification/allLines.ts';
import { adviceDue, judgeExpectations, judgeLimits, reasonToStop } from '../verification/assess.ts';
import type { JudgedLimit } from '../verification/judgeLimit.ts';
import { gaveNoSupply, NO_SUPPLY } from '../verification/noSupply.ts';
import type { Sample } from '../verification/observed.ts';
import type { ActionRun } from '../verification/procedure.ts';
import { carryingOut } from '../verification/procedure.ts';
import type { Advice, Papers, TestAction } from '../verification/testAction.ts';
import type { Scenario } from './scenario.ts';
import { allowedActions, applicableActions, beginning, keyOf, papersOf } from './scenario.ts';

export interface VerifiedAction {
  readonly action: TestAction;
  readonly run: ActionRun;
  readonly unsafe: readonly UnsafeAct[];
  readonly expectations: readonly JudgedExpectation[];
  readonly limits: readonly JudgedLimit[];
  /** What is to be written down and advised, though nothing is broken. */
  readonly advice: readonly Advice[];
}

export const CONCLUSIONS = ['sound', 'not sound', 'could not finish'] as const;
export type Conclusion = (typeof CONCLUSIONS)[number];

/** What was found, and what follows from it. */
export interface Verified {
  readonly conclusion: Conclusion;
  /**
   * The action whose finding forbids going on, and the line that is broken; dead tests that need no power are still done
   * after it. Or the one that found no supply (NO_SUPPLY in place of a line): then what needs none is still done.
   */
  readonly stopped: { readonly action: string; readonly line: string } | null;
  readonly actions: readonly VerifiedAction[];
}

export interface Verification extends Verified {
  readonly world: World;
}

export interface VerifyOptions {
  readonly everything?: boolean;
  readonly faults?: readonly FaultChoice[];
}

/**
 * What a faultless trainee finds; worked out once (verifyingOnce). With `everything`, actions that the scenario does not
 * allow are done too: what the unit really is.
 */
export const verify = (scenario: Scenario, options: VerifyOptions = {}): Verified =>
  toItsEnd(verifyingOnce(scenario, options));

/** The same done anew, with the bench that is left behind; in pieces, one an operation. */
export function* verifying(scenario: Scenario, options: VerifyOptions = {}): Generator<null, Verification> {
  const { world, handedOver } = yield* beginning(scenario, options.faults);
  const before = handedOver?.tests.map(({ action }) => action) ?? [];
  const papers = papersOf(scenario, options.faults);
  const applicable = applicableActions(scenario);
  const wanted =
    options.everything === true
      ? applicable
      : allowedActions(scenario).filter((action) => !before.includes(action));
  const actions: VerifiedAction[] = [];
  const work = workingThrough(world, wanted, papers);
  let next = work.next();
  for (; next.done !== true; next = work.next()) {
    if (next.value !== null) actions.push(next.value);
    yield null;
  }
  const stopped = next.value;
  return {
    conclusion: conclude(
      actions,
      stopped !== null ||
        // What is left to others is not the question of one aim, nor of a symptom.
        (scenario.task === 'verify' &&
          applicable.some(
            (action) => action.optional !== true && !wanted.includes(action) && !before.includes(action),
          )),
    ),
    stopped,
    actions,
    world,
  };
}

/**
 * Test after test as a faultless trainee does them on a bench: yields null after each operation and what came of each
 * test; at its end, where that trainee stopped. Looks at readings alone. Who `goesOn` does the rest all the same: what
 * would be read there by somebody who had not done the tests before.
 */
export function* workingThrough(
  world: World,
  wanted: readonly TestAction[],
  papers: Papers,
  goesOn = false,
): Generator<VerifiedAction | null, Verified['stopped']> {
  const earlier: Sample[] = [];
  let stopped: Verified['stopped'] = null;
  let noSupply: Verified['stopped'] = null;
  for (const action of wanted) {
    const isDead = action.from === 'isolated' && action.stage === 'before power';
    const { foundLive, detectorFailed } = world.knowledge;
    const isSafe = isDead && isIsolated(world.plant) && foundLive.length === 0 && !detectorFailed;
    if (!goesOn && stopped !== null && !isSafe) break;
    if (!goesOn && noSupply !== null && action.needsSupply === true) continue;
    const run = yield* carryingOut(world, action, papers);
    const expectations = judgeExpectations(action, papers, { ...run, before: earlier });
    const limits = judgeLimits(action, papers, run);
    earlier.push(...run.samples);
    const line = reasonToStop(action, expectations);
    if (line !== null && stopped === null) stopped = { action: action.id, line };
    else if (gaveNoSupply(action, papers, run)) noSupply = { action: action.id, line: NO_SUPPLY };
    yield {
      action,
      run,
      unsafe: run.outcomes.flatMap(({ unsafe }) => unsafe),
      expectations,
      limits,
      advice: adviceDue(action, papers, run),
    };
  }
  return stopped ?? noSupply;
}

/** By all that it follows from; a few hundred kilobytes each, more than all scenarios of the project, with tests left out and with all. */
const known = new Recent<string, Verified>(40);

/**
 * The same without the bench. What was worked out is kept: whoever shows how it is done, marks or tells what was true
 * asks for it. Goes by what the scenario holds, so that one that is read again is known.
 */
export function* verifyingOnce(scenario: Scenario, options: VerifyOptions = {}): Generator<null, Verified> {
  const { faults = scenario.faults } = options;
  const isAllAnyway = scenario.allowed === 'all' && scenario.handover === null;
  const everything = isAllAnyway || options.everything === true;
  const key = `${keyOf(scenario)} ${JSON.stringify(faults)} ${everything}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const { world: _, ...verified } = yield* verifying(scenario, { everything, faults });
  return known.set(key, verified);
}

/** Whether the tester itself was found to fail. */
export const failsTester = ({ actions }: Pick<Verified, 'actions'>): boolean =>
  actions.some(({ expectations }) =>
    expectations.some(({ expectation, finding }) => finding === 'broken' && expectation.of === 'tester'),
  );

function conclude(actions: readonly VerifiedAction[], unfinished: boolean): Conclusion {
  const broken = actions.some(
    ({ expectations, limits }) =>
      // A tester that fails says nothing of the unit.
      expectations.some(({ expectation, finding }) => finding === 'broken' && expectation.of !== 'tester') ||
      limits.some(({ pass }) => !pass),
  );
  if (broken) return 'not sound';
  return unfinished ? 'could not finish' : 'sound';
}
