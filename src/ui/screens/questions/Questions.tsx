/** Five minutes of questions: one on the screen at a time, each settled at once; at the end what comes back, and when. */
import { lazy, useMemo } from 'react';
import { Link } from 'wouter';
import { loaded } from '../../flow/loading.ts';
import type { OpenAttempt } from '../../flow/useOpenAttempt.ts';
import { Ask } from './Ask.tsx';
import { askedFor } from './asked.ts';
import { Ended } from './Ended.tsx';
import { HandInQuiz } from './HandInQuiz.tsx';
import { InAssessment, useAssessmentOn } from './InAssessment.tsx';
import { useSession } from './useSession.ts';
import { whyDueText } from './whyDue.ts';

/** For a tutor alone, with what writes files. */
const MakeQuiz = lazy(async () => ({
  default: (await loaded(() => import('./MakeQuiz.tsx'))).MakeQuiz,
}));

const QuestionBench = lazy(async () => ({
  default: (await loaded(() => import('./QuestionBench.tsx'))).QuestionBench,
}));

interface Props {
  /** `bench`: one of them is seen there. */
  readonly part: string | undefined;
  readonly query: URLSearchParams;
  /** None is asked while it is an assessment. */
  readonly openAttempt: OpenAttempt | null;
}

export const Questions = ({ part, ...asked }: Props) =>
  part === 'bench' ? <QuestionBench {...asked} /> : <Session {...asked} />;

function Session({ query, openAttempt }: Omit<Props, 'part'>) {
  // The same address is the same session, however often the page is drawn.
  const address = query.toString();
  const asked = useMemo(() => askedFor(new URLSearchParams(address)), [address]);
  const { now, answer, goOn, again } = useSession(asked);
  const back = { attempt: '/attempt', record: '/record', home: '/' }[asked.from ?? 'home'];
  const at = now?.session.at ?? 0;
  const of = now?.questions.length ?? asked.count;
  const assessment = useAssessmentOn(openAttempt, at);
  const isMaking = query.has('make');
  const question = isMaking ? undefined : now?.questions[at];
  const card = question === undefined ? undefined : now?.session.due[question.id];
  return (
    <div className="questions">
      <header className="head">
        <div className="head-title">
          <h1>
            {asked.set !== null
              ? asked.set.title || 'A quiz'
              : of === 10
                ? 'Five minutes of questions'
                : of === 1
                  ? 'One question'
                  : `${of} questions`}
          </h1>
          <p>
            {question === undefined ? '' : `${at + 1} of ${of} · `}
            {asked.set?.minutes == null ? '' : `about ${asked.set.minutes} minutes · `}
            <span className="head-more">made from the model · </span>
            <strong>training only</strong>
          </p>
        </div>
        <Link href={back} className="head-back">
          {asked.from === 'attempt' ? 'Back to the job' : 'Leave'}
        </Link>
      </header>
      <main>
        {assessment === undefined ? null : assessment !== null ? (
          <div className="columns">
            <InAssessment title={assessment} />
          </div>
        ) : isMaking ? (
          <MakeQuiz />
        ) : now === null ? null : question === undefined && asked.set !== null ? (
          <HandInQuiz quiz={asked.set} session={now.session} />
        ) : question === undefined ? (
          <Ended now={now} back={back} from={asked.from} onAgain={again} />
        ) : (
          <Ask
            key={question.id}
            question={question}
            answer={now.session.answers[at] ?? null}
            whyNow={card === undefined ? null : whyDueText(now.kept.cards, card)}
            isKept={now.isKept}
            isLast={at + 1 === of}
            asksSure={asked.set?.sure ?? true}
            onAnswer={answer}
            onGoOn={goOn}
          />
        )}
      </main>
    </div>
  );
}
