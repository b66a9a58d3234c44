/** What a trainee says in conclusion, in words: the log has ids alone. The same words on buttons, in tables and in the debrief. */
import type { EntryOf, LeftOut, Verdict } from '../attempt/record/attempt.ts';
import type { NextStep, Tell } from '../faults/fault.ts';

export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  fit: 'fit for service',
  'not-fit': 'not fit for service',
  'could-not-finish': 'could not finish',
  'nothing-wrong': 'nothing wrong',
  'as-designed': 'as designed',
  'something-wrong': 'something wrong',
  'cannot-tell': 'cannot tell',
};
/** As a sentence begins with it. */
export const verdictTitle = (verdict: Verdict): string => {
  const words = VERDICT_WORDS[verdict];
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
};

export const NEXT_WORDS: Readonly<Record<NextStep, string>> = {
  'hand-over': 'hand over',
  'put-right-and-repeat': 'put right and repeat the tests it may have touched',
  'lock-off-and-label': 'isolate, lock off and label',
};

export const TELL_WORDS: Readonly<Record<Tell, string>> = {
  client: 'the client',
  installer: 'whoever installed the circuit',
  maker: 'the maker or supplier of the unit',
  distributor: 'the distributor',
};

export const LEFT_OUT_WORDS: Readonly<Record<Exclude<LeftOut, 'in-words'>, string>> = {
  'not-safe': 'not safe to go on',
  'no-supply': 'the unit gives no supply',
  'not-allowed': 'not allowed by this job',
  'not-applicable': 'does not apply here',
  'handed-over': 'handed over as done',
  'not-asked': 'no document asks for it',
  'no-time': 'no time left',
};

export const leftOutText = ({ leftOut, words }: EntryOf<'record'>): string =>
  leftOut === 'in-words' ? (words ?? '') : LEFT_OUT_WORDS[leftOut];
