/** The words of the tests of the aim `dead`, which come together. */
import { instruments } from '../actions/instruments.ts';
import { isolate } from '../actions/isolate.ts';
import { proveDead } from '../actions/proveDead.ts';
import type { ActionWords } from '../actionWords.ts';

export const dead: Readonly<Record<string, ActionWords>> = {
  instruments,
  isolate,
  'prove-dead': proveDead,
};
