/**
 * The figures that are asked for, worked out once more from what the question gives, by closed forms written out here
 * and tables copied here, not by the laws of `src`.
 */
import { expect, test } from 'vitest';
import { question } from '../../src/quiz/draw.ts';
import { KINDS } from '../../src/quiz/kinds.ts';
import type { Question } from '../../src/quiz/question.ts';
import { RESISTANCES } from '../references/conductorResistances.ts';
import { LOOP_IMPEDANCES } from '../references/loopImpedances.ts';
import { PROXIMITY_ROWS } from '../references/proximityRanges.ts';

type Given = Readonly<Record<string, number | string | boolean>>;
const n = (given: Given, key: string): number => {
  const value = given[key];
  if (typeof value !== 'number') throw new Error(`${key} is no number`);
  return value;
};

/** IEC 61851-1:2017 Table A.7, in per cent. */
const dutyPercent = (amps: number): number => (amps <= 51 ? amps / 0.6 : amps / 2.5 + 64);
/** IEC 61851-1:2017 Table A.8, in amperes, for the two branches and the corner below. */
const vehicleAmps = (percent: number): number =>
  percent < 10 ? 6 : percent <= 85 ? percent * 0.6 : percent <= 96 ? (percent - 64) * 2.5 : 80;

/** BS 7671 Table 41.3 for 230 V, and four fifths of it (Appendix 3), Ω. */
const COLD_LOOP: Readonly<Record<string, number>> = Object.fromEntries(
  LOOP_IMPEDANCES.flatMap(({ rating, B, C }) => [
    [`B${rating}`, B[1]],
    [`C${rating}`, C[1]],
  ]),
);
/** BS EN 61008-1, ms (S from memory). */
const BREAK_TIMES: Readonly<Record<string, Readonly<Record<number, number>>>> = {
  general: { 1: 300, 2: 150, 5: 40 },
  S: { 1: 500, 2: 200, 5: 150 },
};

const AGAIN: Readonly<Record<string, (given: Given) => number>> = {
  // IEC 61851-1:2017 Annex A circuit: 1 kΩ source, diode of 0.7 V.
  'level-of-state': (g) => 0.7 + ((n(g, 'open') - 0.7) * n(g, 'load')) / (1000 + n(g, 'load')),
  'source-resistance': (g) => (n(g, 'open') - n(g, 'loaded')) / ((n(g, 'loaded') - 0.7) / 2740),
  'duty-of-current': (g) => dutyPercent(n(g, 'amps')),
  // IEC 61851-1:2017 Tables A.2 and A.7: the high part of a period of 1 ms.
  'high-time': (g) => dutyPercent(n(g, 'amps')) / 100,
  // BS 7671 Appendix 4 section 5: Iz = It · Ca · Cg.
  'carried-current': (g) => n(g, 'tabled') * n(g, 'ambient') * n(g, 'grouped'),
  'current-of-duty': (g) => vehicleAmps(n(g, 'percent')),
  'current-of-times': (g) => vehicleAmps((100 * n(g, 'high')) / n(g, 'period')),
  // IEC 61851-1:2017 6.3.1.6: the least of all; less than 6 A cannot be coded.
  'least-of-limits': (g) => {
    const least = Math.min(n(g, 'unit'), n(g, 'cable'), n(g, 'setting'), n(g, 'limit'));
    return least < 6 ? 0 : least;
  },
  // Ohm's law over the milliohms that the question states (IEC 60228 class 2).
  'protective-ohms': (g) => (n(g, 'length') * n(g, 'each')) / 1000,
  'line-and-protective': (g) => (n(g, 'length') * (n(g, 'lineEach') + n(g, 'protectiveEach'))) / 1000,
  // BS 7671 411.5.3: RA × IΔn ≤ 50 V.
  'electrode-limit': (g) => 50_000 / n(g, 'milliamps'),
  'electrode-touch': (g) => (n(g, 'ohms') * n(g, 'milliamps')) / 1000,
  'loop-of-parts': (g) => n(g, 'external') + n(g, 'fixed') + n(g, 'tether'),
  'loop-limit': (g) => COLD_LOOP[`${g.type}${n(g, 'rating')}`] ?? Number.NaN,
  'prospective-current': (g) => 230 / n(g, 'ohms'),
  'prospective-three-phases': (g) => 2 * n(g, 'single'),
  'volt-drop': (g) => (n(g, 'each') * n(g, 'amps') * n(g, 'length')) / 1000,
  // BS 7671 Table 64 and 643.3.3.
  'insulation-least': (g) => (g.what === 'selv' ? 0.5 : 1),
  'insulation-together': (g) => (n(g, 'first') * n(g, 'second')) / (n(g, 'first') + n(g, 'second')),
  'residual-time': (g) => BREAK_TIMES[String(g.delay)]?.[n(g, 'multiple')] ?? Number.NaN,
};

