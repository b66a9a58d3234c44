/** The address of a question's bench; null where no bench could stand as the question shows. */
import type { Question } from '../../../quiz/question.ts';
import { shownState } from '../../../quiz/shown.ts';

export const onBench = (question: Question): string | null =>
  shownState(question) === null ? null : `#/questions/bench?of=${question.id}`;
