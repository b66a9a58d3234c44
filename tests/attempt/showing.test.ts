/** Where a fault first shows, with the reading met and the reading due, as the bench works them out. */

import { describe, expect, test } from 'vitest';
import { showingOf } from '../../src/attempt/marks/showing.ts';
import { pairOf } from '../../src/bench/reading.ts';
import { verify } from '../../src/scenario/verify.ts';
import { scenarioOn } from '../faults/installations.ts';

const showing = (fault: string, values: Record<string, number>) => {
  const scenario = scenarioOn('home', [{ fault, values }]);
  return showingOf(verify(scenario), verify(scenario, { faults: [] }));
};

describe('a poor joint in the circuit’s protective conductor', () => {
  test.each([0.3, 1.8, 20])('of %d Ω: the first continuity test reads its ohms more than is due', (ohms) => {
    const shown = showing('pe-joint', { ohms });
    expect(shown?.test).toBe('pe-circuit');
    const { met, due } = shown?.read ?? {};
    expect(met).toMatchObject({ quantity: 'continuity', between: due && pairOf(due) });
    // Both readings are off by 3 % and 0.02 Ω at most (the contract of the continuity tester).
    const error = 0.03 * ((met?.value ?? 0) + (due?.value ?? 0)) + 0.04;
    expect(Math.abs((met?.value ?? 0) - (due?.value ?? 0) - ohms)).toBeLessThanOrEqual(error);
  });
});

test('what is only seen has no reading, and what is sound shows nothing', () => {
  expect(showing('gland-loose', {})).toEqual({ test: 'inspect', read: null });
  const sound = verify(scenarioOn('home'));
  expect(showingOf(sound, sound)).toBeNull();
});
