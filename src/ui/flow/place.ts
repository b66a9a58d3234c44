/**
 * The place at which an attempt stands, with what is not yet in its log: the set-up and the answers of the open test,
 * and texts half typed. Kept beside the attempt, so that it goes on there after the page was closed; where nothing
 * was kept, or it does not fit the log, the place is what the log alone says.
 */
import type { Answer, Attempt } from '../../attempt/record/attempt.ts';
import type { Bench } from './bench.ts';
import { standingOf } from './bench.ts';
import type { Position } from './position.ts';

export const STEPS = [
  'choosing',
  'setting up',
  'predicting',
  'observing',
  'judging',
  'told',
  'harmed',
  'concluding',
  'debrief',
] as const;
export type Step = (typeof STEPS)[number];

/** What is to be set up when the test is locked, and how long then to wait, s. */
export interface Draft {
  readonly position: Position;
  readonly wait: number;
}

/** As it is kept; what is taken up again is checked by keptPlace.ts. */
export interface KeptPlace {
  readonly step: Step;
  /** The sheet for stopping the work lies over the step. */
  readonly stopping: boolean;
  readonly test: string | null;
  readonly draft: Draft;
  readonly answers: Readonly<Record<string, Answer>>;
  readonly figures: Readonly<Record<string, number>>;
  /** Texts and choices half made, by the names that the fields give them (useKept.ts). */
  readonly fields: Readonly<Record<string, unknown>>;
  /** Thinking so far, ms. */
  readonly wall: number;
  /** Last hash of the log that it belongs to. */
  readonly head: string | null;
}

export interface Place extends Omit<KeptPlace, 'head'> {
  /** Place in the log of the open test's prediction; −1 before its lock. */
  readonly since: number;
}

/** Where it stands, as whoever lists attempts keeps it: the step and, behind a slash, the test. */
export const standsAt = ({ step, test }: Pick<Place, 'step' | 'test'>): string =>
  test === null ? step : `${step}/${test}`;

export const headIn = ({ entries }: Attempt): string | null => entries.at(-1)?.hash ?? null;

/** As it is kept. */
export const draftOf = ({ since: _, ...place }: Place, attempt: Attempt): KeptPlace => ({
  ...place,
  head: headIn(attempt),
});

/** What the log alone says of the place. */
export function placeByLog(bench: Bench): Place {
  const { attempt } = bench.run;
  const standing = standingOf(attempt);
  const isOpen = standing.at === 'observing';
  return {
    step: standing.at,
    stopping: false,
    test: isOpen ? standing.test : null,
    since: isOpen ? standing.since : -1,
    draft: { position: bench.position, wait: 0 },
    answers: {},
    figures: {},
    fields: {},
    wall: attempt.entries.at(-1)?.wall ?? 0,
  };
}
