/** What was said over 80 % sure and was wrong, grouped by what the lines have in common; and how often sure was right. */
import type { Debrief } from '../../../attempt/debrief.ts';
import { sourceText } from '../../../verification/sources.ts';
import { answerText } from '../../words/answers.ts';
import { SUBJECT_WORDS } from '../bench/Predict.tsx';

export function SureAndWrong({ told }: { readonly told: Debrief }) {
  const { sureAndWrong, tests } = told;
  const count = sureAndWrong.reduce((sum, { lines }) => sum + lines.length, 0);
  const titleOf = (id: string) => tests.find(({ test }) => test === id)?.title ?? id;
  return (
    <section className="stack" aria-labelledby="sure-heading">
      <h2 id="sure-heading">
        Sure, and wrong: {count === 0 ? 'nothing' : `${count} ${count === 1 ? 'line' : 'lines'}`}
      </h2>
      {count === 0 ? <p className="note">No line that you were over 80 % sure of was wrong.</p> : null}
      {sureAndWrong.map(({ group, lines }, i) => (
        <details key={group} className={i === 0 ? 'found first' : 'found'} open={i === 0}>
          <summary>
            {group}: {lines.length}
          </summary>
          {lines.map(({ test, id, text, subject, predicted, right, why, source }) => (
            <div key={`${test} ${id}`} className="judge-line">
              <p>
                <strong>
                  {SUBJECT_WORDS[subject]} {text}
                </strong>{' '}
                <span className="note">{titleOf(test)}</span>
              </p>
              <dl className="told">
                <dt>you</dt>
                <dd>{predicted === null ? 'nothing' : answerText(predicted)}, over 80 % sure</dd>
                <dt>true</dt>
                <dd className="true">{answerText(right)}</dd>
                <dt>why</dt>
                <dd>{why}</dd>
                <dt>source</dt>
                <dd>{sourceText(source)}</dd>
              </dl>
            </div>
          ))}
        </details>
      ))}
      <table className="bare">
        <caption className="lettering">how often sure was right</caption>
        <tbody>
          {told.calibration.map(({ sure, right, of }) => (
            <tr key={sure}>
              <th scope="row">{sure}</th>
              <td>
                {of === 0
                  ? 'not used'
                  : `right ${right} times in ${of}, that is ${Math.round((100 * right) / of)} %`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
