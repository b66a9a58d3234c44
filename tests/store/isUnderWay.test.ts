/** Which kept attempts keep questions from being asked. */
import { expect, test } from 'vitest';
import { isUnderWay } from '../../src/store/isUnderWay.ts';

const begun = {
  support: 'assessment',
  concluded: false,
  isGuest: false,
  entries: 3,
  putAway: false,
} as const;

test('an assessment that is begun and not concluded, put away or not', () => {
  expect(isUnderWay(begun)).toBe(true);
  expect(isUnderWay({ ...begun, putAway: true })).toBe(true);
  expect(isUnderWay({ ...begun, entries: 0 })).toBe(true);
});

test('not one that was put away before anything was done, one that is over, somebody else’s, or practice', () => {
  expect(isUnderWay({ ...begun, entries: 0, putAway: true })).toBe(false);
  expect(isUnderWay({ ...begun, concluded: true })).toBe(false);
  expect(isUnderWay({ ...begun, isGuest: true })).toBe(false);
  expect(isUnderWay({ ...begun, support: 'practice' })).toBe(false);
  expect(isUnderWay({ ...begun, support: 'guided' })).toBe(false);
});
