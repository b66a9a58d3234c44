/**
 * How expectations look at what was observed: choosing samples by their set-up, and holding a reading against a
 * range with the instrument's own uncertainty allowed for.
 */
import { showDark } from '../bench/proofs.ts';
import type { Reading, ReadingOf } from '../bench/reading.ts';
import { isOf, pairOf } from '../bench/reading.ts';
import type { Quantity } from '../bench/readings/quantity.ts';
import type { VehicleState } from '../bench/standIn.ts';
import type { Line, Live } from '../laws/conductors.ts';
import type { Range, Seconds, Volts } from '../laws/quantities.ts';
import { linesOf } from '../site/site.ts';
import type { Observed, Sample, SetUp } from './observed.ts';
import type { Finding, Papers } from './testAction.ts';

export type When = (setUp: SetUp, sample: Sample) => boolean;

export const off: When = ({ supply }) => supply === 'off';
export const unplugged: When = ({ supply, standIn, disturbed }) =>
  supply === 'on' && !disturbed && !standIn.plugged;

/** Plugged in, in this state, with nothing wrong set at the stand-in, on the supply that the papers tell. */
export const inState =
  (...states: readonly VehicleState[]): When =>
  ({ supply, standIn, disturbed }) =>
    supply === 'on' &&
    !disturbed &&
    standIn.plugged &&
    states.includes(standIn.state) &&
    standIn.pilot === 'sound' &&
    standIn.diode === 'sound' &&
    standIn.earth === 'sound';

/** Undisturbed for at least this long, s. */
export const settledFor =
  (when: When, seconds: number): When =>
  (setUp, sample) =>
    setUp.settled >= seconds && when(setUp, sample);

/** Two moments are differences of shown times: a microsecond of rounding is none. */
const MICROSECOND: Seconds = 1e-6;

export const hasPassed = (time: Seconds, from: Seconds, at: Seconds): boolean =>
  at - from >= time - MICROSECOND;

export const samplesWhen = ({ samples }: Observed, when: When): readonly Sample[] =>
  samples.filter((sample) => when(sample.setUp, sample));

export const readingsOf = <Q extends Quantity>(
  observed: Observed,
  quantity: Q,
  when: When,
): readonly ReadingOf<Q>[] =>
  observed.samples
    // Of the quantity first: a set-up is looked at in many ways, and few samples have any one quantity.
    .filter((sample) => sample.readings.some((r) => isOf(r, quantity)) && when(sample.setUp, sample))
    .flatMap(({ readings }) => readings.filter((r) => isOf(r, quantity)));

/** Readings of a quantity between these two terminals, either way round. */
export const between = <R extends Reading>(readings: readonly R[], a: string, b: string): readonly R[] =>
  readings.filter((r) => pairOf(r)?.includes(a) === true && pairOf(r)?.includes(b) === true);

export const judgeAll = <T>(items: readonly T[], isMet: (item: T) => boolean): Finding =>
  items.length === 0 ? 'not shown' : items.every(isMet) ? 'met' : 'broken';

/** A shown value against a range for the true one; over-range counts as the end of the range and beyond. */
export function isInside(reading: Reading, range: Partial<Range>): boolean {
  const { value, uncertainty, qualifier, limit } = reading;
  if (qualifier === '>')
    return (range.greatest ?? Infinity) === Infinity && (limit ?? 0) >= (range.least ?? 0);
  if (value === null) return false;
  return isNumberInside(value, uncertainty ?? 0, range);
}

export const isNumberInside = (value: number, uncertainty: number, range: Partial<Range>): boolean =>
  value + uncertainty >= (range.least ?? -Infinity) && value - uncertainty <= (range.greatest ?? Infinity);

/**
 * Above this, after the instrument's uncertainty, a conductor counts as live: the limit of extra-low voltage,
 * 50 V a.c. (BS 7671 Part 2). A declared bleed across a pole stays under it on a two-pole detector.
 */
const EXTRA_LOW: Volts = 50;

export const showsVoltage = ({ value, uncertainty }: Reading): boolean =>
  value !== null && value - (uncertainty ?? 0) > EXTRA_LOW;

/** The pairs of outlet conductors that show whether a line is live there. */
export const outletPairs = ({ site }: Papers): readonly (readonly [string, string])[] =>
  linesOf(site).flatMap((line): (readonly [string, string])[] => [
    [`outlet.${line}`, 'outlet.PE'],
    [`outlet.${line}`, 'outlet.N'],
  ]);

export const atOutlet = (x: Live | 'PE'): string => `outlet.${x}`;

/** What a detector shows that was dark on its proving unit tells neither live nor dead (HSE GS38). */
const byProved =
  (when: When): When =>
  (setUp, sample) =>
    !showDark(sample.events) && when(setUp, sample);

/** What a two-pole detector read that failed no trial: a meter of 10 MΩ shows ghosts, and tells neither live nor dead (HSE GS38). */
export const detected = (observed: Observed, when: When): readonly ReadingOf<'voltage'>[] =>
  readingsOf(observed, 'voltage', byProved(when)).filter(({ tool }) => tool !== 'meter');

/** No line live at the outlet: broken by one live pair, met once every pair was looked at. */
export function outletDead(papers: Papers, observed: Observed, when: When): Finding {
  const readings = detected(observed, when).filter((r) =>
    r.between?.every((terminal) => terminal.startsWith('outlet.')),
  );
  if (readings.some(showsVoltage)) return 'broken';
  return outletPairs(papers).every(([a, b]) => between(readings, a, b).length > 0) ? 'met' : 'not shown';
}

/** Every line supplied at the outlet, line to neutral. */
export function outletSupplied(papers: Papers, observed: Observed, when: When): Finding {
  const readings = detected(observed, when);
  const ofLine = (line: Line) => between(readings, atOutlet(line), atOutlet('N'));
  const lines = linesOf(papers.site);
  if (lines.some((line) => ofLine(line).some((r) => !showsVoltage(r)))) return 'broken';
  return lines.every((line) => ofLine(line).length > 0) ? 'met' : 'not shown';
}
