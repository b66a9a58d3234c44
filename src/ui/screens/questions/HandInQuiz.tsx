/** The end of a quiz that a tutor has set: the file to hand in, then what came of it, each answer worked out. */
import { useMemo, useState } from 'react';
import { markedQuiz } from '../../../quiz/markQuiz.ts';
import type { SetQuiz } from '../../../quiz/setQuiz.ts';
import { beginQuiz, codeOf, withAnswer } from '../../../quiz/setQuiz.ts';
import type { KeptSession } from '../../../store/questionRecord.ts';
import { wellFormed } from '../../../store/wellFormed.ts';
import { stemText } from '../../../words/questions.ts';
import { recordNumber } from '../../format/figures.ts';
import { withUnits } from '../../format/withUnits.ts';
import { download } from '../../parts/download.ts';
import { TextField } from '../../parts/TextField.tsx';
import { TopicTable } from '../../parts/TopicTable.tsx';
import { useFocus } from '../../parts/useFocus.ts';
import { StepFrame } from '../bench/StepFrame.tsx';
import { WorkedOut } from './WorkedOut.tsx';

interface Props {
  readonly quiz: SetQuiz;
  readonly session: KeptSession;
}

export function HandInQuiz({ quiz, session }: Props) {
  const heading = useFocus<HTMLHeadingElement>();
  const [label, setLabel] = useState('');
  const [isWritten, setWritten] = useState(false);
  const attempt = useMemo(
    () =>
      session.answers.reduce(
        (one, { given, sure, at }, i) =>
          withAnswer(one, {
            question: session.ids[i] ?? '',
            given,
            sure: quiz.sure ? sure : null,
            wall: Math.max(0, at - session.began),
          }),
        beginQuiz(quiz, wellFormed(label).trim() === '' ? null : wellFormed(label).trim()),
      ),
    [session, quiz, label],
  );
  const marked = useMemo(() => markedQuiz(attempt), [attempt]);
  const write = () => {
    const name = ['quiz', quiz.title, label].filter((part) => part.trim() !== '').join('-');
    download(`${name.replaceAll(/[^\p{L}\p{N}-]+/gu, '-')}.json`, `${JSON.stringify(attempt)}\n`);
    setWritten(true);
  };
  return (
    <StepFrame
      bar={
        <div className="bar-acts">
          <button type="button" className="main" onClick={write}>
            {isWritten ? 'Write the file again' : 'Write the file to hand in'}
          </button>
        </div>
      }
    >
      <h2 ref={heading} tabIndex={-1}>
        {isWritten ? `${marked.right} of ${marked.of} right` : 'Every question is answered'}
      </h2>
      <p>
        record <strong className="record-number">{recordNumber(codeOf(attempt))}</strong>: note it, and hand
        the file in. Your tutor marks it by that file.
      </p>
      {isWritten ? null : (
        <TextField
          label="your name, or whatever your tutor knows you by"
          value={label}
          maxLength={80}
          onChange={setLabel}
        />
      )}
      {isWritten ? (
        <>
          <TopicTable caption="By topic" rows={marked.topics} />
          {marked.items.map(({ question, isRight }, i) => {
            const answer = session.answers[i];
            return answer === undefined ? null : (
              <details key={question.id}>
                <summary>
                  {i + 1}: {isRight ? 'right' : 'wrong'}
                </summary>
                <p>{withUnits(stemText(question))}</p>
                <WorkedOut question={question} answer={answer} isQuiet />
              </details>
            );
          })}
        </>
      ) : (
        <p className="note">What was right is told once the file is written.</p>
      )}
    </StepFrame>
  );
}
