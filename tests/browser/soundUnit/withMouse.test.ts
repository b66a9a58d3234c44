import { expect, test } from 'vitest';
import { allowedActions } from '../../../src/scenario/scenario.ts';
import { scenarioNamed } from '../../helpers/scenarios.ts';
import { holdSoundUnit, SOUND, TOLD } from './soundUnit.ts';

holdSoundUnit(SOUND.mouse);

test('every test is done in one of them', () => {
  const done = new Set(TOLD);
  const every = allowedActions(scenarioNamed('harbour-mews').scenario).map(({ id }) => id);
  expect(every.filter((id) => !done.has(id))).toEqual([]);
});
