/** Kept attempts as rows of the record: numbered from the oldest, and which of them count for its sums. */
import type { Summary } from '../../../attempt/marks/summary.ts';
import { holdsFor } from '../../../attempt/marks/summary.ts';
import type { About } from '../../../store/about.ts';
import { titleOf } from '../../../words/keeping.ts';

export interface Row {
  readonly about: About;
  /** 1 is the oldest. */
  readonly number: number;
  /** As far as it holds for this log and this engine. */
  readonly summary: Summary | null;
}

const begunAt = ({ began, changed }: About): number => began ?? changed;

/** Newest first. */
export const numbered = (all: readonly About[]): readonly Row[] =>
  all
    .toSorted((x, y) => begunAt(x) - begunAt(y) || (x.id < y.id ? -1 : 1))
    .map((about, i) => ({
      about,
      number: i + 1,
      summary: about.concluded && holdsFor(about.summary, about.head) ? about.summary : null,
    }))
    .toReversed();

/** A row that counts, with its sum. */
export interface Counting {
  readonly number: number;
  readonly title: string;
  readonly summary: Summary;
}

/** Concluded attempts of this trainee, oldest first. */
export const countingIn = (rows: readonly Row[]): readonly Counting[] =>
  rows
    .flatMap(({ about, number, summary }) =>
      summary === null || about.isGuest ? [] : [{ number, title: titleOf(about.title), summary }],
    )
    .toReversed();
