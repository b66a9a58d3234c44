/** The words of the tests of the aim `offer`, which come together. */
import { codingSizes } from '../actions/codingSizes.ts';
import { limit } from '../actions/limit.ts';
import { nextPoint } from '../actions/nextPoint.ts';
import { sharing } from '../actions/sharing.ts';
import { stateB } from '../actions/stateB.ts';
import type { ActionWords } from '../actionWords.ts';

export const offer: Readonly<Record<string, ActionWords>> = {
  'state-b': stateB,
  'coding-sizes': codingSizes,
  limit,
  'next-point': nextPoint,
  sharing,
};
