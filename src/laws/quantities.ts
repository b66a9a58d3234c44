/**
 * The units every floor counts in, as plain names for number: SI without prefixes, conductor areas
 * in mm², and simulated time as whole microseconds. Says nothing about size, sign or range; each
 * law states its own.
 */

export type Volts = number;
export type Amps = number;
export type Ohms = number;
export type Siemens = number;
export type Farads = number;
export type Watts = number;
export type Joules = number;
export type Metres = number;
export type SquareMillimetres = number;
export type Celsius = number;
export type Seconds = number;
export type Hertz = number;

/** Share of a period spent in the positive half, 0 to 1. */
export type Duty = number;

/** Simulated time and durations on the bench: a whole number of microseconds. */
export type Microseconds = number;

/** Least and greatest value of a quantity; whether the ends belong is said where it is used. */
export interface Range {
  readonly least: number;
  readonly greatest: number;
}

/** Whether the value lies in the range, both ends included. False for NaN. */
export const isWithin = (range: Range, value: number): boolean =>
  value >= range.least && value <= range.greatest;

/** The nearest whole microsecond to a time in seconds. Range: any finite time. */
export const microseconds = (time: Seconds): Microseconds => Math.round(time * 1e6);

/** The same time in seconds. */
export const seconds = (time: Microseconds): Seconds => time / 1e6;
