/** What each test ruled out, in the order in which they were done: how a symptom is followed to its cause. */
import { memo } from 'react';
import type { Elimination, Undone } from '../../../attempt/opened/elimination.ts';
import type { Timeline } from '../../../attempt/opened/timeline.ts';
import type { Telling, Told } from '../../../fairness/told.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { LeftAtFirst } from './LeftAtFirst.tsx';
import { causesNamed, LeftAtTheEnd } from './LeftAtTheEnd.tsx';

interface Props {
  readonly timeline: Timeline;
  readonly elimination: Elimination;
  /** The test not done that would have told most. */
  readonly undone: Undone | null;
  /** What each test told beside what another would have; null while it is worked out. */
  readonly told: Telling | null;
}

/** More than these are not read one by one. */
const NAMED = 6;

export const RuledOut = memo(function RuledOut({ timeline, elimination, undone, told }: Props) {
  const { candidates, left } = elimination;
  return (
    <>
      <p className="note">
        <LeftAtFirst {...elimination} />
      </p>
      <ol className="mattered">
        {timeline.tests.map(({ test, first, last }) => {
          const out = candidates.filter(
            ({ ruledOutAt }) => ruledOutAt !== null && ruledOutAt >= first && ruledOutAt <= last,
          );
          return (
            <li key={`${test} ${first}`}>
              <strong>{testTitle(test)}</strong>{' '}
              {out.length === 0 ? 'ruled nothing out' : `ruled out ${out.length}`}, {left[last]} left.
              {out.length === 0 ? null : <span className="note"> {causesNamed(out, NAMED)}.</span>}
              <Better told={told?.tests.find((one) => one.test === test) ?? null} />
            </li>
          );
        })}
      </ol>
      {told === null ? null : <BestWay telling={told} />}
      <LeftAtTheEnd elimination={elimination} undone={undone} most={NAMED} />
    </>
  );
});

/** With hindsight, as one who knows what every cause would show. */
function Better({ told }: { readonly told: Told | null }) {
  if (told === null || told.better === null) return null;
  const { left, better } = told;
  return (
    <p>
      “{testTitle(better.test)}” would have told more in its place: done as its procedure says, it leaves{' '}
      {better.left} {better.left === 1 ? 'cause' : 'causes'}, and this test {left.length}.
    </p>
  );
}

/** A way that costs so many times the best one is as short as can be asked for. */
const AS_SHORT = 1.5;

/** Told and never marked. */
function BestWay({ telling: { cost, best } }: { readonly telling: Telling }) {
  if (best.tests.length === 0 || cost === 0) return null;
  if (cost <= AS_SHORT * best.cost)
    return <p>Your way was about as short as anybody’s who does not know the cause beforehand.</p>;
  return (
    <p>
      Whoever always does what tells most for its time does{' '}
      {best.tests.map((id) => `“${testTitle(id)}”`).join(', then ')}: about {minutes(best.cost)} min in place
      of {minutes(cost)}. A longer way costs no marks.
    </p>
  );
}

const minutes = (seconds: number): number => Math.max(1, Math.round(seconds / 60));
