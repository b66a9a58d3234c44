/** How each part of the marks comes about, and what was wanting to pass, in words. */

import type { Rate } from '../attempt/marks/counted.ts';
import type { DiagnosisSum, Grade } from '../attempt/marks/diagnosis.ts';
import type { Hurdle } from '../attempt/marks/hurdles.ts';
import type { Marks } from '../attempt/marks/mark.ts';
import type { ObservationSum } from '../attempt/marks/observation.ts';
import type { PredictionSum } from '../attempt/marks/prediction.ts';
import type { ReasonsSum } from '../attempt/marks/reasons.ts';
import type { PartName } from '../scenario/tasks.ts';

export const HURDLE_WORDS: Readonly<Record<Hurdle, string>> = {
  verdict: 'the verdict is not the right one',
  judgement:
    'judgement is under 60 %, or under half of one kind of line: of those that were wrong, of what the unit did, or of what it did not',
  diagnosis: 'diagnosis is under half',
  prediction: 'prediction is under half, with guessing taken off',
  observation: 'fewer than half of the readings, or of those with a figure other than 0, are typed as shown',
};

const of = ({ right, of: all }: Rate): string => `${right} of ${all}`;

/** The sum alone, without the part and its marks. */
export function sumText({ sums }: Pick<Marks, 'sums'>, part: PartName): string {
  switch (part) {
    case 'prediction':
      return sums.prediction === null ? 'given, not marked' : predictionText(sums.prediction);
    case 'observation':
      return sums.observation.of === 0 ? 'nothing to read' : observationText(sums.observation);
    case 'judgement': {
      const { accepted, rejected } = sums.judgement;
      const wrong = rejected.of === 0 ? 'nothing to reject' : `rejected ${of(rejected)}`;
      return `accepted ${of(accepted)}, ${wrong}`;
    }
    case 'record': {
      const { written, leftOut } = sums.record;
      const reasons = leftOut.of === 0 ? '' : `, left out with a true reason ${of(leftOut)}`;
      return `${written.of === 0 ? 'nothing to write down' : `written in full ${of(written)}`}${reasons}`;
    }
    case 'diagnosis':
      return diagnosisText(sums.diagnosis);
    case 'reasons':
      return sums.reasons === null ? 'nothing concluded' : reasonsText(sums.reasons);
  }
}

const observationText = ({ right, of: all, figures }: ObservationSum): string =>
  `typed as shown ${of({ right, of: all })}${figures.of === 0 || figures.of === all ? '' : ` (figures other than 0: ${of(figures)})`}`;

/** Every part's sum as `mark` prints it: "judgement 18.8 of 30: accepted 171 of 171, rejected 1 of 4". */
export const sumsInWords = (marks: Marks): Readonly<Record<PartName, string>> =>
  Object.fromEntries(
    (Object.keys(marks.parts) as PartName[]).map((part) => {
      const isGiven = part === 'prediction' && marks.sums.prediction === null;
      const earned = isGiven ? '' : ` ${marks.parts[part]} of ${marks.weights[part]}`;
      return [part, `${part}${earned}: ${sumText(marks, part)}`];
    }),
  ) as Record<PartName, string>;

function predictionText({ lines, figures }: PredictionSum): string {
  const kinds = [
    ['should', lines.should],
    ['should not', lines['should-not']],
    ['can’t tell', lines['cant-tell']],
    ['figures', figures],
  ] as const;
  const asked = kinds.filter(([, rate]) => rate.of > 0).map(([name, rate]) => `${name} ${of(rate)}`);
  return asked.length === 0 ? 'nothing to predict' : `${asked.join(', ')}; less what guessing would get`;
}

const GRADE_WORDS: Readonly<Record<Grade, string>> = {
  right: 'the fault, or what reads the same',
  block: 'the right block, not the fault',
  guessed: 'no test that was done speaks for it',
  wrong: 'another cause than what is wrong',
};

const DESIGNED_WORDS: Readonly<Record<Grade, string>> = {
  ...GRADE_WORDS,
  right: 'what the papers say of it',
  block: 'nothing wrong, without what the papers say of it',
  wrong: 'another cause than what the papers say of it',
};

function diagnosisText(sum: DiagnosisSum): string {
  switch (sum.said) {
    case 'none':
      return 'nothing concluded';
    case 'something is wrong':
      return 'something is wrong';
    case 'nothing is wrong':
      return 'nothing is wrong';
    case 'nothing':
      return `nothing found to be wrong, with ${of(sum.done)} tests done`;
    case 'as designed':
      return `${DESIGNED_WORDS[sum.grade]}, with ${of(sum.done)} tests done`;
    case 'causes': {
      const all = sum.faults > 1 ? ` (${sum.faults} faults in all)` : '';
      return `${sum.grades.map((grade) => GRADE_WORDS[grade]).join('; ')}${all}`;
    }
  }
}

const rightOr = (isRight: boolean): string => (isRight ? 'right' : 'not right');

const reasonsText = ({ findings, next, tell, repeats, rests }: ReasonsSum): string =>
  [
    findings === null
      ? 'no finding holds for this verdict'
      : findings.of === 0
        ? 'no finding named'
        : `findings that hold ${of(findings)}`,
    ...(next === null ? [] : [`what next ${rightOr(next)}`]),
    ...(tell === null ? [] : [`whom to tell ${rightOr(tell)}`]),
    ...(repeats === null ? [] : [`tests to repeat ${Math.round(100 * repeats)} %`]),
    ...(rests === null ? [] : [`resting on ${of(rests)} tests`]),
  ].join(', ');
