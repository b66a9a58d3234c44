/**
 * Which tests are marked where a symptom is told. Any way to the cause will do: once a test that was done leads to a
 * fault's block, those that were not needed cost nothing. Until then all of them stand, as they do where nothing is
 * wrong: only together do they show that.
 */
import { faultsAmong } from '../../faults/catalogue.ts';
import { allowedActions } from '../../scenario/scenario.ts';
import type { Verified, VerifiedAction } from '../../scenario/verify.ts';
import { judgeExpectations, judgeLimits } from '../../verification/assess.ts';
import type { TestAction } from '../../verification/testAction.ts';
import { doneIn } from '../record/places.ts';
import type { Run } from '../record/run.ts';
import { pointedAsMet } from './diagnosis.ts';
import { isDone } from './occasions.ts';

/** `due`: what would count of a verification. */
export function* countedOf(
  run: Run,
  asMet: Verified,
  due: readonly VerifiedAction[],
): Generator<null, readonly VerifiedAction[]> {
  if (run.scenario.task !== 'find' || asMet.conclusion !== 'not sound') return due;
  const pointed = yield* pointedAsMet(run);
  const isLed = faultsAmong(run.scenario.faults).some(({ family }) => pointed.has(family));
  if (!isLed) return due;
  return allowedActions(run.scenario)
    .filter(({ id }) => isDone(run, id))
    .map((action) => due.find((one) => one.action.id === action.id) ?? asDone(run, action));
}

/** A test that a faultless trainee, who goes by the usual order, no longer comes to: by what was read in it. */
function asDone(run: Run, action: TestAction): VerifiedAction {
  const samples = doneIn(run, action.id).map(({ sample }) => sample);
  const done = { prepared: 0, samples, outcomes: [] };
  return {
    action,
    run: done,
    unsafe: [],
    expectations: judgeExpectations(action, run.papers, done),
    limits: judgeLimits(action, run.papers, done),
    advice: [],
  };
}
