/** The lines of the tests of the aim `offer`, which come together. */
import { codingSizes } from '../lines/codingSizes.ts';
import { limit } from '../lines/limit.ts';
import { nextPoint } from '../lines/nextPoint.ts';
import { sharing } from '../lines/sharing.ts';
import { stateB } from '../lines/stateB.ts';
import type { TestLines } from '../testAction.ts';

export const offer: Readonly<Record<string, TestLines>> = {
  'state-b': stateB,
  'coding-sizes': codingSizes,
  limit,
  'next-point': nextPoint,
  sharing,
};
