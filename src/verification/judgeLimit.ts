/** A reading against the limit that it is judged by. */
import type { Reading } from '../bench/reading.ts';
import { TIME_UNCERTAINTY } from '../bench/readings/openingTime.ts';
import type { Limit } from './testAction.ts';

export interface JudgedLimit {
  readonly limit: Limit;
  readonly reading: Reading;
  /** What is compared: the shown value, or the end of the range where it was passed. */
  readonly value: number | null;
  readonly pass: boolean;
  /** The instrument's uncertainty spans the limit. */
  readonly tooClose: boolean;
}

export function judgeLimit(limit: Limit, reading: Reading): JudgedLimit {
  const { value, uncertainty, qualifier } = compared(limit, reading);
  if (value === null) {
    // Beyond the range: above every least value, and never below a greatest one.
    const pass = limit.kind === 'least' && qualifier === '>';
    const end = limit.compares === 'trip time' ? null : (reading.limit ?? null);
    return { limit, reading, value: end, pass, tooClose: false };
  }
  const pass = limit.kind === 'most' ? value <= limit.limit : value >= limit.limit;
  const tooClose = Math.abs(value - limit.limit) < (uncertainty ?? 0);
  return { limit, reading, value, pass, tooClose };
}

/** The part of the reading that the limit is about. A time is shown to the millisecond; nothing tripped is no time. */
function compared(limit: Limit, reading: Reading): Pick<Reading, 'value' | 'uncertainty' | 'qualifier'> {
  if (limit.compares !== 'trip time') return reading;
  const { qualifier } = reading;
  const tripMs = reading.quantity === 'residual' ? (reading.tripMs ?? null) : null;
  return {
    value: tripMs === null ? null : tripMs / 1000,
    uncertainty: TIME_UNCERTAINTY,
    qualifier,
  };
}
