/** A tutor's quiz: marks by replay, whatever the file claims, and what is told where it does not fit. */
import { describe, expect, test } from 'vitest';
import { markQuiz } from '../../src/quiz/markQuiz.ts';
import type { Question } from '../../src/quiz/question.ts';
import type { QuizAttempt, SetQuiz } from '../../src/quiz/setQuiz.ts';
import {
  beginQuiz,
  codeOf,
  looksLikeQuizAttempt,
  questionsOf,
  readQuiz,
  withAnswer,
} from '../../src/quiz/setQuiz.ts';
import { rightGiven } from '../helpers/answers.ts';

const QUIZ: SetQuiz = {
  format: 1,
  title: 'Friday',
  topics: ['offer', 'clears', 'dead', 'lets-go'],
  count: 12,
  seed: 5,
  minutes: 15,
  sure: true,
};
const ASKED = questionsOf(QUIZ);

/** The first so many answered rightly, the next so many with nonsense, the rest left. */
function attemptWith(right: number, wrong: number): QuizAttempt {
  const answers = ASKED.slice(0, right + wrong).map((question, i) => ({
    question: question.id,
    given: i < right ? rightGiven(question) : ({ way: 'choice', id: 'nonsense' } as const),
    sure: 'would-sign' as const,
    wall: 30_000 * (i + 1),
  }));
  return answers.reduce(withAnswer, beginQuiz(QUIZ, 'a. b.'));
}

const marked = (attempt: object, against?: SetQuiz) => {
  const result = markQuiz(JSON.stringify(attempt), against);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

test('what is right is counted by replay, what is not answered is not right', () => {
  const attempt = attemptWith(7, 3);
  const found = marked(attempt);
  expect(found).toMatchObject({
    right: 7,
    of: 12,
    sureAndWrong: 3,
    minutes: 5,
    trainee: 'a. b.',
    doubts: [],
  });
  expect(found.record).toBe(codeOf(attempt));
  expect(found.items.filter(({ given }) => given === null)).toHaveLength(2);
  expect(found.topics.map(({ topic }) => topic)).toEqual(['dead', 'offer', 'lets-go', 'clears']);
  expect(found.topics.reduce((sum, { right }) => sum + right, 0)).toBe(7);
  expect(found.calibration).toEqual([
    { sure: 'guessing', right: 0, of: 0 },
    { sure: 'fairly-sure', right: 0, of: 0 },
    { sure: 'would-sign', right: 7, of: 10 },
  ]);
  expect(marked(attempt)).toEqual(found);
});

describe('is told', () => {
  const attempt = attemptWith(6, 2);

  test('an answer that was changed afterwards: the chain does not hold', () => {
    const entries = attempt.entries.map((one, i) =>
      i === 7 ? { ...one, given: rightGiven(ASKED[7] as Question) } : one,
    );
    expect(marked({ ...attempt, entries }).doubts).toEqual(['broken-chain']);
  });

  test('another label on the same answers', () => {
    expect(marked({ ...attempt, trainee: 'c. d.' }).doubts).toEqual(['broken-chain']);
  });

  test('an easier quiz than the one that was given out, which decides', () => {
    const easier = { ...QUIZ, topics: ['offer' as const] };
    const own = questionsOf(easier).reduce(
      (one, question, i) =>
        withAnswer(one, { question: question.id, given: rightGiven(question), sure: null, wall: i }),
      beginQuiz(easier, null),
    );
    expect(marked(own)).toMatchObject({ right: 12, doubts: [] });
    expect(marked(own, QUIZ)).toMatchObject({ right: 0, of: 12, doubts: ['other-quiz', 'not-asked'] });
  });

  test('a second answer to the same question, which changes nothing', () => {
    const [question] = ASKED.slice(7) as [Question];
    const twice = withAnswer(attempt, {
      question: question.id,
      given: rightGiven(question),
      sure: null,
      wall: 300_000,
    });
    expect(marked(twice)).toMatchObject({ right: 6, doubts: ['answered-twice'] });
  });

  test('another version of the questions', () => {
    expect(marked({ ...attempt, engine: '0.1' }).doubts).toContain('other-version');
  });
});

test('a file that is none says where and what', () => {
  const bad = (change: object) => {
    const result = markQuiz(JSON.stringify({ ...attemptWith(1, 0), ...change }));
    return result.ok ? [] : result.problems.map(({ path }) => path);
  };
  expect(bad({ format: 3 })).toEqual(['format']);
  expect(bad({ quiz: { ...QUIZ, count: 0 } })).toEqual(['quiz.count']);
  expect(bad({ entries: [{ kind: 'answer' }] })[0]).toMatch(/^entries\[0\]/);
  expect(markQuiz('{').ok).toBe(false);
  expect(readQuiz(JSON.stringify(QUIZ))).toEqual({ ok: true, value: QUIZ });
  expect(looksLikeQuizAttempt(attemptWith(0, 0))).toBe(true);
  expect(looksLikeQuizAttempt({ scenario: {}, entries: [] })).toBe(false);
});
