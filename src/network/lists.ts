/*
 * Several lists of numbers in one piece of memory. Making a typed array costs more than filling
 * one of the lengths met here, and the solver makes a dozen whenever a contact moves.
 */

/** Lists of zeros, of the lengths asked for, in that order. */
export function listsOf<const Lengths extends readonly number[]>(
  ...lengths: Lengths
): { [K in keyof Lengths]: Float64Array } {
  let total = 0;
  for (const length of lengths) total += length;
  const memory = new Float64Array(total);
  let from = 0;
  const lists = lengths.map((length) => {
    const list = memory.subarray(from, from + length);
    from += length;
    return list;
  });
  return lists as { [K in keyof Lengths]: Float64Array };
}
