/** For the next lesson: two things at most, in the words of the line and of the aim, with how many and how sure. */
import { Link } from 'wouter';
import type { Class, LeftOut, PassedOver } from '../../../desk/class.ts';
import type { Row } from '../../../desk/collect.ts';
import { aimOf } from '../../../scenario/aims.ts';
import { lineInWords, testPurpose } from '../../../words/actions.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import { JUDGED_WORDS } from '../../../words/answers.ts';
import { OWN_WORDS } from '../../../words/subjects.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { addressToShow } from './place.ts';

interface Props {
  readonly made: Class;
  readonly isShown: boolean;
  readonly placeOf: (row: Row) => number;
  readonly onShow: () => void;
}

export function Lessons({ made, isShown, placeOf, onShow }: Props) {
  const [over] = made.passedOver;
  const [left] = made.leftOut;
  if (over === undefined && left === undefined) return null;
  return (
    <section className="stack" aria-labelledby="lesson-heading">
      <h2 id="lesson-heading">For the next lesson</h2>
      <div className="lessons">
        {over === undefined ? null : <Over over={over} isShown={isShown} place={placeOf(over.row)} />}
        {left === undefined ? null : <Left left={left} isShown={isShown} onShow={onShow} />}
      </div>
    </section>
  );
}

const questionOf = (test: string): string => {
  const aim = aimOf(test);
  return aim === null ? '' : AIM_WORDS[aim].question;
};

interface OverProps {
  readonly over: PassedOver;
  readonly isShown: boolean;
  readonly place: number;
}

function Over({ over: { line, by, of, said, signed, job }, isShown, place }: OverProps) {
  const { text, why, otherwise } = lineInWords(line.test, line);
  return (
    <div>
      <div className="stack">
        <h3>
          Passed over by {by} of {of}: {testTitle(line.test)}
        </h3>
        <p>
          {questionOf(line.test)} {OWN_WORDS[line.subject]} {text}, at {job}.{' '}
          {said === null ? '' : `Most said “${JUDGED_WORDS[said]}”. `}
          {signed === 0 ? '' : `${signed} would have signed for it.`}
        </p>
        {isShown ? <p>{why}</p> : null}
        {isShown && otherwise != null ? <p>A faulty unit shows: {otherwise}.</p> : null}
      </div>
      <Link href={addressToShow(place, line.test)} className="button main not-printed">
        Show in class
      </Link>
    </div>
  );
}

interface LeftProps {
  readonly left: LeftOut;
  readonly isShown: boolean;
  readonly onShow: () => void;
}

function Left({ left: { test, by, of }, isShown, onShow }: LeftProps) {
  return (
    <div>
      <div className="stack">
        <h3>
          Left out by {by} of {of}: {testTitle(test)}
        </h3>
        <p>
          {questionOf(test)} {isShown ? testPurpose(test) : ''}
        </p>
      </div>
      {isShown ? null : (
        <button type="button" className="not-printed" onClick={onShow}>
          Show in class
        </button>
      )}
    </div>
  );
}
