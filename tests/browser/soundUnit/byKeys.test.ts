import { expect, test } from 'vitest';
import { EVERY_TEST } from '../everyTest.ts';
import { holdSoundUnit, SOUND } from './soundUnit.ts';

// A test by keys alone is a story at every run (keyboard.test.ts); the whole job where every test is asked for.
if (EVERY_TEST) holdSoundUnit(SOUND.keys);

test('goes from isolation to handing over', () => {
  const { tests } = SOUND.keys;
  expect([tests[0], tests.at(-1)]).toEqual(['isolate', 'finish']);
});
