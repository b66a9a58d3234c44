/** When what was asked comes back, by its card and by the day of an assessment, and how much of it is due. */
import type { Card } from './questionRecord.ts';

const DAY = 86_400_000;

/**
 * ms since 1970. What was put off beyond the day before an assessment that is to come, comes back on that day; never on
 * the day it was answered.
 */
export const comesBack = (
  { due, last }: Pick<Card, 'due' | 'last'>,
  assessment: number | null,
  now: number,
): number =>
  assessment === null || assessment <= now ? due : Math.min(due, Math.max(assessment - DAY, last + DAY));

export type DueCard = Pick<Card, 'topic' | 'kind' | 'due' | 'last'>;

export interface DueTopics {
  readonly topics: number;
  /** Of these, for something that was wrong. */
  readonly wrong: number;
  /** The day of the assessment that brings some of them nearer, ms since 1970; null where none does. */
  readonly assessment: number | null;
}

export function dueTopics(cards: readonly DueCard[], assessment: number | null, now: number): DueTopics {
  const due = cards.filter((card) => comesBack(card, assessment, now) <= now);
  const count = (some: readonly DueCard[]): number => new Set(some.map(({ topic }) => topic)).size;
  return {
    topics: count(due),
    wrong: count(due.filter(({ kind }) => kind !== null)),
    assessment: due.some((card) => card.due > now) ? assessment : null,
  };
}
