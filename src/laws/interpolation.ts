/**
 * Values read off a table of points by straight lines. It serves the curves of simulated devices,
 * which must come out the same on every machine and so use no powers or logarithms.
 */

/** A point of a table: the value at a place. */
export interface Knot {
  readonly at: number;
  readonly value: number;
}

/** At least one point, places rising. */
export type Knots = readonly [Knot, ...Knot[]];

/**
 * The value at a place, on the straight line between the two points around it:
 *   v = va + (vb - va) · (x - a) / (b - a)
 * Before the first point the first value, past the last the last. The result has the knots' units
 * and never leaves the span of its two neighbours.
 */
export const interpolated = (knots: Knots, at: number): number => {
  let before = knots[0];
  for (const knot of knots) {
    if (at < knot.at) {
      if (knot === before) return knot.value;
      const share = (at - before.at) / (knot.at - before.at);
      return before.value + (knot.value - before.value) * share;
    }
    before = knot;
  }
  return before.value;
};
