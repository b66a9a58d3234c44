/** A problem of a file, and how many are listed: the first of them, and the count of the rest. */
import type { UnsafeId } from '../bench/unsafe.ts';
import type { Impossible } from '../faults/impossible.ts';

/** What is wrong where the trainee meets it too: then by its id, of which src/words/problems.ts makes the sentence. */
export type ToldById =
  | { readonly id: 'impossible'; readonly why: Impossible }
  | { readonly id: 'unsafe-handover'; readonly act: UnsafeId }
  /** Of a record: this version cannot read it, and keeps it as it is. */
  | { readonly id: 'kept-unread' };

/** With its text alone once src/words/problems.ts has put it into words. */
export interface Problem<Message = string | ToldById> {
  /** Path in the file, as `site.circuit.length`; empty for the file as a whole. */
  readonly path: string;
  /** For whoever writes the file. */
  readonly message: Message;
  /** How many problems this one line stands for, where it is the count of those that are not listed. */
  readonly further?: number;
}

/** More problems than anyone reads at once. */
export const MOST_LISTED = 50;

/** How many problems these lines tell of. */
export const countOf = (problems: readonly Problem<unknown>[]): number =>
  problems.reduce((sum, { further }) => sum + (further ?? 1), 0);

/** The first of them, and one line with the count of the rest. */
export function listed<Message>(
  problems: readonly Problem<Message>[],
): readonly (Problem<Message> | Problem<string>)[] {
  const first = problems.filter(({ further }) => further === undefined).slice(0, MOST_LISTED);
  return [...first, ...furtherProblems(countOf(problems) - first.length)];
}

export const furtherProblems = (count: number): readonly Problem<string>[] =>
  count <= 0
    ? []
    : [{ path: '', message: `and ${count} more ${count === 1 ? 'problem' : 'problems'}`, further: count }];
