/**
 * Questions from so many seeds: each has words without a hole, its right answer is judged right, every wrong choice wrong
 * and by its name, no two choices read alike, and no session has two alike. A share of it in `npm test`, ten thousand in
 * the soak.
 */
import { questions } from '../../src/quiz/draw.ts';
import type { Given } from '../../src/quiz/given.ts';
import { isRight, mistakeOf } from '../../src/quiz/given.ts';
import type { Question } from '../../src/quiz/question.ts';
import '../../src/words/allTests.ts';
import {
  choiceText,
  givenText,
  mistakeText,
  partText,
  questionSource,
  rightAnswerText,
  stemText,
  workedOut,
} from '../../src/words/questions.ts';
import { rightGiven } from '../helpers/answers.ts';

const HOLE = /undefined|NaN|\bnull\b|Infinity|\[object|\d\.\d{6}/;
/** More than a person reads at a glance, letters. */
const LONGEST_STEM = 400;

/** Every answer that a misconception has, by its name. */
function wrongGivens(question: Question): readonly (readonly [name: string, given: Given])[] {
  switch (question.way) {
    case 'figure':
      return question.mistakes.map(({ id, value }) => [id, { way: 'figure', value, unit: question.unit }]);
    case 'choice':
      return question.choices
        .filter(({ id }) => id !== question.answer)
        .map(({ id }) => [id, { way: 'choice', id }]);
    case 'leads':
      return question.mistakes.map(({ id, pair }) => [id, { way: 'leads', pair: [...pair] }]);
    case 'touch':
      return question.mistakes.map(({ id, terminal }) => [id, { way: 'touch', terminal }]);
    case 'cursor':
      return question.mistakes.map(({ id, at }) => [id, { way: 'cursor', at }]);
    case 'three-answers':
    case 'order':
      return [];
  }
}

const choicesOf = (question: Question): readonly string[] =>
  question.way === 'choice'
    ? question.choices.map((choice) => choiceText(question, choice))
    : question.way === 'order'
      ? question.parts.map((part) => partText(question, part))
      : [];

/** What is wrong with it, or null. */
export function wrongWith(question: Question): string | null {
  const mistakes = 'mistakes' in question ? question.mistakes.map(({ id }) => mistakeText(question, id)) : [];
  const choices = choicesOf(question);
  const texts = [
    stemText(question),
    ...choices,
    ...mistakes,
    ...workedOut(question),
    rightAnswerText(question),
    questionSource(question),
  ];
  const hole = texts.find((text) => text === '' || HOLE.test(text));
  if (hole !== undefined) return `a hole in “${hole}”`;
  if (stemText(question).length > LONGEST_STEM) return `longer than anybody reads: ${stemText(question)}`;
  if (workedOut(question).length === 0) return 'nothing is worked out';
  if (new Set(choices).size < choices.length) return `two choices read alike: ${choices.join(' | ')}`;
  const right = rightGiven(question);
  if (!isRight(question, right)) return 'what is right is judged wrong';
  if (mistakeOf(question, right) !== null) return 'what is right has a misconception';
  for (const [name, given] of wrongGivens(question)) {
    if (isRight(question, given)) return `what is wrong is judged right: ${name}`;
    if (mistakeOf(question, given) !== name) return `${name} is taken for ${mistakeOf(question, given)}`;
    if (givenText(question, given) === '') return `${name} has no words`;
  }
  return null;
}

/** Whether the longest choice is right, and how likely that is by chance; null where no text is chosen. */
export function longestIsRight(
  question: Question,
): { readonly isRight: boolean; readonly chance: number } | null {
  if (question.way !== 'choice') return null;
  const lengths = question.choices.map((choice) => ({
    id: choice.id,
    length: choiceText(question, choice).length,
  }));
  const most = Math.max(...lengths.map(({ length }) => length));
  const longest = lengths.filter(({ length }) => length === most);
  return {
    isRight: longest.some(({ id }) => id === question.answer),
    chance: longest.length / lengths.length,
  };
}

/** What is wrong with any of the first questions of so many seeds, or with a session of ten of every tenth; null: nothing. */
export function sweepQuestions(seeds: number, from = 0): string | null {
  let found = 0;
  let expected = 0;
  let variance = 0;
  for (let seed = from; seed < from + seeds; seed++) {
    const drawn = questions({ count: seed % 10 === 0 ? 10 : 1, seed });
    const contents = drawn.map(({ id: _, ...content }) => JSON.stringify(content));
    if (new Set(contents).size < drawn.length) return `seed ${seed}: two alike in one session`;
    // There are kinds enough: nobody is asked in the same words twice within five minutes.
    if (new Set(drawn.map(({ kind }) => kind)).size < drawn.length)
      return `seed ${seed}: a kind twice in one session`;
    for (const one of drawn) {
      const wrong = wrongWith(one);
      if (wrong !== null) return `${one.id}: ${wrong}`;
      const longest = longestIsRight(one);
      if (longest === null) continue;
      expected += longest.chance;
      variance += longest.chance * (1 - longest.chance);
      if (longest.isRight) found += 1;
    }
  }
  return found < expected + 3 * Math.sqrt(variance)
    ? null
    : `the longest choice was right ${found} times, by chance ${expected.toFixed(0)}`;
}
