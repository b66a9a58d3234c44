/** Marks by part, as bars and as numbers, and their sum. */
import { memo } from 'react';
import type { Marks as MarksGiven } from '../../../attempt/mark.ts';

interface Props {
  readonly marks: MarksGiven;
  /** The predictions were filled in by the page. */
  readonly given: boolean;
}

export const Marks = memo(function Marks({ marks, given }: Props) {
  const weights: Readonly<Record<string, number>> = marks.weights;
  const whole = Object.values(weights).reduce((sum, weight) => sum + weight, 0);
  return (
    <>
      <table className="bare marks">
        <caption className="unseen">Marks by part</caption>
        <tbody>
          {Object.entries(marks.parts).map(([part, mark]) => {
            const weight = weights[part] ?? 0;
            return (
              <tr key={part}>
                <th scope="row">{part}</th>
                <td>
                  <span className="mark-bar">
                    <span style={{ width: `${weight === 0 ? 0 : (100 * mark) / weight}%` }} />
                  </span>
                </td>
                <td>{given && part === 'prediction' ? 'given: not marked' : `${mark} of ${weight}`}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className="total">
        {marks.total} of {whole}
        <span className="note"> · {marks.passed ? 'passed' : 'not yet passed'}</span>
      </p>
    </>
  );
});
