/**
 * What a typed figure says of its reading: one law for a single reading and for the rows of a table. What does not fit
 * comes back as the reason, for the line above the bar.
 */

import type { Reading } from '../../../bench/reading.ts';
import { displayOf, showsTripTime, typedIn } from '../../../bench/reading.ts';
import type { TypedUnit } from '../../../bench/readings/display.ts';
import { NO_TRIP, typedNumber, typedWithUnit } from '../../format/figures.ts';
import type { Observation } from './records.ts';
import { NO_READING } from './records.ts';

export type TypedFigure = Pick<Observation, 'value' | 'qualifier' | 'unit' | 'tripMs'>;

/**
 * `text`: the figure, with a sign before it, or the words for none; a unit behind it goes before `unit`, the key that
 * is taken, '' for none.
 */
export function figureTyped(reading: Reading, text: string, unit: TypedUnit | ''): TypedFigure | string {
  const shown = displayOf(reading).unit;
  if (text.trim() === NO_READING) return { value: null, qualifier: 'no-reading', unit: unit || shown };
  const typed = typedWithUnit(text);
  const [, sign = '', figure = ''] = /^\s*([=<>]?)(.*)$/u.exec(typed?.figure ?? text) ?? [];
  const number = typedNumber(figure);
  if (showsTripTime(reading)) return timeTyped(number, text.trim(), typed?.unit ?? 'ms');
  if (number === null) return 'A figure is expected, as 0.37 or 0,37.';
  const own = typed?.unit ?? unit;
  if (own === '' && typedIn(reading).length > 1) return 'Choose the unit that belongs to the figure.';
  return { value: number, qualifier: sign === '>' || sign === '<' ? sign : null, unit: own || shown };
}

/** Of a test at a fixed current: the time alone, in milliseconds, or that it did not trip. */
function timeTyped(number: number | null, text: string, unit: TypedUnit): TypedFigure | string {
  if (text === NO_TRIP || text === '>') return { value: null, qualifier: '>', unit: 'ms' };
  if (unit !== 'ms') return 'The time is expected in milliseconds.';
  return number === null
    ? 'The time is expected, as 23, or “no trip”.'
    : { value: null, qualifier: null, unit: 'ms', tripMs: number };
}

/** How many digits a figure has as it is shown; undefined where there is none. */
export const digitsIn = (shown: string): number | undefined =>
  /\d[\d.]*/u.exec(shown)?.[0].replace('.', '').length;
