/**
 * One question: what is asked on top, the answers under the thumb, then how sure, which settles it, and the answer worked
 * out in place. Digits choose, Enter goes on; what is touched on a drawing or a trace may be moved until it is settled.
 */
import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import type { Sure } from '../../../attempt/record/attempt.ts';
import { SURENESS } from '../../../attempt/record/attempt.ts';
import type { Given } from '../../../quiz/given.ts';
import type { Question } from '../../../quiz/question.ts';
import type { Answer } from '../../../store/questionRecord.ts';
import { givenText, partText, stemParts } from '../../../words/questions.ts';
import { withUnits } from '../../format/withUnits.ts';
import { KeyPad } from '../../parts/KeyPad.tsx';
import { useFocus } from '../../parts/useFocus.ts';
import { StepFrame } from '../bench/StepFrame.tsx';
import { SureKeys } from '../bench/SureKeys.tsx';
import { FigureAnswer, useTypedAnswer } from './FigureAnswer.tsx';
import { optionsOf } from './options.ts';
import { PilotPlot } from './PilotPlot.tsx';
import { TouchPicture } from './TouchPicture.tsx';
import { useOnBench } from './useOnBench.ts';
import { WorkedOut } from './WorkedOut.tsx';

interface Props {
  readonly question: Question;
  /** Once it is settled. */
  readonly answer: Answer | null;
  /** Where it comes back: why. */
  readonly whyNow: string | null;
  readonly isKept: boolean;
  readonly isLast: boolean;
  /** Else an answer is locked by one press. */
  readonly asksSure: boolean;
  readonly onAnswer: (given: Given, sure: Sure) => void;
  readonly onGoOn: () => void;
}

