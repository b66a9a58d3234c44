/** The reading of a row that lies nearest to its decision: the limit that it is compared with. */
import { pairOf } from '../bench/reading.ts';
import { TIME_UNCERTAINTY } from '../bench/readings/openingTime.ts';
import type { VerifiedAction } from '../scenario/verify.ts';
import type { JudgedLimit } from '../verification/judgeLimit.ts';
import type { Values } from '../verification/testAction.ts';

export interface Call {
  readonly action: string;
  /** The limit's id. */
  readonly line: string;
  /** What its words need to know. */
  readonly values: Values;
  readonly quantity: string;
  readonly between: readonly [string, string] | null;
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
  readonly kind: 'most' | 'least';
  /** Set in place of the standard's. */
  readonly own: { readonly value: number; readonly why: string } | null;
  readonly pass: boolean;
  /** How far the shown value is from the limit, in its unit. */
  readonly margin: number;
  /** The same in half-widths of the instrument's error: under 1 the reading is too close to tell. */
  readonly margins: number;
}

/** The closer of what was known and the limits of one more test. */
export const closestOf = ({ action, limits }: VerifiedAction, known: Call | null): Call | null =>
  limits
    .flatMap((judged) => callOf(action.id, judged))
    .reduce((best: Call | null, one) => (best === null || one.margins < best.margins ? one : best), known);

function callOf(action: string, { limit, reading, value, pass }: JudgedLimit): readonly Call[] {
  // Nothing tripped, or beyond the range: no figure that could be near.
  if (value === null || reading.qualifier !== null) return [];
  const margin = Math.abs(value - limit.limit);
  const isTime = limit.compares === 'trip time';
  const half = isTime ? TIME_UNCERTAINTY : (reading.uncertainty ?? 0);
  if (half === 0) return [];
  return [
    {
      action,
      line: limit.id,
      values: limit.values ?? {},
      quantity: limit.quantity,
      between: pairOf(reading) ?? null,
      value,
      limit: limit.limit,
      unit: limit.unit,
      kind: limit.kind,
      own: limit.own ?? null,
      pass,
      margin,
      margins: margin / half,
    },
  ];
}

/** What the words of its limit need to know. */
export const callLimit = ({ line, values, unit, kind, own }: Call) => ({
  ...{ id: line, values, unit, kind },
  ...(own === null ? {} : { own }),
});
