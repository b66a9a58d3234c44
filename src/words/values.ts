/** Values that come with a line, as its words need them. One that is missing, or of another kind, throws. */
import type { Values } from '../verification/testAction.ts';

const missing = (key: string): Error => new Error(`the words need a value that did not come: ${key}`);

export function num(values: Values, key: string): number {
  const value = values[key];
  if (typeof value !== 'number' || !Number.isFinite(value)) throw missing(key);
  return value;
}

export function str(values: Values, key: string): string {
  const value = values[key];
  if (typeof value !== 'string') throw missing(key);
  return value;
}

export function is(values: Values, key: string): boolean {
  const value = values[key];
  if (typeof value !== 'boolean') throw missing(key);
  return value;
}

/** The range that a line states under a name: as it is written in the standard, or in the job. */
export const range = (values: Values, name: string, unit: string): string =>
  `${num(values, `${name}-least`)} to ${num(values, `${name}-greatest`)} ${unit}`.replaceAll('-', '−');

/** Amperes in milliamperes, to a tenth. */
export const milliamps = (amps: number): number => Math.round(1e4 * amps) / 10;

/** Seconds in whole milliseconds. */
export const milliseconds = (seconds: number): number => Math.round(1000 * seconds);

/** Ohms in megohms, one digit after the point. */
export const megohms = (ohms: number): string => (ohms / 1e6).toFixed(1);

/** Small resistances in ohms, three digits that count at most. */
export const smallOhms = (ohms: number): string => ohms.toFixed(ohms < 0.1 ? 3 : 2);
