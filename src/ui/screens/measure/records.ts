/** Readings by their place among all of the attempt, and what was written down of them. */
import type { ReactNode } from 'react';
import type { EntryOf } from '../../../attempt/record/attempt.ts';
import type { Run } from '../../../attempt/record/run.ts';
import { entriesAbout } from '../../../attempt/record/run.ts';
import { rungOf } from '../../../attempt/record/rung.ts';
import type { Operation } from '../../../bench/operation.ts';
import type { Reading } from '../../../bench/reading.ts';
import { displayOf } from '../../../bench/reading.ts';
import type { TypedUnit } from '../../../bench/readings/display.ts';
import type { Bench } from '../../flow/bench.ts';
import { isLike } from '../../flow/rows.ts';
import { NO_TRIP } from '../../format/figures.ts';

export type Observation = EntryOf<'observation'>;

/** As it is typed, and as the page's own pad types it. */
export const NO_READING = 'no reading';

export const TRIPPED_WORDS = {
  unit: 'the unit',
  upstream: 'the device at the origin',
  both: 'both',
  breaker: 'the circuit’s breaker',
  none: 'nothing',
} as const;

/** What the second key of writing down goes on to: to be judged, or on the first rung the next acts of the test. */
export interface Then {
  readonly word: 'judge' | 'next';
  /** What is done with it, for the line above the keys. */
  readonly says?: ReactNode;
  readonly go: () => void;
}

export interface Numbered {
  /** Place among all readings of the attempt. */
  readonly index: number;
  readonly reading: Reading;
  /** Bench time that its act took, s. */
  readonly took: number;
}

/** The last that was written down of a reading. */
export const recordOf = (run: Run, index: number): Observation | undefined =>
  entriesAbout(run.attempt, 'observation').findLast(({ reading }) => reading === index);

/** The unit in which the trainee last wrote this quantity; on the first rung it is given, as the instrument shows it. */
export function presetUnit(run: Run, reading: Reading): TypedUnit | '' {
  const { quantity } = reading;
  if (rungOf(run.scenario.support, run.attempt) === 1) return displayOf(reading).unit;
  const last = entriesAbout(run.attempt, 'observation').findLast(
    ({ reading, value }) => value !== null && run.readings[reading]?.reading.quantity === quantity,
  );
  return last?.unit ?? '';
}

/** The test voltage that the trainee last wrote down with an insulation reading. */
export const lastVolts = (run: Run): string =>
  String(entriesAbout(run.attempt, 'observation').findLast(({ volts }) => volts !== undefined)?.volts ?? '');

export function recordText(record: Observation): string {
  const { value, low, duty, amps, tripMs, tripped, volts } = record;
  const further = [
    low === undefined ? '' : `low ${typedText(low)}\u202fV`,
    duty === undefined ? '' : `duty ${typedText(Number((100 * duty).toFixed(4)))}\u202f%`,
    amps === undefined ? '' : `${typedText(amps)}\u202fA`,
    tripMs === undefined || value === null ? '' : `last step ${typedText(tripMs)}\u202fms`,
    tripped === undefined ? '' : `tripped: ${tripped}`,
    volts === undefined ? '' : `at ${typedText(volts)}\u202fV`,
  ].filter((text) => text !== '');
  return [figureTyped(record), ...further].join(', ');
}

function figureTyped({ value, qualifier, unit, tripMs }: Observation): string {
  if (value !== null) return `${qualifier ?? ''} ${typedText(value)}\u202f${unit}`.trim();
  if (tripMs !== undefined) return `${typedText(tripMs)}\u202fms`;
  return qualifier === '>' ? NO_TRIP : 'no reading';
}

const typedText = (value: number): string => String(value).replace('-', '−');

/** Readings of the test that were taken after an entry of the log and are not written down. */
export const unwrittenSince = (bench: Bench, test: string, since: number): number =>
  numberedSince(bench, test, since)
    .flat()
    .filter(({ index }) => recordOf(bench.run, index) === undefined).length;

/**
 * Of the test's readings, those taken after an entry of the log: in groups, each of which stands in one table. Like
 * readings are one group where nothing was done or written down between them.
 */
export function numberedSince(bench: Bench, test: string, since: number): readonly (readonly Numbered[])[] {
  const groups: Numbered[][] = [];
  let index = 0;
  let before = 0;
  let last: { readonly entry: number; readonly operation: Operation } | null = null;
  for (const { at, entry, test: of, operation, outcome } of bench.happened) {
    const took = at - before;
    before = at;
    const group = outcome.readings.map((reading, i) => ({ index: index + i, reading, took }));
    index += group.length;
    if (of !== test || entry <= since || group.length === 0) continue;
    const goesOn =
      last !== null &&
      last.entry === entry - 1 &&
      last.operation.op === 'measure' &&
      operation.op === 'measure' &&
      isLike(last.operation, operation);
    if (goesOn) groups.at(-1)?.push(...group);
    else groups.push(group);
    last = { entry, operation };
  }
  return groups;
}

/** Why nothing was written down, for the line above the bar. */
export const notWritten = (why: string, id: string) => ({
  what: 'Not written down.',
  why: `${why} What you typed stays.`,
  id,
});
