/** When what was asked comes back: the figures of the library that works it out, and what an answer changes. */
import { createEmptyCard, fsrs, Rating } from 'ts-fsrs';
import { describe, expect, test } from 'vitest';
import { comesBack } from '../../src/store/comesBack.ts';
import type { Settled } from '../../src/store/questionCards.ts';
import { afterAnswer, dueCards, dueOf } from '../../src/store/questionCards.ts';
import type { Card } from '../../src/store/questionRecord.ts';
import { cardId } from '../../src/store/questionRecord.ts';
import type { Answered, Memory } from '../../src/store/spacing.ts';
import { longestGap, remembered } from '../../src/store/spacing.ts';

const DAY = 86_400_000;
const START = Date.UTC(2026, 0, 5, 9);
const right: Answered = { isRight: true, sure: 'fairly-sure', isSafety: false, now: START, assessment: null };

/** Each time on the day when it is due: the gaps between them, in days. */
function gaps(times: number, answered: Partial<Answered> = {}): readonly number[] {
  const found: number[] = [];
  let memory: Memory | null = null;
  let now = START;
  for (let i = 0; i < times; i++) {
    memory = remembered(memory, { ...right, ...answered, now });
    found.push(Math.round((memory.due - now) / DAY));
    now = memory.due;
  }
  return found;
}

/** The library alone, told nothing but how well it is to be known. */
function gapsOfLibrary(times: number, retention: number): readonly number[] {
  const scheduler = fsrs({
    request_retention: retention,
    maximum_interval: 60,
    enable_fuzz: false,
    enable_short_term: false,
  });
  const found: number[] = [];
  let card = createEmptyCard(new Date(START));
  for (let i = 0; i < times; i++) {
    card = scheduler.next(card, card.due, Rating.Good).card;
    found.push(Math.min(60, card.scheduled_days));
  }
  return found;
}

describe('the gaps', () => {
  test('are those of the library, and never longer than two months', () => {
    expect(gaps(5)).toEqual(gapsOfLibrary(5, 0.9));
    // As the library alone gave them for this version without short steps: 3, 14, 57, 196.
    expect(gaps(5)).toEqual([3, 14, 57, 60, 60]);
  });

  test('are shorter for what keeps somebody safe', () => {
    expect(gaps(5, { isSafety: true })).toEqual(gapsOfLibrary(5, 0.95));
    expect(gaps(5, { isSafety: true })).toEqual([3, 6, 15, 34, 60]);
  });

  test('do not go beyond the day of an assessment', () => {
    const assessment = START + 20 * DAY;
    const first = remembered(null, { ...right, assessment });
    const second = remembered(first, { ...right, now: first.due, assessment });
    const third = remembered(second, { ...right, now: second.due, assessment });
    for (const memory of [first, second, third]) expect(memory.due).toBeLessThanOrEqual(assessment);
    expect(remembered(second, { ...right, now: second.due }).due).toBeGreaterThan(third.due);
    expect(longestGap(START, START - DAY)).toBe(60);
    expect(longestGap(START, START + DAY / 2)).toBe(1);
  });

  test('begin anew with a wrong answer, and a guess that was right is trusted less', () => {
    const known = remembered(remembered(null, right), { ...right, now: START + 3 * DAY });
    const wrong = remembered(known, { ...right, isRight: false, now: START + 17 * DAY });
    expect(Math.round((wrong.due - wrong.last) / DAY)).toBeLessThanOrEqual(3);
    const guessed = remembered(null, { ...right, sure: 'guessing' });
    expect(guessed.due).toBeLessThan(remembered(null, right).due);
  });

  test('are the same for the same answers at the same times', () => {
    expect(gaps(4)).toEqual(gaps(4));
  });
});

const settled: Settled = {
  question: { topic: 'offer', kind: 'duty-of-current' },
  isRight: false,
  mistake: 'amperes-for-percent',
  sure: 'would-sign',
  now: START,
  assessment: null,
};
const followed = (cards: readonly Card[], what: Settled): readonly Card[] => {
  const changed = afterAnswer(cards, what);
  const ids = new Set(changed.map(cardId));
  return [...cards.filter((card) => !ids.has(cardId(card))), ...changed];
};

describe('an answer', () => {
  test('changes the card of its topic and of the misconception that it was', () => {
    const cards = followed([], settled);
    expect(cards.map(cardId)).toEqual(['offer', 'offer/duty-of-current/amperes-for-percent']);
    expect(cards.map(({ asked, right: known, sureAndWrong }) => [asked, known, sureAndWrong])).toEqual([
      [1, 0, 1],
      [1, 0, 1],
    ]);
    expect(cards[0]?.kinds).toEqual({ 'duty-of-current': START });
  });

  test('that is right puts off every misconception met in its kind, and none of another kind', () => {
    const met = followed(followed([], settled), {
      ...settled,
      question: { topic: 'offer', kind: 'current-of-duty' },
      mistake: 'percent-for-amperes',
    });
    const now = START + 2 * DAY;
    const known = followed(met, { ...settled, isRight: true, mistake: null, sure: 'fairly-sure', now });
    const due = (cards: readonly Card[], id: string) => cards.find((card) => cardId(card) === id)?.due;
    const own = 'offer/duty-of-current/amperes-for-percent';
    const other = 'offer/current-of-duty/percent-for-amperes';
    expect(due(known, own)).toBeGreaterThan(due(met, own) ?? Infinity);
    expect(due(known, other)).toBe(due(met, other));
  });

  test('of what keeps somebody safe comes back sooner than another', () => {
    const first = (topic: 'dead' | 'offer', kind: string) => {
      let cards: readonly Card[] = [];
      let now = START;
      for (let i = 0; i < 3; i++) {
        cards = followed(cards, { ...settled, question: { topic, kind }, isRight: true, mistake: null, now });
        now = cards[0]?.due ?? now;
      }
      return now;
    };
    expect(first('dead', 'one-pair')).toBeLessThan(first('offer', 'duty-of-current'));
  });

  test('is due when its time has come: misconceptions first', () => {
    const cards = followed([], settled);
    expect(dueCards(cards, null, START)).toEqual([]);
    const due = dueCards(cards, null, START + 5 * DAY);
    expect(due.map(({ kind }) => kind)).toEqual(['duty-of-current', null]);
    expect(due.map(dueOf)[0]).toEqual({ topic: 'offer', kind: 'duty-of-current', asked: {} });
  });

  test('an assessment that is to come brings nearer what was put off beyond the day before it', () => {
    const card = { due: START + 40 * DAY, last: START };
    expect(comesBack(card, null, START)).toBe(START + 40 * DAY);
    expect(comesBack(card, START + 10 * DAY, START)).toBe(START + 9 * DAY);
    // Not on the day it was answered; not once the day is past; never later than it was.
    expect(comesBack(card, START + DAY / 2, START)).toBe(START + DAY);
    expect(comesBack(card, START - DAY, START)).toBe(START + 40 * DAY);
    expect(comesBack(card, START + 90 * DAY, START)).toBe(START + 40 * DAY);
    const cards = followed([], { ...settled, isRight: true, mistake: null });
    const [soon = 0] = cards.map(({ due }) => due);
    const later = cards.map((one) => ({ ...one, due: soon + 30 * DAY }));
    expect(dueCards(later, null, START + 6 * DAY)).toEqual([]);
    expect(dueCards(later, START + 7 * DAY, START + 6 * DAY)).toHaveLength(1);
  });
});
