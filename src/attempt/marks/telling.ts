/**
 * Whether two outcomes of one operation could be told apart at the bench: by what instruments showed beyond their
 * uncertainty, by what was seen, heard or felt. Used to find which causes a log has ruled out.
 */

import type { Outcome } from '../../bench/perform.ts';
import type { AnyReading, Reading } from '../../bench/reading.ts';
import { TIME_UNCERTAINTY } from '../../bench/readings/openingTime.ts';
import { DUTY_UNCERTAINTY } from '../../bench/readings/pilot.ts';
import { sameRefusal } from '../../bench/refusal.ts';
import { BY_EAR } from '../../bench/world.ts';
import type { Hertz, Seconds } from '../../laws/quantities.ts';
import type { Found } from '../../site/part.ts';
import { sameSight } from '../../site/part.ts';

/** Two frequencies closer than this are one: each is read to half a hertz. */
const FREQUENCIES: Hertz = 1;

export type Perceived = Pick<Outcome, 'readings' | 'seen' | 'events' | 'refused' | 'found'>;

export const sameToTheBench = (x: Perceived, y: Perceived, began: { x: Seconds; y: Seconds }): boolean =>
  sameRefusal(x.refused, y.refused) &&
  x.seen.indicator === y.seen.indicator &&
  x.seen.plug === y.seen.plug &&
  sameSounds(x, y, began) &&
  x.found.length === y.found.length &&
  x.found.every(({ what }, i) => sameSight(what, (y.found[i] as Found).what)) &&
  x.readings.length === y.readings.length &&
  x.readings.every((reading, i) => alikeReadings(reading, y.readings[i] as Reading));

/** The same sounds in the same order, each about as long after the operation began. */
const sameSounds = (x: Perceived, y: Perceived, began: { x: Seconds; y: Seconds }): boolean =>
  x.events.length === y.events.length &&
  x.events.every(({ what, at }, i) => {
    const other = y.events[i];
    return other?.what === what && Math.abs(at - began.x - (other.at - began.y)) <= BY_EAR;
  });

/** No further apart than both readings' uncertainty, in each figure that they show. */
export function alikeReadings(x: AnyReading, y: AnyReading): boolean {
  if (x.qualifier !== y.qualifier || !sameRefusal(x.reason, y.reason) || x.trippedWhat !== y.trippedWhat)
    return false;
  const margin = (x.uncertainty ?? 0) + (y.uncertainty ?? 0);
  return (
    near(x.value, y.value, margin) &&
    near(x.low, y.low, margin) &&
    near(x.duty, y.duty, 2 * DUTY_UNCERTAINTY) &&
    near(x.frequency, y.frequency, FREQUENCIES) &&
    near(x.tripMs, y.tripMs, 2000 * TIME_UNCERTAINTY)
  );
}

const near = (a: number | null | undefined, b: number | null | undefined, by: number): boolean =>
  a == null || b == null ? (a ?? null) === (b ?? null) : Math.abs(a - b) <= by + 1e-9;
