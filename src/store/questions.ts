/**
 * What is kept of questions, in the store of that name (keepQuestions.ts writes it):
 *
 *   key            what
 *   `card ID`      a topic or a misconception: when it comes back, how it was answered
 *   `session`      the questions in hand, and what was given as answers
 *   `assessment`   the day by which all is to be known, ms since 1970
 */
import type { Transaction } from './database.ts';
import { inOne } from './database.ts';
import type { Card, KeptQuestions, KeptSession } from './questionRecord.ts';

/** Begins the keys of cards. */
export const CARD = 'card ';

export async function questionsIn(all: Transaction<'readonly' | 'readwrite'>): Promise<KeptQuestions> {
  const store = all.objectStore('questions');
  const cards = (await store.getAll(IDBKeyRange.bound(CARD, `${CARD}\uffff`))) as Card[];
  const assessment = (await store.get('assessment')) as number | undefined;
  const session = (await store.get('session')) as KeptSession | undefined;
  return { cards, assessment: assessment ?? null, session: session ?? null };
}

export const keptQuestions = (): Promise<KeptQuestions> => inOne('readonly', questionsIn);
