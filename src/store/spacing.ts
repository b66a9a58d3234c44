/**
 * When a topic or a misconception is asked again, by `ts-fsrs` with a clock that is given to it. Whole days, nothing
 * drawn by chance: the same answers at the same times come back on the same days. Never a mark.
 */
import type { Grade } from 'ts-fsrs';
import { createEmptyCard, fsrs, Rating } from 'ts-fsrs';
import type { Sure } from '../attempt/record/attempt.ts';

/** As `ts-fsrs` has it, with times in ms since 1970. */
export interface Memory {
  readonly due: number;
  readonly last: number;
  readonly stability: number;
  readonly difficulty: number;
  readonly scheduledDays: number;
  readonly reps: number;
  readonly lapses: number;
  /** 0 new, 1 learning, 2 review, 3 relearning. */
  readonly state: 0 | 1 | 2 | 3;
}

export interface Answered {
  readonly isRight: boolean;
  readonly sure: Sure;
  /** Whether it keeps someone safe: then it is to be known nineteen times in twenty, else nine in ten. */
  readonly isSafety: boolean;
  /** ms since 1970; `assessment`: of the day by which all is to be known, null where none is. */
  readonly now: number;
  readonly assessment: number | null;
}

const DAY = 86_400_000;
/** Nothing is put off longer than this, where no assessment is sooner; days. */
const LONGEST = 60;
const RETENTION = { safety: 0.95, other: 0.9 } as const;

/** Right by a guess is hardly known; how sure somebody else was is told, and changes nothing here. */
const gradeOf = ({ isRight, sure }: Answered): Grade =>
  isRight ? (sure === 'guessing' ? Rating.Hard : Rating.Good) : Rating.Again;

/** Whole days left to an assessment that is to come, one at least. */
export function longestGap(now: number, assessment: number | null): number {
  if (assessment === null || assessment <= now) return LONGEST;
  return Math.max(1, Math.min(LONGEST, Math.floor((assessment - now) / DAY)));
}

/** After one more answer; `before` is null at the first. */
export function remembered(before: Memory | null, answered: Answered): Memory {
  const { now, isSafety, assessment } = answered;
  const longest = longestGap(now, assessment);
  const scheduler = fsrs({
    request_retention: isSafety ? RETENTION.safety : RETENTION.other,
    maximum_interval: longest,
    enable_fuzz: false,
    enable_short_term: false,
  });
  const card =
    before === null
      ? createEmptyCard(now)
      : {
          due: before.due,
          last_review: before.last,
          stability: before.stability,
          difficulty: before.difficulty,
          elapsed_days: 0,
          scheduled_days: before.scheduledDays,
          learning_steps: 0,
          reps: before.reps,
          lapses: before.lapses,
          state: before.state,
        };
  const next = scheduler.next(card, now, gradeOf(answered)).card;
  return {
    // The library keeps its grades a day apart, beyond its own longest interval.
    due: Math.min(next.due.getTime(), now + longest * DAY),
    last: now,
    stability: next.stability,
    difficulty: next.difficulty,
    scheduledDays: next.scheduled_days,
    reps: next.reps,
    lapses: next.lapses,
    state: next.state,
  };
}
