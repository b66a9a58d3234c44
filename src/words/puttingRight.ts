/**
 * What is said of putting a cause right. Whoever says it sees to it before that the causes have their words: the command
 * line has them from its beginning (allTests.ts), the page where a cause is named (src/ui/flow/loadTests.ts).
 */
import type { Never } from '../faults/impossible.ts';

export interface NamedCauses {
  readonly causeTitle: (id: string) => string;
  readonly impossibleText: (why: Never) => string;
}

let there: NamedCauses | null = null;

/** From then on there are the words of all causes. */
export function addCauses(words: NamedCauses): void {
  there = words;
}

function causes(): NamedCauses {
  if (there === null) throw new Error('no words for causes');
  return there;
}

export const putRightText = (cause: string): string => `put right: ${causes().causeTitle(cause)}`;
export const neverText = (why: Never): string => causes().impossibleText(why);
