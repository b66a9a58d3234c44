/**
 * Step two of a test on the third rung: ten lines, of which those that this test tells are to be found and answered;
 * the others are left alone. Then how sure, which locks and acts.
 */
import type { Answer, Sure } from '../../../attempt/attempt.ts';
import type { LessSure } from '../../flow/attemptMachine.ts';
import { WordsUsed } from '../../parts/WordsUsed.tsx';
import { answerText } from '../../words/answers.ts';
import { FigureLine } from './FigureLine.tsx';
import type { Asking } from './Predict.tsx';
import { SUBJECT_WORDS, UNFIT } from './Predict.tsx';
import { SureKeys } from './SureKeys.tsx';

const CHOICES = ['should', 'should-not'] as const;

interface Props extends Asking {
  readonly answers: Readonly<Record<string, Answer>>;
  readonly typed: Readonly<Record<string, number>>;
  /** Null takes the answer back: the line is left alone again. */
  readonly onAnswer: (id: string, answer: Answer | null) => void;
  readonly onFigure: (id: string, value: number | null) => void;
  readonly onLock: (sure: Sure, lessSure: LessSure) => void;
}

export function ChooseLines(props: Props) {
  const { heading, lines, figures, fits, answers, typed, onAnswer, onFigure, onLock } = props;
  const chosenLines = lines.filter(({ id }) => answers[id] !== undefined);
  const { length: chosen } = chosenLines;
  const isReady = chosen > 0 && figures.every(({ id }) => id in typed);
  return (
    <div className="stack second-step">
      <h3 ref={heading} tabIndex={-1}>
        Predict
      </h3>
      <p className="note">
        Set up like this … Answer the lines that this test tells. What it cannot tell, leave alone.
      </p>
      <ol className="statement-list choose-lines" aria-label="Lines to choose from">
        {lines.map(({ id, text, subject }) => (
          <li key={id}>
            <span>
              <span className="note">{SUBJECT_WORDS[subject]} </span>
              {text}
            </span>
            <span className="two-keys">
              {CHOICES.map((choice) => (
                <button
                  key={choice}
                  type="button"
                  aria-label={`${answerText(choice)}: ${text}`}
                  aria-pressed={answers[id] === choice}
                  onClick={() => onAnswer(id, answers[id] === choice ? null : choice)}
                >
                  {answerText(choice)}
                </button>
              ))}
            </span>
          </li>
        ))}
        {figures.map((wanted) => (
          <FigureLine
            key={wanted.id}
            wanted={wanted}
            value={typed[wanted.id]}
            onChange={(value) => onFigure(wanted.id, value)}
          />
        ))}
      </ol>
      <WordsUsed texts={[...lines, ...figures].map(({ text }) => text)} />
      <div className="well stack thumb">
        <h4>
          {chosen} of {lines.length} chosen. How sure locks, and your set-up acts.
        </h4>
        <SureKeys isReady={isReady && fits} lines={chosenLines} onLock={onLock} />
        {isReady ? null : <p className="note">A line and every figure first.</p>}
        {fits ? null : <p className="note">{UNFIT}</p>}
      </div>
    </div>
  );
}
