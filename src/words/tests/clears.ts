/** The words of the tests of the aim `clears`, which come together. */
import { loop } from '../actions/loop.ts';
import { voltDrop } from '../actions/voltDrop.ts';
import type { ActionWords } from '../actionWords.ts';

export const clears: Readonly<Record<string, ActionWords>> = {
  loop,
  'volt-drop': voltDrop,
};
