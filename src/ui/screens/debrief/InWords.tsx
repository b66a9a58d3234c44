/** Both drawings in words: everything lettered or drawn on them at one step, line by line. */
import { memo } from 'react';
import type { Step } from '../../../attempt/opened/twin.ts';
import { factsOf } from '../../../words/facts.ts';
import { Scroll } from '../../parts/Scroll.tsx';

export const InWords = memo(function InWords({ step }: { readonly step: Step }) {
  const twin = new Map(factsOf(step.twin).map(({ what, text }) => [what, text]));
  return (
    <details className="debrief-test">
      <summary>In words: both drawings</summary>
      <Scroll name="Drawings in words">
        <table className="figures">
          <caption className="unseen">Both drawings in words</caption>
          <thead>
            <tr>
              <th scope="col">what</th>
              <th scope="col">this unit</th>
              <th scope="col">correct twin</th>
            </tr>
          </thead>
          <tbody>
            {factsOf(step.unit).map(({ what, text }) => {
              const other = twin.get(what) ?? '';
              return (
                <tr key={what} className={text === other ? undefined : 'differs'}>
                  <th scope="row">{what}</th>
                  <td>{text}</td>
                  <td>{other}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </Scroll>
    </details>
  );
});
