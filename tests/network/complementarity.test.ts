/*
 * The complementarity problem by its definition: whatever comes out must satisfy the conditions.
 * Parts in a network are in potentials.test.ts.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { complementaryCurrents } from '../../src/network/complementarity.ts';
import { NotFinite } from '../../src/network/errors.ts';

/** M = B·Bᵀ + I from any square B: symmetric and positive definite. */
const problem = fc.integer({ min: 1, max: 6 }).chain((n) =>
  fc.record({
    n: fc.constant(n),
    b: fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: n * n, maxLength: n * n }),
    q: fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: n, maxLength: n }),
    free: fc.integer({ min: 0, max: 1 }),
  }),
);

describe('complementaryCurrents', () => {
  test('i ≥ 0, w ≥ 0, w·i = 0; a free part has w = 0 and any current', () => {
    fc.assert(
      fc.property(problem, ({ n, b, q, free }) => {
        const at = (i: number, k: number) => b[i * n + k] ?? 0;
        const matrix = Float64Array.from({ length: n * n }, (_, cell) => {
          const [i, j] = [Math.floor(cell / n), cell % n];
          let sum = i === j ? 1 : 0;
          for (let k = 0; k < n; k++) sum += at(i, k) * at(j, k);
          return sum;
        });
        const currents = complementaryCurrents(matrix, Float64Array.from(q), free);
        for (let part = 0; part < n; part++) {
          let w = q[part] ?? Number.NaN;
          for (let k = 0; k < n; k++) w += (matrix[part * n + k] ?? 0) * (currents[k] ?? Number.NaN);
          const i = currents[part] ?? Number.NaN;
          if (part >= free) expect(i).toBeGreaterThanOrEqual(0);
          if (part < free || i > 0) expect(Math.abs(w)).toBeLessThan(1e-8);
          else expect(w).toBeGreaterThan(-1e-8);
        }
      }),
      { numRuns: 1000 },
    );
  });

  test('one part: conducts as much as is missing, or nothing', () => {
    expect([...complementaryCurrents(Float64Array.of(4), Float64Array.of(-2), 0)]).toEqual([0.5]);
    expect([...complementaryCurrents(Float64Array.of(4), Float64Array.of(2), 0)]).toEqual([0]);
    expect([...complementaryCurrents(Float64Array.of(4), Float64Array.of(2), 1)]).toEqual([-0.5]);
  });

  test('missing volts next to nothing, where halves no longer are numbers, still settle', () => {
    const [m, q] = [Float64Array.of(26, 25, 25, 26), Float64Array.of(-5e-323, 9.4e-323)];
    const currents = complementaryCurrents(m, q, 0);
    expect(Math.max(...currents)).toBeLessThan(1e-300);
  });

  test('no resistance to limit the current: refused, not infinite', () => {
    const shorted = () => complementaryCurrents(Float64Array.of(0), Float64Array.of(-1), 0);
    expect(shorted).toThrow(NotFinite);
    expect(shorted).toThrow('current of one-way part 0');
  });
});
