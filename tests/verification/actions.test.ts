/** The test actions as a list: order, what they say, and that nothing observed shows nothing. */
import { describe, expect, test } from 'vitest';
import { operation } from '../../src/bench/operation.ts';
import { FAMILIES } from '../../src/faults/families.ts';
import { AIMS } from '../../src/scenario/aims.ts';
import { ACTIONS, actionNamed } from '../../src/verification/actions.ts';
import { LINES_BY_AIM } from '../../src/verification/allLines.ts';
import { judgeExpectations, judgeLimits } from '../../src/verification/assess.ts';
import { judgeLimit } from '../../src/verification/judgeLimit.ts';
import { withLines } from '../../src/verification/lines.ts';
import { BASES } from '../../src/verification/sources.ts';
import type { Limit, Papers } from '../../src/verification/testAction.ts';
import { sourceText } from '../../src/words/sources.ts';
import { SHEET, SITE, siteOf, THREE_PHASE } from '../bench/build.ts';

const PAPERS: readonly Papers[] = [
  { site: SITE, sheet: SHEET },
  { site: siteOf(THREE_PHASE), sheet: { ...SHEET, outlet: 'socket' } },
  {
    site: siteOf({ earthing: 'TT', electrodeResistance: 80 }),
    sheet: { ...SHEET, surgeArrester: true, poleBleed: 1e6 },
  },
];

/** Units that may keep a vehicle waiting, or watch for an open PEN: some expectations are for them alone. */
const WAITING: readonly Papers[] = [
  { site: SITE, sheet: { ...SHEET, permission: 'authorise', openPen: 'voltage-window', ventilation: true } },
  { site: SITE, sheet: { ...SHEET, startDelay: 60, schedule: 'default-hours' } },
];

test('each is found by its own name, and none by another', () => {
  for (const action of ACTIONS) expect(actionNamed(action.id)).toBe(action);
  expect(new Set(ACTIONS.map(({ id }) => id)).size).toBe(ACTIONS.length);
  expect(actionNamed('nothing')).toBeUndefined();
});

test.each(AIMS)('the lines of the tests of $id come together', ({ id, tests }) => {
  expect(Object.keys(LINES_BY_AIM[id] ?? {})).toEqual(tests);
});

test('a test without its lines is not judged: that is said, and nothing is taken for right', () => {
  const isolate = actionNamed('isolate');
  if (isolate === undefined) throw new Error('no such test');
  const alone = withLines({ ...isolate, id: 'still-to-come' });
  expect(alone.steps(PAPERS[0] as Papers)).toEqual(isolate.steps(PAPERS[0] as Papers));
  expect(() => judgeExpectations(alone, PAPERS[0] as Papers, { samples: [] })).toThrow(
    'no lines of the test still-to-come',
  );
});

test('what begins with the supply on leaves it on, but for the isolation itself', () => {
  for (const { id, from, leaves } of ACTIONS)
    if (from === 'energised' && id !== 'isolate') expect(leaves, id).toBe('energised');
});

describe.each(ACTIONS.map((action) => [action.id, action] as const))('%s', (_, action) => {
  test.each(PAPERS)('says what it should and should not show, with its source', (papers) => {
    const expectations = action.expectations(papers);
    const ids = [...expectations, ...action.untold(papers)].map(({ id }) => id);
    expect(expectations.length).toBeGreaterThan(0);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { source } of [...expectations, ...action.untold(papers), ...action.figures(papers)]) {
      expect(BASES).toContain(source.basis);
      expect(sourceText(source).length).toBeGreaterThan(3);
    }
    for (const { points } of expectations) {
      expect(points.length).toBeGreaterThan(0);
      for (const family of points) expect(FAMILIES).toContain(family);
    }
  });

  test('stops only at what it expects on some site', () => {
    const ids = [...PAPERS, ...WAITING].flatMap((papers) => action.expectations(papers).map(({ id }) => id));
    expect(ids).toEqual(expect.arrayContaining([...action.stops]));
  });

  test.each(PAPERS)('is made of operations that the bench has', (papers) => {
    for (const step of action.steps(papers)) expect(operation(step).op).toBe(step.op);
  });

  test.each(PAPERS)('shows nothing where nothing was observed', (papers) => {
    const nothing = { samples: [] };
    for (const { expectation, finding } of judgeExpectations(action, papers, nothing))
      expect(finding, expectation.id).toBe('not shown');
    expect(judgeLimits(action, papers, nothing)).toEqual([]);
  });
});

describe('a limit', () => {
  const limit = (kind: Limit['kind'], value: number): Limit => ({
    id: 'x',
    quantity: 'loop',
    unit: 'Ω',
    limit: value,
    kind,
    source: { basis: 'practice', where: '' },
    points: ['insulation'],
    applies: () => true,
  });
  const reading = (value: number | null, qualifier: '>' | null = null) =>
    ({
      quantity: 'loop',
      unit: 'Ω',
      value,
      uncertainty: value === null ? null : 0.05,
      qualifier,
      limit: 2000,
      at: 0,
    }) as const;

  test.each([
    ['most', 1, 0.9, null, true, false],
    ['most', 1, 1, null, true, true],
    ['most', 1, 1.01, null, false, true],
    ['most', 1, 1.2, null, false, false],
    ['most', 1, null, '>', false, false],
    ['least', 1, 1, null, true, true],
    ['least', 1, 0.99, null, false, true],
    ['least', 1, 1.5, null, true, false],
    ['least', 1, null, '>', true, false],
  ] as const)(
    'at %s %d, shown %s %s: pass %s, too close %s',
    (kind, of, value, qualifier, pass, tooClose) => {
      expect(judgeLimit(limit(kind, of), reading(value, qualifier))).toMatchObject({ pass, tooClose });
    },
  );
});
