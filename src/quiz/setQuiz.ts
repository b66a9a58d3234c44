/**
 * A quiz that a tutor sets, and an attempt at it. The quiz is its topics, number and seed, of which the questions follow;
 * the attempt is a log of answers, each hashed on the one before it, so that marks follow by replay.
 *
 *   quiz      { format: 1, title, topics, count, seed, minutes, sure }
 *               topics    ids of aims; left out: all twelve
 *               minutes   how long it is meant to take, or null
 *               sure      whether it is asked how sure
 *   attempt   { format: 2, engine, quiz, trainee, entries }
 *               engine    which version of the questions it was (`QUIZ_ENGINE`)
 *               entries   { kind: 'answer', question, given, sure, wall, hash }: `wall` is ms since the attempt began
 */
import * as v from 'valibot';
import { digestOf, SURENESS } from '../attempt/record/attempt.ts';
import type { AimId } from '../scenario/aims.ts';
import { AIMS, GREATEST_SEED } from '../scenario/aims.ts';
import { parseJson } from '../scenario/json.ts';
import type { Parsed } from '../scenario/problems.ts';
import { check } from '../scenario/problems.ts';
import { newerFormat } from '../scenario/readScenario.ts';
import { questions } from './draw.ts';
import type { Given } from './given.ts';
import { givenSchema } from './given.ts';
import type { Question } from './question.ts';

/** Raised with every change of what a seed draws, or of what is right. */
export const QUIZ_ENGINE = '1.2';

/** More than are asked at one sitting. */
const MOST = 60;
const LONGEST = 240;

const whole = (least: number, greatest: number) =>
  v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(greatest));
const text = (longest: number) => v.pipe(v.string(), v.maxLength(longest));

export const quizSchema = v.object({
  format: v.literal(1),
  title: text(120),
  topics: v.optional(
    v.pipe(
      v.array(v.picklist(AIMS.map(({ id }) => id) as [AimId, ...AimId[]])),
      v.minLength(1),
      v.maxLength(12),
    ),
  ),
  count: whole(1, MOST),
  seed: whole(0, GREATEST_SEED),
  minutes: v.nullable(whole(1, LONGEST)),
  sure: v.boolean(),
});
export type SetQuiz = v.InferOutput<typeof quizSchema>;

const entrySchema = v.object({
  kind: v.literal('answer'),
  question: text(100),
  given: givenSchema,
  sure: v.nullable(v.picklist(SURENESS)),
  wall: v.pipe(v.number(), v.minValue(0)),
  hash: text(64),
});
export type AnswerEntry = v.InferOutput<typeof entrySchema>;

const attemptSchema = v.object({
  format: v.literal(2),
  engine: text(20),
  quiz: quizSchema,
  trainee: v.nullable(text(80)),
  entries: v.pipe(v.array(entrySchema), v.maxLength(MOST)),
});
export type QuizAttempt = v.InferOutput<typeof attemptSchema>;

export const readQuiz = (file: string): Parsed<SetQuiz> => {
  const json = parseJson(file);
  if (!json.ok) return json;
  return newerFormat(json.value, 'quiz') ?? check(quizSchema, json.value);
};

export const readQuizAttempt = (file: string): Parsed<QuizAttempt> => {
  const json = parseJson(file);
  if (!json.ok) return json;
  return newerFormat(json.value, 'quiz attempt', 2) ?? check(attemptSchema, json.value);
};

/** Whether a file that was opened is meant as one of these: it has a quiz in place of a scenario. */
export const looksLikeQuizAttempt = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && 'quiz' in value && 'entries' in value;

/** The same for everybody who has it. */
export const questionsOf = ({ count, seed, topics }: SetQuiz): readonly Question[] =>
  questions({ count, seed, ...(topics === undefined ? {} : { topics }) });

export const beginQuiz = (quiz: SetQuiz, trainee: string | null): QuizAttempt => ({
  format: 2,
  engine: QUIZ_ENGINE,
  quiz,
  trainee,
  entries: [],
});

/** Head of the chain before the first answer: it binds the log to its quiz and to the trainee's label. */
const genesis = ({ quiz, trainee, engine }: QuizAttempt): string => digestOf({ quiz, trainee, engine });

/** Hash of an answer on top of the one before it. */
export function answerHash(attempt: QuizAttempt, index: number): string {
  const { hash: _, ...content } = attempt.entries[index] ?? { hash: '' };
  return digestOf({ before: attempt.entries[index - 1]?.hash ?? genesis(attempt), content });
}

interface Answered {
  readonly question: string;
  readonly given: Given;
  readonly sure: AnswerEntry['sure'];
  /** ms since the attempt began */
  readonly wall: number;
}

/** The attempt with one more answer at its end. */
export function withAnswer(attempt: QuizAttempt, answered: Answered): QuizAttempt {
  const unhashed = {
    ...attempt,
    entries: [...attempt.entries, { kind: 'answer' as const, ...answered, hash: '' }],
  };
  const hash = answerHash(unhashed, attempt.entries.length);
  return { ...unhashed, entries: unhashed.entries.map((one) => (one.hash === '' ? { ...one, hash } : one)) };
}

/** The record code, first eight characters of the last hash: what a tutor notes at hand-in. */
export const codeOf = (attempt: QuizAttempt): string =>
  (attempt.entries.at(-1)?.hash ?? genesis(attempt)).slice(0, 8);
