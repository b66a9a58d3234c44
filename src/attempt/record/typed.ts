/**
 * What was typed of the readings, beside what the instruments showed: whether it was read rightly, recorded fully,
 * and what follows when the typed figures are taken for the reading.
 */

import type { Reading, ReadingOf } from '../../bench/reading.ts';
import { showsTripTime } from '../../bench/reading.ts';
import { TYPED_UNITS } from '../../bench/readings/display.ts';
import { roundTo } from '../../bench/readings/scale.ts';
import type { Volts } from '../../laws/quantities.ts';
import type { Observed } from '../../verification/observed.ts';
import type { EntryOf } from './attempt.ts';
import { oncePerRun } from './once.ts';
import type { Run, Taken } from './run.ts';
import type { Sitting } from './sitting.ts';
import { lastEntryIn, readingsIn, samplesBefore, samplesIn } from './sitting.ts';
import { countingEntries } from './untimely.ts';
import { isConverted } from './written.ts';

export type Typed = EntryOf<'observation'>;

/** Everything typed of each reading, by its index, in order, with the places of the entries in the log. */
const allTyped = oncePerRun(
  (run: Run): ReadonlyMap<number, readonly { readonly at: number; readonly typed: Typed }[]> => {
    const all = new Map<number, { at: number; typed: Typed }[]>();
    const counting: ReadonlySet<unknown> = new Set(countingEntries(run, 'observation'));
    for (const [at, entry] of run.attempt.entries.entries()) {
      if (entry.kind !== 'observation' || !counting.has(entry)) continue;
      const reading = run.readings[entry.reading]?.reading;
      const isSet = reading !== undefined && showsTripTime(reading) && !isConverted(run.attempt);
      const typed = isSet ? { ...entry, value: null } : entry;
      all.set(entry.reading, [...(all.get(entry.reading) ?? []), { at, typed }]);
    }
    return all;
  },
);

/**
 * The last thing typed of each reading, by its index. A current typed of a test at a fixed one is none: it was set.
 * Format 1 had it typed.
 */
export const typedOf = oncePerRun(
  (run: Run): ReadonlyMap<number, Typed> =>
    new Map(
      [...allTyped(run)].flatMap(([index, list]) =>
        list.slice(-1).map(({ typed }): [number, Typed] => [index, typed]),
      ),
    ),
);

/** The same of what was typed before an entry of the log; left out, of all of it. */
export function typedBefore(run: Run, before = Infinity): Pick<ReadonlyMap<number, Typed>, 'get' | 'has'> {
  const all = allTyped(run);
  const get = (index: number) => all.get(index)?.findLast(({ at }) => at < before)?.typed;
  return { get, has: (index) => get(index) !== undefined };
}

/**
 * The same sitting, ended with the last thing done in it and the last that was typed of it: two that end elsewhere in
 * the log and hold the same are one.
 */
export const narrowed = oncePerRun((run: Run, sitting: Sitting): Sitting => {
  const { after, told = Infinity } = sitting;
  const all = allTyped(run);
  const typedAt = readingsIn(run, sitting).map(
    ({ index }) => all.get(index)?.findLast(({ at }) => at < told)?.at ?? after,
  );
  return { ...sitting, upTo: lastEntryIn(run, sitting), told: 1 + Math.max(after, ...typedAt) };
});

/** Whether the time stands for the reading, as it does for a test at a fixed current. */
const isTimed = ({ value }: Typed, reading: Reading): reading is ReadingOf<'residual'> & { mode: 'fixed' } =>
  showsTripTime(reading) && value === null;

/** Typed value in SI, rounded so that 24.6 mA is 0.0246 A. */
export const typedValue = ({ value, unit }: Typed): number | null =>
  value === null ? null : roundTo(value * TYPED_UNITS[unit], 1e-6);

/** The figure an instrument showed: its value, or the end of its range. */
export const shownFigure = ({ value, limit }: Reading): number | null => value ?? limit ?? null;

/** The same figure, to half a per cent: unit prefixes and a dropped last zero are no misreading. */
const alike = (typed: number, shown: number): boolean =>
  Math.abs(typed - shown) <= Math.max(1e-9, 0.005 * Math.abs(shown));

/** Polarity belongs to the record, and costs there. */
const alikeInSize = (typed: number, shown: number): boolean => alike(Math.abs(typed), Math.abs(shown));
const samePolarity = (typed: number | null | undefined, shown: number | null | undefined): boolean =>
  typed == null || shown == null || typed * shown >= 0;

/** Half a point of duty and half an ampere: what a working from times or duty may be off. */
const WORKING = { duty: 0.005, amps: 0.5 } as const;

