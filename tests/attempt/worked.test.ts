/** A worked attempt earns every mark, on every scenario and on benches that are handed over. */
import { expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import { workedAttempt } from '../../src/attempt/marks/worked.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { faultlessAttempt } from '../helpers/trainee.ts';

test.each(scenarioIds)('%s', (id) => {
  const { scenario, file } = scenarioNamed(id);
  const worked = workedAttempt(scenario, file);
  expect(mark(scenario, worked)).toMatchObject({ total: 100, passed: true, differs: [] });
  expect(JSON.stringify(worked)).toBe(JSON.stringify(faultlessAttempt(scenario, file)));
});

test('it writes down what a display shows, in its unit', () => {
  const { scenario, file } = scenarioNamed('harbour-mews');
  const written = workedAttempt(scenario, file).entries.filter((entry) => entry.kind === 'observation');
  const insulation = written.filter(({ volts }) => volts !== undefined);
  expect(insulation.map(({ unit }) => unit)).toContain('MΩ');
  for (const { unit, value } of insulation) {
    expect(unit).toBe('MΩ');
    expect(value).toBeLessThanOrEqual(1000);
  }
  expect(written.filter(({ tripped }) => tripped !== undefined).map(({ unit }) => unit)).toContain('mA');
});
