/**
 * A device that trips after a time that depends on what it carries: it fills at 1 / t(I) and trips when full. Once
 * it has tripped it stays so until reset, whatever flows. Plain data, and what becomes of it.
 */
import type { Microseconds, Seconds } from '../laws/quantities.ts';
import { microseconds, seconds } from '../laws/quantities.ts';

export interface TripIntegrator {
  /** How full it was when it began to carry what it carries, 0 to 1. */
  readonly filled: number;
  /** In which time that trips it from rest, s; Infinity while it fills with nothing. */
  readonly time: Seconds;
  readonly since: Microseconds;
  readonly hasTripped: boolean;
  /** What it carries, also while tripped: it fills again from this once reset. */
  readonly carried: Seconds;
}

export const EMPTY: TripIntegrator = {
  filled: 0,
  time: Infinity,
  since: 0,
  hasTripped: false,
  carried: Infinity,
};

/** From now on it carries what would trip it from rest in this time; Infinity clears it. The same object where nothing changes. */
export function exposed(before: TripIntegrator, carried: Seconds, now: Microseconds): TripIntegrator {
  if (before.hasTripped) return carried === before.carried ? before : { ...before, carried };
  if (carried === before.time) return before;
  const sinceThen = Number.isFinite(before.time) ? seconds(now - before.since) / before.time : 0;
  const filled = Number.isFinite(carried) ? before.filled + sinceThen : 0;
  return { filled, time: carried, since: now, hasTripped: false, carried };
}

/** When it trips if nothing changes, at the earliest a tick after it began to carry this; null: never. */
export const tripsAt = ({ filled, time, since, hasTripped }: TripIntegrator): Microseconds | null =>
  hasTripped || !Number.isFinite(time) ? null : since + Math.max(1, microseconds(time * (1 - filled)));

export const tripped = (before: TripIntegrator): TripIntegrator => ({ ...before, hasTripped: true });

/** Ready again, empty, and exposed to whatever flows now. */
export const reset = ({ carried }: TripIntegrator, now: Microseconds): TripIntegrator =>
  exposed(EMPTY, carried, now);
