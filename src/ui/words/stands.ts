/** Where an attempt that is not concluded stands, in words, for whoever takes it up again. */

import type { Scenario } from '../../scenario/scenario.ts';
import { allowedActions } from '../../scenario/scenario.ts';
import { testTitle } from '../../words/testTitles.ts';
import type { Place, Step } from '../flow/place.ts';

const WORDS: Readonly<Record<Step, string>> = {
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

export function standsText({ step, test }: Pick<Place, 'step' | 'test'>, scenario: Scenario): string {
  const action = allowedActions(scenario).find(({ id }) => id === test);
  return action === undefined ? WORDS[step] : `${WORDS[step]}: ${testTitle(action.id)}`;
}
