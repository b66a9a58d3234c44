/**
 * Trainees made for tests: each works through a scenario by the log alone, as a person at the screens would. What
 * one of them answers, types, judges and concludes can be replaced, so that single habits can be tried.
 */

import type { Attempt, NotedOf, Sure } from '../../src/attempt/attempt.ts';
import { testFigures, testLines } from '../../src/attempt/lines.ts';
import { dueSteps } from '../../src/attempt/reasons.ts';
import { repeatsOf } from '../../src/attempt/repeats.ts';
import type { Run, Taken } from '../../src/attempt/run.ts';
import { act, note, startRun } from '../../src/attempt/run.ts';
import { lastSitting } from '../../src/attempt/sitting.ts';
import { judgedRight, truthOf } from '../../src/attempt/truth.ts';
import type { Operation, OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import { faultsAmong } from '../../src/faults/catalogue.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { allowedActions } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { unplug } from '../../src/verification/offer.ts';
import { procedure } from '../../src/verification/procedure.ts';
import type { TestAction } from '../../src/verification/testAction.ts';

export interface Habits {
  readonly sure?: Sure;
  readonly answer?: (right: string) => 'should' | 'should not' | "can't tell";
  readonly judge?: (right: string) => 'as it should' | 'not as it should' | 'not shown';
  readonly judgeLimit?: (right: string) => 'within' | 'outside' | 'too close';
  readonly type?: (typed: NotedOf<'observation'>, taken: Taken) => NotedOf<'observation'>;
  readonly operations?: (action: TestAction, steps: readonly Operation[]) => readonly Operation[];
  readonly conclude?: (right: NotedOf<'conclusion'>, run: Run) => NotedOf<'conclusion'>;
  /** Tests that are done; by default those of a faultless trainee. */
  readonly tests?: (expected: readonly TestAction[]) => readonly TestAction[];
}

/** Types a reading as shown, with all that belongs to it. */
export const typedAsShown = ({ reading, test }: Taken, index: number): NotedOf<'observation'> => ({
  kind: 'observation',
  test: test ?? '',
  reading: index,
  value: reading.value ?? reading.limit ?? null,
  qualifier: reading.qualifier === 'unable' ? 'no reading' : reading.qualifier,
  unit: reading.unit,
  ...(reading.quantity === 'pilot' && reading.low !== undefined ? { low: reading.low } : {}),
  ...(reading.quantity === 'pilot' && reading.duty != null ? { duty: reading.duty } : {}),
  ...(reading.quantity === 'insulation' && reading.volts !== undefined ? { volts: reading.volts } : {}),
  ...(reading.quantity === 'residual' && reading.trippedWhat !== undefined
    ? { tripped: reading.trippedWhat }
    : {}),
});

/** An attempt by a trainee who does everything right, except for the habits given. */
export function attemptBy(scenario: Scenario, file: unknown, habits: Habits = {}): Attempt {
  const expected = verify(scenario).actions.map(({ action }) => action);
  let run = startRun(scenario, file);
  for (const action of habits.tests?.(expected) ?? expected) run = doTest(run, action, habits);
  return note(run, conclusion(run, scenario, habits), 0).attempt;
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
  const expected = verify(scenario).actions.map(({ action }) => action);
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
  return note(run, conclusion(run, scenario, habits), 0).attempt;
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
  const steps = procedure(run.world, action, run.papers);
  for (const step of habits.operations?.(action, steps) ?? steps) {
    const before = run.readings.length;
    run = act(run, action.id, step, 0).run;
    for (const [i, taken] of run.readings.entries()) {
      if (i < before) continue;
      const typed = typedAsShown(taken, i);
      run = note(run, habits.type?.(typed, taken) ?? typed, 0);
    }
  }
  return note(run, judgement(run, action, habits), 0);
}

const prediction = (run: Run, action: TestAction, { answer, sure }: Habits): NotedOf<'prediction'> => ({
  kind: 'prediction',
  test: action.id,
  lines: testLines(run.scenario, action).map(({ id, right }) => ({ id, answer: answer?.(right) ?? right })),
  figures: testFigures(run.scenario, action).map(({ id, value }) => ({ id, value })),
  sure: sure ?? 'over 80 %',
});

function judgement(run: Run, action: TestAction, { judge, judgeLimit }: Habits): NotedOf<'judgement'> {
  const truth = truthOf(run, action, lastSitting(run, action.id));
  return {
    kind: 'judgement',
    test: action.id,
    lines: truth.lines.flatMap(({ id, finding }) => {
      if (finding === null) return [];
      const right = judgedRight(finding);
      return [{ id, judged: judge?.(right) ?? right }];
    }),
    limits: truth.limits.map(({ limit, reading, right }) => ({
      id: limit.id,
      reading,
      judged: judgeLimit?.(right) ?? right,
    })),
  };
}

function conclusion(run: Run, scenario: Scenario, habits: Habits): NotedOf<'conclusion'> {
  const whole = verify(scenario, { everything: true, faults: run.world.faults });
  const [fault] = faultsAmong(scenario.faults);
  const due = dueSteps(run, whole);
  const isSound = whole.conclusion === 'sound';
  const broken = whole.actions.flatMap(({ action, expectations }) =>
    expectations
      .filter(({ finding }) => finding === 'broken')
      .map(({ expectation }) => ({ test: action.id, id: expectation.id })),
  );
  const right: NotedOf<'conclusion'> = {
    kind: 'conclusion',
    verdict: isSound ? 'fit for service' : 'not fit for service',
    because: '',
    cause: fault?.id ?? 'nothing',
    family: fault?.family ?? null,
    sure: 'over 80 %',
    findings: broken,
    next: due.next[0] as NotedOf<'conclusion'>['next'],
    tell: due.tell[0] as NotedOf<'conclusion'>['tell'],
    ...(isSound && run.repairs.length === 0 ? {} : { repeat: [...repeatsOf(run, whole).due] }),
  };
  return habits.conclude?.(right, run) ?? right;
}
