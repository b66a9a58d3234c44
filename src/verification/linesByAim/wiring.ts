/** The lines of the tests of the aim `wiring`, which come together. */
import { coding } from '../lines/coding.ts';
import { inspect } from '../lines/inspect.ts';
import { makeGood } from '../lines/makeGood.ts';
import { polesOpen } from '../lines/polesOpen.ts';
import { r1r2Polarity } from '../lines/r1r2Polarity.ts';
import type { TestLines } from '../testAction.ts';

export const wiring: Readonly<Record<string, TestLines>> = {
  inspect,
  'r1r2-polarity': r1r2Polarity,
  'poles-open': polesOpen,
  coding,
  'make-good': makeGood,
};
