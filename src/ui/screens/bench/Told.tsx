/** In practice, after the judgement: every line and limit of this test with truth, reason and source. */

import type { EntryOf } from '../../../attempt/attempt.ts';
import { isLeftAlone, isRightFigure, testFigures } from '../../../attempt/lines.ts';
import type { Run } from '../../../attempt/run.ts';
import { entriesAbout } from '../../../attempt/run.ts';
import { lastSitting } from '../../../attempt/sitting.ts';
import { judgedRight, truthOf } from '../../../attempt/truth.ts';
import type { TestAction } from '../../../verification/testAction.ts';
import { figureInWords, limitSum, limitText, lineInWords, testTitle } from '../../../words/actions.ts';
import { sourceText } from '../../../words/sources.ts';
import type { TruthLine } from '../../parts/TruthLines.tsx';
import { isAsSaid, judgedPair, limitPair, TruthLines, whyText } from '../../parts/TruthLines.tsx';
import { answerText } from '../../words/answers.ts';
import { figureText } from '../../words/figures.ts';
import { recordOf, recordText } from '../measure/records.ts';
import { OWN_WORDS } from './Predict.tsx';
import { StepFrame } from './StepFrame.tsx';

interface Props {
  readonly run: Run;
  readonly action: TestAction;
  readonly prediction: EntryOf<'prediction'> | undefined;
  /** The same test once more, set up as it was; the first prediction counts. */
  readonly onAgain: () => void;
  readonly next: { readonly name: string; readonly go: () => void };
}

export function Told({ run, action, prediction, onAgain, next }: Props) {
  const lines = toldLines(run, action, prediction);
  const wrong = lines.filter((line) => !isAsSaid(line)).length;
  const bar = (
    <div className="bar-acts">
      <button type="button" onClick={onAgain}>
        Try this test again
      </button>
      <button type="button" className="main" onClick={next.go}>
        {next.name}
      </button>
    </div>
  );
  return (
    <StepFrame bar={bar} reads="Lines of this test">
      <p>
        <strong>
          {wrong === 0
            ? 'Every line is right.'
            : wrong === 1
              ? 'One line is not as you said.'
              : `${wrong} lines are not as you said.`}
        </strong>{' '}
        <span className="note">Judged against what you wrote down.</span>
      </p>
      <TruthLines lines={lines} foldsRight />
    </StepFrame>
  );
}

function toldLines(
  run: Run,
  action: TestAction,
  prediction: EntryOf<'prediction'> | undefined,
): readonly TruthLine[] {
  const judgement = entriesAbout(run.attempt, 'judgement', action.id).at(-1);
  const truth = truthOf(run, action, lastSitting(run, action.id));
  return [
    ...truth.lines.map((line): TruthLine => {
      const { id, text, subject, right, finding, why, otherwise, source, toldBy } = lineInWords(
        action.id,
        line,
      );
      const said = prediction?.lines.find((one) => one.id === id)?.answer;
      const judged = judgement?.lines.find((one) => one.id === id)?.judged;
      const rightly = finding === null ? undefined : judgedRight(line);
      return {
        id,
        text: `${OWN_WORDS[subject]} ${text}`,
        pairs: [
          {
            of: 'predicted',
            ...(prediction?.given
              ? { you: 'given', agrees: true }
              : isLeftAlone(run, line, prediction)
                ? { you: 'left alone', agrees: true }
                : { you: said === undefined ? 'nothing' : answerText(said) }),
            truth: answerText(right),
          },
          ...(rightly === undefined ? [] : [judgedPair(judged, rightly)]),
        ],
        why: whyText(why, toldBy.map(testTitle)),
        otherwise,
        source: sourceText(source),
      };
    }),
    ...testFigures(run.scenario, action).map((figure): TruthLine => {
      const { id, text, unit, value, tolerance, why, source } = figureInWords(action.id, figure);
      const said = prediction?.figures.find((one) => one.id === id)?.value;
      return {
        id: `figure ${id}`,
        text,
        pairs: [
          {
            of: 'predicted',
            you: prediction?.given ? 'given' : said === undefined ? 'nothing' : figureText(said, unit),
            truth: `${figureText(value, unit)}, ±${figureText(tolerance, unit)} counts as right`,
            agrees: prediction?.given === true || isRightFigure(figure, said),
          },
        ],
        why,
        source: sourceText(source),
      };
    }),
    ...truth.limits.map(({ limit, reading, right }): TruthLine => {
      const record = recordOf(run, reading);
      const judged = judgement?.limits.find((l) => l.id === limit.id && l.reading === reading)?.judged;
      return {
        id: `limit ${limit.id} ${reading}`,
        text: `${limitText(action.id, limit)}: ${record === undefined ? 'not written down' : recordText(record)}`,
        pairs: [limitPair(judged, right)],
        why: limitSum(action.id, limit),
        source: sourceText(limit.source),
      };
    }),
  ];
}
