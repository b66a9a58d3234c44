/** What a faultless trainee finds, worked out once a scenario, is what is found anew. */
import { expect, test } from 'vitest';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { verify, verifyingOnce } from '../../src/scenario/verify.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

test.each(['mill-race', 'bakery-lane', 'quarry-offices'])('%s', (id) => {
  const { scenario } = scenarioNamed(id);
  for (const everything of [false, true])
    for (const _again of [1, 2]) {
      const { conclusion, stopped, actions } = verify(scenario, { everything });
      const once = toItsEnd(verifyingOnce(scenario, { everything }));
      expect(JSON.stringify(once)).toBe(JSON.stringify({ conclusion, stopped, actions }));
    }
});
