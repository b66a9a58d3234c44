/** What each test told, and the way of whoever always does what tells most: on small tables written by hand. */
import { describe, expect, test } from 'vitest';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import type { Cell } from '../../src/fairness/cell.ts';
import type { Row } from '../../src/fairness/row.ts';
import { nameOf, nextTest, tellingOn, toldBy, wayByTelling } from '../../src/fairness/told.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

/** A row by what each test shows of it, as a word; a test that is not named is never come to. */
function rowOf(cause: string, shows: Readonly<Record<string, string>>): Row {
  const cellOf = (seen: string): Cell => ({
    prepared: [],
    test: [{ operation: 'inspect', seen, truths: [], heard: null }],
    broken: [],
  });
  return {
    cause: { causes: cause === '' ? [] : [cause], faults: [], of: 'catalogue', size: null },
    papers: '',
    sheet: new Map(),
    cells: new Map(Object.entries(shows).map(([name, seen]) => [name, cellOf(seen)])),
    stopped: null,
    isUnsafe: false,
    closest: null,
  };
}

const sound = rowOf('', { look: 'well', pull: 'held', load: 'cool' });
const loose = rowOf('loose', { look: 'gap', pull: 'comes', load: 'warm' });
const worn = rowOf('worn', { look: 'gap', pull: 'held', load: 'warm' });
const dirty = rowOf('dirty', { look: 'well', pull: 'held', load: 'warm' });
const rows = [sound, loose, worn, dirty];

test('after each test the causes are left that show the same, and a test that would have left fewer is named', () => {
  expect(toldBy(loose, rows, ['load', 'look', 'pull'])).toEqual([
    { test: 'load', left: ['loose', 'worn', 'dirty'], better: { test: 'pull', left: 1 } },
    { test: 'look', left: ['loose', 'worn'], better: { test: 'pull', left: 1 } },
    { test: 'pull', left: ['loose'], better: null },
  ]);
});

test('a cause whose trainee is stopped before a test is not ruled out by it', () => {
  const stopped = rowOf('stopped', { look: 'gap' });
  expect(toldBy(loose, [sound, loose, stopped], ['load', 'look']).map(({ left }) => left)).toEqual([
    ['loose', 'stopped'],
    ['loose', 'stopped'],
  ]);
});

test('of a job: what each test leaves of all causes at their usual size, and which would have left fewer', () => {
  const { scenario } = scenarioNamed('find-weavers-green');
  const {
    tests: told,
    cost,
    best,
  } = toItsEnd(tellingOn(scenario, ['state-c', 'state-c', 'residual-half', 'dc-ramp']));
  expect(told.map(({ test }) => test)).toEqual(['state-c', 'residual-half', 'dc-ramp']);
  expect(told[0]?.better?.test).toBe('residual-half');
  const [first = 0, second = 0, third = 0] = told.map(({ left }) => left.length);
  expect(told[0]?.better?.left).toBeLessThan(first);
  expect(second).toBeLessThan(first);
  expect(third).toBeLessThanOrEqual(second);
  for (const { left } of told)
    expect(left).toEqual(expect.arrayContaining(scenario.faults.map(({ fault }) => fault)));
  // Without hindsight: it ends with no more causes left, and costs what its tests cost.
  expect(new Set(best.left.map(nameOf)).size).toBeLessThanOrEqual(third);
  expect(best.left.map(nameOf)).toEqual(expect.arrayContaining(scenario.faults.map(({ fault }) => fault)));
  expect(best.cost).toBeGreaterThan(0);
  expect(cost).toBeGreaterThan(0);
});

describe('the next test, without hindsight', () => {
  test('is the one that splits most evenly', () => {
    expect(nextTest(rows, ['pull', 'look', 'load'], () => 1)).toBe('look');
  });

  test('or a cheaper one that tells nearly as much', () => {
    expect(nextTest(rows, ['pull', 'look'], (one) => (one === 'look' ? 2 : 1))).toBe('pull');
  });

  test('is none where nothing tells anything more', () => {
    expect(nextTest([sound, dirty], ['look', 'pull'], () => 1)).toBeNull();
  });
});

test('the way of one who always does what tells most ends where the cause stands alone, and costs its tests', () => {
  const priceOf = (one: string) => (one === 'look' ? 20 : 30);
  expect(wayByTelling(loose, rows, priceOf)).toEqual({ tests: ['look', 'pull'], left: [loose], cost: 50 });
  expect(wayByTelling(dirty, rows, priceOf)).toEqual({ tests: ['look', 'load'], left: [dirty], cost: 50 });
  expect(wayByTelling(loose, [loose, worn], priceOf, ['pull']).left).toEqual([loose, worn]);
});
