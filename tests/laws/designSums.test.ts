/** Design sums: the worked examples, the ends of the tables, and what a law that is asked too much says. */

import { describe, expect, test } from 'vitest';
import {
  classEnergy,
  K_ARMOUR,
  K_SEPARATE,
  leastForEnergy,
  leastProtective,
  protectiveWithoutSum,
} from '../../src/laws/adiabatic.ts';
import type { Laid } from '../../src/laws/currentCarrying.ts';
import {
  AMBIENTS,
  CABLES,
  currentCarrying,
  isTabled,
  METHODS,
  TABLES,
  usualCable,
} from '../../src/laws/currentCarrying.ts';
import { greatestDemand } from '../../src/laws/demand.ts';
import {
  bearsDirectOf,
  greatestResidualLoop,
  isSelective,
  strictResidualLoop,
} from '../../src/laws/residualProtection.ts';
import { dropPerAmpereMetre, leastLeft, voltageDrop } from '../../src/laws/voltageDrop.ts';
import { RESISTANCES } from '../references/conductorResistances.ts';
import { DESIGN_CHECK_VALUES } from '../references/designCheckValues.ts';

const rows = DESIGN_CHECK_VALUES.flatMap(({ id, input, source, mark, checks }) =>
  checks.map((check) => ({ id, input, source, mark, ...check })),
);

/** Those of the tables, mm². */
const ALL_AREAS = [1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95];

describe('the laws agree with the worked examples', () => {
  test.each(rows)('$id $input: $what = $expected ($source; $mark)', ({ expected, tolerance, compute }) => {
    const result = compute();
    if (tolerance === undefined) expect(result).toBe(expected);
    else expect(Math.abs(Number(result) - Number(expected))).toBeLessThanOrEqual(tolerance);
  });

  test('each once', () => {
    expect(new Set(DESIGN_CHECK_VALUES.map(({ id }) => id)).size).toBe(DESIGN_CHECK_VALUES.length);
  });
});

const laid = (change: Partial<Laid> = {}): Laid => ({
  cable: 'sheathed',
  method: 'C',
  area: 6,
  loaded: 2,
  ambient: 30,
  grouped: 1,
  insulated: 0,
  ...change,
});

