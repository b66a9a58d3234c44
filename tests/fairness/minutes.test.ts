/** Minutes by which jobs are stated, held against what the aims say and against each other. */
import { describe, expect, test } from 'vitest';
import { papersForTestLines, testLinesOf } from '../../src/cli/testLines.ts';
import { minutesByRung, minutesOf, secondsOf } from '../../src/fairness/minutes.ts';
import { TAPS } from '../../src/fairness/taps.ts';
import LINES from '../../src/fairness/testLines.json' with { type: 'json' };
import { AIMS } from '../../src/scenario/aims.ts';
import { ACTIONS, actionNamed } from '../../src/verification/actions.ts';
import type { Papers } from '../../src/verification/testAction.ts';
import { AIM_WORDS } from '../../src/words/aims.ts';

const sites = papersForTestLines();
const [single] = sites as readonly [Papers, ...Papers[]];

test('what there is to read is what the tests have now (npm run test-lines)', () => {
  expect(LINES).toEqual(testLinesOf(sites));
});

test('every test has its taps, and no other has', () => {
  expect(Object.keys(TAPS).sort()).toEqual(ACTIONS.map(({ id }) => id).sort());
});

test.each(AIMS)('the aim $id takes what its words say, to the next minute', ({ id, tests }) => {
  const actions = ACTIONS.filter(
    (one) => (tests as readonly string[]).includes(one.id) && one.applies(single),
  );
  expect(Math.abs(minutesOf(actions, single) - AIM_WORDS[id].minutes)).toBeLessThanOrEqual(1);
});

describe('a whole job', () => {
  const all = ACTIONS.filter((one) => one.applies(single));

  test('takes less with more support, and within the hour that whole jobs are for', () => {
    const minutes = minutesByRung(all, single);
    expect(minutes.guided).toBeLessThan(minutes.practice);
    expect(minutes.practice).toBeLessThan(minutes['harder practice']);
    expect(minutes.practice).toBeLessThan(60);
  });

  test('takes longer on three lines where each is read', () => {
    const three = sites.find(({ site }) => site.phases === 3) as Papers;
    const loop = actionNamed('supply-volts');
    if (loop === undefined) throw new Error('no such test');
    expect(secondsOf(loop, three)).toBeGreaterThan(secondsOf(loop, single));
  });
});