/** Whether the figures typed are those shown. */
export function readRightly(typed: Typed, { reading }: Taken): boolean {
  const value = typedValue(typed);
  const shown = shownFigure(reading);
  if (reading.qualifier !== 'unable' && isTimed(typed, reading)) return timeReadRightly(typed, reading);
  if (shown === null) return typed.qualifier === 'no-reading';
  if (value === null || !alikeInSize(value, shown)) return false;
  if (reading.quantity === 'residual')
    return typed.tripMs === undefined || reading.tripMs == null || alike(typed.tripMs, reading.tripMs);
  return reading.quantity !== 'pilot' || pilotReadRightly(typed, reading);
}

const pilotReadRightly = ({ low, duty, amps }: Typed, reading: ReadingOf<'pilot'>): boolean =>
  (low === undefined || reading.low === undefined || alikeInSize(low, reading.low)) &&
  (duty === undefined || reading.duty == null || Math.abs(duty - reading.duty) <= WORKING.duty) &&
  (amps === undefined || reading.amps == null || Math.abs(amps - reading.amps) <= WORKING.amps);

const timeReadRightly = ({ qualifier, tripMs }: Typed, reading: ReadingOf<'residual'>): boolean =>
  reading.tripMs == null
    ? qualifier === '>' && tripMs === undefined
    : qualifier === null && tripMs !== undefined && alike(tripMs, reading.tripMs);

/** Whether the record says all that belongs to it: dimension, > sign, polarity, test voltage, what tripped. */
export function recordedFully(typed: Typed, { reading }: Taken): boolean {
  if (reading.qualifier === 'unable') return typed.qualifier === 'no-reading';
  const dimension = typed.unit.replace(/^[kMm](?=.)/, '');
  return (
    dimension === (isTimed(typed, reading) ? 's' : reading.unit) &&
    (typed.qualifier === reading.qualifier || (typed.qualifier === null && reading.qualifier === null)) &&
    samePolarity(typed.value, reading.value) &&
    (reading.quantity !== 'pilot' || samePolarity(typed.low, reading.low)) &&
    (reading.quantity !== 'insulation' || typed.volts === reading.volts) &&
    (reading.quantity !== 'residual' || typed.tripped === reading.trippedWhat)
  );
}

/** What was observed in a sitting, with the typed figures in place of the shown ones: a misreading costs once. */
export const observedAsTyped = oncePerRun((run: Run, sitting: Sitting): Observed => {
  const typed = typedBefore(run, sitting.told);
  const byReading = new Map(
    readingsIn(run, sitting).map(({ reading, index }) => [reading, typed.get(index)]),
  );
  const substituted = (reading: Reading): Reading => {
    const entry = byReading.get(reading);
    return entry === undefined || reading.qualifier === 'unable' ? reading : asTyped(reading, entry);
  };
  return {
    // Few lines ask for it.
    get before() {
      return samplesBefore(run, sitting);
    },
    samples: samplesIn(run, sitting).map((sample) =>
      sample.readings.length === 0 ? sample : { ...sample, readings: sample.readings.map(substituted) },
    ),
  };
});

export function asTyped(reading: Reading, typed: Typed): Reading {
  const value = typedValue(typed);
  if (isTimed(typed, reading)) return timedAsTyped(reading, typed);
  if (value === null || typed.qualifier === 'no-reading') return reading;
  const over = typed.qualifier === '>' || typed.qualifier === '<';
  // Most figures are written as they are shown: then they are the reading.
  const isAsShown = value === reading.value && reading.qualifier === null && reading.uncertainty !== null;
  if (isAsShown && !over && reading.quantity !== 'pilot') return reading;
  return {
    ...reading,
    qualifier: over ? (typed.qualifier as '>' | '<') : null,
    value: over ? null : value,
    ...(over ? { limit: value } : { uncertainty: reading.uncertainty ?? 0 }),
    ...(reading.quantity === 'pilot' ? levelsAsTyped(reading, value, typed) : {}),
  };
}

const levelsAsTyped = (
  { frequency }: ReadingOf<'pilot'>,
  high: Volts,
  { low, duty }: Typed,
): Pick<ReadingOf<'pilot'>, 'high' | 'low' | 'duty'> => ({
  high,
  ...(low === undefined ? {} : { low }),
  ...(duty === undefined || frequency == null ? {} : { duty }),
});

/** Tripped in so many milliseconds at the current that was set, or not at all. */
function timedAsTyped(reading: ReadingOf<'residual'>, { qualifier, tripMs }: Typed): Reading {
  if (qualifier === 'no-reading') return reading;
  const set = reading.value ?? reading.limit ?? 0;
  if (qualifier === '>') {
    const { tripAmps: _, tripMs: __, ...rest } = reading;
    return { ...rest, value: null, uncertainty: null, qualifier: '>', limit: set };
  }
  if (tripMs === undefined) return reading;
  return {
    ...reading,
    value: set,
    tripAmps: set,
    tripMs,
    uncertainty: reading.uncertainty ?? 0,
    qualifier: null,
  };
}
