/** The cheapest set of tests against trying every set there is, written a second time here. */
import { describe, expect, test } from 'vitest';
import { drawer } from '../../src/bench/draw.ts';
import { cheapestCover } from '../../src/fairness/cover.ts';

const TESTS = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j', 'k', 'l'] as const;

/** Least cost over all 4096 sets; Infinity where none meets every demand. */
function byTryingAll(demands: readonly ReadonlySet<string>[], costs: readonly number[]): number {
  const masks = demands.map((demand) =>
    TESTS.reduce((mask, name, i) => mask | (demand.has(name) ? 1 << i : 0), 0),
  );
  let least = Infinity;
  for (let set = 0; set < 1 << TESTS.length; set++) {
    if (!masks.every((mask) => (mask & set) !== 0)) continue;
    const cost = costs.reduce((sum, one, i) => sum + ((set & (1 << i)) === 0 ? 0 : one), 0);
    least = Math.min(least, cost);
  }
  return least;
}

function drawnCase(seed: number) {
  const draw = drawer(seed);
  const costs = TESTS.map((name) => 1 + Math.floor(20 * draw(`cost ${name}`)));
  const density = 0.08 + 0.35 * draw('density');
  const demands = Array.from({ length: 3 + Math.floor(14 * draw('demands')) }, (_, n) => {
    const some = TESTS.filter((name) => draw(`${n} ${name}`) < density);
    return new Set<string>(some.length === 0 ? [TESTS[n % TESTS.length] as string] : some);
  });
  return { demands, costs, costOf: (name: string) => costs[TESTS.indexOf(name as 'a')] as number };
}

describe('a hundred drawn cases', () => {
  const cases = Array.from({ length: 100 }, (_, seed) => drawnCase(seed));

  test('an exact search costs what the best of all sets does, and meets every demand', () => {
    for (const { demands, costs, costOf } of cases) {
      const cover = cheapestCover(demands, costOf);
      expect(cover?.by).toBe('exact search');
      expect(cover?.cost).toBe(byTryingAll(demands, costs));
      for (const demand of demands) expect(cover?.tests.some((name) => demand.has(name))).toBe(true);
    }
  });

  test('a greedy choice meets every demand, says what it is, and is at times dearer', () => {
    let dearer = 0;
    for (const { demands, costOf } of cases) {
      const exact = cheapestCover(demands, costOf);
      const greedy = cheapestCover(demands, costOf, 0);
      expect(greedy?.cost).toBeGreaterThanOrEqual(exact?.cost ?? 0);
      for (const demand of demands) expect(greedy?.tests.some((name) => demand.has(name))).toBe(true);
      if (greedy?.by === 'greedy choice' && greedy.cost > (exact?.cost ?? 0)) dearer += 1;
    }
    expect(dearer).toBeGreaterThan(0);
  });
});

test('a demand that names no test is met by none', () => {
  expect(cheapestCover([new Set(['a']), new Set()], () => 1)).toBeNull();
  expect(cheapestCover([], () => 1)).toEqual({ tests: [], cost: 0, by: 'exact search' });
});