describe('what a cable carries', () => {
  // BS 7671:2018+A2:2022, Tables 4D2A, 4D4A, 4D5; 4B1; 4C1.
  test.each([
    [{ method: 'A', area: 6 }, 32],
    [{ method: 'B', area: 10, loaded: 3 }, 46],
    [{ cable: 'armoured', method: 'C', area: 6 }, 49],
    [{ cable: 'flat', area: 6 }, 47],
    [{ cable: 'flat', method: '100', area: 2.5 }, 21],
    [{ ambient: 25 }, 46 * 1.03],
    [{ ambient: 50 }, 46 * 0.71],
    [{ grouped: 3 }, 46 * 0.7],
    [{ grouped: 5 }, 46 * 0.6],
    // 523.9, from memory.
    [{ insulated: 50 }, 46 * 0.88],
    [{ insulated: 51 }, 46 * 0.78],
    [{ insulated: 200 }, 46 * 0.63],
    [{ insulated: 500 }, 46 * 0.5],
    // In the ground it is 20 °C, whatever the air is.
    [{ cable: 'armoured', method: 'D', area: 6, ambient: 50 }, 46],
  ] satisfies [Partial<Laid>, number][])('%o: %d A', (change, expected) => {
    expect(currentCarrying(laid(change)).amps).toBeCloseTo(expected, 9);
  });

  test('more copper carries more, three loaded less than two, A less than B less than C', () => {
    for (const cable of CABLES)
      for (const method of METHODS)
        for (const loaded of [2, 3] as const) {
          const areas = ALL_AREAS.filter((area) => isTabled({ cable, method, area, loaded }));
          const carried = areas.map((area) => currentCarrying(laid({ cable, method, area, loaded })).amps);
          expect(carried).toEqual([...carried].sort((x, y) => x - y));
          expect(new Set(carried).size).toBe(carried.length);
          for (const area of loaded === 3 ? areas : [])
            expect(currentCarrying(laid({ cable, method, area, loaded: 3 })).amps).toBeLessThan(
              currentCarrying(laid({ cable, method, area, loaded: 2 })).amps,
            );
        }
    for (const area of [1.5, 6, 25, 95]) {
      const [a, b, c] = (['A', 'B', 'C'] as const).map(
        (method) => currentCarrying(laid({ method, area })).amps,
      );
      expect(a).toBeLessThan(b as number);
      expect(b).toBeLessThan(c as number);
    }
  });

  // IEC 60364-5-52, annex on formulae: I = A · Sᵐ in each column, and a second term that only large cables have.
  test('every column is as long as the cable is made, and a power of the area within 4 %', () => {
    const columns = CABLES.flatMap((cable) =>
      METHODS.flatMap((method) =>
        ([2, 3] as const).map((loaded) => ({
          cable,
          name: `${cable}, ${method}, ${loaded} loaded`,
          figures: ALL_AREAS.filter((area) => isTabled({ cable, method, area, loaded })).map(
            (area) => [area, currentCarrying(laid({ cable, method, area, loaded })).amps] as const,
          ),
        })),
      ),
    ).filter(({ figures }) => figures.length > 0);
    // Three methods of a sheathed cable and two of an armoured one, each with two and three loaded; five of a flat one.
    expect(columns.map(({ cable }) => cable).sort()).toEqual([
      ...['armoured', 'armoured', 'armoured', 'armoured'],
      ...['flat', 'flat', 'flat', 'flat', 'flat'],
      ...['sheathed', 'sheathed', 'sheathed', 'sheathed', 'sheathed', 'sheathed'],
    ]);
    for (const { cable, name, figures } of columns) {
      // Armoured from 1.5 mm²; flat up to 16.
      expect(figures.length, name).toBe({ sheathed: 12, armoured: 11, flat: 7 }[cable]);
      for (const [i, [area, amps]] of figures.entries()) {
        const [before, after] = [figures[i - 1], figures[i + 1]];
        if (before === undefined || after === undefined) continue;
        const share = Math.log(area / before[0]) / Math.log(after[0] / before[0]);
        const between = before[1] * (after[1] / before[1]) ** share;
        expect(Math.abs(amps / between - 1), `${name}, ${area} mm²`).toBeLessThan(0.04);
      }
    }
  });

  test('each cable names its table', () => {
    expect(Object.fromEntries(CABLES.map((cable) => [cable, TABLES[cable]]))).toEqual({
      sheathed: 'Table 4D2A',
      flat: 'Table 4D5',
      armoured: 'Table 4D4A',
    });
  });

  test('each method has its usual cable, and that is tabled', () => {
    for (const method of METHODS)
      expect(isTabled({ cable: usualCable(method), method, area: 6, loaded: 2 })).toBe(true);
    expect(AMBIENTS.map((ambient) => currentCarrying(laid({ ambient })).ambient)).toEqual([
      1.03, 1, 0.94, 0.87, 0.79, 0.71,
    ]);
  });

  test.each([
    [{ method: 'D' }, 'sheathed cable of 6 mm² by method D'],
    [{ cable: 'flat', loaded: 3 }, '3 loaded'],
    [{ cable: 'flat', area: 25 }, '25 mm²'],
    [{ area: 3 }, '3 mm²'],
    [{ ambient: 33 }, '33 °C'],
    [{ grouped: 6 }, '6 circuits'],
    [{ grouped: 0 }, '0 circuits'],
    [{ insulated: -1 }, '-1 mm'],
  ] satisfies [Partial<Laid>, string][])('%o is refused by name', (change, named) => {
    expect(() => currentCarrying(laid(change))).toThrow(RangeError);
    expect(() => currentCarrying(laid(change))).toThrow(named);
  });
});

