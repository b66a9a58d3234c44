/**
 * The truth about one sitting of a test: the right prediction and the right judgement of every line, and of every
 * limit, held against what was typed. Marks, feedback and debrief all take it from here.
 */
import type { Reading } from '../../bench/reading.ts';
import type { Family } from '../../faults/families.ts';
import { judgeLimit } from '../../verification/judgeLimit.ts';
import { onPapers } from '../../verification/onPapers.ts';
import type { Finding, Limit, TestAction } from '../../verification/testAction.ts';
import type { Answer, Judged, LimitJudged } from './attempt.ts';
import type { Line } from './lines.ts';
import { linesToChooseFrom, testLines } from './lines.ts';
import { oncePerRun } from './once.ts';
import type { Run } from './run.ts';
import { rungOf } from './rung.ts';
import type { Sitting } from './sitting.ts';
import { keyOfSitting, readingsIn } from './sitting.ts';
import { asTyped, narrowed, observedAsTyped, typedBefore } from './typed.ts';
import { firstPrediction } from './untimely.ts';

export interface TruthOfLine extends Line {
  /** Null where the line is not one to be judged. */
  readonly finding: Finding | null;
  readonly points: readonly Family[];
}

export interface TruthOfLimit {
  readonly limit: Limit;
  /** Index among all readings of the attempt, and the reading as typed. */
  readonly reading: number;
  readonly typed: Reading;
  /** The typed figure by itself, without its uncertainty, keeps the limit. */
  readonly pass: boolean;
  readonly right: LimitJudged;
}

export interface TruthOfTest {
  readonly lines: readonly TruthOfLine[];
  readonly limits: readonly TruthOfLimit[];
}

/** By the unit as it was in that sitting. */
export const truthOf = (run: Run, action: TestAction, sitting: Sitting): TruthOfTest =>
  truthOnce(run, action, narrowed(run, sitting));

const truthOnce = oncePerRun(
  (run: Run, action: TestAction, sitting: Sitting): TruthOfTest => {
    const observed = observedAsTyped(run, sitting);
    const { expectationById } = onPapers(action, run.papers);
    return {
      lines: answerable(run, action).map((line) => {
        const expectation = line.judged ? expectationById.get(line.id) : undefined;
        return {
          ...line,
          finding: expectation?.judge(observed) ?? null,
          points: expectation?.points ?? [],
        };
      }),
      limits: limitsOf(run, action, sitting),
    };
  },
  (action, sitting) => `${action.id} ${keyOfSitting(sitting)}`,
);

/** The test's own lines; where they were to be chosen, also those of others that the trainee took for its own. */
function answerable(run: Run, action: TestAction): readonly Line[] {
  const { scenario, attempt } = run;
  const own = testLines(scenario, action);
  if (rungOf(scenario.support, attempt) !== 3) return own;
  const answered = firstPrediction(run, action.id)?.lines.map(({ id }) => id) ?? [];
  return linesToChooseFrom(scenario, action).filter(
    ({ id }) => answered.includes(id) || own.some((line) => line.id === id),
  );
}

/** Every reading of the sitting that one of the test's limits applies to. */
export function limitsOf(run: Run, action: TestAction, sitting: Sitting): readonly TruthOfLimit[] {
  const typed = typedBefore(run, sitting.told);
  const observed = observedAsTyped(run, sitting);
  const readings = readingsIn(run, sitting);
  return onPapers(action, run.papers).limits.flatMap((limit) =>
    readings.flatMap(({ reading, index }) => {
      if (reading.qualifier === 'unable' || !limit.applies(reading, observed)) return [];
      const entry = typed.get(index);
      const asRead = entry === undefined ? reading : asTyped(reading, entry);
      const { pass, tooClose } = judgeLimit(limit, asRead);
      const right: LimitJudged = tooClose ? 'too-close' : pass ? 'within' : 'outside';
      return [{ limit, reading: index, typed: asRead, pass, right }];
    }),
  );
}

/**
 * What is rightly said of a judged line: that the unit did what it should, or did not what it should not, where the line
 * is met; the other way where it is broken.
 */
export function judgedRight({ finding, right }: Pick<TruthOfLine, 'finding' | 'right'>): Judged {
  if (finding === null || finding === 'not shown') return 'not-shown';
  return (finding === 'met') === (right === 'should') ? 'did' : 'did-not';
}

/** Whether a line was judged to be as it was said beforehand that it should be. */
export const isJudgedAsSaid = (answer: Answer | undefined, judged: Judged): boolean =>
  (answer === 'should' && judged === 'did') || (answer === 'should-not' && judged === 'did-not');
