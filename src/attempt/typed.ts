/**
 * What was typed of the readings, beside what the instruments showed: whether it was read rightly, recorded fully,
 * and what follows when the typed figures are taken for the reading.
 */
import type { Reading } from '../bench/reading.ts';
import { roundTo } from '../bench/reading.ts';
import type { Observed } from '../verification/observed.ts';
import type { EntryOf } from './attempt.ts';
import { TYPED_UNITS } from './attempt.ts';
import { showsTripTime } from './display.ts';
import { oncePerRun } from './once.ts';
import type { Run, Taken } from './run.ts';
import type { Sitting } from './sitting.ts';
import { readingsIn, samplesBefore, samplesIn } from './sitting.ts';
import { countingEntries } from './untimely.ts';
import { isConverted } from './written.ts';

export type Typed = EntryOf<'observation'>;

/**
 * The last thing typed of each reading before an entry of the log, by its index. A current typed of a test at a fixed
 * one is none: it was set. Format 1 had it typed.
 */
export const typedOf = oncePerRun(
  (run: Run, before: number = Infinity): ReadonlyMap<number, Typed> => {
    const all = countingEntries(run, 'observation');
    const early: ReadonlySet<unknown> | null =
      before === Infinity ? null : new Set(run.attempt.entries.slice(0, before));
    return new Map(
      all
        .filter((entry) => early === null || early.has(entry))
        .map((entry) => {
          const reading = run.readings[entry.reading]?.reading;
          const isSet = reading !== undefined && showsTripTime(reading) && !isConverted(run.attempt);
          return [entry.reading, isSet ? { ...entry, value: null } : entry];
        }),
    );
  },
  (before = Infinity) => String(before),
);

/** Whether the time stands for the reading, as it does for a test at a fixed current. */
const isTimed = ({ value }: Typed, reading: Reading): boolean => showsTripTime(reading) && value === null;

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
  const { low, duty, amps, tripMs } = typed;
  return (
    (tripMs === undefined || reading.tripMs == null || alike(tripMs, reading.tripMs)) &&
    (low === undefined || reading.low === undefined || alikeInSize(low, reading.low)) &&
    (duty === undefined || reading.duty == null || Math.abs(duty - reading.duty) <= WORKING.duty) &&
    (amps === undefined || reading.amps == null || Math.abs(amps - reading.amps) <= WORKING.amps)
  );
}

const timeReadRightly = ({ qualifier, tripMs }: Typed, reading: Reading): boolean =>
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
    samePolarity(typed.low, reading.low) &&
    (reading.quantity !== 'insulation' || typed.volts === reading.volts) &&
    (reading.quantity !== 'residual' || typed.tripped === reading.trippedWhat)
  );
}

/** What was observed in a sitting, with the typed figures in place of the shown ones: a misreading costs once. */
export function observedAsTyped(run: Run, sitting: Sitting): Observed {
  const typed = typedOf(run, sitting.told);
  const byReading = new Map(
    readingsIn(run, sitting).map(({ reading, index }) => [reading, typed.get(index)]),
  );
  const substituted = (reading: Reading): Reading => {
    const entry = byReading.get(reading);
    return entry === undefined || reading.qualifier === 'unable' ? reading : asTyped(reading, entry);
  };
  return {
    before: samplesBefore(run, sitting),
    samples: samplesIn(run, sitting).map((sample) => ({
      ...sample,
      readings: sample.readings.map(substituted),
    })),
  };
}

export function asTyped(reading: Reading, typed: Typed): Reading {
  const value = typedValue(typed);
  if (isTimed(typed, reading)) return timedAsTyped(reading, typed);
  if (value === null || typed.qualifier === 'no-reading') return reading;
  const over = typed.qualifier === '>' || typed.qualifier === '<';
  return {
    ...reading,
    qualifier: over ? (typed.qualifier as '>' | '<') : null,
    value: over ? null : value,
    ...(over ? { limit: value } : { uncertainty: reading.uncertainty ?? 0 }),
    ...(reading.quantity === 'pilot' ? { high: value } : {}),
    ...(typed.low === undefined ? {} : { low: typed.low }),
    ...(typed.duty === undefined || reading.frequency == null ? {} : { duty: typed.duty }),
  };
}

/** Tripped in so many milliseconds at the current that was set, or not at all. */
function timedAsTyped(reading: Reading, { qualifier, tripMs }: Typed): Reading {
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
