/*
 * Lists of numbers out of one piece of memory. A piece costs far more to get and to give back than the lists met here
 * cost to fill, and the solver makes a dozen whenever a contact moves: so they share pieces.
 */

/** Numbers in a piece: some ten solutions of a bench. It is given back when the last list in it is. */
const PIECE = 8192;

let piece = new Float64Array(0);
let taken = 0;

/** A list of zeros. */
export function listOf(length: number): Float64Array {
  if (taken + length > piece.length) {
    piece = new Float64Array(Math.max(PIECE, length));
    taken = 0;
  }
  const list = piece.subarray(taken, taken + length);
  taken += length;
  return list;
}

/** Lists of zeros, of the lengths asked for, in that order. */
export const listsOf = <const Lengths extends readonly number[]>(
  ...lengths: Lengths
): { [K in keyof Lengths]: Float64Array } => lengths.map(listOf) as { [K in keyof Lengths]: Float64Array };
