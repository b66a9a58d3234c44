/**
 * The figures that are asked for, worked out once more from what the question gives, by closed forms written out here
 * and tables copied here, not by the laws of `src`.
 */
import { expect, test } from 'vitest';
import { question } from '../../src/quiz/draw.ts';
import { KINDS } from '../../src/quiz/kinds.ts';
import type { Question } from '../../src/quiz/question.ts';

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
const COLD_LOOP: Readonly<Record<string, number>> = {
  B16: 2.18,
  B20: 1.75,
  B32: 1.1,
  B40: 0.88,
  C16: 1.09,
  C32: 0.54,
  C40: 0.44,
};
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
