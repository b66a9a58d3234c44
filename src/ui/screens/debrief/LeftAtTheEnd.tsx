/** The causes that nothing ruled out, and the test not done that would have told most. */
import type { Elimination, Undone } from '../../../attempt/opened/elimination.ts';
import { causesTitle } from '../../../words/causeTitles.ts';
import { testTitle } from '../../../words/testTitles.ts';

/** Their titles; beyond so many, how many more there are. */
export function causesNamed(some: Elimination['candidates'], most = Infinity): string {
  const named = some.slice(0, most).map(({ causes }) => causesTitle(causes));
  return [...named, ...(some.length > most ? [`and ${some.length - most} more`] : [])].join('; ');
}

interface Props {
  readonly elimination: Elimination;
  readonly undone: Undone | null;
  /** More are not read one by one. */
  readonly most?: number;
}

export function LeftAtTheEnd({ elimination, undone, most }: Props) {
  const remaining = elimination.candidates.filter(({ ruledOutAt }) => ruledOutAt === null);
  return (
    <>
      <p>
        <strong>Left at the end: {remaining.length}.</strong> {causesNamed(remaining, most)}.
      </p>
      {undone === null ? null : (
        <p>
          Of the tests not done, “{testTitle(undone.test)}” would have left {undone.left}.
        </p>
      )}
    </>
  );
}
