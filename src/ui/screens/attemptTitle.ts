/** The page's title while an attempt is shown: the step, its test, and the job. */

import { pageTitle } from '../../words/pageTitles.ts';
import { testTitle } from '../../words/testTitles.ts';
import type { AttemptState } from '../flow/attemptMachine.ts';
import { stepOf } from './bench/TestCard.tsx';

export function attemptTitle(state: AttemptState): string {
  return pageTitle(stepTitle(state), state.context.bench.run.scenario.title);
}

function stepTitle(state: AttemptState): string {
  const { test } = state.context;
  if (state.matches('debrief')) return 'Debrief';
  if (state.matches('concluding')) return 'Conclude';
  if (test === null) return 'Choose a test';
  return `${stepOf(state) ?? 'What was true'}: ${testTitle(test)}`;
}
