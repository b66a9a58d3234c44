/**
 * The cheapest set of tests that meets every demand: each demand names the tests of which at least one has to be in the
 * set. Exact where, after everything that needs no choice is decided, at most so many tests are left; else by taking the
 * test that meets most for its cost again and again, which may be dearer than need be.
 */

/** Tests among which an exact search is made. */
export const MOST_EXACT = 25;

export interface Cover {
  readonly tests: readonly string[];
  readonly cost: number;
  readonly by: 'exact search' | 'greedy choice';
}

type Demand = ReadonlySet<string>;

/** Null where a demand names no test: then nothing meets it. Costs are above 0. */
export function cheapestCover(
  demands: readonly ReadonlySet<string>[],
  costOf: (test: string) => number,
  mostExact: number = MOST_EXACT,
): Cover | null {
  if (demands.some(({ size }) => size === 0)) return null;
  const { taken, left } = reduced(demands, costOf);
  const open = new Set(left.flatMap((demand) => [...demand]));
  const isExact = open.size <= mostExact;
  const more = isExact ? searched(left, costOf) : greedily(left, costOf);
  const tests = [...taken, ...more];
  return { tests, cost: costed(tests, costOf), by: isExact ? 'exact search' : 'greedy choice' };
}

const costed = (tests: readonly string[], costOf: (test: string) => number): number =>
  tests.reduce((sum, test) => sum + costOf(test), 0);

/**
 * What needs no choice: a demand that a stricter one implies; a test in whose place another meets as much for no more;
 * a demand with one test left. None of it changes what the cheapest set costs.
 */
function reduced(
  demands: readonly Demand[],
  costOf: (test: string) => number,
): { readonly taken: readonly string[]; readonly left: readonly Demand[] } {
  const taken: string[] = [];
  let left: readonly Demand[] = demands;
  for (;;) {
    const before = sizeOf(left);
    left = withoutDominated(strictest(left), costOf);
    const only = left.find(({ size }) => size === 1);
    if (only !== undefined) {
      const [test] = only as ReadonlySet<string> & Iterable<string>;
      taken.push(test as string);
      left = left.filter((demand) => !demand.has(test as string));
    } else if (sizeOf(left) === before) return { taken, left };
  }
}

const sizeOf = (demands: readonly Demand[]): number => demands.reduce((sum, { size }) => sum + 1 + size, 0);

/** Each demand that no other one implies, once. */
function strictest(demands: readonly Demand[]): readonly Demand[] {
  const kept: Demand[] = [];
  for (const demand of demands.toSorted((x, y) => x.size - y.size))
    if (!kept.some((one) => isWithin(one, demand))) kept.push(demand);
  return kept;
}

const isWithin = <T>(x: ReadonlySet<T>, y: ReadonlySet<T>): boolean =>
  x.size <= y.size && [...x].every((one) => y.has(one));

function withoutDominated(demands: readonly Demand[], costOf: (test: string) => number): readonly Demand[] {
  const meets = new Map<string, Set<number>>();
  for (const [i, demand] of demands.entries())
    for (const test of demand) meets.set(test, (meets.get(test) ?? new Set()).add(i));
  const kept = new Set(meets.keys());
  for (const [test, met] of meets)
    for (const other of kept) {
      if (other === test) continue;
      if (costOf(other) > costOf(test) || !isWithin(met, meets.get(other) as Set<number>)) continue;
      kept.delete(test);
      break;
    }
  return demands.map((demand) => new Set([...demand].filter((test) => kept.has(test))));
}

/** Branches on the demand with fewest tests; leaves a branch that cannot come out cheaper than the best so far. */
function searched(demands: readonly Demand[], costOf: (test: string) => number): readonly string[] {
  let best: readonly string[] = greedily(demands, costOf);
  let least = costed(best, costOf);
  const visit = (chosen: readonly string[], cost: number, left: readonly Demand[]): void => {
    if (left.length === 0) {
      if (cost < least) [best, least] = [chosen, cost];
      return;
    }
    if (cost + atLeast(left, costOf) >= least) return;
    const [first] = left.toSorted((x, y) => x.size - y.size) as [Demand];
    // What was tried in one branch need not be tried in those after it.
    const tried = new Set<string>();
    for (const test of [...first].toSorted((x, y) => costOf(x) - costOf(y))) {
      const rest = left
        .filter((demand) => !demand.has(test))
        .map((demand) => new Set([...demand].filter((one) => !tried.has(one))));
      tried.add(test);
      if (rest.every(({ size }) => size > 0)) visit([...chosen, test], cost + costOf(test), rest);
    }
  };
  visit([], 0, demands);
  return best;
}

/** What demands that share no test cost at the least. */
function atLeast(demands: readonly Demand[], costOf: (test: string) => number): number {
  const used = new Set<string>();
  let sum = 0;
  for (const demand of demands) {
    if ([...demand].some((test) => used.has(test))) continue;
    for (const test of demand) used.add(test);
    sum += Math.min(...[...demand].map(costOf));
  }
  return sum;
}

function greedily(demands: readonly Demand[], costOf: (test: string) => number): readonly string[] {
  const chosen: string[] = [];
  let left = demands;
  while (left.length > 0) {
    const worth = new Map<string, number>();
    for (const demand of left) for (const test of demand) worth.set(test, (worth.get(test) ?? 0) + 1);
    const [best] = [...worth].reduce((x, y) => (y[1] / costOf(y[0]) > x[1] / costOf(x[0]) ? y : x));
    chosen.push(best);
    left = left.filter((demand) => !demand.has(best));
  }
  return chosen;
}
