/** Answers as they stand on buttons: with a typographic apostrophe, alike everywhere. */
import type { Answer } from '../../attempt/attempt.ts';

export const answerText = (answer: Answer): string => answer.replace("'", '’');
