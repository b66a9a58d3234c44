/** Questions are drawn alike by the same seed, each has one right answer, and no wrong choice is right. */
import { describe, expect, test } from 'vitest';
import { question, questionAgain, questions } from '../../src/quiz/draw.ts';
import { KINDS } from '../../src/quiz/kinds.ts';
import type { Question } from '../../src/quiz/question.ts';
import { AIMS } from '../../src/scenario/aims.ts';
import '../../src/words/allTests.ts';
import {
  choiceText,
  mistakeText,
  partText,
  questionSource,
  rightAnswerText,
  stemText,
  workedOut,
} from '../../src/words/questions.ts';
import { longestIsRight } from './sweep.ts';

/** Of every kind and topic so many; more in the soak. */
const EACH = 40;
/** Some ask for one of three things, and no figures vary there. */
const FEWEST = 3;

const every: readonly Question[] = KINDS.flatMap(({ id, topics }) =>
  topics.flatMap((topic) =>
    Array.from({ length: EACH }, (_, seed) => question(id, topic, seed)).filter((one) => one !== null),
  ),
);

/** All that is read of a question. */
function textsOf(one: Question): readonly string[] {
  const choices = one.way === 'choice' ? one.choices.map((choice) => choiceText(one, choice)) : [];
  const parts = one.way === 'order' ? one.parts.map((part) => partText(one, part)) : [];
  const mistakes =
    'mistakes' in one ? one.mistakes.map(({ id }: { readonly id: string }) => mistakeText(one, id)) : [];
  return [stemText(one), ...choices, ...parts, ...mistakes, ...workedOut(one), questionSource(one)];
}

test('every aim has kinds of its own beside those made of lines', () => {
  for (const { id } of AIMS)
    expect(KINDS.filter(({ topics }) => topics.includes(id)).length, id).toBeGreaterThanOrEqual(2);
});

describe.each(KINDS.map(({ id }) => id))('%s', (kind) => {
  const ofKind = every.filter((one) => one.kind === kind);

  test('has words for everything, without a hole in them', () => {
    expect(ofKind.length).toBeGreaterThan(0);
    for (const one of ofKind)
      for (const text of textsOf(one)) {
        expect(text, one.id).not.toBe('');
        expect(text, one.id).not.toMatch(/undefined|NaN|\bnull\b|Infinity|\[object|\d\.\d{6}/);
      }
  });

  test('has one right answer, and no wrong one is right', () => {
    for (const one of ofKind) {
      expect(rightAnswerText(one), one.id).not.toBe('');
      if (one.way === 'choice') {
        const texts = one.choices.map((choice) => choiceText(one, choice));
        expect(new Set(texts).size, `${one.id}: ${texts.join(' | ')}`).toBe(texts.length);
        expect(one.choices.filter(({ id }) => id === one.answer)).toHaveLength(1);
        expect(texts.length, one.id).toBeGreaterThanOrEqual(2);
      }
      if (one.way === 'figure') {
        expect(Number.isFinite(one.answer), one.id).toBe(true);
        for (const { id, value } of one.mistakes)
          expect(Math.abs(value - one.answer), `${one.id} ${id}`).toBeGreaterThan(2 * one.tolerance);
      }
      if (one.way === 'order') {
        expect([...one.parts].sort()).toEqual([...one.answer].sort());
        expect(one.parts).not.toEqual(one.answer);
      }
    }
  });

  test('is made again from its id', () => {
    for (const one of ofKind.slice(0, 5)) expect(questionAgain(one.id)).toEqual(one);
  });

  test('varies', () => {
    const contents = new Set(ofKind.map(({ id: _, ...content }) => JSON.stringify(content)));
    expect(contents.size).toBeGreaterThanOrEqual(FEWEST);
  });
});

test('an id that is none gives none', () => {
  for (const id of [
    '',
    'x',
    'duty-of-current',
    'duty-of-current.offer',
    'duty-of-current.dead.1',
    'duty-of-current.offer.-1',
  ])
    expect(questionAgain(id), id).toBeNull();
});

test('a drawing is the same for its seed, has no question twice, and takes the topics in turn', () => {
  const drawn = questions({ count: 60, seed: 5 });
  expect(drawn).toHaveLength(60);
  expect(questions({ count: 60, seed: 5 })).toEqual(drawn);
  expect(questions({ count: 60, seed: 6 })).not.toEqual(drawn);
  const contents = drawn.map(({ id: _, ...content }) => JSON.stringify(content));
  expect(new Set(contents).size).toBe(60);
  for (const { id } of AIMS) expect(drawn.filter(({ topic }) => topic === id)).toHaveLength(5);
});

test('of one topic alone, as long as there are different ones', () => {
  const drawn = questions({ count: 12, seed: 1, topics: ['offer'] });
  expect(drawn.map(({ topic }) => topic)).toEqual(Array.from({ length: 12 }, () => 'offer'));
});

test('the longest choice is right no more often than chance and three standard errors', () => {
  let expected = 0;
  let variance = 0;
  let found = 0;
  for (const longest of every.map(longestIsRight)) {
    if (longest === null) continue;
    const { isRight, chance } = longest;
    expected += chance;
    variance += chance * (1 - chance);
    if (isRight) found += 1;
  }
  expect(found).toBeLessThan(expected + 3 * Math.sqrt(variance));
});
