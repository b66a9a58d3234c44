/** A wrong design stands in the papers: what else might be wrong beside it is no other name for it. */
import { expect, test } from 'vitest';
import { fairnessOf } from '../../src/fairness/fairness.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

test('beside a service that is too small nothing needs to be ruled out that these tests do not show', () => {
  const { revealedBy, solvable, lookalikes } = fairnessOf(scenarioNamed('find-gas-works').scenario);
  expect({ revealedBy, solvable, lookalikes }).toEqual({
    revealedBy: ['papers'],
    solvable: true,
    lookalikes: [],
  });
});
