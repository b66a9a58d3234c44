/** For the next lesson: two things at most, in the words of the line and of the aim, with how many and how sure. */
import type { Class, LeftOut, PassedOver } from '../../../desk/class.ts';
import { aimOf } from '../../../scenario/aims.ts';
import { lineInWords, testPurpose } from '../../../words/actions.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import { JUDGED_WORDS } from '../../../words/answers.ts';
import { OWN_WORDS } from '../../../words/subjects.ts';
import { testTitle } from '../../../words/testTitles.ts';

interface Props {
  readonly made: Class;
  readonly isShown: boolean;
  readonly onShow: () => void;
}

export function Lessons({ made, isShown, onShow }: Props) {
  const [over] = made.passedOver;
  const [left] = made.leftOut;
  if (over === undefined && left === undefined) return null;
  return (
    <section className="stack" aria-labelledby="lesson-heading">
      <h2 id="lesson-heading">For the next lesson</h2>
      <div className="lessons">
        {over === undefined ? null : <Over over={over} isShown={isShown} onShow={onShow} />}
        {left === undefined ? null : (
          <Left left={left} isShown={isShown} onShow={over === undefined ? onShow : null} />
        )}
      </div>
    </section>
  );
}

const questionOf = (test: string): string => {
  const aim = aimOf(test);
  return aim === null ? '' : AIM_WORDS[aim].question;
};

function Over({ over, isShown, onShow }: { over: PassedOver; isShown: boolean; onShow: () => void }) {
  const { line, by, of, signed, job } = over;
  const { text, why, otherwise } = lineInWords(line.test, line);
  return (
    <div>
      <div className="stack">
        <h3>
          Passed over by {by} of {of}: {testTitle(line.test)}
        </h3>
        <p>
          {questionOf(line.test)} {OWN_WORDS.unit} {text}, at {job}.{' '}
          {line.said === null ? '' : `Most said “${JUDGED_WORDS[line.said]}”. `}
          {signed === 0 ? '' : `${signed} would have signed for it.`}
        </p>
        {isShown ? (
          <>
            <p>{why}</p>
            {otherwise == null ? null : <p>{otherwise}</p>}
          </>
        ) : null}
      </div>
      {isShown ? null : (
        <button type="button" className="main not-printed" onClick={onShow}>
          Show in class
        </button>
      )}
    </div>
  );
}

function Left({ left, isShown, onShow }: { left: LeftOut; isShown: boolean; onShow: (() => void) | null }) {
  const { test, by, of } = left;
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
      {isShown || onShow === null ? null : (
        <button type="button" className="not-printed" onClick={onShow}>
          Show in class
        </button>
      )}
    </div>
  );
}
