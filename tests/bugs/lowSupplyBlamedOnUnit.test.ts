/** On a supply of 200 V a sound unit with a voltage window was blamed for what its window rightly did. */
import { expect, test } from 'vitest';
import { verify } from '../../src/scenario/verify.ts';
import { scenarioOf } from '../scenario/build.ts';

test.each(['voltage-window', 'earth-sensing'] as const)(
  '200 V, %s: nothing of the unit is broken',
  (openPen) => {
    const { actions } = verify(scenarioOf({ site: { voltage: 200 }, sheet: { openPen } }));
    const broken = actions
      .flatMap(({ expectations }) => expectations)
      .filter(({ finding }) => finding === 'broken');
    expect(broken.map(({ expectation }) => expectation.id)).toContain('line-to-neutral');
    expect(broken.filter(({ expectation }) => expectation.of === 'unit')).toEqual([]);
  },
);
