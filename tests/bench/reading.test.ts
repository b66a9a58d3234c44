/** From true to shown: ends of range, resolution, the drawn error's half-width, and its key. */
import { describe, expect, test } from 'vitest';
import { drawer } from '../../src/bench/draw.ts';
import type { AnyReading, Truth, TruthOf } from '../../src/bench/reading.ts';
import { shown } from '../../src/bench/reading.ts';
import type { Quantity } from '../../src/bench/readings/quantity.ts';
import { benchWith, CHARGE, doing, read } from './build.ts';

const draw = drawer(7);
const show = (quantity: Quantity, value: number, key = '1', from = draw): AnyReading =>
  shown({ quantity, value, details: {} } as Truth, key, 0, from);

interface Range {
  readonly quantity: Quantity;
  /** Values inside the range, with the step of the display there. */
  readonly inside: readonly (readonly [value: number, step: number])[];
  readonly end: number;
  /** Half-width at a value, by the contract: a share of it and digits. */
  readonly half: (value: number, step: number) => number;
}

const RANGES: readonly Range[] = [
  {
    quantity: 'continuity',
    inside: [
      [0, 0.01],
      [0.05, 0.01],
      [1.98, 0.01],
      [18, 0.01],
      [150, 0.1],
      [1500, 1],
    ],
    end: 2000,
    half: (value) => 0.03 * value + 0.02,
  },
  {
    quantity: 'insulation',
    inside: [
      [0, 1e4],
      [20_000, 1e4],
      [1e6, 1e4],
      [15e6, 1e5],
      [150e6, 1e6],
    ],
    end: 200e6,
    half: (value, step) => 0.05 * value + 2 * step,
  },
  {
    quantity: 'loop',
    inside: [
      [0.05, 0.01],
      [0.41, 0.01],
      [15, 0.01],
      [100, 0.1],
      [1500, 1],
    ],
    end: 2000,
    half: (value) => 0.05 * value + (value < 20 ? 0.03 : 0),
  },
  {
    quantity: 'voltage',
    inside: [
      [0, 1],
      [50, 1],
      [236, 1],
      [410, 1],
    ],
    end: 700,
    half: (value) => 0.01 * value + 1,
  },
  {
    quantity: 'opening-time',
    inside: [
      [0.036, 0.001],
      [2.5, 0.001],
    ],
    end: 5,
    half: () => 0.002,
  },
];

describe.each(RANGES)('$quantity', ({ quantity, inside, end, half }) => {
  test.each(inside)('%d is shown within its half-width over 500 keys, in steps of %d', (value, step) => {
    const seen = new Set<number>();
    for (let key = 0; key < 500; key++) {
      const reading = show(quantity, value, `k${key}`, drawer(key));
      const found = reading.value ?? Number.NaN;
      seen.add(found);
      // Rounding and all: neither the half-width at the true value nor that at the shown one is ever exceeded.
      expect(Math.abs(found - value)).toBeLessThanOrEqual(half(value, step) + 1e-9);
      expect(Math.abs(found - value)).toBeLessThanOrEqual((reading.uncertainty ?? 0) + 1e-9);
      expect(found / step).toBeCloseTo(Math.round(found / step), 6);
      expect(found).toBeGreaterThanOrEqual(0);
      expect(reading.uncertainty).toBeCloseTo(half(found, step), 9);
    }
    // The error is drawn: where the display is fine enough to show it, more than one value is seen.
    if (half(value, step) > step) expect(seen.size).toBeGreaterThan(2);
  });

  test('beyond the end it says so, with the end', () => {
    for (const value of [end, 1.01 * end, 100 * end, Infinity])
      expect(show(quantity, value)).toMatchObject({
        value: null,
        uncertainty: null,
        qualifier: '>',
        limit: end,
      });
  });

  test('just inside the end it never shows more than the end', () => {
    for (let key = 0; key < 200; key++) {
      const reading = show(quantity, 0.999 * end, `${key}`, drawer(key));
      if (reading.value === null) expect(reading).toMatchObject({ qualifier: '>', limit: end });
      else expect(reading.value).toBeLessThan(end);
    }
  });
});

