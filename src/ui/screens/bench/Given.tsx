/**
 * Step two of a test on the first rung: every line with its right answer filled in, and one button that locks. What a
 * correct unit does is told; what this one does is for the trainee to find.
 */

import { answerText } from '../../../words/answers.ts';
import { SUBJECT_WORDS } from '../../../words/subjects.ts';
import { figureText } from '../../format/figures.ts';
import { Why } from '../../parts/Why.tsx';
import { WordsUsed } from '../../parts/WordsUsed.tsx';
import type { Asking } from './Predict.tsx';
import { StepFrame } from './StepFrame.tsx';

interface Props extends Asking {
  readonly onLock: () => void;
}

export function Given({ lines, figures, onLock, onBack }: Props) {
  const bar = (
    <>
      <p className="bar-line">This locks, and your set-up acts.</p>
      <div className="bar-acts">
        <button type="button" onClick={onBack}>
          Back
        </button>
        <button type="button" className="main" onClick={onLock}>
          Lock
        </button>
      </div>
    </>
  );
  return (
    <StepFrame bar={bar}>
      <p className="note">Set up like this … Filled in for you: what is right of a correct one.</p>
      <ol className="statement-list given" aria-label="Lines, filled in">
        {lines.map((line) => (
          <li key={line.id}>
            <div>
              <span className="note">{SUBJECT_WORDS[line.subject]} </span>
              {line.text}
              <Why line={line} />
            </div>
            <strong>{answerText(line.right)}</strong>
          </li>
        ))}
        {figures.map((figure) => (
          <li key={figure.id}>
            <div>
              {figure.text}
              <Why line={figure} />
            </div>
            <strong>{figureText(figure.value, figure.unit)}</strong>
          </li>
        ))}
      </ol>
      <WordsUsed texts={[...lines, ...figures].map(({ text }) => text)} />
    </StepFrame>
  );
}