const figures = (kind: string): readonly Question[] =>
  (KINDS.find(({ id }) => id === kind)?.topics ?? []).flatMap((topic) =>
    Array.from({ length: 20 }, (_, seed) => question(kind, topic, 1000 + seed)).filter((one) => one !== null),
  );

test('every kind that asks for a figure is worked out again here', () => {
  const asking = KINDS.filter(({ id }) => figures(id).some(({ way }) => way === 'figure')).map(
    ({ id }) => id,
  );
  expect(Object.keys(AGAIN).sort()).toEqual([...asking].sort());
});

test.each(Object.keys(AGAIN))('%s: within its tolerance of the figure worked out again', (kind) => {
  for (const one of figures(kind)) {
    if (one.way !== 'figure') throw new Error(`${one.id} asks for no figure`);
    expect(Math.abs(one.answer - (AGAIN[kind]?.(one.values) ?? Number.NaN)), one.id).toBeLessThanOrEqual(
      one.tolerance,
    );
  }
});

/*
 * What the questions state of tables: those of the standards as they stand in tests/references or here, since a sum over a
 * wrong table would be wrong alike.
 */
const perMetre = (area: number): number => RESISTANCES.find((row) => row.area === area)?.class2 ?? Number.NaN;

/** BS 7671:2018+A2:2022 Table 4B1, 70 °C insulation, and Table 4C1, bunched or touching. */
const AIR = [1.03, 1, 0.94, 0.87, 0.79, 0.71];
const BUNCHED = [1, 0.8, 0.7];
/** BS 7671:2018+A2:2022 Tables 4D2A (B, C) and 4D5 (100, 102), two loaded conductors of 4, 6 and 10 mm², A. */
const TABLED = [30, 38, 52, 36, 46, 63, 27, 34, 45, 35, 47];
/** BS 7671:2018+A2:2022 Appendix 4, single-phase a.c., mV an ampere and metre. */
const MILLIVOLTS: Readonly<Record<number, number>> = { 4: 11, 6: 7.3, 10: 4.4 };

const STATED: Readonly<Record<string, (given: Given) => void>> = {
  'protective-ohms': (g) => expect(n(g, 'each')).toBeCloseTo(perMetre(n(g, 'protective')), 2),
  'line-and-protective': (g) => {
    expect(n(g, 'lineEach')).toBeCloseTo(perMetre(n(g, 'line')), 2);
    expect(n(g, 'protectiveEach')).toBeCloseTo(perMetre(n(g, 'protective')), 2);
  },
  'carried-current': (g) => {
    expect(AIR).toContain(n(g, 'ambient'));
    expect(BUNCHED).toContain(n(g, 'grouped'));
    expect(TABLED).toContain(n(g, 'tabled'));
  },
  'volt-drop': (g) => expect(n(g, 'each')).toBe(MILLIVOLTS[n(g, 'area')]),
  // IEC 61851-1:2017 Table B.2: 63 A, on one phase 70 A.
  'least-of-limits': (g) => expect([13, 20, 32, n(g, 'phases') === 1 ? 70 : 63]).toContain(n(g, 'cable')),
  'sum-judged': (g) =>
    expect(n(g, 'sum')).toBeCloseTo(
      (n(g, 'length') * (perMetre(n(g, 'line')) + perMetre(n(g, 'protective')))) / 1000,
      2,
    ),
  'loop-judged': (g) => expect(n(g, 'limit')).toBe(COLD_LOOP[`${g.type}${n(g, 'rating')}`]),
};

test.each(Object.keys(STATED))('%s: what it states is what the tables say', (kind) => {
  expect(figures(kind).length).toBeGreaterThanOrEqual(20);
  for (const { values } of figures(kind)) STATED[kind]?.(values);
});

