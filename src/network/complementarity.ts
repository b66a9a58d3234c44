/*
 * Which one-way parts conduct, and how much: a linear complementarity problem
 *   w = q + M·i,  i ≥ 0,  w ≥ 0,  w·i = 0
 * with M the resistances between the parts' ports (V per A) and q their missing volts.
 * Knows numbers only; building M and q from a network is potentials.ts's business.
 */
import { NotFinite, OneWaysUnsettled } from './errors.ts';

/** A positive definite M needs at most 2^n rounds and in practice about n. */
const MOST_ROUNDS = 1000;

/** Part of the volts summed that counts as rounding: some thousand units in the last place. */
const ROUNDING = 1e-12;
/** Volts that count as none: where numbers run out of digits near zero, rounding has no proportion. */
const NO_VOLTS = 1e-15;

/**
 * The currents, by least-index principal pivoting (K. G. Murty, 1974): of all parts that break
 * their rule, the one with the lowest index changes over, until none does.
 * `matrix` is n × n by rows, symmetric and positive definite. The first `free` parts have no rule:
 * they carry current either way (w = 0 always).
 * Throws OneWaysUnsettled when the rounds run out, NotFinite when a current is not a number.
 */
export function complementaryCurrents(matrix: Float64Array, q: Float64Array, free: number): Float64Array {
  const conducts = q.map((_, part) => (part < free ? 1 : 0));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const currents = currentsWhere(matrix, q, conducts);
    const broken = firstBroken(matrix, q, conducts, currents, free);
    if (broken === -1) return currents;
    conducts[broken] = 1 - (conducts[broken] as number);
  }
  throw new OneWaysUnsettled(MOST_ROUNDS);
}

function firstBroken(
  matrix: Float64Array,
  q: Float64Array,
  conducts: Float64Array,
  currents: Float64Array,
  free: number,
): number {
  const n = q.length;
  for (let part = free; part < n; part++) {
    if (conducts[part] === 1) {
      if ((currents[part] as number) < 0) return part;
      continue;
    }
    let spare = q[part] as number;
    let summed = Math.abs(spare);
    for (let other = 0; other < n; other++) {
      const volts = (matrix[part * n + other] as number) * (currents[other] as number);
      spare += volts;
      summed += Math.abs(volts);
    }
    if (spare < -ROUNDING * summed - NO_VOLTS) return part;
  }
  return -1;
}

/** Solves q + M·i = 0 over the conducting parts; the others carry nothing. */
function currentsWhere(matrix: Float64Array, q: Float64Array, conducts: Float64Array): Float64Array {
  const n = q.length;
  const parts: number[] = [];
  for (let part = 0; part < n; part++) if (conducts[part] === 1) parts.push(part);
  const rows = parts.map((row) => {
    const cells = parts.map((column) => matrix[row * n + column] as number);
    cells.push(-(q[row] as number));
    return cells;
  });
  const currents = new Float64Array(n);
  // Positive definite: elimination needs no exchange of rows.
  for (const [k, pivotRow] of rows.entries()) {
    for (const row of rows.slice(k + 1)) {
      const factor = (row[k] as number) / (pivotRow[k] as number);
      for (let c = k; c <= rows.length; c++) {
        row[c] = (row[c] as number) - factor * (pivotRow[c] as number);
      }
    }
  }
  for (let k = rows.length - 1; k >= 0; k--) {
    const row = rows[k] as number[];
    let volts = row[rows.length] as number;
    for (let c = k + 1; c < rows.length; c++) {
      volts -= (row[c] as number) * (currents[parts[c] as number] as number);
    }
    const current = volts / (row[k] as number);
    if (!Number.isFinite(current)) throw new NotFinite(`current of one-way part ${k}`, current);
    currents[parts[k] as number] = current;
  }
  return currents;
}
