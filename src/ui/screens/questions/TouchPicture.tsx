/** What is touched in a question: a trace, one terminal of the drawing, or two for the leads. Nothing where nothing is. */
import { useMemo, useState } from 'react';
import type { Terminal } from '../../../bench/terminals.ts';
import type { Given } from '../../../quiz/given.ts';
import type { Question } from '../../../quiz/question.ts';
import { askedTrace } from './askedTrace.ts';
import { TouchDrawing } from './TouchDrawing.tsx';
import { TouchTrace } from './TouchTrace.tsx';

interface Props {
  readonly question: Question;
  readonly given: Given | null;
  /** Null: it is settled. */
  readonly onGiven: ((given: Given | null) => void) | null;
}

export function TouchPicture({ question, given, onGiven }: Props) {
  switch (question.way) {
    case 'cursor':
      return <OnTrace question={question} given={given} onGiven={onGiven} />;
    case 'touch':
      return (
        <TouchDrawing
          drawing={question.drawing}
          touched={given?.way === 'touch' ? [given.terminal] : []}
          words="your touch"
          onTouch={onGiven === null ? null : (terminal) => onGiven({ way: 'touch', terminal })}
          onTakeOff={() => onGiven?.(null)}
        />
      );
    case 'leads':
      return <WithLeads question={question} given={given} onGiven={onGiven} />;
    default:
      return null;
  }
}

type Of<W extends Question['way']> = Omit<Props, 'question'> & {
  readonly question: Extract<Question, { way: W }>;
};

function OnTrace({ question, given, onGiven }: Of<'cursor'>) {
  const trace = useMemo(() => askedTrace(question.trace), [question]);
  return (
    <TouchTrace
      trace={trace}
      at={given?.way === 'cursor' ? given.at : null}
      onTouch={onGiven === null ? null : (at) => onGiven({ way: 'cursor', at })}
    />
  );
}

/** The older lead goes where a third touch is. */
function WithLeads({ question, given, onGiven }: Of<'leads'>) {
  const [on, setOn] = useState<readonly Terminal[]>([]);
  const touched = given?.way === 'leads' && onGiven === null ? given.pair : on;
  const put = (next: readonly Terminal[]) => {
    setOn(next);
    const [a, b] = next;
    onGiven?.(a === undefined || b === undefined ? null : { way: 'leads', pair: [a, b] });
  };
  return (
    <TouchDrawing
      drawing={question.drawing}
      touched={touched}
      words="your leads"
      onTouch={
        onGiven === null
          ? null
          : (terminal) => {
              if (!on.includes(terminal)) put([...on.slice(-1), terminal]);
            }
      }
      onTakeOff={(terminal) => put(on.filter((one) => one !== terminal))}
    />
  );
}
