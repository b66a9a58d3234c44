/** How the tests of each aim went when they were last done, over all concluded attempts. */
import type { AimSum } from '../../../attempt/marks/recordSums.ts';
import { AIM_WORDS } from '../../../words/aims.ts';

export function ByAim({ sums }: { readonly sums: readonly AimSum[] }) {
  return (
    <section className="stack" aria-labelledby="by-aim-heading">
      <h2 id="by-aim-heading">By aim</h2>
      {sums.length === 0 ? (
        <p className="note">The aims of your tests stand here once an attempt is concluded.</p>
      ) : (
        <table>
          <caption className="unseen">Tests wholly right when last done, by aim</caption>
          <thead>
            <tr>
              <th scope="col">aim</th>
              <th scope="col">tests wholly right when last done</th>
            </tr>
          </thead>
          <tbody>
            {sums.map(({ aim, right, of }) => (
              <tr key={aim}>
                <th scope="row">{AIM_WORDS[aim].question}</th>
                <td>
                  {right} of {of}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
