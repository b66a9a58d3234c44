/** The goal for next time that a debrief suggests. */
import type { Answer } from '../attempt/attempt.ts';
import type { DebriefLine, Goal } from '../attempt/debrief.ts';
import { lineText, testTitle } from './actions.ts';
import { UNSAFE_ACT_WORDS } from './unsafeActs.ts';

export function goalText(goal: Goal): string {
  switch (goal.what) {
    case 'critical act':
      return UNSAFE_ACT_WORDS[goal.act].why;
    case 'verdict':
      return 'Before calling a unit fit, name for every test the finding that allows it.';
    case 'wrong line':
      return wrongLineText(goal.line);
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

const SAID: Readonly<Record<Answer, string>> = {
  should: 'should',
  'should-not': 'should not',
  'cant-tell': 'can’t tell',
};

/** Names the test, the line, and what was said of it. */
function wrongLineText(line: DebriefLine): string {
  const { test, subject, predicted, right, sure } = line;
  const signed = sure === 'would-sign' ? ', and would have signed for it' : '';
  return `${testTitle(test)}: of “the ${subject} ${lineText(test, line)}” you said: ${SAID[predicted ?? 'cant-tell']}${signed}. Right is: ${SAID[right]}.`;
}
