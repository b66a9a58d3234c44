/** What each test told, and what a way costs beside the cheapest: on small tables written by hand. */
import { describe, expect, test } from 'vitest';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import type { Cell } from '../../src/fairness/cell.ts';
import type { Row } from '../../src/fairness/row.ts';
import { nextTest, shareOfWay, tellingOn, toldBy } from '../../src/fairness/told.ts';
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
  const told = toItsEnd(tellingOn(scenario, ['state-c', 'state-c', 'residual-half', 'dc-ramp']));
  expect(told.map(({ test }) => test)).toEqual(['state-c', 'residual-half', 'dc-ramp']);
  expect(told[0]?.better?.test).toBe('residual-half');
  const [first = 0, second = 0, third = 0] = told.map(({ left }) => left.length);
  expect(told[0]?.better?.left).toBeLessThan(first);
  expect(second).toBeLessThan(first);
  expect(third).toBeLessThanOrEqual(second);
  for (const { left } of told)
    expect(left).toEqual(expect.arrayContaining(scenario.faults.map(({ fault }) => fault)));
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

test('a way counts in full up to 1.5 times the cheapest, and then as much less as it costs more', () => {
  expect(shareOfWay(100, 100)).toBe(1);
  expect(shareOfWay(150, 100)).toBe(1);
  expect(shareOfWay(151, 100)).toBeLessThan(1);
  expect(shareOfWay(300, 100)).toBe(0.5);
  expect(shareOfWay(0, 100)).toBe(0);
});
