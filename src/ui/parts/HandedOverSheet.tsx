/** What was done before the trainee came, as its sheet says: test by test, what was read. */

import { memo } from 'react';
import type { Run } from '../../attempt/record/run.ts';
import { readingTitle } from '../../words/readings.ts';
import { testTitle } from '../../words/testTitles.ts';
import { shownText } from '../format/figures.ts';

/** Readings of one test that are written on the sheet: a proving or a looking takes more room than it tells. */
const SHOWN = 4;

export const HandedOverSheet = memo(function HandedOverSheet({ handedOver }: Pick<Run, 'handedOver'>) {
  if (handedOver === null) return null;
  return (
    <details className="sheet handed-over">
      <summary>
        Handed over: {handedOver.tests.length} tests done and signed by {handedOver.by}
      </summary>
      <div className="scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">test</th>
              <th scope="col">read</th>
            </tr>
          </thead>
          <tbody>
            {handedOver.tests.map(({ action, observed }) => {
              const readings = observed.samples.flatMap((sample) => sample.readings);
              return (
                <tr key={action.id}>
                  <th scope="row">{testTitle(action.id)}</th>
                  <td>
                    {readings.length === 0 ? 'as it should' : null}
                    {readings.slice(0, SHOWN).map((reading, i) => (
                      // biome-ignore lint/suspicious/noArrayIndexKey: a sheet that does not change
                      <div key={i}>
                        {readingTitle(reading)}: {shownText(reading)}
                      </div>
                    ))}
                    {readings.length > SHOWN ? <div>and {readings.length - SHOWN} more</div> : null}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </details>
  );
});
