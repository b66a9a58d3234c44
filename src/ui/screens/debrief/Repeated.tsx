/** What was put right, and which tests that made due: named or not, done again or not. */

import { memo } from 'react';
import type { Debrief } from '../../../attempt/marks/debrief.ts';
import { causeTitle } from '../../../words/causeTitles.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { Fold } from './Fold.tsx';

export const Repeated = memo(function Repeated({ told }: { readonly told: Debrief }) {
  const { due, named, free, done } = told.marks.repeats;
  const needless = (named ?? []).filter((test) => !due.includes(test) && !free.includes(test));
  if (told.repaired.length === 0 && due.length === 0 && needless.length === 0) return null;
  const rows = [...due, ...needless];
  const yes = (is: boolean) => (is ? 'yes' : 'no');
  return (
    <Fold id="repeated-heading" title="Put right, and repeated">
      {told.repaired.length === 0 ? <p>You put nothing right.</p> : null}
      {told.repaired.map(({ what, wasWrong }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the same cause may be put right twice
        <p key={i}>
          You put right: <strong>{causeTitle(what)}</strong>.{' '}
          {wasWrong ? 'It was there.' : 'Nothing was wrong there.'}
        </p>
      ))}
      {rows.length === 0 ? (
        <p className="note">No test had to be repeated.</p>
      ) : (
        <div className="scroll">
          <table>
            <thead>
              <tr>
                <th scope="col">test</th>
                <th scope="col">due</th>
                <th scope="col">you named it</th>
                {told.repaired.length === 0 ? null : <th scope="col">you repeated it</th>}
              </tr>
            </thead>
            <tbody>
              {rows.map((test) => (
                <tr key={test}>
                  <th scope="row">{testTitle(test)}</th>
                  <td>{yes(due.includes(test))}</td>
                  <td>{named === null ? 'not asked' : yes(named.includes(test))}</td>
                  {told.repaired.length === 0 ? null : (
                    <td>{due.includes(test) ? yes(done.includes(test)) : ''}</td>
                  )}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <p className="note">
        A failed test is repeated, and every earlier one that the fault may have influenced (BS
        7671:2018+A2:2022 643.1); so is what rests on a part that was moved or replaced.
      </p>
    </Fold>
  );
});
