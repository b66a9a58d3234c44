/** The verb `quiz`: questions drawn by a seed, in words. */
import { questions } from '../quiz/draw.ts';
import type { Question } from '../quiz/question.ts';
import type { AimId } from '../scenario/aims.ts';
import { AIMS, aimNamed, GREATEST_SEED } from '../scenario/aims.ts';
import { nearest } from '../scenario/nearest.ts';
import { quoted } from '../scenario/quoted.ts';
import {
  choiceText,
  mistakeText,
  partText,
  questionSource,
  rightAnswerText,
  stemText,
  threeAnswers,
  workedOut,
} from '../words/questions.ts';
import { terminalsOn } from '../words/quizRows.ts';
import { BadInput } from './files.ts';
import { wholeNumber } from './wholeNumber.ts';

/** More than anybody answers, and soon drawn. */
const MOST = 10_000;

export function quiz(lists: Readonly<Record<string, readonly string[]>>): readonly object[] {
  const topics = (lists['--topic'] ?? []).map(topicNamed);
  const count = numberIn('--count', lists, 1, MOST);
  const seed = numberIn('--seed', lists, 0, GREATEST_SEED);
  return questions({ count, seed, ...(topics.length === 0 ? {} : { topics }) }).map(itemOf);
}

function numberIn(
  option: string,
  lists: Readonly<Record<string, readonly string[]>>,
  least: number,
  most: number,
): number {
  const number = wholeNumber(option, lists[option], least, most);
  if (typeof number === 'string') throw new BadInput([`quiz: ${number}`]);
  return number;
}

function topicNamed(text: string): AimId {
  const aim = aimNamed(text);
  if (aim === null)
    throw new BadInput([
      `--topic: unknown topic ${quoted(text)}; ${nearest(
        text,
        AIMS.map(({ id }) => id),
      )}`,
    ]);
  return aim.id;
}

function itemOf(question: Question): object {
  const { id, topic, way } = question;
  return {
    id,
    topic,
    way,
    stem: stemText(question),
    ...answersOf(question),
    explanation: workedOut(question).join(' '),
    source: questionSource(question),
  };
}

/** What may be answered, and what is right. */
function answersOf(question: Question): object {
  switch (question.way) {
    case 'figure':
      return {
        unit: question.unit,
        answer: question.answer,
        tolerance: question.tolerance,
        misconceptions: question.mistakes.map(({ id, value }) => ({
          id,
          value,
          text: mistakeText(question, id),
        })),
      };
    case 'choice':
      return {
        choices: question.choices.map((choice) => ({ id: choice.id, text: choiceText(question, choice) })),
        answer: question.answer,
      };
    case 'three-answers':
      return { choices: threeAnswers.map(([id, text]) => ({ id, text })), answer: question.answer };
    case 'order':
      return {
        choices: question.parts.map((part) => ({ id: part, text: partText(question, part) })),
        answer: question.answer,
        answerText: rightAnswerText(question),
      };
    case 'leads':
      return {
        drawing: question.drawing,
        choices: terminalsOn(question.drawing),
        // Any of these pairs; the first of them as one answer.
        answer: question.answers[0],
        answers: question.answers,
        answerText: rightAnswerText(question),
      };
    case 'touch':
      return {
        drawing: question.drawing,
        choices: terminalsOn(question.drawing),
        answer: question.answer,
        answerText: rightAnswerText(question),
      };
    case 'cursor':
      return {
        trace: question.trace,
        unit: 's',
        answer: question.answer,
        tolerance: 0,
        answerText: rightAnswerText(question),
      };
  }
}
