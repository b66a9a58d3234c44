/** A question in words: what is asked, what may be answered, and the answer worked out. */
import type { Answer } from '../attempt/record/attempt.ts';
import type { Given } from '../quiz/given.ts';
import type { AboutLine, Choice, CursorAsked, FigureAsked, Question } from '../quiz/question.ts';
import type { Values } from '../verification/testAction.ts';
import { lineInWords } from './actions.ts';
import { answerText } from './answers.ts';
import { causeTitle } from './causeTitles.ts';
import { acts } from './questions/acts.ts';
import { causes } from './questions/causes.ts';
import { conductors } from './questions/conductors.ts';
import { design } from './questions/design.ts';
import { lines } from './questions/lines.ts';
import { offer } from './questions/offer.ts';
import { pictures } from './questions/pictures.ts';
import { protection } from './questions/protection.ts';
import type { QuestionWords, Said } from './questionWords.ts';
import { sourceText } from './sources.ts';
import { OWN_WORDS, SUBJECT_WORDS } from './subjects.ts';
import { testTitle } from './testTitles.ts';
import { terminalName } from './trade.ts';
import { str } from './values.ts';

const WORDS: Readonly<Record<string, QuestionWords>> = {
  ...lines,
  ...design,
  ...offer,
  ...conductors,
  ...protection,
  ...pictures,
  ...causes,
  ...acts,
};

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
export function stemText(question: Question): string {
  const { given, about } = stemParts(question);
  return about === null ? given : `${given} ${about}`;
}

/** The same in two: what is asked, and the line that it is about, if it is about one. */
export function stemParts({ kind, values, about }: Question): {
  readonly given: string;
  readonly about: string | null;
} {
  return {
    given: wordsOf(kind).stem(values),
    about:
      about === undefined
        ? null
        : FOUND.includes(kind)
          ? `${OWN_WORDS[str(values, 'subject') as keyof typeof OWN_WORDS]} ${lineInWords(about.test, about).text}.`
          : `${capital(lineSaid(about, str(values, 'subject')))}.`,
  };
}

/** They say what this unit or circuit did, not what a correct one does. */
const FOUND: readonly string[] = ['which-cause', 'ruled-out', 'go-on-or-stop'];

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** One of the choices. */
export function choiceText({ kind, values }: Question, { id, values: own, about }: Choice): string {
  if (about !== undefined) return lineInWords(about.test, about).text;
  const { choices: words, named } = wordsOf(kind);
  if (words === undefined) return named === 'causes' ? causeTitle(id) : testTitle(id);
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

/** What somebody did who arrived at this answer. */
export function mistakeText({ kind, values }: Question, id: string): string {
  const text = wordsOf(kind).mistakes?.[id];
  if (text === undefined) throw new Error(`no words for the mistake ${id} of ${kind}`);
  return said(text, values);
}

const UNIT_OF_ANOTHER = 'That unit belongs to another quantity than the one that was asked.';

/** What is said of a wrong answer whose misconception has a name; null where nothing is. */
export function tookText(question: Question, mistake: string | null): string | null {
  if (mistake === null) return null;
  if (mistake === 'other-quantity') return UNIT_OF_ANOTHER;
  const { mistakes } = wordsOf(question.kind);
  return mistakes !== undefined && Object.hasOwn(mistakes, mistake) ? mistakeText(question, mistake) : null;
}

/** As somebody would write it: no more digits than the figure has, and ohms to the hundredth that an instrument shows. */
function figureText({ answer, unit }: Pick<FigureAsked, 'answer' | 'unit'>): string {
  const figure = String(Number(answer.toPrecision(6)));
  const isCoarse = unit === 'Ω' && Math.abs(answer) < 10 && !/\.\d{2}/.test(figure);
  return `${isCoarse ? answer.toFixed(2) : figure} ${unit}`;
}

const pairText = (pair: readonly string[]): string => pair.map(terminalName).join(' and ');

/** A moment of a trace, with what happens then. */
const momentText = ({ trace }: CursorAsked, at: number): string =>
  `${Number(at.toPrecision(6))} ${trace.of === 'outlet' ? 'ms' : 's'}`;

/** Numbered, so that two orders can be held against each other. */
const orderText = (question: Question, parts: readonly string[]): string =>
  parts.map((part, i) => `${i + 1} ${partText(question, part)}`).join('; ');

/** What was given as an answer, in words. */
export function givenText(question: Question, given: Given): string {
  switch (given.way) {
    case 'figure':
      return `${String(given.value).replace('-', '−')} ${given.unit}`;
    case 'choice': {
      const choice =
        question.way === 'choice' ? question.choices.find(({ id }) => id === given.id) : undefined;
      return choice === undefined ? given.id : choiceText(question, choice);
    }
    case 'three-answers':
      return answerText(given.answer);
    case 'order':
      return orderText(question, given.parts);
    case 'leads':
      return pairText(given.pair);
    case 'touch':
      return terminalName(given.terminal);
    case 'cursor':
      return question.way === 'cursor' ? momentText(question, given.at) : String(given.at);
  }
}

/** The right answer, in words. */
export function rightAnswerText(question: Question): string {
  switch (question.way) {
    case 'figure':
      return figureText(question);
    case 'three-answers':
      return answerText(question.answer);
    case 'order':
      return orderText(question, question.answer);
    case 'leads':
      return question.answers.map(pairText).join(', or ');
    case 'touch':
      return terminalName(question.answer);
    case 'cursor':
      return momentText(question, question.answer);
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

export interface WorkedOut {
  /** The way to the answer, one sum or step each. */
  readonly steps: readonly string[];
  /** What flows, drops, joins or opens; empty where the steps say it. */
  readonly why: string;
  /** What a faulty unit would show, where a question is made of a line of a test. */
  readonly otherwise: string | null;
}

/** Worked out: the sums, the mechanism. Where it came from is `questionSource`. */
export function workingOf(question: Question): WorkedOut {
  const words = wordsOf(question.kind);
  const steps = words.working(question.values, rightAnswerText(question));
  const why = said(words.why, question.values);
  const about = question.about ?? aboutOfRight(question);
  if (about === undefined) return { steps, why, otherwise: null };
  const line = lineInWords(about.test, about);
  return {
    steps,
    why: [why, line.why].filter((text) => text !== '').join(' '),
    otherwise: line.otherwise === null ? null : `you would see ${line.otherwise}.`,
  };
}

/** The same as lines that are read one after another. */
export function workedOut(question: Question): readonly string[] {
  const { steps, why, otherwise } = workingOf(question);
  return [
    ...steps,
    ...(why === '' ? [] : [why]),
    ...(otherwise === null ? [] : [`If it were faulty ${otherwise}`]),
  ];
}

const aboutOfRight = (question: Question): AboutLine | undefined =>
  question.way === 'choice' ? question.choices.find(({ id }) => id === question.answer)?.about : undefined;

export const questionSource = ({ source }: Question): string => sourceText(source);
