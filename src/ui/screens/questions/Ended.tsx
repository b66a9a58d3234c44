/** The end of a session: what came out by topic, what comes back and when, and the day by which all is to be known. */
import { useState } from 'react';
import { Link } from 'wouter';
import { isRight } from '../../../quiz/given.ts';
import { isSafetyTopic } from '../../../quiz/safety.ts';
import { AIMS } from '../../../scenario/aims.ts';
import { keepAssessment } from '../../../store/keepQuestions.ts';
import { backText } from '../../format/backText.ts';
import { TextField } from '../../parts/TextField.tsx';
import type { TopicRow } from '../../parts/TopicTable.tsx';
import { TopicTable } from '../../parts/TopicTable.tsx';
import { useFocus } from '../../parts/useFocus.ts';
import { StepFrame } from '../bench/StepFrame.tsx';
import type { AskedFor } from './asked.ts';
import type { Session } from './useSession.ts';

interface Props {
  readonly now: Session;
  readonly back: string;
  readonly from: AskedFor['from'];
  readonly onAgain: () => void;
}

export function Ended({ now, back, from, onAgain }: Props) {
  const heading = useFocus<HTMLHeadingElement>();
  const { questions, session, kept } = now;
  const settled = questions.flatMap((question, i) => {
    const answer = session.answers[i];
    return answer === undefined
      ? []
      : [{ question, right: isRight(question, answer.given), sure: answer.sure === 'would-sign' }];
  });
  const count = settled.filter(({ right }) => right).length;
  const sureAndWrong = settled.filter(({ right, sure }) => sure && !right).length;
  const [moment] = useState(() => Date.now());
  const [assessment, setAssessment] = useState(kept.assessment);
  const rows = AIMS.flatMap(({ id }): readonly TopicRow[] => {
    const of = settled.filter(({ question }) => question.topic === id);
    const card = kept.cards.find(({ topic, kind }) => topic === id && kind === null);
    if (of.length === 0) return [];
    return [
      {
        topic: id,
        right: of.filter(({ right }) => right).length,
        of: of.length,
        back: card === undefined ? '–' : backText(card, assessment, moment),
        beside: isSafetyTopic(id) ? <span className="note"> keeps you safe: asked sooner</span> : null,
      },
    ];
  });
  return (
    <StepFrame
      reads="What came of it"
      bar={
        <div className="bar-acts">
          <Link href={back} className="button">
            {from === 'attempt' ? 'Back to the job' : from === 'record' ? 'Back to my record' : 'Leave'}
          </Link>
          <button type="button" className="main" onClick={onAgain}>
            {questions.length} more
          </button>
        </div>
      }
    >
      <h2 ref={heading} tabIndex={-1}>
        {count} of {settled.length} right
      </h2>
      <p className="note">
        {sureAndWrong === 0
          ? 'You would not have signed for anything wrong.'
          : `You would have signed for ${sureAndWrong === 1 ? 'one answer that was' : `${sureAndWrong} answers that were`} wrong.`}{' '}
        What you had wrong comes back soon, what you knew later each time.
      </p>
      <TopicTable caption="By topic" rows={rows} />
      <AssessmentDay kept={assessment} onChange={setAssessment} />
      <p>
        <a href="#/questions?make=quiz" className="lone">
          Set a quiz for others
        </a>
      </p>
    </StepFrame>
  );
}

/** `2026-12-24` at noon of this device; null where that is no day. */
function dayTyped(text: string): number | null {
  const [, y = '', m = '', d = ''] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text.trim()) ?? [];
  const date = new Date(Number(y), Number(m) - 1, Number(d), 12);
  return y !== '' && date.getMonth() === Number(m) - 1 ? date.getTime() : null;
}

const dayWritten = (moment: number): string => {
  const date = new Date(moment);
  return [date.getFullYear(), date.getMonth() + 1, date.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-');
};

interface DayProps {
  readonly kept: number | null;
  readonly onChange: (day: number | null) => void;
}

/** Nothing is put off beyond the day before it. */
function AssessmentDay({ kept, onChange }: DayProps) {
  const [text, setText] = useState(kept === null ? '' : dayWritten(kept));
  const [problem, setProblem] = useState<string | null>(null);
  const change = (next: string) => {
    setText(next);
    const day = next.trim() === '' ? null : dayTyped(next);
    const isWhole = next.trim() === '' || day !== null;
    setProblem(isWhole ? null : 'A day is expected, as 2027-03-24.');
    if (isWhole) onChange(day);
    if (isWhole)
      keepAssessment(day).catch(() => setProblem('This device keeps nothing, so this day is not kept.'));
  };
  return (
    <TextField
      label="Day of your assessment, if there is one: all comes back by the day before (year-month-day)"
      value={text}
      maxLength={10}
      error={problem}
      onChange={change}
    />
  );
}
