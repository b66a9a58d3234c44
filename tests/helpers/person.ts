/**
 * A simulated person at the bench, who makes the entries that the screens would make, one test after the other, and
 * goes by what is judged there: after a finding that forbids going on nothing more is done. What each says, types and
 * judges is the caller's; the words and ids of the log's format stand here alone.
 */

import { rightJudgement, typedAsShown } from '../../src/attempt/marks/worked.ts';
import type {
  Answer,
  Attempt,
  Judged,
  LimitJudged,
  NotedOf,
  Verdict,
} from '../../src/attempt/record/attempt.ts';
import { givenPrediction, rightPrediction } from '../../src/attempt/record/prediction.ts';
import type { Run, Taken } from '../../src/attempt/record/run.ts';
import { act, note, startRun } from '../../src/attempt/record/run.ts';
import type { Rung } from '../../src/attempt/record/rung.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { allowedActions } from '../../src/scenario/scenario.ts';
import { judgeExpectations } from '../../src/verification/assess.ts';
import { procedure } from '../../src/verification/procedure.ts';
import type { TestAction } from '../../src/verification/testAction.ts';

export const SHOULD: Answer = 'should';
export const SHOULD_NOT: Answer = 'should-not';
export const CANT_TELL: Answer = 'cant-tell';
export const ANSWERS_ALL: readonly Answer[] = [SHOULD, SHOULD_NOT, CANT_TELL];

/** What one says of a line that is as on a correct unit, of one that is not, and of one that was not seen. */
export const AS_ON_A_CORRECT_UNIT = (should: boolean): Judged => (should ? 'did' : 'did-not');
export const NOT_AS_ON_ONE = (should: boolean): Judged => (should ? 'did-not' : 'did');
export const NOT_SHOWN: Judged = 'not-shown';
/** One answer to every line that is judged, and to every limit: each that there is. */
export const ONE_JUDGEMENT: readonly { readonly line: Judged; readonly limit: LimitJudged }[] = [
  { line: 'did', limit: 'within' },
  { line: 'did-not', limit: 'within' },
  { line: 'not-shown', limit: 'too-close' },
];

export const FIT = 'fit';
export const NOT_FIT = 'not-fit';
export const NOT_FINISHED = 'could-not-finish';

/** Why a test was left out, where it could have been done. */
export const leftOut = (test: string): NotedOf<'record'> => ({ kind: 'record', test, leftOut: 'no-time' });

/** That everything is well, and nothing was looked at. */
export const ALL_WELL: NotedOf<'conclusion'> = {
  kind: 'conclusion',
  verdict: FIT,
  because: '',
  cause: 'nothing',
  family: null,
  sure: 'would-sign',
  findings: [],
  next: 'hand-over',
  tell: 'client',
};

/** The conclusion with something wrong found: what it is, if that is known, and what speaks for it. */
export const notFit = (
  found: Pick<NotedOf<'conclusion'>, 'cause' | 'family' | 'findings'>,
): NotedOf<'conclusion'> => ({
  ...ALL_WELL,
  ...found,
  verdict: NOT_FIT,
  next: 'lock-off-and-label',
  repeat: [],
});

/** What a person does of one test, in place of what is right. Null: it is not written down. */
export interface Ways {
  readonly predict?: (right: NotedOf<'prediction'>, run: Run, action: TestAction) => NotedOf<'prediction'>;
  readonly type?: (shown: NotedOf<'observation'>, taken: Taken) => NotedOf<'observation'> | null;
  readonly judge?: (right: NotedOf<'judgement'>, run: Run, action: TestAction) => NotedOf<'judgement'>;
}

/** The same verdict in the words of a job that begins with a symptom, where it is one. */
export function inTask({ task }: Scenario, said: NotedOf<'conclusion'>): NotedOf<'conclusion'> {
  if (task !== 'find') return said;
  const verdicts: Partial<Record<Verdict, Verdict>> = {
    [FIT]: 'nothing-wrong',
    [NOT_FIT]: 'something-wrong',
    [NOT_FINISHED]: 'cannot-tell',
  };
  return { ...said, verdict: verdicts[said.verdict] ?? said.verdict };
}

