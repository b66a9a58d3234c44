/**
 * What is kept of questions, in the store of that name:
 *
 *   key            what
 *   `card ID`      a topic or a misconception: when it comes back, how it was answered
 *   `session`      the questions in hand, and what was given as answers
 *   `assessment`   the day by which all is to be known, ms since 1970
 */
import type { Sure } from '../attempt/attempt.ts';
import type { Given } from '../quiz/given.ts';
import type { AimId } from '../scenario/aims.ts';
import type { Transaction } from './database.ts';
import { inOne } from './database.ts';
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

const CARD = 'card ';

export async function questionsIn(all: Transaction<'readonly' | 'readwrite'>): Promise<KeptQuestions> {
  const store = all.objectStore('questions');
  const cards = (await store.getAll(IDBKeyRange.bound(CARD, `${CARD}\uffff`))) as Card[];
  const assessment = (await store.get('assessment')) as number | undefined;
  const session = (await store.get('session')) as KeptSession | undefined;
  return { cards, assessment: assessment ?? null, session: session ?? null };
}

export const keptQuestions = (): Promise<KeptQuestions> => inOne('readonly', questionsIn);

/** A session as it stands now, and the cards that an answer has changed. */
export const keepSession = (session: KeptSession, cards: readonly Card[] = []): Promise<void> =>
  inOne('readwrite', async (all) => {
    const store = all.objectStore('questions');
    for (const card of cards) await store.put(card, `${CARD}${cardId(card)}`);
    await store.put(session, 'session');
  });

/** Null: there is none. */
export const keepAssessment = (at: number | null): Promise<void> =>
  inOne('readwrite', async (all) => {
    const store = all.objectStore('questions');
    if (at === null) await store.delete('assessment');
    else await store.put(at, 'assessment');
  });

/** Brought in: of a card that is here too the one that was asked later stays; a session in hand here stays. */
export async function mergeQuestions(all: Transaction<'readwrite'>, brought: KeptQuestions): Promise<void> {
  const store = all.objectStore('questions');
  for (const card of brought.cards) {
    const key = `${CARD}${cardId(card)}`;
    const here = (await store.get(key)) as Card | undefined;
    if (here === undefined || here.last < card.last) await store.put(card, key);
  }
  if (brought.assessment !== null && (await store.get('assessment')) === undefined)
    await store.put(brought.assessment, 'assessment');
  if (brought.session !== null && (await store.get('session')) === undefined)
    await store.put(brought.session, 'session');
}