export function Ask({ question, answer, whyNow, isKept, isLast, asksSure, onAnswer, onGoOn }: Props) {
  const [given, setGiven] = useState<Given | null>(null);
  /** Of an order: what was touched so far. */
  const [parts, setParts] = useState<readonly string[]>([]);
  const isTold = answer !== null;
  const options = given === null && !isTold ? optionsOf(question) : [];
  const heading = useFocus<HTMLHeadingElement>();
  const { given: said, about } = stemParts(question);
  const seen = useOnBench(question, isTold);
  const isTyping = question.way === 'figure' && given === null && !isTold;
  const typed = useTypedAnswer(question.way === 'figure' ? question.unit : null, setGiven);
  const field = useRef<HTMLInputElement>(null);
  // After the heading, and in its place: the question is what the field is described by.
  useLayoutEffect(() => {
    if (isTyping) field.current?.focus({ preventScroll: true });
  }, [isTyping]);

  const choose = (option: Given | string) => {
    if (typeof option !== 'string') return setGiven(option);
    const next = [...parts, option];
    setParts(next);
    if (question.way === 'order' && next.length === question.parts.length)
      setGiven({ way: 'order', parts: next });
  };
  const takeBack = () => {
    setGiven(null);
    setParts(parts.slice(0, -1));
  };
  const settle = (sure: Sure) => {
    if (given !== null && !isTold) onAnswer(given, sure);
  };

  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const { target } = event;
      const acts =
        target instanceof HTMLElement && target.matches('input, select, textarea, a, button, summary');
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (event.key === 'Enter') {
        if (isTold && !acts) onGoOn();
        return;
      }
      if (target instanceof HTMLInputElement) return;
      const number = Number(event.key) - 1;
      const option = options[number];
      const sure = SURENESS[number];
      if (option !== undefined) {
        if (!parts.includes(option.id)) choose(option.chosen);
      } else if (given !== null && asksSure && sure !== undefined) settle(sure);
    };
    document.addEventListener('keydown', onKeyDown);
    return () => document.removeEventListener('keydown', onKeyDown);
  });

  const bar =
    answer !== null ? (
      <>
        {isKept ? null : <p className="bar-line error">This device keeps nothing: a reload begins anew.</p>}
        <div className="bar-acts">
          {seen === null ? null : (
            <a className="button" href={seen}>
              See it on the bench
            </a>
          )}
          <button type="button" className="main" onClick={onGoOn}>
            {isLast ? 'What came of it' : 'Next'}
          </button>
        </div>
      </>
    ) : given !== null ? (
      <Sureness
        said={question.way === 'order' ? 'In this order' : givenText(question, given)}
        onBack={question.way === 'order' ? takeBack : () => setGiven(null)}
        asksSure={asksSure}
        onSettle={settle}
      />
    ) : isTyping ? (
      <div className="bar-acts">
        <button type="submit" className="main">
          {typed.sends}
        </button>
      </div>
    ) : options.length === 0 ? (
      <p className="bar-line">{TOUCH[question.way]}</p>
    ) : (
      <>
        <fieldset>
          <legend className="unseen">{question.way === 'order' ? 'what comes next' : 'your answer'}</legend>
          <div className={`answer-list ${options.every(({ text }) => text.length <= SHORT) ? 'short' : ''}`}>
            {options.map(({ id, text, chosen }, i) => (
              <button key={id} type="button" disabled={parts.includes(id)} onClick={() => choose(chosen)}>
                <span className="digit" aria-hidden="true">
                  {parts.includes(id) ? '✓' : i + 1}
                </span>
                <span>{withUnits(text)}</span>
              </button>
            ))}
          </div>
        </fieldset>
        {question.way === 'order' && parts.length > 0 ? (
          <button type="button" className="plain" onClick={takeBack}>
            Take back the last
          </button>
        ) : null}
      </>
    );

  return (
    <>
      <StepFrame bar={bar} {...(isTyping ? { form: { label: 'Your answer', onSubmit: typed.send } } : {})}>
        {whyNow === null ? null : <p className="note">{whyNow}</p>}
        <h2 ref={heading} tabIndex={-1} id="question">
          {withUnits(said)}
        </h2>
        {about === null ? null : <p className="asked-line">{withUnits(about)}</p>}
        {question.picture === undefined ? null : <PilotPlot picture={question.picture} />}
        <TouchPicture question={question} given={answer?.given ?? given} onGiven={isTold ? null : setGiven} />
        {isTyping ? <FigureAnswer answer={typed} field={field} /> : null}
        {question.way === 'order' && !isTold && parts.length > 0 ? (
          <ol className="so-far" aria-label="your order so far">
            {parts.map((part) => (
              <li key={part}>{withUnits(partText(question, part))}</li>
            ))}
          </ol>
        ) : null}
        {answer === null ? null : <WorkedOut question={question} answer={answer} />}
      </StepFrame>
      <KeyPad />
    </>
  );
}

/** Choices up to this many letters stand two beside each other. */
const SHORT = 18;

const TOUCH: Readonly<Record<string, string>> = {
  leads: 'Touch two terminals: a lead goes on each. A third touch moves the older lead.',
  touch: 'Touch one terminal of the drawing.',
  cursor: 'Touch the trace: the cursor goes to the nearest step. Arrow keys walk the steps.',
};

interface SurenessProps {
  readonly said: string;
  readonly asksSure: boolean;
  readonly onBack: () => void;
  readonly onSettle: (sure: Sure) => void;
}

/** Where it is not asked how sure, this stands in its place, and is not told. */
const NOT_ASKED: Sure = 'fairly-sure';

function Sureness({ said, asksSure, onBack, onSettle }: SurenessProps) {
  const heading = useFocus<HTMLHeadingElement>();
  return (
    <>
      <h3 ref={heading} tabIndex={-1} className="bar-line">
        <strong>{withUnits(said)}.</strong> {asksSure ? 'How sure? This locks.' : ''}
      </h3>
      {asksSure ? <SureKeys isReady lines={[]} onLock={onSettle} /> : null}
      <div className="bar-acts">
        <button type="button" className="plain" onClick={onBack}>
          Change it
        </button>
        {asksSure ? null : (
          <button type="button" className="main" onClick={() => onSettle(NOT_ASKED)}>
            Lock it in
          </button>
        )}
      </div>
    </>
  );
}
