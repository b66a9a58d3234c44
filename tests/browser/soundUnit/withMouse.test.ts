import { expect, test } from 'vitest';
import { allowedActions } from '../../../src/scenario/scenario.ts';
import { scenarioNamed } from '../../helpers/scenarios.ts';
import { EVERY_TEST } from '../everyTest.ts';
import { holdSoundUnit, SOUND, TOLD } from './soundUnit.ts';

// By mouse go other stories, too; this one is for those tests that none of them has.
if (EVERY_TEST) holdSoundUnit(SOUND.mouse);

test('every test is done in one of them', () => {
  const done = new Set(TOLD);
  const every = allowedActions(scenarioNamed('harbour-mews').scenario).map(({ id }) => id);
  expect(every.filter((id) => !done.has(id))).toEqual([]);
});
