/** The answer worked out: what was true and what was said, the sums, what was taken for what, the mechanism, the source. */
import { useId } from 'react';
import type { Sure } from '../../../attempt/record/attempt.ts';
import { isRight, mistakeOf } from '../../../quiz/given.ts';
import type { Question } from '../../../quiz/question.ts';
import type { Answer } from '../../../store/questionRecord.ts';
import { givenText, questionSource, rightAnswerText, tookText, workingOf } from '../../../words/questions.ts';
import { withUnits } from '../../format/withUnits.ts';
import { useFocus } from '../../parts/useFocus.ts';

interface Props {
  readonly question: Question;
  readonly answer: Answer;
  /** One of many: the focus stays where it is. */
  readonly isQuiet?: boolean;
}

export function WorkedOut({ question, answer, isQuiet = false }: Props) {
  const focused = useFocus<HTMLHeadingElement>();
  const heading = isQuiet ? null : focused;
  const id = useId();
  const { given, sure } = answer;
  const right = isRight(question, given);
  const truth = rightAnswerText(question);
  const said = givenText(question, given);
  const isLong = truth.length + said.length > LONG;
  const { steps, why, otherwise } = workingOf(question);
  const took = tookText(question, mistakeOf(question, given));
  return (
    <section className={right ? 'worked-out' : 'worked-out wrong'} aria-labelledby={id}>
      <h3 ref={heading} tabIndex={-1} id={id}>
        {withUnits(headingText(question, { right, truth, said, isLong }))}
      </h3>
      <dl className="told-rows">
        {isLong ? <Row name="Answer">{truth}</Row> : null}
        {isLong && !right ? <Row name="You said">{said}</Row> : null}
        {steps.map((step, i) => (
          <Row key={step} name={steps.length === 1 ? 'So' : `Step ${i + 1}`}>
            {step}
          </Row>
        ))}
        {took === null ? null : <Row name="You took">{took}</Row>}
        {why === '' ? null : <Row name="Why">{why}</Row>}
        {otherwise === null ? null : <Row name="If it were faulty">{otherwise}</Row>}
        {SETTLED[`${sure} ${right}`] === undefined ? null : (
          <Row name="How sure">{SETTLED[`${sure} ${right}`]}</Row>
        )}
        <Row name="Source">{questionSource(question)}</Row>
      </dl>
    </section>
  );
}

/** Both answers in one heading, as long as they are not longer than two lines of a phone. */
const LONG = 46;

const VERB: Readonly<Record<Question['way'], string>> = {
  figure: 'wrote',
  choice: 'chose',
  'three-answers': 'said',
  order: 'chose',
  leads: 'took',
  touch: 'touched',
  cursor: 'touched',
};

interface Told {
  readonly right: boolean;
  readonly truth: string;
  readonly said: string;
  readonly isLong: boolean;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function headingText({ way }: Question, { right, truth, said, isLong }: Told): string {
  if (isLong) return right ? 'Right' : 'Not right';
  const quoted = (text: string): string => (way === 'choice' ? `“${text}”` : text);
  return right
    ? `${quoted(capital(said))}: right`
    : `${quoted(capital(truth))}. You ${VERB[way]} ${quoted(said)}`;
}

/** Only where sureness and truth part: what was trusted wrongly, and what was known without being trusted. */
const SETTLED: Readonly<Partial<Record<`${Sure} ${boolean}`, string>>> = {
  'would-sign false': 'You would have signed for it. This one comes back soon.',
  'guessing true': 'You called it a guess, and it was right.',
};

const Row = ({ name, children }: { readonly name: string; readonly children: string | undefined }) => (
  <>
    <dt>{name}</dt>
    <dd>{withUnits(children ?? '')}</dd>
  </>
);
