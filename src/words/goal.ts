/** The goal for next time that a debrief suggests. */
import type { Goal } from '../attempt/debrief.ts';
import { UNSAFE_ACTS } from '../bench/unsafe.ts';
import { testTitle } from './actions.ts';

export function goalText(goal: Goal): string {
  switch (goal.what) {
    case 'critical act':
      return UNSAFE_ACTS[goal.act].why;
    case 'verdict':
      return 'Before calling a unit fit, name for every test the finding that allows it.';
    case 'sure and wrong':
      return `Look again at ${goal.topic}: ${goal.lines} of the lines you were sure of were wrong.`;
    case 'repeats':
      return 'After a repair, repeat the failed test and every earlier one that the fault may have influenced, before calling it fit.';
    case 'tests left out':
      return `Do the tests you left out: ${goal.tests.map(testTitle).join('; ')}.`;
    case 'judgements':
      return 'Hold every reading against its line before going on: what should not be was passed over.';
    case 'another unit':
      return 'Do the same on a unit you have not seen.';
  }
}