/** One test, from the lock of its prediction to the end of its judgement. */
export function doTest(start: Run, action: TestAction, { predict, type, judge }: Ways): Run {
  const right = start.attempt.rung === 1 ? givenPrediction(start, action) : rightPrediction(start, action);
  let run = note(start, predict?.(right, start, action) ?? right, 0);
  for (const step of procedure(run.world, action, run.papers)) {
    const before = run.readings.length;
    run = act(run, action.id, step, 0).run;
    for (const [i, taken] of run.readings.entries()) {
      if (i < before) continue;
      const shown = typedAsShown(taken, i);
      const typed = type === undefined ? shown : type(shown, taken);
      if (typed !== null) run = note(run, typed, 0);
    }
  }
  const seen = rightJudgement(run, action);
  return note(run, judge?.(seen, run, action) ?? seen, 0);
}

export interface Person extends Ways {
  readonly rung?: Rung;
  /** Tests that are left out, each with its entry if it has one. */
  readonly leavesOut?: (action: TestAction) => boolean;
  readonly says?: (test: string) => NotedOf<'record'> | null;
  /** What would end the work is looked at once more: a false alarm ends nothing. */
  readonly looksAgain?: boolean;
  /** What one concludes from what one judged; null: nothing is concluded. */
  readonly conclude: (run: Run) => NotedOf<'conclusion'> | null;
}

/** Every allowed test in order, as far as this person goes on. */
export function attemptOf(scenario: Scenario, file: unknown, person: Person): Attempt {
  let run = startRun(scenario, file, person.rung === undefined ? {} : { rung: person.rung });
  const handedOver = run.handedOver?.tests.map(({ action }) => action.id) ?? [];
  let hasStopped = false;
  for (const action of allowedActions(scenario).filter(({ id }) => !handedOver.includes(id))) {
    if (hasStopped && !isStillDone(run, action)) break;
    if (person.leavesOut?.(action) === true) {
      const why = person.says?.(action.id) ?? null;
      if (why !== null) run = note(run, why, 0);
      continue;
    }
    run = doTest(run, action, person);
    hasStopped ||= endsTheWork(run, action, person.looksAgain === true);
  }
  const conclusion = person.conclude(run);
  return conclusion === null ? run.attempt : note(run, conclusion, 0).attempt;
}

/** Dead tests that need no power are done after a finding that forbids going on. */
const isStillDone = ({ world }: Run, { from, stage }: TestAction): boolean =>
  from === 'isolated' && stage === 'before power' && world.plant.isolated.length > 0;

/** Looking again means measuring again: what the instruments showed decides, whatever was written down. */
function endsTheWork(run: Run, action: TestAction, looksAgain: boolean): boolean {
  const samples = run.samples.filter(({ test }) => test === action.id).map(({ sample }) => sample);
  const broken = judgeExpectations(action, run.papers, { samples })
    .filter(({ finding }) => finding === 'broken')
    .map(({ expectation }) => expectation.id);
  return rejectedIn(run, action).some(
    (id) => action.stops.includes(id) && (!looksAgain || broken.includes(id)),
  );
}

/** Lines of a test that its last judgement calls otherwise than on a correct unit, by id. */
export function rejectedIn(run: Run, action: TestAction): readonly string[] {
  const should = new Map(action.expectations(run.papers).map((line) => [line.id, line.should]));
  const last = run.attempt.entries.findLast(
    (entry) => entry.kind === 'judgement' && entry.test === action.id,
  );
  return last?.kind !== 'judgement'
    ? []
    : last.lines
        .filter(({ id, judged }) => judged === NOT_AS_ON_ONE(should.get(id) === true))
        .map(({ id }) => id);
}

/** Everything that was called otherwise than on a correct unit, limits too, as findings of a conclusion. */
export const rejected = (run: Run): NotedOf<'conclusion'>['findings'] =>
  allowedActions(run.scenario).flatMap((action) => {
    const last = run.attempt.entries.findLast(
      (entry) => entry.kind === 'judgement' && entry.test === action.id,
    );
    const outside =
      last?.kind === 'judgement'
        ? last.limits.filter(({ judged }) => judged === 'outside').map(({ id }) => id)
        : [];
    return [...rejectedIn(run, action), ...new Set(outside)].map((id) => ({ test: action.id, id }));
  });
