/** Marks by part, as bars and as numbers, each with how it comes about; their sum, and what was wanting to pass. */
import { Fragment, memo } from 'react';
import type { Marks as MarksGiven } from '../../../attempt/marks/mark.ts';
import type { PartName } from '../../../scenario/tasks.ts';
import { HURDLE_WORDS, sumText } from '../../../words/sums.ts';

interface Props {
  readonly marks: MarksGiven;
  /** The predictions were filled in by the page. */
  readonly given: boolean;
}

export const Marks = memo(function Marks({ marks, given }: Props) {
  const weights: Readonly<Record<string, number>> = marks.weights;
  return (
    <>
      <table className="bare marks">
        <caption className="unseen">Marks by part</caption>
        <tbody>
          {Object.entries(marks.parts).map(([part, mark]) => {
            const weight = weights[part] ?? 0;
            const isGiven = given && part === 'prediction';
            return (
              <Fragment key={part}>
                <tr>
                  <th scope="row">{part}</th>
                  <td>
                    <span className="mark-bar">
                      <span style={{ width: `${weight === 0 ? 0 : (100 * mark) / weight}%` }} />
                    </span>
                  </td>
                  <td>{isGiven ? 'given: not marked' : `${mark} of ${weight}`}</td>
                </tr>
                {isGiven ? null : (
                  <tr>
                    <td className="note how" colSpan={3}>
                      {sumText(marks, part as PartName)}
                    </td>
                  </tr>
                )}
              </Fragment>
            );
          })}
        </tbody>
      </table>
      <p className="total">
        {marks.total} of {wholeOf(marks)}
        <span className="note"> · {outcome(marks)}</span>
      </p>
      {marks.hurdles.length === 0 ? null : (
        <ul className="choices note">
          {marks.hurdles.map((hurdle) => (
            <li key={hurdle}>Not yet: {HURDLE_WORDS[hurdle]}.</li>
          ))}
        </ul>
      )}
    </>
  );
});

/** What the total is out of. */
export const wholeOf = ({ weights }: MarksGiven): number =>
  Object.values(weights).reduce((sum, weight) => sum + weight, 0);

const outcome = ({ passed, total, pass }: MarksGiven): string =>
  passed === null
    ? 'no pass is stated'
    : passed
      ? `passed; the pass mark is ${pass}`
      : total < pass
        ? `not yet passed; the pass mark is ${pass}`
        : 'not yet passed, whatever the total';
