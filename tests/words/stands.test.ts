/** Where an unfinished attempt stands: kept by ids, told in words. */
import { expect, test } from 'vitest';
import { STEPS, standsAt } from '../../src/ui/flow/place.ts';
import { STANDS_WORDS, standsText } from '../../src/words/stands.ts';

test('every step has its words, and there are no others', () => {
  expect(Object.keys(STANDS_WORDS)).toEqual([...STEPS]);
});

test('step and test are told in words', () => {
  expect(standsText(standsAt({ step: 'choosing', test: null }))).toBe('choosing a test');
  expect(standsText(standsAt({ step: 'told', test: 'state-a' }))).toBe('judged: No vehicle (A)');
});

test('what an earlier version kept in words stays as it is, and so does a test that there is not', () => {
  expect(standsText('predicting: No vehicle (A)')).toBe('predicting: No vehicle (A)');
  expect(standsText('predicting/nothing')).toBe('predicting: nothing');
  expect(standsText('constructor')).toBe('constructor');
});