describe('what the contract fixes of the other quantities', () => {
  const pilot = { high: 8.98, low: -12, frequency: 1000, duty: 0.5333 } as const;
  const residual = (value: number, tripMs: number | null): TruthOf<'residual'> => ({
    quantity: 'residual',
    value,
    details: { tripAmps: tripMs === null ? null : value, tripMs },
  });

  test('pilot volts 0.05 V, duty 0.2 of a point, over 500 keys', () => {
    for (let key = 0; key < 500; key++) {
      const reading = shown(
        { quantity: 'pilot', value: pilot.high, details: pilot },
        `${key}`,
        0,
        drawer(key),
      );
      expect(Math.abs((reading.high ?? 0) - pilot.high)).toBeLessThanOrEqual(0.05 + 1e-9);
      expect(Math.abs((reading.low ?? 0) - pilot.low)).toBeLessThanOrEqual(0.05 + 1e-9);
      expect(Math.abs((reading.duty ?? 0) - pilot.duty)).toBeLessThanOrEqual(0.002 + 0.0005 + 1e-9);
      expect(reading.value).toBe(reading.high);
    }
  });

  test('a steady pilot has no frequency, both halves equal, duty 1 or 0', () => {
    for (const [level, duty] of [
      [12, 1],
      [-12, 0],
    ] as const) {
      const details = { high: level, low: level, frequency: null, duty };
      const reading = shown({ quantity: 'pilot', value: level, details }, '1', 0, draw);
      expect(reading).toMatchObject({ frequency: null, duty, amps: 0 });
      expect(reading.low).toBe(reading.high);
    }
  });

  test('residual current comes out 0 to +5 %, trip time within 2 ms, over 500 keys', () => {
    for (let key = 0; key < 500; key++) {
      const reading = shown(residual(0.024, 31.4), `${key}`, 0, drawer(key));
      expect(reading.value).toBeGreaterThanOrEqual(0.024 - 0.00005);
      expect(reading.value).toBeLessThanOrEqual(0.024 * 1.05 + 0.00005);
      expect(reading.tripAmps).toBe(reading.value);
      expect(Math.abs((reading.tripMs ?? 0) - 31.4)).toBeLessThanOrEqual(2.5);
    }
  });

  test('a test that made nothing trip shows that it went so far', () => {
    expect(shown(residual(0.033, null), '1', 0, draw)).toMatchObject({
      value: null,
      qualifier: '>',
      limit: 0.033,
    });
  });

  test('a refused test says why and shows no figure', () => {
    const refused = shown({ quantity: 'loop', refused: { id: 'no-voltage' }, details: {} }, '1', 0, draw);
    expect(refused).toMatchObject({ value: null, uncertainty: null, qualifier: 'unable' });
    expect(refused.reason).toEqual({ id: 'no-voltage' });
  });
});

describe('the error goes by its key', () => {
  test('the same key, the same error; another key or seed, another', () => {
    expect(show('loop', 3.3, '12')).toEqual(show('loop', 3.3, '12'));
    const values = Array.from({ length: 20 }, (_, key) => show('loop', 3.3, `${key}`).value);
    expect(new Set(values).size).toBeGreaterThan(3);
    const seeds = Array.from({ length: 20 }, (_, seed) => show('loop', 3.3, '1', drawer(seed)).value);
    expect(new Set(seeds).size).toBeGreaterThan(5);
  });

  test('one refused reading more does not shift the errors of those that have their own number', () => {
    const performed = (refusedToo: boolean) => {
      const world = benchWith();
      doing(world, ...CHARGE);
      // Either way three operations: the second is refused by the instrument, or looks at something else.
      const between: [string, string] = refusedToo ? ['outlet.PE', 'outlet.PE'] : ['outlet.L1', 'outlet.N'];
      const loop = { op: 'measure', quantity: 'loop' } as const;
      read(world, { op: 'measure', quantity: 'voltage', between: ['outlet.L1', 'outlet.PE'] });
      const second = read(world, { ...loop, between });
      return { second, third: read(world, { ...loop, between: ['outlet.L1', 'outlet.N'] }) };
    };
    expect(performed(true).second.qualifier).toBe('unable');
    expect(performed(false).second.qualifier).toBeNull();
    expect(performed(true).third.value).toBe(performed(false).third.value);
  });
});

/**
 * A reading is its true value times (1 + gain), plus digits, in whole steps: gain and digits each a half-width times a
 * swing of −1 to +1, one drawn for the instrument, the other for this reading.
 */
