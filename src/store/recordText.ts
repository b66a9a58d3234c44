/** The text of the file that everything on this device is exported to; what its fields mean is in recordFile.ts. */
import type { KeptQuestions } from './questionRecord.ts';
import type { RecordItem } from './recordItem.ts';
import { wellFormed } from './wellFormed.ts';

export interface Goal {
  readonly text: string;
  /** ms since 1970 */
  readonly at: number;
  /** The tests that it speaks of, where a debrief suggested it and it speaks of any. */
  readonly tests?: readonly string[];
}

/** Kept under the name of an attempt, and none that can be read. */
export interface Unreadable {
  readonly id: string;
  readonly text: string;
}

export interface KeptRecord {
  readonly items: readonly RecordItem[];
  readonly unreadable: readonly Unreadable[];
  readonly goal: Goal | null;
  readonly questions: KeptQuestions;
  readonly further: Readonly<Record<string, unknown>>;
}

/** What an earlier version let be typed may hold half a letter: brought in, that would be refused with all the rest. */
export const makeRecordText = ({ items, unreadable, goal, questions, further }: KeptRecord): string =>
  `${JSON.stringify(
    {
      ...further,
      format: 1,
      goal,
      ...(isNothing(questions) ? {} : { questions }),
      ...(unreadable.length === 0 ? {} : { unreadable }),
      attempts: items.map(({ further: own, draft, ...item }) => ({
        ...own,
        ...item,
        ...(draft === null ? {} : { draft }),
      })),
    },
    (_, value: unknown) => (typeof value === 'string' ? wellFormed(value) : value),
  )}\n`;

const isNothing = ({ cards, assessment, session }: KeptQuestions): boolean =>
  cards.length === 0 && assessment === null && session === null;
