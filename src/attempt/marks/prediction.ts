/**
 * Prediction: the first one of every test, corrected for chance. Each kind of answer weighs the same, and what guessing
 * would have got of the lines that were answered is taken off, so that one answer to everything earns nothing, and a
 * test that was not predicted no more than that.
 */

import type { TestAction } from '../../verification/testAction.ts';
import type { Answer } from '../record/attempt.ts';
import { ANSWERS } from '../record/attempt.ts';
import { isRightFigure, linesToChooseFrom, testFigures, testLines } from '../record/lines.ts';
import type { Run } from '../record/run.ts';
import { rungOf } from '../record/rung.ts';
import { firstPrediction } from '../record/untimely.ts';
import type { Expected, PartMark, Rate } from './counted.ts';

/** Lines by the answer that is right, and figures. */
export interface PredictionSum {
  readonly lines: Readonly<Record<Answer, Rate>>;
  readonly figures: Rate;
}

interface Answered {
  readonly right: Answer;
  /** Undefined: nothing was said. */
  readonly said: Answer | undefined;
}

export function predictionMark(run: Run, { counted }: Expected): PartMark<PredictionSum> {
  const lines = counted.flatMap(({ action }) => answeredLines(run, action));
  const figures = counted.flatMap(({ action }) => figuresOf(run, action));
  const rightFigures = figures.filter(Boolean).length;
  const whole = lines.length + figures.length;
  const share = whole === 0 ? 1 : (lines.length * correctedForChance(lines) + rightFigures) / whole;
  return { share, sum: { lines: ratesOf(lines), figures: { right: rightFigures, of: figures.length } } };
}

/**
 * Share of lines answered rightly, 0 to 1: the mean over the answers that were right somewhere, less what guessing
 * among as many gets, of what guessing leaves to be earned.
 */
export function correctedForChance(lines: readonly Answered[]): number {
  const kinds = ANSWERS.map((answer) => lines.filter(({ right }) => right === answer)).filter(
    (own) => own.length > 0,
  );
  if (kinds.length === 0) return 1;
  // Where only one answer is ever right, a guess is still one among three.
  const guess = 1 / (kinds.length === 1 ? ANSWERS.length : kinds.length);
  const earned = kinds.map(
    (own) =>
      (own.filter(({ right, said }) => said === right).length -
        guess * own.filter(({ said }) => said !== undefined).length) /
      own.length,
  );
  const sum = earned.reduce((total, x) => total + x, 0) / kinds.length;
  // One answer to everything comes to nothing but for a rounding.
  return sum < 1e-9 ? 0 : sum / (1 - guess);
}

/** Where the lines that matter were chosen, one left alone is said to be one that the test cannot tell. */
function answeredLines(run: Run, action: TestAction): readonly Answered[] {
  const first = firstPrediction(run, action.id);
  const locked = first?.given === true ? undefined : first;
  const answers = new Map(locked?.lines.map(({ id, answer }) => [id, answer]));
  const isChosen = rungOf(run.scenario.support, run.attempt) === 3;
  const lines = isChosen ? linesToChooseFrom(run.scenario, action) : testLines(run.scenario, action);
  const leftAlone: Answer | undefined = isChosen && locked !== undefined ? 'cant-tell' : undefined;
  return lines.map(({ id, right }) => ({ right, said: answers.get(id) ?? leftAlone }));
}

function figuresOf(run: Run, action: TestAction): readonly boolean[] {
  const first = firstPrediction(run, action.id);
  const values = new Map(first?.given === true ? [] : first?.figures.map(({ id, value }) => [id, value]));
  return testFigures(run.scenario, action).map((figure) => isRightFigure(figure, values.get(figure.id)));
}

const ratesOf = (lines: readonly Answered[]): PredictionSum['lines'] =>
  Object.fromEntries(
    ANSWERS.map((answer): [Answer, Rate] => {
      const own = lines.filter(({ right }) => right === answer);
      return [answer, { right: own.filter(({ said }) => said === answer).length, of: own.length }];
    }),
  ) as Record<Answer, Rate>;
