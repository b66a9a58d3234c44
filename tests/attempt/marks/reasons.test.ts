/** The reasons for a verdict: what each of them is worth, and what it has to rest on. */
import { describe, expect, test } from 'vitest';
import { mark } from '../../../src/attempt/marks/mark.ts';
import { rightConclusion } from '../../../src/attempt/marks/worked.ts';
import type { NotedOf } from '../../../src/attempt/record/attempt.ts';
import { attemptOf } from '../../helpers/person.ts';
import { scenarioNamed } from '../../helpers/scenarios.ts';

type Said = Partial<NotedOf<'conclusion'>>;
const saying = (id: string, said: (right: NotedOf<'conclusion'>) => Said, tests?: readonly string[]) => {
  const { scenario, file } = scenarioNamed(id);
  return mark(
    scenario,
    attemptOf(scenario, file, {
      leavesOut: (action) => tests !== undefined && !tests.includes(action.id),
      conclude: (run) => {
        const right = rightConclusion(run);
        return { ...right, ...said(right) };
      },
    }),
  );
};
const reasons = (id: string, said: (right: NotedOf<'conclusion'>) => Said, tests?: readonly string[]) =>
  saying(id, said, tests).parts.reasons;

describe('mill-race, a poor joint: of 15, findings are 6, next, whom to tell and repeats 3 each', () => {
  const mill = (said: Said | ((right: NotedOf<'conclusion'>) => Said)) =>
    reasons('mill-race', typeof said === 'function' ? said : () => said);

  test('all of them', () => expect(mill({})).toBe(15));

  test('handing it over is no next step; what the cause asks for is, and locking it off always', () => {
    expect(mill({ next: 'hand-over' })).toBe(12);
    expect(mill({ next: 'put-right-and-repeat' })).toBe(15);
    expect(mill({ next: 'lock-off-and-label' })).toBe(15);
  });

  test('whoever the cause names is to be told, and nobody else', () => {
    expect(mill({ tell: 'installer' })).toBe(15);
    expect(mill({ tell: 'maker' })).toBe(12);
    expect(mill({ tell: 'distributor' })).toBe(12);
  });

  test('a finding that nothing shows takes its share, and no finding at all the whole of it', () => {
    const other = { test: 'pe-outlet', id: 'near-sum' };
    expect(mill(({ findings: [first] }) => ({ findings: first === undefined ? [] : [first, other] }))).toBe(
      12,
    );
    expect(mill({ findings: [other] })).toBe(9);
    expect(mill({ findings: [] })).toBe(9);
  });

  test('a limit that was kept is no finding', () => {
    expect(mill({ findings: [{ test: 'insulation-circuit', id: 'insulation' }] })).toBe(9);
  });

  test('where the verdict is wrong no finding holds', () => {
    const { sums, parts } = saying('mill-race', () => ({ verdict: 'could-not-finish' }));
    expect(sums.reasons?.findings).toBeNull();
    expect(parts.reasons).toBeLessThanOrEqual(9);
  });
});

test('orchard-lane, a dead detector: that is the maker’s', () => {
  expect(reasons('orchard-lane', () => ({ tell: 'maker' }))).toBe(15);
  expect(reasons('orchard-lane', () => ({ tell: 'installer' }))).toBe(12);
});

test('that a unit is fit rests on the tests that were done', () => {
  const few = saying('signal-cottage', () => ({}), ['papers', 'inspect', 'loop']);
  const { right, of } = few.sums.reasons?.rests ?? { right: 0, of: 0 };
  expect(right).toBeLessThan(of);
  expect(few.parts.reasons).toBeCloseTo((15 * right) / of, 1);
});

test('a test that nobody asks for makes up for none that was left out', () => {
  const rests = (tests: readonly string[]) => saying('harbour-mews', () => ({}), tests).sums.reasons?.rests;
  expect(rests(['papers', 'inspect', 'residual-five'])).toEqual(rests(['papers', 'inspect']));
});
