/** Keeps what was asked (questions.ts says what and where), and merges what is brought in. */
import type { Transaction } from './database.ts';
import { inOne } from './database.ts';
import type { Card, KeptQuestions, KeptSession } from './questionRecord.ts';
import { cardId } from './questionRecord.ts';
import { CARD } from './questions.ts';

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
