/**
 * Step two of a test on the first rung: every line with its right answer filled in, and one button that locks. What a
 * correct unit does is told; what this one does is for the trainee to find.
 */
import { Why } from '../../parts/Why.tsx';
import { WordsUsed } from '../../parts/WordsUsed.tsx';
import { answerText } from '../../words/answers.ts';
import { figureText } from '../../words/figures.ts';
import type { Asking } from './Predict.tsx';
import { SUBJECT_WORDS, UNFIT } from './Predict.tsx';

interface Props extends Asking {
  readonly onLock: () => void;
}

export function Given({ heading, lines, figures, fits, onLock }: Props) {
  return (
    <div className="stack second-step">
      <h3 ref={heading} tabIndex={-1}>
        Predict
      </h3>
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
      <div className="well stack thumb">
        <div className="acts apart">
          <button type="button" className="main" disabled={!fits} onClick={onLock}>
            Lock
          </button>
          <span className="note">{fits ? 'This locks, and your set-up acts.' : UNFIT}</span>
        </div>
      </div>
    </div>
  );
}
