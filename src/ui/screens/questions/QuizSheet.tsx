/** A quiz on paper: the questions with room for the answers, or the key. The sheet never carries what the key does. */
import type { Question } from '../../../quiz/question.ts';
import type { SetQuiz } from '../../../quiz/setQuiz.ts';
import { questionSource, rightAnswerText, stemText, workedOut } from '../../../words/questions.ts';
import { optionsText } from '../../../words/quizRows.ts';
import { withUnits } from '../../format/withUnits.ts';
import { TitleBlock } from '../../parts/TitleBlock.tsx';
import { PilotPlot } from './PilotPlot.tsx';
import { TouchPicture } from './TouchPicture.tsx';

interface Props {
  readonly quiz: SetQuiz;
  readonly questions: readonly Question[];
  readonly isKey: boolean;
}

export function QuizSheet({ quiz, questions, isKey }: Props) {
  return (
    <section className="quiz-sheet" aria-hidden="true">
      <TitleBlock
        rows={[
          ['job', `${quiz.title || 'Questions'}${isKey ? ', KEY' : ''}`],
          ['rules', 'as each source says'],
          ['meant to take', quiz.minutes === null ? 'no time set' : `about ${quiz.minutes} minutes`],
          // Whoever has the seed can print the key.
          ['record', isKey ? `seed ${quiz.seed}` : 'marked by the key'],
        ]}
        framed
      />
      {isKey ? null : (
        <dl className="to-write">
          <dt>your label</dt>
          <dd />
        </dl>
      )}
      <ol>
        {questions.map((question) => (
          <li key={question.id}>
            <p>{withUnits(stemText(question))}</p>
            {question.picture === undefined ? null : <PilotPlot picture={question.picture} />}
            <TouchPicture question={question} given={null} onGiven={null} />
            <Answers question={question} />
            {isKey ? (
              <p>
                <strong>{withUnits(rightAnswerText(question))}</strong>.{' '}
                {withUnits(workedOut(question).join(' '))} {questionSource(question)}
              </p>
            ) : null}
          </li>
        ))}
      </ol>
    </section>
  );
}

function Answers({ question }: { readonly question: Question }) {
  const options = optionsText(question);
  if (question.way === 'figure') return <p>Answer: ______________ (with its unit)</p>;
  if (options.length === 0) return <p>Mark it on the drawing.</p>;
  return (
    <ul>
      {options.map((text) => (
        <li key={text}>
          {question.way === 'order' ? '__' : '☐'} {withUnits(text)}
        </li>
      ))}
    </ul>
  );
}
