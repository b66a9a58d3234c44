/*
 * The exact oracle checked by hand-made cases, so that what it is used to judge can be believed.
 */
import { describe, expect, test } from 'vitest';
import { networkOf } from '../network/build.ts';
import { exactly, exactNetwork, rounded } from './rational.ts';

describe('rational arithmetic', () => {
  test.each([0, 1, -3, 0.1, 1e-4, 35e9, -1 / 3, 2 ** -60])('%d survives there and back', (value) => {
    expect(rounded(exactly(value))).toBe(value);
  });

  test('a third is not a double', () => {
    expect(rounded({ n: 1n, d: 3n })).toBe(1 / 3);
    expect(rounded({ n: -2n, d: 3n })).toBe(-2 / 3);
  });

  test('a ladder by hand: 2 Ω to a node with 4 Ω and 3 + 1 Ω to earth', () => {
    const n = networkOf([
      ['series', 'in', 'mid', 2],
      ['shunt', 'mid', 'earth', 4],
      ['more', 'mid', 'end', 4],
      ['last', 'end', 'earth', 0.25],
    ]);
    n.values.conductance.set([1 / 2, 1 / 4, 1 / 4, 4]);
    const { impedance } = exactNetwork(n.topology, n.values);
    expect(impedance(n.node('in'), 0).re).toBeCloseTo(2 + (4 * 4.25) / 8.25, 14);
  });

  test('a conductance of 0.5 S beside a susceptance of 0.5 S is 1 − j ohms', () => {
    const n = networkOf([['both', 'x', 'earth', 2, 0.5]]);
    expect(exactNetwork(n.topology, n.values).impedance(1, 0)).toEqual({ re: 1, im: -1 });
  });
});
