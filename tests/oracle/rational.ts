/*
 * Exact arithmetic with fractions of whole numbers, and the nodal equations of a network solved in
 * it: an oracle for values so far apart that floating point itself is in question. A double is a
 * fraction, so the oracle and the network solve exactly the same numbers.
 */
import type { BranchValues } from '../../src/network/reduce.ts';
import type { NodeId, Topology } from '../../src/network/topology.ts';

interface Rational {
  n: bigint;
  d: bigint;
}

const ZERO: Rational = { n: 0n, d: 1n };

function lowest(n: bigint, d: bigint): Rational {
  let [a, b] = [n < 0n ? -n : n, d < 0n ? -d : d];
  while (b > 0n) [a, b] = [b, a % b];
  const divisor = d < 0n ? -a : a;
  return { n: n / divisor, d: d / divisor };
}

const add = (x: Rational, y: Rational): Rational => lowest(x.n * y.d + y.n * x.d, x.d * y.d);
const times = (x: Rational, y: Rational): Rational => lowest(x.n * y.n, x.d * y.d);
const over = (x: Rational, y: Rational): Rational => lowest(x.n * y.d, x.d * y.n);
const minus = (x: Rational): Rational => ({ n: -x.n, d: x.d });

/** The exact value of a double. */
export function exactly(value: number): Rational {
  let scaled = value;
  let d = 1n;
  while (!Number.isInteger(scaled)) {
    scaled *= 2;
    d *= 2n;
  }
  return lowest(BigInt(scaled), d);
}

/** To the nearest double or the one beside it. */
export function rounded({ n, d }: Rational): number {
  const bits = (x: bigint) => x.toString(2).length;
  const shift = 64 - (bits(n < 0n ? -n : n) - bits(d));
  const whole = shift >= 0 ? (n << BigInt(shift)) / d : n / (d << BigInt(-shift));
  return Number(whole) * 2 ** -shift;
}

/** Solves A·x = y for several right sides at once; A regular. */
function solved(matrix: Rational[][], rights: Rational[][]): Rational[][] {
  const rows = matrix.map((row, i) => [...row, ...(rights[i] ?? [])]);
  for (const [k] of rows.entries()) {
    const found = rows.findIndex((row, i) => i >= k && row[k]?.n !== 0n);
    const [pivot] = rows.splice(found, 1);
    if (pivot === undefined) throw new Error('singular');
    const unit = pivot.map((cell) => (cell.n === 0n ? cell : over(cell, pivot[k] ?? ZERO)));
    rows.splice(k, 0, unit);
    for (const [i, row] of rows.entries()) {
      const factor = row[k] ?? ZERO;
      if (i === k || factor.n === 0n) continue;
      rows[i] = row.map((cell, c) => {
        const part = unit[c] ?? ZERO;
        return part.n === 0n ? cell : add(cell, minus(times(factor, part)));
      });
    }
  }
  return rows.map((row) => row.slice(matrix.length));
}

export interface ExactNetwork {
  /** V(a) − V(b) for one ampere into a and out of b: real part, imaginary part. */
  impedance: (a: NodeId, b: NodeId) => { re: number; im: number };
}

/** All port impedances of a network, exact but for the last rounding. */
export function exactNetwork(topology: Topology, values: BranchValues): ExactNetwork {
  const size = topology.nodes.length - 1;
  // (G + jB)(x + jy) = i as the real system [G −B; B G][x; y] = [i; 0]; without B half of it will do.
  const reactive = values.susceptance.some((b) => b !== 0);
  const whole = reactive ? 2 * size : size;
  const matrix = Array.from({ length: whole }, () => new Array<Rational>(whole).fill(ZERO));
  const put = (row: number, column: number, value: Rational) => {
    const line = matrix[row];
    if (line) line[column] = add(line[column] ?? ZERO, value);
  };
  for (const [i, { a, b }] of topology.branches.entries()) {
    const g = exactly(values.conductance[i] ?? 0);
    const s = exactly(values.susceptance[i] ?? 0);
    for (const [p, q, sign] of [
      [a, a, 1],
      [b, b, 1],
      [a, b, -1],
      [b, a, -1],
    ] as const) {
      if (p === 0 || q === 0) continue;
      const signed = (x: Rational) => (sign === 1 ? x : minus(x));
      put(p - 1, q - 1, signed(g));
      if (!reactive) continue;
      put(size + p - 1, size + q - 1, signed(g));
      put(size + p - 1, q - 1, signed(s));
      put(p - 1, size + q - 1, minus(signed(s)));
    }
  }
  const rights = Array.from({ length: whole }, (_, row) =>
    Array.from({ length: size }, (_, column) => exactly(row === column ? 1 : 0)),
  );
  const transfer = solved(matrix, rights);
  const cell = (row: number, column: NodeId, node: NodeId): Rational =>
    node === 0 || column === 0 ? ZERO : (transfer[row + node - 1]?.[column - 1] ?? ZERO);
  const across = (row: number, a: NodeId, b: NodeId): number =>
    rounded(add(add(cell(row, a, a), cell(row, b, b)), minus(add(cell(row, a, b), cell(row, b, a)))));
  return {
    impedance: (a, b) => ({ re: across(0, a, b), im: reactive ? across(size, a, b) : 0 }),
  };
}
