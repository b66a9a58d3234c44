/** Every test in a line, for the summary on paper: how much of it was predicted, written down and judged rightly. */
import { memo } from 'react';
import type { Debrief, DebriefTest } from '../../../attempt/marks/debrief.ts';
import { readRightly, typedOf } from '../../../attempt/record/typed.ts';
import { testTitle } from '../../../words/testTitles.ts';

export const TestsInLines = memo(function TestsInLines({ told }: { readonly told: Debrief }) {
  return (
    <section className="in-lines" aria-labelledby="in-lines-heading">
      <h2 id="in-lines-heading">Every test</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">test</th>
            <th scope="col">predicted</th>
            <th scope="col">written as shown</th>
            <th scope="col">judged</th>
          </tr>
        </thead>
        <tbody>
          {told.tests.map((test) => (
            <tr key={test.test}>
              <th scope="row">
                {testTitle(test.test)}
                {test.counts ? '' : ' (not marked)'}
              </th>
              {test.done ? (
                <>
                  <td>{test.given ? 'given' : predicted(test)}</td>
                  <td>{written(told, test)}</td>
                  <td>{judged(test)}</td>
                </>
              ) : (
                <td colSpan={3}>not done</td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
});

const rate = (all: readonly boolean[]): string =>
  all.length === 0 ? '–' : `${all.filter(Boolean).length} of ${all.length}`;

const predicted = ({ lines, figures }: DebriefTest): string =>
  rate([
    ...lines.map((line) => line.leftAlone || line.predicted === line.right),
    ...figures.map(({ isRight }) => isRight),
  ]);

const judged = ({ lines, limits }: DebriefTest): string =>
  rate([
    ...lines.filter(({ judgement }) => judgement !== null).map((line) => line.judged === line.judgement),
    ...limits.map((limit) => limit.judged === limit.right),
  ]);

function written({ run }: Debrief, { test }: DebriefTest): string {
  const typed = typedOf(run);
  return rate(
    run.readings.flatMap((taken, index) => {
      if (taken.test !== test) return [];
      const entry = typed.get(index);
      return [entry !== undefined && readRightly(entry, taken)];
    }),
  );
}
