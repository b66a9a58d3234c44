/** What can be pressed as an answer, in the order of its digits. */
import type { Given } from '../../../quiz/given.ts';
import type { Question } from '../../../quiz/question.ts';
import { choiceText, partText, threeAnswers } from '../../../words/questions.ts';

interface Option {
  readonly id: string;
  readonly text: string;
  /** The answer itself, or the next act of an order. */
  readonly chosen: Given | string;
}

/** None where something is typed or touched. */
export function optionsOf(question: Question): readonly Option[] {
  switch (question.way) {
    case 'choice':
      return question.choices.map((choice) => ({
        id: choice.id,
        text: choiceText(question, choice),
        chosen: { way: 'choice', id: choice.id },
      }));
    case 'three-answers':
      return threeAnswers.map(([answer, text]) => ({
        id: answer,
        text,
        chosen: { way: 'three-answers', answer },
      }));
    case 'order':
      return question.parts.map((part) => ({ id: part, text: partText(question, part), chosen: part }));
    default:
      return [];
  }
}
