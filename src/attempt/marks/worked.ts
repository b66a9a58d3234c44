/**
 * A worked attempt: the scenario done by a trainee who predicts, reads, judges and concludes rightly, entry by entry as
 * a person would, and stops where a faultless trainee stops. It is shown as an example, and it is what marking must
 * find nothing wrong with.
 */

import type { Operation } from '../../bench/operation.ts';
import { displayOf, showsTripTime } from '../../bench/reading.ts';
import { TYPED_UNITS } from '../../bench/readings/display.ts';
import { toItsEnd } from '../../bench/toItsEnd.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import type { Verified } from '../../scenario/verify.ts';
import { failsTester, verify, verifyingOnce } from '../../scenario/verify.ts';
import { goesOn, procedure, stillToDo } from '../../verification/procedure.ts';
import type { TestAction } from '../../verification/testAction.ts';
import type { Attempt, NotedOf } from '../record/attempt.ts';
import { rightPrediction } from '../record/prediction.ts';
import { repeatsOf } from '../record/repeats.ts';
import type { Run, Taken } from '../record/run.ts';
import { act, note, startingRun } from '../record/run.ts';
import { lastSitting } from '../record/sitting.ts';
import { judgedRight, truthOf } from '../record/truth.ts';
import { shownFigure } from '../record/typed.ts';
import { faultsShown, notFaultsOf } from './diagnosis.ts';
import { dueSteps } from './reasons.ts';
import { rightVerdict, verdictIsAbout } from './verdict.ts';

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

/** The unit as it stands at the end, verified with the tests that are allowed. */
const verifyingAtEnd = ({ scenario, world }: Run): Generator<null, Verified> =>
  verifyingOnce(scenario, { faults: world.faults });

function* workingTest(start: Run, action: TestAction): Generator<null, Run> {
  let run = note(start, rightPrediction(start, action), 0);
  function* doing(steps: readonly Operation[]): Generator<null> {
    for (const step of steps) {
      if (!goesOn(run.world, step)) return;
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

/** A reading typed as it is shown, in the unit of the display, with all that belongs to it. */
export function typedAsShown({ reading, test }: Taken, index: number): NotedOf<'observation'> {
  const { unit } = displayOf(reading);
  const isTimed = showsTripTime(reading);
  const shown = isTimed ? null : shownFigure(reading);
  return {
    kind: 'observation',
    test: test ?? '',
    reading: index,
    value: shown === null ? null : Number((shown / TYPED_UNITS[unit]).toPrecision(6)),
    qualifier: reading.qualifier === 'unable' ? 'no-reading' : reading.qualifier,
    unit,
    ...(isTimed && reading.tripMs != null ? { tripMs: reading.tripMs } : {}),
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
    lines: truth.lines.flatMap((line) =>
      line.finding === null ? [] : [{ id: line.id, judged: judgedRight(line) }],
    ),
    limits: truth.limits.map(({ limit, reading, right }) => ({ id: limit.id, reading, judged: right })),
  };
}

export function rightConclusion(
  run: Run,
  now: Verified = toItsEnd(verifyingAtEnd(run)),
): NotedOf<'conclusion'> {
  const { scenario, repairs } = run;
  const met = verify(scenario);
  const about = verdictIsAbout(scenario, { asMet: met, asNow: now });
  // What no test that is allowed shows cannot be named.
  const isShown = met.conclusion === 'not sound' || failsTester(met);
  const [fault, ...others] = isShown ? faultsShown(scenario, met) : [];
  const [designed] = scenario.task === 'find' && met.conclusion === 'sound' ? notFaultsOf(scenario) : [];
  const due = dueSteps(run, now);
  const asksRepeats = repairs.length > 0 || (scenario.task === 'verify' && now.conclusion === 'not sound');
  return {
    kind: 'conclusion',
    verdict: rightVerdict(scenario, about),
    because: '',
    cause: (fault ?? designed)?.id ?? 'nothing',
    family: (fault ?? designed)?.family ?? null,
    ...(others.length === 0 ? {} : { others: others.map(({ id, family }) => ({ cause: id, family })) }),
    sure: 'would-sign',
    findings: about.actions.flatMap(({ action, expectations, limits }) => {
      const lines = expectations
        .filter(({ finding }) => finding === 'broken')
        .map(({ expectation }) => expectation.id);
      const outside = limits.filter(({ pass }) => !pass).map(({ limit }) => limit.id);
      return [...lines, ...new Set(outside)].map((id) => ({ test: action.id, id }));
    }),
    ...(due.next[0] === undefined ? {} : { next: due.next[0] }),
    ...(due.tell[0] === undefined ? {} : { tell: due.tell[0] }),
    ...(asksRepeats ? { repeat: [...repeatsOf(run, now).due] } : {}),
  };
}
