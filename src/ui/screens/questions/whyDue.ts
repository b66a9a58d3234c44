/** Why a question comes back, in words. */
import type { Card } from '../../../store/questionRecord.ts';
import { cardId } from '../../../store/questionRecord.ts';
import { AIM_WORDS } from '../../../words/aims.ts';

/** `id`: of the card as it was when the session began; it may be gone. */
export function whyDueText(cards: readonly Card[], id: string): string | null {
  const card = cards.find((one) => cardId(one) === id);
  if (card === undefined) return null;
  const topic = AIM_WORDS[card.topic].question;
  return card.kind === null ? `Comes back: ${topic}` : `Comes back, since you had it wrong: ${topic}`;
}
