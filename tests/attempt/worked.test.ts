/** A worked attempt earns every mark, on every scenario and on benches that are handed over. */
import { expect, test } from 'vitest';
import { mark } from '../../src/attempt/mark.ts';
import { workedAttempt } from '../../src/attempt/worked.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { faultlessAttempt } from '../helpers/trainee.ts';

test.each(scenarioIds)('%s', (id) => {
  const { scenario, file } = scenarioNamed(id);
  const worked = workedAttempt(scenario, file);
  expect(mark(scenario, worked)).toMatchObject({ total: 100, passed: true, differs: [] });
  expect(JSON.stringify(worked)).toBe(JSON.stringify(faultlessAttempt(scenario, file)));
});
