/** A figure and its unit; typed behind the figure the unit counts too, as in `32 A`. */
import type { RefObject } from 'react';
import { useState } from 'react';
import type { Given, GivenUnit } from '../../../quiz/given.ts';
import { unitsMeant } from '../../../quiz/given.ts';
import type { AskedUnit } from '../../../quiz/question.ts';
import { typedNumber } from '../../format/figures.ts';
import { FigureInput } from '../../parts/FigureInput.tsx';
import { Keys } from '../../parts/Keys.tsx';

export interface TypedAnswer {
  readonly units: readonly GivenUnit[];
  readonly text: string;
  readonly unit: GivenUnit | null;
  readonly problem: string | null;
  readonly type: (text: string) => void;
  readonly choose: (unit: GivenUnit) => void;
  readonly send: () => void;
  /** What the button does. */
  readonly sends: string;
}

/** Small letters will do, but for what tells mega from milli. */
function typed(
  text: string,
  units: readonly GivenUnit[],
): { readonly figure: string; readonly unit: GivenUnit | null } {
  const [, figure = text, letters = ''] = /^(.*?\d)\s*(\p{L}+|%)$/u.exec(text.trim()) ?? [];
  const plain = letters.replace(/ohm$/i, 'Ω');
  const unit =
    units.find((one) => one === plain) ?? units.find((one) => one.toLowerCase() === plain.toLowerCase());
  return unit === undefined ? { figure: text, unit: null } : { figure, unit };
}

/** `unit`: the one that was asked; null where no figure is. */
export function useTypedAnswer(asked: AskedUnit | null, onGiven: (given: Given) => void): TypedAnswer {
  const [text, setText] = useState('');
  const [own, setOwn] = useState<GivenUnit | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const units = asked === null ? [] : unitsMeant(asked);
  const told = typed(text, units);
  const unit = told.unit ?? own;
  const value = typedNumber(told.figure);
  return {
    units,
    text,
    unit,
    problem,
    type: (next) => {
      setText(next);
      setProblem(null);
    },
    choose: (one) => {
      setOwn(one);
      setText(told.figure);
      setProblem(null);
    },
    send: () => {
      if (value === null) setProblem('A figure is expected, as 31.5 or 31,5.');
      else if (unit === null) setProblem('Choose the unit that belongs to the figure.');
      else onGiven({ way: 'figure', value, unit });
    },
    sends: value === null || unit === null ? 'Answer' : `Answer ${told.figure.trim()} ${unit}`,
  };
}

interface Props {
  readonly answer: TypedAnswer;
  readonly field: RefObject<HTMLInputElement | null>;
}

export function FigureAnswer({ answer, field }: Props) {
  const { units, text, unit, problem, type, choose } = answer;
  return (
    <div className="figure-answer">
      <div className="figure-row">
        <label htmlFor="answer-figure" className="unseen">
          your answer
        </label>
        <FigureInput
          id="answer-figure"
          ref={field}
          value={text}
          maxLength={20}
          aria-describedby={problem === null ? 'question' : 'question answer-problem'}
          aria-invalid={problem !== null}
          onChange={(event) => type(event.target.value)}
        />
        <Keys legend={<span className="unseen">unit</span>} options={units} value={unit} onChange={choose} />
      </div>
      {problem === null ? null : (
        <p className="error" id="answer-problem" role="alert">
          <strong>Not taken.</strong>
          {problem}
        </p>
      )}
    </div>
  );
}
