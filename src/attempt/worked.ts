/**
 * A worked attempt: the scenario done by a trainee who predicts, reads, judges and concludes rightly, entry by entry as
 * a person would, and stops where a faultless trainee stops. It is shown as an example, and it is what marking must
 * find nothing wrong with.
 */

import type { Operation } from '../bench/operation.ts';
import { toItsEnd } from '../bench/toItsEnd.ts';
import { faultsAmong } from '../faults/catalogue.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { Verified } from '../scenario/verify.ts';
import { verifyingOnce } from '../scenario/verify.ts';
import { procedure, stillToDo } from '../verification/procedure.ts';
import type { TestAction } from '../verification/testAction.ts';
import type { Attempt, NotedOf } from './attempt.ts';
import { TYPED_UNITS } from './attempt.ts';
import { displayOf } from './display.ts';
import { testFigures, testLines } from './lines.ts';
import { dueSteps } from './reasons.ts';
import { repeatsOf } from './repeats.ts';
import type { Run, Taken } from './run.ts';
import { act, note, startingRun } from './run.ts';
import { lastSitting } from './sitting.ts';
import { judgedRight, truthOf } from './truth.ts';
import { shownFigure } from './typed.ts';

/** The whole attempt; the same for the same scenario. */
export const workedAttempt = (scenario: Scenario, file: unknown): Attempt =>
  toItsEnd(workingAttempt(scenario, file));

/** The same in pieces, one an operation. */
export function* workingAttempt(scenario: Scenario, file: unknown): Generator<null, Attempt> {
  let run = yield* startingRun(scenario, file);
  const { actions } = yield* verifyingOnce(scenario);
  for (const { action } of actions) run = yield* workingTest(run, action);
  return note(run, rightConclusion(run, yield* verifyingAtEnd(run)), 0).attempt;
}

/** The unit as it stands at the end, verified whole. */
const verifyingAtEnd = ({ scenario, world }: Run): Generator<null, Verified> =>
  verifyingOnce(scenario, { everything: true, faults: world.faults });

function* workingTest(start: Run, action: TestAction): Generator<null, Run> {
  let run = note(start, rightPrediction(start, action), 0);
  function* doing(steps: readonly Operation[]): Generator<null> {
    for (const step of steps) {
      const before = run.readings.length;
      run = act(run, action.id, step, 0).run;
      for (const [i, taken] of run.readings.entries())
        if (i >= before) run = note(run, typedAsShown(taken, i), 0);
      yield null;
    }
  }
  yield* doing(procedure(run.world, action, run.papers));
  const samples = run.samples.slice(start.samples.length).map(({ sample }) => sample);
  yield* doing(stillToDo(action, run.papers, { samples }));
  return note(run, rightJudgement(run, action), 0);
}

/** What the page locks where the lines come filled in. */
export const givenPrediction = (run: Run, action: TestAction): NotedOf<'prediction'> => ({
  ...rightPrediction(run, action),
  sure: null,
  given: true,
});

export const rightPrediction = ({ scenario }: Run, action: TestAction): NotedOf<'prediction'> => ({
  kind: 'prediction',
  test: action.id,
  lines: testLines(scenario, action).map(({ id, right }) => ({ id, answer: right })),
  figures: testFigures(scenario, action).map(({ id, value }) => ({ id, value })),
  sure: 'over 80 %',
});

/** A reading typed as it is shown, in the unit of the display, with all that belongs to it. */
export function typedAsShown({ reading, test }: Taken, index: number): NotedOf<'observation'> {
  const { unit } = displayOf(reading);
  const shown = shownFigure(reading);
  return {
    kind: 'observation',
    test: test ?? '',
    reading: index,
    value: shown === null ? null : Number((shown / TYPED_UNITS[unit]).toPrecision(6)),
    qualifier: reading.qualifier === 'unable' ? 'no reading' : reading.qualifier,
    unit,
    ...(reading.quantity === 'pilot' && reading.low !== undefined ? { low: reading.low } : {}),
    ...(reading.quantity === 'pilot' && reading.duty != null ? { duty: reading.duty } : {}),
    ...(reading.quantity === 'insulation' && reading.volts !== undefined ? { volts: reading.volts } : {}),
    ...(reading.quantity === 'residual' && reading.trippedWhat !== undefined
      ? { tripped: reading.trippedWhat }
      : {}),
  };
}

export function rightJudgement(run: Run, action: TestAction): NotedOf<'judgement'> {
  const truth = truthOf(run, action, lastSitting(run, action.id));
  return {
    kind: 'judgement',
    test: action.id,
    lines: truth.lines.flatMap(({ id, finding }) =>
      finding === null ? [] : [{ id, judged: judgedRight(finding) }],
    ),
    limits: truth.limits.map(({ limit, reading, right }) => ({ id: limit.id, reading, judged: right })),
  };
}

export function rightConclusion(
  run: Run,
  whole: Verified = toItsEnd(verifyingAtEnd(run)),
): NotedOf<'conclusion'> {
  const { scenario, repairs } = run;
  const [fault] = faultsAmong(scenario.faults);
  const due = dueSteps(run, whole);
  const isSound = whole.conclusion === 'sound';
  return {
    kind: 'conclusion',
    verdict: isSound ? 'fit for service' : 'not fit for service',
    because: '',
    cause: fault?.id ?? 'nothing',
    family: fault?.family ?? null,
    sure: 'over 80 %',
    findings: whole.actions.flatMap(({ action, expectations }) =>
      expectations
        .filter(({ finding }) => finding === 'broken')
        .map(({ expectation }) => ({ test: action.id, id: expectation.id })),
    ),
    next: due.next[0] as NotedOf<'conclusion'>['next'],
    tell: due.tell[0] as NotedOf<'conclusion'>['tell'],
    ...(isSound && repairs.length === 0 ? {} : { repeat: [...repeatsOf(run, whole).due] }),
  };
}
