/** From true to shown: ends of range, resolution, the drawn error's half-width, and its key. */
import { describe, expect, test } from 'vitest';
import { drawer } from '../../src/bench/draw.ts';
import type { Quantity, Reading, Truth } from '../../src/bench/reading.ts';
import { shown } from '../../src/bench/reading.ts';
import { benchWith, CHARGE, doing, read } from './build.ts';

const draw = drawer(7);
const show = (quantity: Quantity, value: number, key = '1', from = draw): Reading =>
  shown({ quantity, value, details: {} }, key, 0, from);

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
  const residual = (value: number, tripMs: number | null): Truth => ({
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
    const refused = shown(
      { quantity: 'loop', refused: 'no voltage between the leads', details: {} },
      '1',
      0,
      draw,
    );
    expect(refused).toMatchObject({ value: null, uncertainty: null, qualifier: 'unable' });
    expect(refused.reason).toBe('no voltage between the leads');
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
