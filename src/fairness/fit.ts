/**
 * A cause reads like another one at some size that need not be one of the three that a dictionary has. Where the figure
 * that tells the two apart lies between what two sizes read, the size in between that reads the same is sought.
 */
import type { Values } from '../faults/fault.ts';
import type { TestAction } from '../verification/testAction.ts';
import type { Cause } from './cause.ts';
import type { Place } from './cell.ts';
import { difference, figureAt } from './cell.ts';
import { readsTheSame, toldBeforehand } from './relations.ts';
import type { Row } from './row.ts';
import type { Trials } from './trials.ts';

/** Halvings of a range; a thousandth of it is finer than any instrument. */
const MOST_HALVINGS = 12;

/** How a cause at one value of its parameter is made, and which value a row has. */
export interface Sizing {
  readonly at: (value: number) => Cause;
  readonly sizeIn: (row: Row) => number;
}

/** Where a figure was read. */
interface Reading {
  readonly test: string;
  readonly place: Place;
}

/** A row of this cause that reads as `own` does, at a size between those of `rows` (by rising value); null: none. */
export function* fitting(
  own: Row,
  rows: readonly Row[],
  { at, sizeIn }: Sizing,
  tests: readonly TestAction[],
  trials: Trials,
): Generator<unknown, Row | null> {
  for (const [i, low] of rows.entries()) {
    const high = rows[i + 1];
    if (high === undefined) return null;
    let [x, y] = [low, high];
    for (let halved = 0; halved < MOST_HALVINGS; halved++) {
      const place = firstApart(own, x) ?? firstApart(own, y);
      const sides = place === null ? null : [sideOf(own, x, place), sideOf(own, y, place)];
      if (place === null || sides === null || sides[0] === null || sides[1] === null) break;
      if (sides[0] === sides[1]) break;
      const cause = at(between(sizeIn(x), sizeIn(y)));
      // Up to the test in question first: most attempts end there.
      const upTo = tests.slice(0, tests.findIndex(({ id }) => id === place.test) + 1);
      const tried = yield* trials.row(cause, upTo);
      const apart = firstApart(own, tried);
      if (apart === null) {
        const row = yield* trials.row(cause, tests);
        if (readsTheSame(own, row)) return row;
        break;
      }
      const side = sideOf(own, tried, place);
      if (side === null || apart.test !== place.test) break;
      if (side === 0) break;
      if (side === sides[0]) x = tried;
      else y = tried;
    }
  }
  return null;
}

/** By ratio where the range spans decades. */
const between = (low: number, high: number): number =>
  low > 0 && high / low > 10 ? Math.sqrt(low * high) : (low + high) / 2;

/** The first figure that tells them apart, where nothing else does before it. */
function firstApart(own: Row, other: Row): Reading | null {
  if (toldBeforehand(own, other)) return null;
  for (const [test, cell] of own.cells) {
    const its = other.cells.get(test);
    const apart = its === undefined ? null : difference(cell, its);
    if (apart === null) continue;
    return apart.what === 'told' ? null : { test, place: apart.place };
  }
  return null;
}

/** Whether its figure there is above (1) or below (−1) the own one; 0 where their bands meet, null where it has none. */
function sideOf(own: Row, other: Row, { test, place }: Reading): -1 | 0 | 1 | null {
  const [cell, its] = [own.cells.get(test), other.cells.get(test)];
  const figure = cell === undefined ? undefined : figureAt(cell, place);
  const one = its === undefined ? undefined : figureAt(its, place);
  if (figure === undefined || one === undefined || figure.of !== one.of) return null;
  if (one.least > figure.greatest) return 1;
  return one.greatest < figure.least ? -1 : 0;
}

/** The values of a cause with one of them set. */
export const withValue = (values: Values, name: string, value: number): Values => ({
  ...values,
  [name]: value,
});
