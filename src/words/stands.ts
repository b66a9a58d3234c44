/** Where an attempt that is not concluded stands, in words, for whoever takes it up again. */
import { testTitle } from './testTitles.ts';

/** By the steps of an attempt (src/ui/flow/place.ts). */
export const STANDS_WORDS: Readonly<Record<string, string>> = {
  choosing: 'choosing a test',
  'setting up': 'setting up',
  predicting: 'predicting',
  observing: 'observing',
  judging: 'judging',
  told: 'judged',
  harmed: 'stopped by a critical act',
  concluding: 'concluding',
  debrief: 'concluded',
};

/** Of the step and, behind a slash, the test, by their ids. What an earlier version kept is in words already. */
export function standsText(stands: string): string {
  const [step = '', test] = stands.split('/');
  const words = Object.hasOwn(STANDS_WORDS, step) ? STANDS_WORDS[step] : undefined;
  if (words === undefined) return stands;
  return test === undefined ? words : `${words}: ${testTitle(test)}`;
}
