/**
 * Step two of a test: one line at a time, should, should not or can't tell, or all of them at once, where one press says the
 * same of every line that is left; figures typed; then how sure, which locks and acts. Keys 1 to 3 answer while the focus is in the list or on the answers.
 */

import type { KeyboardEvent } from 'react';
import { useLayoutEffect, useRef, useState } from 'react';
import type { Answer, Sure } from '../../../attempt/record/attempt.ts';
import { ANSWERS } from '../../../attempt/record/attempt.ts';
import type { Line } from '../../../attempt/record/lines.ts';
import type { Figure } from '../../../verification/testAction.ts';
import type { InWords } from '../../../words/actions.ts';
import { answerText } from '../../../words/answers.ts';
import { SUBJECT_WORDS } from '../../../words/subjects.ts';
import type { LessSure } from '../../flow/attemptMachine.ts';
import { OF_JOB } from '../../flow/draftFields.ts';
import { useKept } from '../../flow/useKept.ts';
import { takeFocus } from '../../parts/useFocus.ts';
import { WordsUsed } from '../../parts/WordsUsed.tsx';
import { FigureLine } from './FigureLine.tsx';
import { LinesAtOnce } from './LinesAtOnce.tsx';
import { StepFrame } from './StepFrame.tsx';
import { SureKeys } from './SureKeys.tsx';

/** What all ways of predicting have in common. */
export interface Asking {
  readonly lines: readonly InWords<Line>[];
  readonly figures: readonly InWords<Figure>[];
  /** To what was set up. */
  readonly onBack: () => void;
}

interface Props extends Asking {
  readonly answers: Readonly<Record<string, Answer>>;
  readonly typed: Readonly<Record<string, number>>;
  /** Null takes the answer back. */
  readonly onAnswer: (id: string, answer: Answer | null) => void;
  readonly onFigure: (id: string, value: number | null) => void;
  readonly onLock: (sure: Sure, lessSure: LessSure) => void;
}

export function Predict(props: Props) {
  const { lines, figures, answers, typed, onAnswer, onFigure, onLock, onBack } = props;
  const firstOpen = lines.findIndex(({ id }) => answers[id] === undefined);
  const [at, setAt] = useState(firstOpen < 0 ? lines.length : firstOpen);
  const place = useRef<HTMLLIElement>(null);
  const figurePlace = useRef<HTMLInputElement>(null);
  const surePlace = useRef<HTMLHeadingElement>(null);
  const moved = useRef(false);
  const [asked, setAsked] = useKept(`${OF_JOB}lines asked`, '', ['', 'at once']);
  const isAtOnce = asked === 'at once';
  const open = lines.filter(({ id }) => answers[id] === undefined);
  const line = isAtOnce ? undefined : lines[at];
  const isAsking = isAtOnce ? open.length > 0 : line !== undefined;

  // The focus goes with the open line, so that it is read aloud and stays above the keys.
  useLayoutEffect(() => {
    if (!moved.current) return;
    const isOpen = isAtOnce ? isAsking : at < lines.length;
    takeFocus(isOpen ? place.current : (figurePlace.current ?? surePlace.current));
  }, [at, lines.length, isAtOnce, isAsking]);

  const go = (to: number) => {
    moved.current = true;
    setAt(to);
  };
  const say = (answer: Answer | undefined) => {
    if (line === undefined || answer === undefined) return;
    onAnswer(line.id, answer);
    go(at + 1);
  };
  const sayOfAll = (answer: Answer) => {
    moved.current = true;
    for (const { id } of open) onAnswer(id, answer);
  };
  const ask = (how: string) => {
    setAsked(how);
    moved.current = false;
    setAt(open[0] === undefined ? lines.length : lines.indexOf(open[0]));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const isTyping = event.target instanceof HTMLInputElement;
    if (isTyping || event.ctrlKey || event.metaKey || event.altKey) return;
    say({ 1: ANSWERS[0], 2: ANSWERS[1], 3: ANSWERS[2] }[event.key]);
  };
  const complete =
    lines.every(({ id }) => answers[id] !== undefined) && figures.every(({ id }) => id in typed);

  const back = (
    <button
      type="button"
      className="plain"
      onClick={() => (at === 0 || isAtOnce ? onBack() : go(Math.min(at, lines.length) - 1))}
    >
      {at === 0 || isAtOnce ? 'Back to the set-up' : 'Back a line'}
    </button>
  );
  const bar = !isAsking ? (
    <>
      <h4 ref={surePlace} tabIndex={-1} className="bar-line">
        How sure are you of all of it? This locks, and your set-up acts.
      </h4>
      <SureKeys isReady={complete} lines={lines} onLock={onLock} />
      <div className="bar-acts">
        {back}
        {complete ? null : <span className="note">Every line and figure is needed first.</span>}
      </div>
    </>
  ) : (
    <>
      <fieldset>
        <legend className="unseen">
          {line === undefined ? 'every line left' : `${SUBJECT_WORDS[line.subject]} ${line.text}`}
        </legend>
        <div className="answer-keys">
          {ANSWERS.map((answer) => (
            <button
              key={answer}
              type="button"
              onClick={() => (line === undefined ? sayOfAll(answer) : say(answer))}
            >
              {answerText(answer)}
              {line === undefined ? (
                <small>{open.length === 1 ? 'the last line' : `all ${open.length} left`}</small>
              ) : answer === 'cant-tell' ? (
                <small>from this test</small>
              ) : null}
            </button>
          ))}
        </div>
      </fieldset>
      <div className="bar-acts">
        {back}
        {lines.length < 2 ? null : (
          <button type="button" className="plain" onClick={() => ask(isAtOnce ? '' : 'at once')}>
            {isAtOnce ? 'Line by line' : 'All lines at once'}
          </button>
        )}
        {line === undefined ? null : (
          <span className="lettering">
            line {at + 1} of {lines.length} · keys 1 to 3
          </span>
        )}
      </div>
    </>
  );

  return (
    <StepFrame bar={bar} onKeyDown={onKeyDown}>
      <p className="note">Set up like this …</p>
      <ol
        className={isAtOnce ? 'statement-list choose-lines' : 'statement-list'}
        aria-label="Lines to predict"
      >
        {isAtOnce ? <LinesAtOnce lines={lines} answers={answers} onAnswer={onAnswer} /> : null}
        {(isAtOnce ? [] : lines).map(({ id, text, subject }, i) => (
          <li
            key={id}
            ref={i === at ? place : null}
            tabIndex={i === at ? -1 : undefined}
            className={i === at ? 'now' : answers[id] === undefined ? 'to-come' : ''}
            aria-current={i === at ? 'true' : undefined}
          >
            <span>
              <span className="note">{SUBJECT_WORDS[subject]} </span>
              {text}
            </span>
            {answers[id] === undefined ? null : (
              <button type="button" className="plain said" onClick={() => go(i)}>
                <span className="unseen">Change: </span>
                {answerText(answers[id])}
              </button>
            )}
          </li>
        ))}
        {figures.map((wanted, i) => (
          <FigureLine
            key={wanted.id}
            wanted={wanted}
            value={typed[wanted.id]}
            onChange={(value) => onFigure(wanted.id, value)}
            {...(i === 0 ? { inputRef: figurePlace } : {})}
          />
        ))}
      </ol>
      <WordsUsed texts={[...lines, ...figures].map(({ text }) => text)} />
    </StepFrame>
  );
}
