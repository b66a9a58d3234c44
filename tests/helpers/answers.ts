// Right answers to questions, for whoever answers them in a test.

import type { Given } from '../../src/quiz/given.ts';
import type { Question } from '../../src/quiz/question.ts';

/** What is right, said in the way that the question asks. */
export function rightGiven(question: Question): Given {
  switch (question.way) {
    case 'figure':
      return { way: 'figure', value: question.answer, unit: question.unit };
    case 'choice':
      return { way: 'choice', id: question.answer };
    case 'three-answers':
      return { way: 'three-answers', answer: question.answer };
    case 'order':
      return { way: 'order', parts: [...question.answer] };
    case 'leads':
      return { way: 'leads', pair: [...(question.answers[0] ?? ['', ''])] };
    case 'touch':
      return { way: 'touch', terminal: question.answer };
    case 'cursor':
      return { way: 'cursor', at: question.answer };
  }
}
