/** The opened drawing has a spot for everything that can differ, and the time line no squares over each other. */
import { describe, expect, test } from 'vitest';
import { causesOf } from '../../src/attempt/opened/roots.ts';
import type { TestMark } from '../../src/attempt/opened/timeline.ts';
import { CATALOGUE, withFaults } from '../../src/faults/catalogue.ts';
import { papersOf, soundPartsOf } from '../../src/scenario/scenario.ts';
import { openedLayout, spotOf, terminalAt, WIDTH } from '../../src/ui/drawing/opened/layout.ts';
import { pageRules } from '../../src/ui/parts/pageTitle.ts';
import { courseOf, SQUARE, spansOf } from '../../src/ui/screens/debrief/course.ts';
import { scenarioOn } from '../faults/installations.ts';
import { TELLS } from '../faults/tells.ts';

describe('the opened drawing', () => {
  test.each(CATALOGUE.filter(({ kind }) => kind === 'fault'))('has a spot for $id', ({ id, parameters }) => {
    const values = Object.fromEntries(parameters.map((p) => [p.name, p.default]));
    const scenario = scenarioOn((TELLS[id] as (typeof TELLS)[string])[0], [{ fault: id, values }]);
    const sound = soundPartsOf(scenario);
    const causes = causesOf(withFaults(sound, scenario.faults), sound, scenario.faults);
    expect(causes.length).toBeGreaterThan(0);
    const layout = openedLayout(papersOf(scenario));
    for (const { place } of causes) {
      const spot = spotOf(layout, place);
      expect(spot, place).not.toBeNull();
      expect(spot?.x).toBeGreaterThan(0);
      expect(spot?.x).toBeLessThan(WIDTH);
      expect(spot?.y).toBeGreaterThan(0);
      expect(spot?.y).toBeLessThan(layout.height);
    }
  });

  test.each(['home', 'yard', 'rod'] as const)('places every terminal of %s that a lead can be on', (name) => {
    const papers = papersOf(scenarioOn(name));
    const layout = openedLayout(papers);
    const drawn = ['met', 'case', 'supply.PE', 'outlet.PE', 'outlet.CP', 'outlet.PP'].concat(
      layout.lives.flatMap((live) => [
        `incoming.${live}`,
        `origin.${live}`,
        `supply.${live}`,
        `outlet.${live}`,
      ]),
    );
    const points = drawn.map((terminal) => terminalAt(layout, terminal));
    expect(points).not.toContain(null);
    expect(new Set(points.map((point) => JSON.stringify(point))).size).toBe(drawn.length);
  });

  test('rings nothing for what has no place', () => {
    expect(spotOf(openedLayout(papersOf(scenarioOn('home'))), 'heard')).toBeNull();
  });
});

describe('the time line', () => {
  const marks = (...at: readonly number[]): readonly TestMark[] =>
    at.map((time, i) => ({
      number: i + 1,
      test: `t${i}`,
      title: '',
      at: time,
      first: i,
      last: i,
      wrong: [],
    }));

  test.each([320, 840])('%i px wide: forty-five tests at once cover nobody', (width) => {
    const at = Array.from({ length: 45 }, (_, i) => (i < 30 ? 300 + i : 300 + 40 * i));
    const { squares, rows, ticks, x } = courseOf({ tests: marks(...at), end: 2100 }, 0, width);
    for (const [i, one] of squares.entries())
      for (const other of squares.slice(i + 1))
        if (one.row === other.row) expect(Math.abs(one.x - other.x)).toBeGreaterThanOrEqual(SQUARE);
    expect(Math.max(...squares.map(({ row }) => row))).toBeLessThan(rows);
    expect(rows).toBeLessThanOrEqual(4);
    expect(squares.map(({ mark }) => mark.number)).toEqual(at.map((_, i) => i + 1));
    expect(squares.every((square) => square.x >= 0 && square.x + SQUARE <= width)).toBe(true);
    for (const [i, tick] of ticks.entries())
      if (i > 0) expect(x(tick) - x(ticks[i - 1] as number)).toBeGreaterThan(40);
  });

  test('an attempt without time has one tick and no division by nothing', () => {
    const course = courseOf({ tests: marks(0), end: 0 }, 0, 300);
    expect(course.ticks).toEqual([0]);
    expect(Number.isFinite(course.x(0))).toBe(true);
  });

  test('levels become spans, live ones joined and at their highest', () => {
    expect(
      spansOf(
        [
          { at: 0, volts: 0, live: false },
          { at: 10, volts: 230, live: true },
          { at: 12, volts: 236, live: true },
          { at: 20, volts: 0, live: false },
        ],
        30,
      ),
    ).toEqual([
      { from: 0, to: 10, volts: 0, live: false },
      { from: 10, to: 20, volts: 236, live: true },
      { from: 20, to: 30, volts: 0, live: false },
    ]);
  });
});

test('nothing in a title ends the string on the printed page', () => {
  const rules = pageRules({ first: 'a "b" \\ c\n} @page { x', second: 'd' });
  expect(rules).toContain('content: "a \\"b\\" \\\\ c } @page { x" "\\A" "d";');
});
