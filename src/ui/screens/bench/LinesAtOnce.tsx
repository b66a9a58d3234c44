/** Lines that are answered in any order, each by keys of its own; pressed once more, the answer is taken back. */
import type { Answer } from '../../../attempt/record/attempt.ts';
import { ANSWERS } from '../../../attempt/record/attempt.ts';
import type { Line } from '../../../attempt/record/lines.ts';
import type { InWords } from '../../../words/actions.ts';
import { answerText } from '../../../words/answers.ts';
import { SUBJECT_WORDS } from '../../../words/subjects.ts';

interface Props {
  readonly lines: readonly InWords<Line>[];
  readonly answers: Readonly<Record<string, Answer>>;
  /** Those that a line may get. */
  readonly among?: readonly Answer[];
  readonly onAnswer: (id: string, answer: Answer | null) => void;
}

export const LinesAtOnce = ({ lines, answers, among = ANSWERS, onAnswer }: Props) =>
  lines.map(({ id, text, subject }) => (
    <li key={id}>
      <span>
        <span className="note">{SUBJECT_WORDS[subject]} </span>
        {text}
      </span>
      <span className="two-keys">
        {among.map((answer) => (
          <button
            key={answer}
            type="button"
            aria-label={`${answerText(answer)}: ${text}`}
            aria-pressed={answers[id] === answer}
            onClick={() => onAnswer(id, answers[id] === answer ? null : answer)}
          >
            {answerText(answer)}
          </button>
        ))}
      </span>
    </li>
  ));
