/** What is kept of questions as plain data: cards by topic and misconception, and the session in hand. */
import type { Sure } from '../attempt/record/attempt.ts';
import type { Given } from '../quiz/given.ts';
import type { AimId } from '../scenario/aims.ts';
import type { Memory } from './spacing.ts';

/** `topic` alone, or with the kind and the misconception that was met in it. */
export interface Card extends Memory {
  readonly topic: AimId;
  readonly kind: string | null;
  readonly mistake: string | null;
  readonly asked: number;
  readonly right: number;
  /** How often somebody would have signed for a wrong answer, and when last; ms since 1970, or null. */
  readonly sureAndWrong: number;
  readonly lastWrong: number | null;
  /** Of a topic: when each of its kinds was asked last. */
  readonly kinds: Readonly<Record<string, number>>;
}

export const cardId = ({ topic, kind, mistake }: Pick<Card, 'topic' | 'kind' | 'mistake'>): string =>
  kind === null ? topic : `${topic}/${kind}/${mistake ?? ''}`;

/** One answer of a session; `at`: ms since 1970. */
export interface Answer {
  readonly given: Given;
  readonly sure: Sure;
  readonly at: number;
}

export interface KeptSession {
  /** Where it was asked for: the same address goes on with it. */
  readonly address: string;
  /** Its questions by their ids, of which they are made again. */
  readonly ids: readonly string[];
  /** ms since 1970 */
  readonly began: number;
  readonly answers: readonly Answer[];
  /** Which one is on the screen; as many as there are: its end. */
  readonly at: number;
  /** Why some of them come back, by id: the card. */
  readonly due: Readonly<Record<string, string>>;
}

export interface KeptQuestions {
  readonly cards: readonly Card[];
  readonly assessment: number | null;
  readonly session: KeptSession | null;
}

export const NO_QUESTIONS: KeptQuestions = { cards: [], assessment: null, session: null };
