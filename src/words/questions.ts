/** A question in words: what is asked, what may be answered, and the answer worked out. */
import type { Answer } from '../attempt/record/attempt.ts';
import type { AboutLine, Choice, FigureAsked, Question } from '../quiz/question.ts';
import type { Values } from '../verification/testAction.ts';
import { lineInWords } from './actions.ts';
import { answerText } from './answers.ts';
import { conductors } from './questions/conductors.ts';
import { lines } from './questions/lines.ts';
import { offer } from './questions/offer.ts';
import { protection } from './questions/protection.ts';
import type { QuestionWords, Said } from './questionWords.ts';
import { sourceText } from './sources.ts';
import { SUBJECT_WORDS } from './subjects.ts';
import { testTitle } from './testTitles.ts';
import { str } from './values.ts';

const WORDS: Readonly<Record<string, QuestionWords>> = { ...lines, ...offer, ...conductors, ...protection };

function wordsOf(kind: string): QuestionWords {
  const words = Object.hasOwn(WORDS, kind) ? WORDS[kind] : undefined;
  if (words === undefined) throw new Error(`no words for the question ${kind}`);
  return words;
}

const said = (words: Said, values: Values): string => (typeof words === 'string' ? words : words(values));

/** A line as the bench says it, with whom it is about. */
const lineSaid = (about: AboutLine, subject: string): string =>
  `${SUBJECT_WORDS[subject as keyof typeof SUBJECT_WORDS]} ${lineInWords(about.test, about).text}`;

/** What is given and asked; with the line in question, where it is about one. */
export function stemText({ kind, values, about }: Question): string {
  const stem = wordsOf(kind).stem(values);
  return about === undefined ? stem : `${stem} ${capital(lineSaid(about, str(values, 'subject')))}.`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** One of the choices. */
export function choiceText({ kind, values }: Question, { id, values: own, about }: Choice): string {
  if (about !== undefined) return lineInWords(about.test, about).text;
  const words = wordsOf(kind).choices;
  if (words === undefined) return testTitle(id);
  const text = Object.hasOwn(words, id) ? words[id] : undefined;
  if (text === undefined) throw new Error(`no words for the choice ${id} of ${kind}`);
  return said(text, { ...values, ...own });
}

/** One of the acts to be put in order. */
export function partText({ kind }: Question, part: string): string {
  const text = wordsOf(kind).parts?.[part];
  if (text === undefined) throw new Error(`no words for the act ${part} of ${kind}`);
  return text;
}

/** What somebody did who arrived at this figure. */
export function mistakeText({ kind }: Question, id: string): string {
  const text = wordsOf(kind).mistakes?.[id];
  if (text === undefined) throw new Error(`no words for the mistake ${id} of ${kind}`);
  return text;
}

/** As somebody would write it: no more digits than the figure has. */
const figureText = ({ answer, unit }: Pick<FigureAsked, 'answer' | 'unit'>): string =>
  `${Number(answer.toPrecision(6))} ${unit}`;

/** The right answer, in words. */
export function rightAnswerText(question: Question): string {
  switch (question.way) {
    case 'figure':
      return figureText(question);
    case 'three-answers':
      return answerText(question.answer);
    case 'order':
      return question.answer.map((part) => partText(question, part)).join('; ');
    case 'choice': {
      const right = question.choices.find(({ id }) => id === question.answer);
      if (right === undefined) throw new Error(`no right choice in ${question.id}`);
      return choiceText(question, right);
    }
  }
}

/** The three answers in their one order. */
export const threeAnswers: readonly (readonly [Answer, string])[] = (
  ['should', 'should-not', 'cant-tell'] as const satisfies readonly Answer[]
).map((answer) => [answer, answerText(answer)]);

/** Worked out: the sums, the mechanism. Where it came from is `sourceText` of its source. */
export function workedOut(question: Question): readonly string[] {
  const words = wordsOf(question.kind);
  const sums = words.working(question.values, rightAnswerText(question));
  const why = said(words.why, question.values);
  return [...sums, ...(why === '' ? [] : [why]), ...linesWorkedOut(question)];
}

/** The bench's own reason, where a question is made of its lines. */
function linesWorkedOut(question: Question): readonly string[] {
  const about = question.about ?? aboutOfRight(question);
  if (about === undefined) return [];
  const { why, otherwise } = lineInWords(about.test, about);
  return [
    ...(question.kind === 'which-test' ? [`${rightAnswerText(question)}: that test tells it.`] : []),
    why,
    ...(otherwise === null ? [] : [`If it were faulty you would see ${otherwise}.`]),
  ];
}

const aboutOfRight = (question: Question): AboutLine | undefined =>
  question.way === 'choice' ? question.choices.find(({ id }) => id === question.answer)?.about : undefined;

export const questionSource = ({ source }: Question): string => sourceText(source);
