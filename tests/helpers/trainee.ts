/**
 * Trainees made for tests: each works through a scenario by the log alone, as a person at the screens would. What
 * one of them answers, types, judges and concludes can be replaced, so that single habits can be tried.
 */

import { rightConclusion, rightJudgement, typedAsShown } from '../../src/attempt/marks/worked.ts';
import type {
  Answer,
  Attempt,
  Judged,
  LimitJudged,
  NotedOf,
  Sure,
} from '../../src/attempt/record/attempt.ts';
import { rightPrediction } from '../../src/attempt/record/prediction.ts';
import { repeatsOf } from '../../src/attempt/record/repeats.ts';
import type { Run, Taken } from '../../src/attempt/record/run.ts';
import { act, note, startRun } from '../../src/attempt/record/run.ts';
import type { Rung } from '../../src/attempt/record/rung.ts';
import type { Operation, OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { allowedActions } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { unplug } from '../../src/verification/offer.ts';
import { procedure, stillToDo } from '../../src/verification/procedure.ts';
import type { TestAction } from '../../src/verification/testAction.ts';

export interface Habits {
  readonly sure?: Sure;
  /** The rung of support that the attempt says it is on. */
  readonly rung?: Rung;
  /** Lines of a test as it is locked, in place of all of them answered. */
  readonly predict?: (right: NotedOf<'prediction'>, run: Run, action: TestAction) => NotedOf<'prediction'>;
  readonly answer?: (right: string) => Answer;
  /** `sound`: what is said of the line by whoever finds everything fine. */
  readonly judge?: (right: Judged, sound: 'did' | 'did-not') => Judged;
  readonly judgeLimit?: (right: LimitJudged) => LimitJudged;
  readonly type?: (typed: NotedOf<'observation'>, taken: Taken) => NotedOf<'observation'>;
  readonly operations?: (action: TestAction, steps: readonly Operation[]) => readonly Operation[];
  readonly conclude?: (right: NotedOf<'conclusion'>, run: Run) => NotedOf<'conclusion'>;
  /** Tests that are done; by default those of a faultless trainee. */
  readonly tests?: (expected: readonly TestAction[]) => readonly TestAction[];
}

/** The tests that a faultless trainee does. */
const expectedTests = (scenario: Scenario): readonly TestAction[] =>
  verify(scenario).actions.map(({ action }) => action);

const faultless = new WeakMap<Scenario, Attempt>();

/** An attempt by a trainee who does everything right; the same one again for the same scenario. */
export function faultlessAttempt(scenario: Scenario, file: unknown): Attempt {
  const known = faultless.get(scenario);
  if (known !== undefined) return known;
  const attempt = attemptBy(scenario, file);
  faultless.set(scenario, attempt);
  return attempt;
}

/** An attempt by a trainee who does everything right, except for the habits given. */
export function attemptBy(scenario: Scenario, file: unknown, habits: Habits = {}): Attempt {
  const expected = expectedTests(scenario);
  let run = startRun(scenario, file, habits.rung === undefined ? {} : { rung: habits.rung });
  for (const action of habits.tests?.(expected) ?? expected) run = doTest(run, action, habits);
  return note(run, conclusion(run, habits), 0).attempt;
}

/** The same trainee, who then puts this cause right, repeats what is due, goes on to the end and concludes. */
export function attemptWithRepair(
  scenario: Scenario,
  file: unknown,
  what: string,
  habits: Habits & {
    /** The tests that are repeated, of those due. */
    readonly repeated?: (due: readonly string[]) => readonly string[];
  } = {},
): Attempt {
  const expected = expectedTests(scenario);
  let run = startRun(scenario, file);
  for (const action of habits.tests?.(expected) ?? expected) run = doTest(run, action, habits);
  for (const input of [...toDeadWork(run), { op: 'put-right', what } as const])
    run = act(run, null, operation(input), 0).run;
  const { faults } = run.world;
  const { due } = repeatsOf(run, verify(scenario, { everything: true, faults }));
  const again = habits.repeated?.(due) ?? due;
  const done = new Set(run.samples.map(({ test }) => test));
  const now = verify(scenario, { faults }).actions.map(({ action }) => action.id);
  for (const action of allowedActions(scenario))
    if (again.includes(action.id) || (now.includes(action.id) && !done.has(action.id)))
      run = doTest(run, action, habits);
  return note(run, conclusion(run, habits), 0).attempt;
}

/** Unplugged, off, proved dead, cover open: what of that is not so yet. */
function toDeadWork({ world: { plant, knowledge } }: Run): readonly OperationInput[] {
  const { origin, supply } = knowledge.provedDead;
  return [
    ...(plant.standIn.plugged ? unplug : []),
    ...(plant.isolated.length === 0 ? [{ op: 'isolate' } as const, { op: 'wait', seconds: 2 } as const] : []),
    ...(origin === undefined && supply === undefined ? [{ op: 'prove-dead', at: 'origin' } as const] : []),
    ...(plant.cover === 'closed' ? [{ op: 'open-cover' } as const] : []),
    ...(supply === undefined ? [{ op: 'prove-dead', at: 'supply' } as const] : []),
  ];
}

function doTest(start: Run, action: TestAction, habits: Habits): Run {
  let run = note(start, prediction(start, action, habits), 0);
  const doing = (steps: readonly Operation[]) => {
    for (const step of steps) {
      const before = run.readings.length;
      run = act(run, action.id, step, 0).run;
      for (const [i, taken] of run.readings.entries()) {
        if (i < before) continue;
        const typed = typedAsShown(taken, i);
        run = note(run, habits.type?.(typed, taken) ?? typed, 0);
      }
    }
  };
  const steps = procedure(run.world, action, run.papers);
  doing(habits.operations?.(action, steps) ?? steps);
  const samples = run.samples.slice(start.samples.length).map(({ sample }) => sample);
  // Whoever does other operations than are due has nothing more to try.
  if (habits.operations === undefined) doing(stillToDo(action, run.papers, { samples }));
  return note(run, judgement(run, action, habits), 0);
}

function prediction(run: Run, action: TestAction, habits: Habits): NotedOf<'prediction'> {
  const { answer, sure, predict } = habits;
  const right = rightPrediction(run, action);
  if (predict !== undefined) return predict(right, run, action);
  const lines = right.lines.map((line) => ({ ...line, answer: answer?.(line.answer) ?? line.answer }));
  return { ...right, lines, sure: sure ?? right.sure };
}

function judgement(run: Run, action: TestAction, { judge, judgeLimit }: Habits): NotedOf<'judgement'> {
  const right = rightJudgement(run, action);
  const should = action.expectations(run.papers).filter((line) => line.should);
  const soundOf = (id: string) => (should.some((line) => line.id === id) ? 'did' : 'did-not');
  return {
    ...right,
    lines: right.lines.map((line) => ({
      ...line,
      judged: judge?.(line.judged, soundOf(line.id)) ?? line.judged,
    })),
    limits: right.limits.map((limit) => ({ ...limit, judged: judgeLimit?.(limit.judged) ?? limit.judged })),
  };
}

function conclusion(run: Run, habits: Habits): NotedOf<'conclusion'> {
  const right = rightConclusion(run);
  return habits.conclude?.(right, run) ?? right;
}
