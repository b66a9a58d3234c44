/**
 * What was typed of the readings, beside what the instruments showed: whether it was read rightly, recorded fully,
 * and what follows when the typed figures are taken for the reading.
 */
import type { Reading } from '../bench/reading.ts';
import { roundTo } from '../bench/reading.ts';
import type { Observed } from '../verification/observed.ts';
import type { EntryOf } from './attempt.ts';
import { TYPED_UNITS } from './attempt.ts';
import type { Run, Taken } from './run.ts';
import type { Sitting } from './sitting.ts';
import { samplesBefore, samplesIn } from './sitting.ts';
import { countingEntries } from './untimely.ts';

export type Typed = EntryOf<'observation'>;

/** The last thing typed of each reading, by its index. */
export const typedOf = (run: Run): ReadonlyMap<number, Typed> =>
  new Map(countingEntries(run, 'observation').map((entry) => [entry.reading, entry]));

/** Typed value in SI, rounded so that 24.6 mA is 0.0246 A. */
export const typedValue = ({ value, unit }: Typed): number | null =>
  value === null ? null : roundTo(value * TYPED_UNITS[unit], 1e-6);

/** The figure an instrument showed: its value, or the end of its range. */
export const shownFigure = ({ value, limit }: Reading): number | null => value ?? limit ?? null;

/** The same figure, to half a per cent: unit prefixes and a dropped last zero are no misreading. */
const alike = (typed: number, shown: number): boolean =>
  Math.abs(typed - shown) <= Math.max(1e-9, 0.005 * Math.abs(shown));

/** Half a point of duty and half an ampere: what a working from times or duty may be off. */
const WORKING = { duty: 0.005, amps: 0.5 } as const;

/** Whether the figures typed are those shown. */
export function readRightly(typed: Typed, { reading }: Taken): boolean {
  const value = typedValue(typed);
  const shown = shownFigure(reading);
  if (shown === null) return typed.qualifier === 'no reading';
  if (value === null || !alike(value, shown)) return false;
  const { low, duty, amps } = typed;
  return (
    (low === undefined || reading.low === undefined || alike(low, reading.low)) &&
    (duty === undefined || reading.duty == null || Math.abs(duty - reading.duty) <= WORKING.duty) &&
    (amps === undefined || reading.amps == null || Math.abs(amps - reading.amps) <= WORKING.amps)
  );
}

/** Whether the record says all that belongs to it: dimension, > sign, test voltage, what tripped. */
export function recordedFully(typed: Typed, { reading }: Taken): boolean {
  if (reading.qualifier === 'unable') return typed.qualifier === 'no reading';
  const dimension = typed.unit.replace(/^[kMm](?=.)/, '');
  return (
    dimension === reading.unit &&
    (typed.qualifier === reading.qualifier || (typed.qualifier === null && reading.qualifier === null)) &&
    (reading.quantity !== 'insulation' || typed.volts === reading.volts) &&
    (reading.quantity !== 'residual' || typed.tripped === reading.trippedWhat)
  );
}

/** What was observed in a sitting, with the typed figures in place of the shown ones: a misreading costs once. */
export function observedAsTyped(run: Run, sitting: Sitting): Observed {
  const typed = typedOf(run);
  const byReading = new Map(run.readings.map(({ reading }, i) => [reading, typed.get(i)]));
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
  if (value === null || typed.qualifier === 'no reading') return reading;
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
