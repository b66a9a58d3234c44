/** What an answer does to the cards of its topic and of the misconceptions of its kind, and which are due. */
import type { Sure } from '../attempt/record/attempt.ts';
import type { Question } from '../quiz/question.ts';
import { isSafetyKind, isSafetyTopic } from '../quiz/safety.ts';
import type { Due } from '../quiz/session.ts';
import { comesBack } from './comesBack.ts';
import type { Card } from './questionRecord.ts';
import { cardId } from './questionRecord.ts';
import { remembered } from './spacing.ts';

export interface Settled {
  readonly question: Pick<Question, 'topic' | 'kind'>;
  readonly isRight: boolean;
  /** The misconception that it was, where it has a name. */
  readonly mistake: string | null;
  readonly sure: Sure;
  readonly now: number;
  readonly assessment: number | null;
}

/**
 * The cards that change: that of the topic; that of the misconception, where it was one; and, where the answer is right,
 * those of every misconception that was met in this kind before.
 */
export function afterAnswer(cards: readonly Card[], settled: Settled): readonly Card[] {
  const { question, isRight, mistake } = settled;
  const { topic, kind } = question;
  const known = (id: string): Card | null => cards.find((card) => cardId(card) === id) ?? null;
  const ofTopic = changed(known(topic), { topic, kind: null, mistake: null }, settled);
  const met = cards.filter((card) => card.topic === topic && card.kind === kind);
  if (isRight) return [ofTopic, ...met.map((card) => changed(card, card, settled))];
  if (mistake === null) return [ofTopic];
  const own = { topic, kind, mistake };
  return [ofTopic, changed(known(cardId(own)), own, settled)];
}

function changed(before: Card | null, of: Pick<Card, 'topic' | 'kind' | 'mistake'>, settled: Settled): Card {
  const { question, isRight, sure, now, assessment } = settled;
  const isSafety = isSafetyTopic(of.topic) || isSafetyKind(question.kind);
  return {
    ...remembered(before, { isRight, sure, isSafety, now, assessment }),
    topic: of.topic,
    kind: of.kind,
    mistake: of.mistake,
    asked: (before?.asked ?? 0) + 1,
    right: (before?.right ?? 0) + (isRight ? 1 : 0),
    sureAndWrong: (before?.sureAndWrong ?? 0) + (!isRight && sure === 'would-sign' ? 1 : 0),
    lastWrong: isRight ? (before?.lastWrong ?? null) : now,
    kinds: of.kind === null ? { ...before?.kinds, [question.kind]: now } : {},
  };
}

/** Those that are due by now: misconceptions before topics, and what was due first first. */
export const dueCards = (cards: readonly Card[], assessment: number | null, now: number): readonly Card[] =>
  cards
    .filter((card) => comesBack(card, assessment, now) <= now)
    .toSorted((a, b) => Number(a.kind === null) - Number(b.kind === null) || a.due - b.due);

export const dueOf = ({ topic, kind, kinds }: Card): Due => ({ topic, kind, asked: kinds });
