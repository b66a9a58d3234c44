/** What a faultless trainee finds, worked out once for all that it follows from, is what is found anew. */
import { expect, test } from 'vitest';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { verify, verifying } from '../../src/scenario/verify.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

test.each(['mill-race', 'bakery-lane', 'quarry-offices'])('%s', (id) => {
  const { scenario } = scenarioNamed(id);
  for (const everything of [false, true])
    for (const _again of [1, 2]) {
      const { conclusion, stopped, actions } = toItsEnd(verifying(scenario, { everything }));
      const once = verify(scenario, { everything });
      expect(JSON.stringify(once)).toBe(JSON.stringify({ conclusion, stopped, actions }));
    }
});

test('a scenario that was read again is known; one that differs in anything is found anew', () => {
  const { scenario } = scenarioNamed('mill-race');
  const first = verify(scenario);
  expect(verify(structuredClone(scenario))).toBe(first);
  const others = [
    { ...scenario, seed: scenario.seed + 1 },
    { ...scenario, unit: { ...scenario.unit, insulationTestVoltageMax: 500 } },
    { ...scenario, allowed: ['inspect'] },
    { ...scenario, faults: [] },
  ];
  for (const other of others) {
    const { conclusion, stopped, actions } = toItsEnd(verifying(other));
    const once = verify(other);
    expect(JSON.stringify(once)).toBe(JSON.stringify({ conclusion, stopped, actions }));
  }
  const { actions } = toItsEnd(verifying(scenario, { faults: [] }));
  expect(verify(scenario, { faults: [] }).actions).toHaveLength(actions.length);
});