/** Which choice is right, by the limits of the standards written out here. */
const JUDGED: Readonly<Record<string, (given: Given) => string>> = {
  // IEC 61851-1:2017 Table A.8.
  'duty-band': (g) => {
    const percent = n(g, 'percent');
    if (percent < 3 || percent > 97 || (percent > 7 && percent < 8)) return 'not-allowed';
    return percent <= 7 ? 'digital-link' : percent < 10 ? '6-A' : '80-A';
  },
  'coding-of-ohms': (g) => codingOf(n(g, 'ohms')),
  'coding-with-contact': (g) => codingOf(n(g, 'ohms') + n(g, 'contact')),
  // IEC 61851-1:2017 B.2: without a coded resistor no supply; else the lower of unit and cable.
  'uncoded-plug': (g) => {
    const coding = codingOf(g.read === 'none' ? Infinity : Number(g.read));
    return coding === 'none' ? 'no-supply' : `${Math.min(Number(coding), n(g, 'rated'))}-A`;
  },
  // Contacts add at most 0.05 Ω (contract).
  'sum-judged': (g) => {
    const off = n(g, 'read') - n(g, 'sum');
    return off < -0.01 ? 'too-low' : off <= 0.06 ? 'as-it-ought' : 'too-high';
  },
  // The half-width is stated: 5 % and 0.03 Ω (contract).
  'loop-judged': (g) => {
    const limit = COLD_LOOP[`${g.type}${n(g, 'rating')}`] ?? Number.NaN;
    const half = n(g, 'uncertainty');
    expect(half).toBeCloseTo(0.05 * n(g, 'read') + 0.03, 1);
    return n(g, 'read') + half <= limit ? 'within' : n(g, 'read') - half >= limit ? 'outside' : 'too-close';
  },
  // BS 7671 434.5.1.
  'breaking-capacity': (g) => (230 / n(g, 'ohms') <= n(g, 'capacity') ? 'bears-it' : 'does-not'),
  // ESQCR 2002 regulation 27: 230 V, 10 % up, 6 % down.
  'supply-voltage': (g) => (n(g, 'volts') < 216.2 ? 'low' : n(g, 'volts') > 253 ? 'high' : 'within'),
  // BS EN 61008-1: above half of IΔn, up to IΔn.
  'rising-alternating': (g) => inBand(n(g, 'milliamps'), n(g, 'rated') / 2, n(g, 'rated')),
  // IEC 62955:2018: above 3 mA, up to 6 mA.
  'rising-direct': (g) => inBand(n(g, 'milliamps'), 3, 6),
  // BS EN 61008-1: 0.35 to 1.4 times IΔn from 0°, of type A alone.
  'half-wave': (g) => (g.type === 'AC' ? 'nothing-asked' : inBand(n(g, 'milliamps'), 10.5, 42)),
  // BS EN 61008-1: not at half of IΔn, surely at IΔn.
  'at-half-the-rating': (g) =>
    n(g, 'milliamps') <= n(g, 'rated') / 2
      ? 'should-not'
      : n(g, 'milliamps') >= n(g, 'rated')
        ? 'should'
        : 'cant-tell',
  // IEC 62955:2018 Table 2, ms.
  'direct-time': (g) => ({ 6: '10000', 60: '300', 200: '100' })[n(g, 'milliamps')] ?? '',
  // BS 7671 536.4.1.4: delayed, and three times the rating.
  'who-trips': (g) => (g.delay === 'S' && n(g, 'rated') >= 90 ? 'unit-alone' : 'either'),
  // IEC 61851-1:2017 Table A.6, ms.
  'how-soon': (g) =>
    ({
      'stops-asking': '100',
      unplugged: '100',
      'earth-lost': '100',
      'pilot-to-earth': '3000',
      asks: '3000',
      'unlock-after-unplugging': '5000',
    })[String(g.what)] ?? '',
  // BS 7671 Table 64 and 643.3.3, V.
  'insulation-volts': (g) => (g.what === 'circuit' ? '500' : '250'),
  // BS 7671 433.1.1: Ib ≤ In ≤ Iz, ratings of BS EN 60898-1.
  'breaker-fits': (g) =>
    String(
      [6, 10, 13, 16, 20, 25, 32, 40, 50, 63].find(
        (rating) => rating >= n(g, 'load') && rating <= n(g, 'carries'),
      ),
    ),
  // BS 7671 433.1.1, 525 (5 % of 230 V), 411.4 and 434.5.1.
  'design-wrong': (g) => {
    if (n(g, 'carries') < n(g, 'rating')) return 'cable';
    if ((n(g, 'length') * 7.3 * 32) / 1000 > 11.5) return 'drop';
    if (n(g, 'loop') > (COLD_LOOP[`B${n(g, 'rating')}`] ?? Number.NaN)) return 'clears';
    return 230 / n(g, 'origin') > 6000 ? 'breaks' : 'none';
  },
  // BS 7671 Table 64: 1 MΩ; electronics only where the unit is connected.
  'low-line-neutral': (g) => {
    if (n(g, 'toEarth') < 1) return 'to-earth';
    return n(g, 'lineNeutral') >= 1 ? 'good' : g.connected === true ? 'electronics' : 'cable';
  },
};

const inBand = (value: number, least: number, greatest: number): string =>
  value < least ? 'too-early' : value > greatest ? 'too-late' : 'in-its-band';

/** IEC 61851-1:2017 Table B.2, by the rows of tests/references: the last one that begins at or below it. */
const codingOf = (ohms: number): string =>
  String(PROXIMITY_ROWS.filter((row) => row.ohms >= 0 && row.ohms <= ohms).at(-1)?.reading ?? '');

test.each(Object.keys(JUDGED))('%s: the right choice by the limits written out', (kind) => {
  expect(figures(kind).length).toBeGreaterThanOrEqual(20);
  for (const one of figures(kind)) {
    if (one.way !== 'choice' && one.way !== 'three-answers') throw new Error(`${one.id} is no choice`);
    expect(one.answer, one.id).toBe(JUDGED[kind]?.(one.values));
  }
});

test('so many figures at least are worked out again', () => {
  const all = [...Object.keys(AGAIN), ...Object.keys(JUDGED)].flatMap(figures);
  expect(new Set(all.map(({ id }) => id)).size).toBeGreaterThanOrEqual(600);
});
