/**
 * What a trainee says of a test, in words: the log has ids alone. The same words on buttons, in tables and in the
 * debrief. What is said at the end stands in verdicts.ts.
 */
import type { Answer, Judged, LimitJudged, Sure } from '../attempt/record/attempt.ts';

const ANSWER_WORDS: Readonly<Record<Answer, string>> = {
  should: 'should',
  'should-not': 'should not',
  'cant-tell': 'can’t tell',
};
export const answerText = (answer: Answer): string => ANSWER_WORDS[answer];

export const SURE_WORDS: Readonly<Record<Sure, string>> = {
  guessing: 'guessing',
  'fairly-sure': 'fairly sure',
  'would-sign': 'would sign for it',
};

/** How often that is right, where somebody means it. */
export const SURE_SHARES: Readonly<Record<Sure, string>> = {
  guessing: 'about half',
  'fairly-sure': 'three in four',
  'would-sign': 'nineteen in twenty',
};

export const JUDGED_WORDS: Readonly<Record<Judged, string>> = {
  did: 'it did',
  'did-not': 'it did not',
  'not-shown': 'not shown',
};

export const LIMIT_WORDS: Readonly<Record<LimitJudged, string>> = {
  within: 'within',
  outside: 'outside',
  'too-close': 'too close',
};
