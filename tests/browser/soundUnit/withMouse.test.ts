import { expect, test } from 'vitest';
import { allowedActions } from '../../../src/scenario/scenario.ts';
import { scenarioNamed } from '../../helpers/scenarios.ts';
import { holdSoundUnit, SOUND } from './soundUnit.ts';

holdSoundUnit(SOUND.mouse);

test('every test is done in one of them', () => {
  const done = new Set(Object.values(SOUND).flatMap(({ tests }): readonly string[] => tests));
  const every = allowedActions(scenarioNamed('harbour-mews').scenario).map(({ id }) => id);
  expect(every.filter((id) => !done.has(id))).toEqual([]);
});