describe('volts lost, copper needed, demand', () => {
  test('three phases: 230/400 of the drop is a line’s', () => {
    expect(leastLeft(20, 3)).toBeCloseTo(216.2 - 11.5, 9);
    expect(leastLeft(11.5, 1)).toBeCloseTo(204.7, 9);
  });

  // Resistance by IEC 60228, ×1.2 at 70 °C; about 0.08 mΩ/m of reactance, from memory.
  test('the tabled drop is what a conductor’s impedance loses both ways, to 4 %', () => {
    expect(RESISTANCES.map(({ area }) => area)).toEqual(ALL_AREAS);
    for (const { area, class2 } of RESISTANCES) {
      const bothWays = 2 * Math.hypot(1.2 * class2, 0.08);
      expect(Math.abs(dropPerAmpereMetre(area, 1) / bothWays - 1), `${area} mm²`).toBeLessThan(0.04);
      const linesApart = (Math.sqrt(3) / 2) * bothWays;
      expect(Math.abs(dropPerAmpereMetre(area, 3) / linesApart - 1), `${area} mm²`).toBeLessThan(0.04);
    }
  });

  test('k: a separate conductor needs less copper, armour more steel (Tables 54.2 to 54.4)', () => {
    expect(leastProtective(1000, 0.1, K_SEPARATE)).toBeCloseTo(2.211, 3);
    expect(leastProtective(1000, 0.1, K_ARMOUR)).toBeCloseTo(6.2, 2);
  });

  // BS EN 60898-1, Annex ZA, from memory.
  test.each([
    ['B', 16, 10_000, 70_000],
    ['C', 16, 10_000, 84_000],
    ['C', 32, 10_000, 110_000],
    ['B', 16, 6000, 35_000],
    ['C', 10, 6000, 42_000],
    ['C', 20, 6000, 55_000],
    ['B', 40, 6000, null],
    ['D', 32, 6000, null],
    ['B', 32, 4500, null],
  ] as const)('class 3, %s%d of %d A: %d A²s', (type, rating, capacity, energy) => {
    expect(classEnergy(type, rating, capacity)).toBe(energy);
  });

  test('a line of 35 mm² still needs 16', () => expect(protectiveWithoutSum(35)).toBe(16));

  test('load control keeps the whole to its limit, but not the house', () => {
    expect(greatestDemand({ house: 70, point: 32, curtailedTo: 60 })).toBe(70);
    expect(greatestDemand({ house: 10, point: 32, curtailedTo: 60 })).toBe(42);
  });

  test.each([
    ['-1 A', () => voltageDrop({ area: 6, phases: 1, amps: -1, length: 1 })],
    ['-2 m', () => voltageDrop({ area: 6, phases: 1, amps: 1, length: -2 })],
    ['3 mm²', () => dropPerAmpereMetre(3, 1)],
    ['k of 0', () => leastForEnergy(1, 0)],
    ['have 0 mm²', () => protectiveWithoutSum(0)],
    ['take -3 A', () => greatestDemand({ house: -3, point: 0, curtailedTo: null })],
    ['take NaN A', () => greatestDemand({ house: 0, point: Number.NaN, curtailedTo: null })],
    ['rated 0 A', () => strictResidualLoop(0)],
    ['rated -1 A', () => greatestResidualLoop(-1)],
  ] as const)('%s is refused', (named, asked) => {
    expect(asked).toThrow(RangeError);
    expect(asked).toThrow(named);
  });
});

describe('residual devices together', () => {
  test('three times as much is enough, less is not; delayed twice is not', () => {
    const thirty = { rated: 0.03, delay: 'general' } as const;
    expect(isSelective({ rated: 0.3, delay: 'S' }, { rated: 0.1, delay: 'S' })).toBe(false);
    expect(isSelective({ rated: 0.3, delay: 'S' }, { ...thirty, rated: 0.3 })).toBe(false);
    expect(isSelective({ rated: 0.1, delay: 'S' }, thirty)).toBe(true);
  });

  // BS 7671:2018+A2:2022, 531.3.3: A 6 mA, F 10 mA; type B 0.4 times rated, from memory.
  test.each([
    [1, 'A', true],
    [2, 'A', false],
    [2, 'F', false],
    [2, 'B', true],
    [3, 'B', false],
  ] as const)('%d points behind a type %s of 30 mA: %s', (points, type, bears) => {
    expect(bearsDirectOf(points, type, 0.03)).toBe(bears);
  });
});
