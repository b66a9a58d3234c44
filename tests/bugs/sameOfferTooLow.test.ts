/** "Goes on offering the same current" was judged by the current that was due, not by the one before. */
import { expect, test } from 'vitest';
import { cToB } from '../../src/verification/actions/cToB.ts';
import { judgeExpectations } from '../../src/verification/assess.ts';
import { carryOut } from '../../src/verification/procedure.ts';
import { benchWith, SHEET, SITE } from '../bench/build.ts';

test('an offer that is too low, in C and in B alike, goes on', () => {
  const world = benchWith({ faults: [{ fault: 'offer-too-low', values: {} }] });
  const papers = { site: SITE, sheet: SHEET };
  const judged = judgeExpectations(cToB, papers, carryOut(world, cToB, papers));
  expect(judged.find(({ expectation }) => expectation.id === 'same-offer')?.finding).toBe('met');
});
