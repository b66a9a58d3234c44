/**
 * Step two of a test on the third rung: ten lines, of which those that this test tells are to be found and answered;
 * the others are left alone. Then how sure, which locks and acts.
 */
import type { Answer, Sure } from '../../../attempt/record/attempt.ts';
import type { LessSure } from '../../flow/attemptMachine.ts';
import { WordsUsed } from '../../parts/WordsUsed.tsx';
import { FigureLine } from './FigureLine.tsx';
import { LinesAtOnce } from './LinesAtOnce.tsx';
import type { Asking } from './Predict.tsx';
import { StepFrame } from './StepFrame.tsx';
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
  const { lines, figures, answers, typed, onAnswer, onFigure, onLock, onBack } = props;
  const chosenLines = lines.filter(({ id }) => answers[id] !== undefined);
  const { length: chosen } = chosenLines;
  const isReady = chosen > 0 && figures.every(({ id }) => id in typed);
  const bar = (
    <>
      <h4 className="bar-line">
        {chosen} of {lines.length} chosen. How sure locks, and your set-up acts.
      </h4>
      <SureKeys isReady={isReady} lines={chosenLines} onLock={onLock} />
      <div className="bar-acts">
        <button type="button" className="plain" onClick={onBack}>
          Back to the set-up
        </button>
        {isReady ? null : <span className="note">A line and every figure first.</span>}
      </div>
    </>
  );
  return (
    <StepFrame bar={bar}>
      <p className="note">
        Set up like this … Answer the lines that this test tells. What it cannot tell, leave alone.
      </p>
      <ol className="statement-list choose-lines" aria-label="Lines to choose from">
        <LinesAtOnce lines={lines} answers={answers} among={CHOICES} onAnswer={onAnswer} />
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
    </StepFrame>
  );
}
