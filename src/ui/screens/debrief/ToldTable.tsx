/** The time line in figures: test by test, the outlet on both sides, and how many causes were left. */

import { memo } from 'react';
import type { Elimination, Undone } from '../../../attempt/opened/elimination.ts';
import type { Timeline } from '../../../attempt/opened/timeline.ts';
import type { Lockstep } from '../../../attempt/opened/twin.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { mainsText } from '../../../words/quantities.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { Scroll } from '../../parts/Scroll.tsx';
import { levelAt } from './course.ts';
import { LeftAtFirst } from './LeftAtFirst.tsx';
import { LeftAtTheEnd } from './LeftAtTheEnd.tsx';
import { bestOf, betterText } from './told.ts';

interface Props {
  readonly lockstep: Lockstep;
  readonly timeline: Timeline;
  readonly elimination: Elimination | null;
  readonly undone: Undone | null;
}

export const ToldTable = memo(function ToldTable({ lockstep, timeline, elimination, undone }: Props) {
  const { levels, steps } = lockstep;
  return (
    <details className="debrief-test">
      <summary>Time line in figures: what each test told</summary>
      <p className="note">
        {elimination === null ? null : <LeftAtFirst {...elimination} />} The unit’s own cause has the size
        that it really has. A cause is ruled out by the first thing read, seen or heard that it would have
        made other.
      </p>
      <Scroll name="What each test told">
        <table className="figures told-table">
          <caption className="unseen">Time line in figures</caption>
          <thead>
            <tr>
              <th scope="col">test</th>
              <th scope="col">at</th>
              <th scope="col">sure and wrong</th>
              <th scope="col">outlet to PE, this unit</th>
              <th scope="col">twin</th>
              <th scope="col">causes left after it</th>
              <th scope="col">would have told more</th>
            </tr>
          </thead>
          <tbody>
            {timeline.tests.map(({ number, test, at, last, wrong }) => {
              const unit = steps[last]?.unit.at ?? at;
              const best = elimination === null ? null : bestOf(elimination, test);
              return (
                <tr key={test}>
                  <th scope="row">
                    {number} {testTitle(test)}
                  </th>
                  <td>{benchTime(at)}</td>
                  <td>
                    {wrong.length === 0 ? '' : `${wrong.length} ${wrong.length === 1 ? 'line' : 'lines'}`}
                  </td>
                  <td>{mainsText(levelAt(levels.unit, unit)?.volts ?? 0)}</td>
                  <td>{mainsText(levelAt(levels.twin, steps[last]?.twin.at ?? at)?.volts ?? 0)}</td>
                  <td>{elimination?.left[last] ?? ''}</td>
                  <td>{best === null ? '' : betterText(best)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </Scroll>
      {elimination === null ? null : <LeftAtTheEnd elimination={elimination} undone={undone} />}
    </details>
  );
});
