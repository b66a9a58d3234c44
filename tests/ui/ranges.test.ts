// What may be typed for a figure, and that every act made of such figures is one the bench takes.

import { describe, expect, test } from 'vitest';
import { operation } from '../../src/bench/operation.ts';
import type { FaultChoice } from '../../src/faults/catalogue.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { figureWithin, RANGES, rangeText } from '../../src/ui/format/ranges.ts';
import { actsOn, figuredActsOn } from '../../src/ui/screens/measure/acts.ts';
import type { Papers } from '../../src/verification/testAction.ts';
import { leakageText, loadText } from '../../src/words/settings.ts';
import { operationText } from '../../src/words/trade.ts';
import { SHEET, SITE, siteOf, THREE_PHASE } from '../bench/build.ts';
import { scenarioOf } from '../scenario/build.ts';

test.each([
  ['0', RANGES.load, 0],
  ['32', RANGES.load, 32],
  ['32,5', RANGES.load, 32.5],
  ['81', RANGES.load, null],
  ['-1', RANGES.load, null],
  ['−6', RANGES.leakageDc, -6],
  ['-101', RANGES.leakageDc, null],
  ['', RANGES.load, null],
  ['ten', RANGES.load, null],
] as const)('%s is the figure %s', (text, range, figure) => {
  expect(figureWithin(text, range)).toBe(figure);
});

test('a range is said with its unit', () => {
  expect(rangeText(RANGES.load)).toBe('0 to 80 A is expected.');
  expect(rangeText(RANGES.leakageDc)).toBe('−100 to 100 mA is expected.');
});

test('load and leakage in words', () => {
  expect(loadText(0)).toBe('no load');
  expect(loadText(20)).toBe('load 20 A a line');
  expect(leakageText(null)).toBe('no leakage');
  expect(leakageText({ ac: 0.01, dc: 0, line: 'L2' })).toBe('leakage 10 mA a.c. from L2');
  expect(leakageText({ ac: 0.0045, dc: -0.006, line: 'L1' })).toBe(
    'leakage 4.5 mA a.c. and −6 mA d.c. from L1',
  );
});

const PAPERS: readonly (readonly [string, Papers])[] = [
  ['one phase, TN-C-S', { site: SITE, sheet: { ...SHEET, openPen: 'voltage-window' } }],
  ['three phases, TN-S', { site: siteOf(THREE_PHASE), sheet: { ...SHEET, outlet: 'socket' } }],
  [
    'one phase, TN-C-S, next point',
    { site: siteOf({ nextPoint: { ratedCurrent: 32, draws: 0 } }), sheet: { ...SHEET, serviceLimit: 60 } },
  ],
  ['TT', { site: siteOf({ earthing: 'TT', electrodeResistance: 80 }), sheet: SHEET }],
];

describe.each(PAPERS)('%s', (name, papers) => {
  const names = [...actsOn(papers).map(([act]) => act), ...figuredActsOn(papers).map((act) => act.name)];

  test('every act has a name of its own, and the bench takes it', () => {
    expect(new Set(names).size).toBe(names.length);
    for (const [, , input] of actsOn(papers))
      expect(operationText(operation(input)).length).toBeGreaterThan(2);
  });

  test('every act with figures is taken at both ends of its ranges', () => {
    for (const act of figuredActsOn(papers))
      for (const end of ['least', 'greatest'] as const) {
        const figures = Object.fromEntries(act.asks.map(({ key, range }) => [key, range[end]]));
        expect(operationText(operation(act.operation(figures, 'L1'))), act.name).not.toMatch(
          /NaN|undefined|null/,
        );
      }
  });

  test('a PEN conductor and neighbours on it are disturbed only where there is one', () => {
    const has = name.includes('TN-C-S');
    expect(names.includes('pen open')).toBe(has);
    expect(names.includes('neighbours')).toBe(has);
  });

  test('a vehicle is put on the next point only where there is one', () => {
    expect(names.includes('next point')).toBe(name.includes('next point'));
  });
});

test.each([
  { fault: 'voltage-high', values: { volts: 260 } },
  { fault: 'pen-open-in-street', values: { watts: 6000 } },
  { fault: 'pen-open', values: { ohms: 20 } },
])('what can be disturbed tells nothing of $fault', (fault) => {
  const on = (faults: readonly FaultChoice[]) =>
    papersOf(scenarioOf({ sheet: { openPen: 'earth-sensing' }, faults }));
  const [broken, sound] = [on([fault]), on([])];
  expect(actsOn(broken)).toEqual(actsOn(sound));
  const starts = (papers: Papers) => figuredActsOn(papers).map(({ name, asks }) => [name, asks]);
  expect(starts(broken)).toEqual(starts(sound));
  const over = actsOn(broken).find(([act]) => act === 'as it was');
  expect(over?.[2]).toMatchObject({ pen: 'sound', voltage: null, neighbours: null, missing: null });
});
