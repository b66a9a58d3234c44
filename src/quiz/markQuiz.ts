/**
 * What came of a quiz: every question is made again, every answer judged again. Nothing that the file says of itself is
 * believed; where it does not fit is told.
 */

import type { Sure } from '../attempt/record/attempt.ts';
import { digestOf, SURENESS } from '../attempt/record/attempt.ts';
import type { AimId } from '../scenario/aims.ts';
import { AIMS } from '../scenario/aims.ts';
import type { Parsed } from '../scenario/problems.ts';
import type { Given } from './given.ts';
import { isRight, mistakeOf } from './given.ts';
import type { Question } from './question.ts';
import type { QuizAttempt, SetQuiz } from './setQuiz.ts';
import { answerHash, codeOf, QUIZ_ENGINE, questionsOf, readQuizAttempt } from './setQuiz.ts';

/** Why a file is not taken as it stands: its quiz is not the given one, it was made by another version, its chain is broken, it answers what was not asked, or twice. */
export const QUIZ_DOUBTS = [
  'other-quiz',
  'other-version',
  'broken-chain',
  'not-asked',
  'answered-twice',
] as const;
export type QuizDoubt = (typeof QUIZ_DOUBTS)[number];

export interface MarkedItem {
  readonly question: Question;
  /** Null: it was not answered, and is not right. */
  readonly given: Given | null;
  readonly sure: Sure | null;
  readonly isRight: boolean;
  /** The misconception that arrives at this answer, by its id within the kind. */
  readonly mistake: string | null;
}

export interface MarkedQuiz {
  readonly quiz: SetQuiz;
  readonly trainee: string | null;
  /** The record code. */
  readonly record: string;
  readonly right: number;
  readonly of: number;
  /** In the order of the aims, those that were asked about. */
  readonly topics: readonly { readonly topic: AimId; readonly right: number; readonly of: number }[];
  /** How often each sureness was right; told, and never in the marks. */
  readonly calibration: readonly { readonly sure: Sure; readonly right: number; readonly of: number }[];
  readonly sureAndWrong: number;
  /** From the beginning to the last answer, by the device's own clock; only reported. */
  readonly minutes: number;
  readonly items: readonly MarkedItem[];
  readonly doubts: readonly QuizDoubt[];
}

/**
 * `file`: the text of an attempt; `against`: the quiz that was given out, which decides where the attempt's own is
 * another. Where the file cannot be read, every problem with its place.
 */
export function markQuiz(file: string, against?: SetQuiz): Parsed<MarkedQuiz> {
  const read = readQuizAttempt(file);
  return read.ok ? { ok: true, value: markedQuiz(read.value, against) } : read;
}

export function markedQuiz(attempt: QuizAttempt, against?: SetQuiz): MarkedQuiz {
  const quiz = against ?? attempt.quiz;
  const asked = questionsOf(quiz);
  const { entries } = attempt;
  const items = asked.map((question): MarkedItem => {
    // The first answer is settled; a second one changes nothing.
    const entry = entries.find((one) => one.question === question.id);
    if (entry === undefined) return { question, given: null, sure: null, isRight: false, mistake: null };
    const { given, sure } = entry;
    return {
      question,
      given,
      sure,
      isRight: isRight(question, given),
      mistake: mistakeOf(question, given),
    };
  });
  const count = (of: readonly MarkedItem[]) => ({
    right: of.filter((one) => one.isRight).length,
    of: of.length,
  });
  return {
    quiz,
    trainee: attempt.trainee,
    record: codeOf(attempt),
    ...count(items),
    topics: AIMS.flatMap(({ id }) => {
      const own = items.filter(({ question }) => question.topic === id);
      return own.length === 0 ? [] : [{ topic: id, ...count(own) }];
    }),
    calibration: SURENESS.map((sure) => ({ sure, ...count(items.filter((one) => one.sure === sure)) })),
    sureAndWrong: items.filter((one) => one.sure === 'would-sign' && !one.isRight).length,
    minutes: (entries.at(-1)?.wall ?? 0) / 60_000,
    items,
    doubts: doubtsOf(attempt, quiz, asked),
  };
}

function doubtsOf(attempt: QuizAttempt, quiz: SetQuiz, asked: readonly Question[]): readonly QuizDoubt[] {
  const ids = attempt.entries.map(({ question }) => question);
  const holds: Readonly<Record<QuizDoubt, boolean>> = {
    'other-quiz': digestOf(quiz) !== digestOf(attempt.quiz),
    'other-version': attempt.engine !== QUIZ_ENGINE,
    'broken-chain': attempt.entries.some(({ hash }, i) => hash !== answerHash(attempt, i)),
    'not-asked': ids.some((id) => !asked.some((question) => question.id === id)),
    'answered-twice': new Set(ids).size < ids.length,
  };
  return QUIZ_DOUBTS.filter((doubt) => holds[doubt]);
}
