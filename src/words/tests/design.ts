/** The words of the tests of the aim `design`, which come together. */
import { papers } from '../actions/papers.ts';
import type { ActionWords } from '../actionWords.ts';

export const design: Readonly<Record<string, ActionWords>> = {
  papers,
};