describe('worked readings', () => {
  /** Numbers for the two keys that count here; any other key gives a number that is no number. */
  const fixed =
    (numbers: Readonly<Record<string, number>>) =>
    (key: string): number =>
      numbers[key] ?? Number.NaN;
  const worked = (quantity: Quantity, value: number, gain: number, digits: number): AnyReading =>
    show(quantity, value, '9', fixed({ [`gain ${quantity}`]: (gain + 1) / 2, 'digits 9': (digits + 1) / 2 }));

  test.each([
    // 10 · 1.03 + 0.02; 10 · 0.97 − 0.02; 10 · 1.015 − 0.01.
    { quantity: 'continuity', value: 10, gain: 1, digits: 1, reads: 10.32 },
    { quantity: 'continuity', value: 10, gain: -1, digits: -1, reads: 9.69 },
    { quantity: 'continuity', value: 10, gain: 0.5, digits: -0.5, reads: 10.14 },
    { quantity: 'continuity', value: 0, gain: 1, digits: 1, reads: 0.02 },
    // Never below nothing.
    { quantity: 'continuity', value: 0, gain: 1, digits: -1, reads: 0 },
    // 150 MΩ · 1.025 + 1 MΩ; digits count in steps.
    { quantity: 'insulation', value: 150e6, gain: 0.5, digits: 0.5, reads: 155e6 },
    { quantity: 'insulation', value: 1.5e6, gain: 0.5, digits: 0.5, reads: 1.55e6 },
    // 0.4 · 1.05 + 0.03; from 20 Ω up no digits: 100 · 1.025.
    { quantity: 'loop', value: 0.4, gain: 1, digits: 1, reads: 0.45 },
    { quantity: 'loop', value: 100, gain: 0.5, digits: 1, reads: 102.5 },
    { quantity: 'loop', value: 100, gain: 0.5, digits: -1, reads: 102.5 },
    // 236 · 0.995 + 0.5.
    { quantity: 'voltage', value: 236, gain: -0.5, digits: 0.5, reads: 235 },
    { quantity: 'electrode', value: 80, gain: 0.5, digits: 0.5, reads: 82.3 },
    { quantity: 'coding', value: 680, gain: 0.5, digits: 1, reads: 690 },
    { quantity: 'opening-time', value: 0.036, gain: 1, digits: 1, reads: 0.038 },
    { quantity: 'opening-time', value: 0.036, gain: 1, digits: -0.5, reads: 0.035 },
  ] as const)(
    '$quantity $value, gain $gain, digits $digits: $reads',
    ({ quantity, value, gain, digits, reads }) => {
      expect(worked(quantity, value, gain, digits).value).toBeCloseTo(reads, 9);
    },
  );

  test('the uncertainty is the half-width at the value shown', () => {
    expect(worked('continuity', 10, 0, 0)).toMatchObject({ value: 10, uncertainty: expect.closeTo(0.32, 9) });
    expect(worked('loop', 100, 0, 0)).toMatchObject({ value: 100, uncertainty: expect.closeTo(5, 9) });
    expect(worked('insulation', 1e6, 0, 0)).toMatchObject({
      value: 1e6,
      uncertainty: expect.closeTo(70_000, 6),
    });
  });

  // 230 V / 0.45 Ω = 511 A (GN3: nominal voltage), and at no impedance that can be shown 23 kA.
  test('a loop reading says the prospective current beside it, no other does', () => {
    expect(worked('loop', 0.4, 1, 1).prospective).toBe(511);
    expect(worked('loop', 0, 0, 0).prospective).toBe(23_000);
    expect(worked('continuity', 0.4, 1, 1).prospective).toBeUndefined();
  });

  test('each quantity has its unit', () => {
    const unitOf = (quantity: Quantity) => worked(quantity, 1, 0, 0).unit;
    const ohms = ['continuity', 'insulation', 'coding', 'loop', 'electrode'] as const;
    expect(ohms.map(unitOf)).toEqual(['Ω', 'Ω', 'Ω', 'Ω', 'Ω']);
    expect([unitOf('voltage'), unitOf('opening-time'), unitOf('phase-sequence')]).toEqual(['V', 's', '']);
    const refused = (quantity: Quantity) =>
      shown({ quantity, refused: { id: 'no-return' }, details: {} } as Truth, '1', 0, draw).unit;
    expect([refused('pilot'), refused('residual')]).toEqual(['V', 'A']);
  });

  test('a phase sequence has no error', () => {
    for (const value of [1, -1])
      expect(show('phase-sequence', value)).toMatchObject({ value, uncertainty: 0, qualifier: null });
  });

  /** Levels by ±0.05 V, duty by ±0.2 points, frequency by ±0.5 Hz, each its own draw. */
  test('the pilot’s four figures', () => {
    const numbers = fixed({
      'gain pilot': 0.5,
      'digits 9 high': 1,
      'digits 9 low': 0,
      'digits 9 duty': 1,
      'digits 9 frequency': 0,
    });
    const details = { high: 8.98, low: -12, duty: 0.5333, frequency: 1000 };
    expect(shown({ quantity: 'pilot', value: 8.98, details }, '9', 0, numbers)).toMatchObject({
      value: expect.closeTo(9.03, 9),
      high: expect.closeTo(9.03, 9),
      low: expect.closeTo(-12.05, 9),
      duty: expect.closeTo(0.535, 9),
      frequency: expect.closeTo(999.5, 9),
      // 53.5 % is 32.1 A (IEC 61851-1:2017 Table A.8).
      amps: expect.closeTo(32.1, 9),
    });
  });
});
