/** The words of the tests of the aim `wiring`, which come together. */
import { coding } from '../actions/coding.ts';
import { inspect } from '../actions/inspect.ts';
import { makeGood } from '../actions/makeGood.ts';
import { polesOpen } from '../actions/polesOpen.ts';
import { r1r2Polarity } from '../actions/r1r2Polarity.ts';
import type { ActionWords } from '../actionWords.ts';

export const wiring: Readonly<Record<string, ActionWords>> = {
  inspect,
  'r1r2-polarity': r1r2Polarity,
  'poles-open': polesOpen,
  coding,
  'make-good': makeGood,
};
