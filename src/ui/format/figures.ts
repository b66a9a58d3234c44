/**
 * Figures in words and back: what an instrument shows as text with its unit, and what a person typed as a number in
 * SI. A comma is taken for a point, a true minus for a minus. Which figure is right is nobody's business here.
 */

import type { Reading, ReadingOf } from '../../bench/reading.ts';
import { displayOf, showsTripTime } from '../../bench/reading.ts';
import type { TypedUnit } from '../../bench/readings/display.ts';
import { TYPED_UNITS } from '../../bench/readings/display.ts';
import { TIME_UNCERTAINTY } from '../../bench/readings/openingTime.ts';
import { refusalText } from '../../words/refusals.ts';

/** Narrow no-break space, between a figure and its unit. */
const THIN = '\u202f';

export const trueMinus = (text: string): string => text.replace('-', '−');

/** A figure with a true minus and its unit behind a narrow space. */
export const figure = (value: number, unit: string, decimals: number): string =>
  `${trueMinus(value.toFixed(decimals))}${THIN}${unit}`;

/** A figure with as many digits as it needs, at most four. */
export const figureText = (value: number, unit: string): string =>
  `${trueMinus(String(Number(value.toPrecision(4))))}${THIN}${unit}`;

/** With its sign, a plus too. */
export const signedFigure = (value: number, unit: string, decimals: number): string =>
  `${value > 0 ? '+' : ''}${figure(value, unit, decimals)}`;

/** A time in s, shown in its unit. */
export const timeText = (seconds: number, unit: 'ms' | 's', decimals: number): string =>
  figure(unit === 'ms' ? 1000 * seconds : seconds, unit, decimals);

/** What an instrument shows of a test current that tripped nothing. */
export const NO_TRIP = 'no trip';

/** The reading as the instrument shows it, without its uncertainty. */
export function shownText(reading: Reading): string {
  const { unit, decimals } = displayOf(reading);
  const factor = TYPED_UNITS[unit];
  if (showsTripTime(reading) && reading.qualifier !== 'unable')
    return reading.tripMs == null ? NO_TRIP : figure(reading.tripMs, unit, decimals);
  if (reading.reason !== undefined) return `no reading: ${refusalText(reading.reason)}`;
  if (reading.value === null)
    return `${reading.qualifier ?? ''} ${figure((reading.limit ?? 0) / factor, unit, atLimit(reading, decimals))}`.trim();
  return reading.quantity === 'pilot'
    ? signedFigure(reading.value, unit, decimals)
    : figure(reading.value / factor, unit, decimals);
}

const atLimit = ({ quantity }: Reading, decimals: number): number => (quantity === 'residual' ? decimals : 0);

export function uncertaintyText(reading: Reading): string {
  if (reading.uncertainty === null || reading.qualifier !== null) return '';
  const { unit, decimals } = displayOf(reading);
  const factor = TYPED_UNITS[unit];
  if (showsTripTime(reading)) return `±${figure(TIME_UNCERTAINTY / factor, unit, decimals)}`;
  // A fixed current or a small reading may be surer than its last digit; then one digit more says so.
  const half = reading.uncertainty / factor;
  return `±${figure(half, unit, half > 0 && half < 10 ** -decimals ? decimals + 1 : decimals)}`;
}

export interface Fact {
  readonly term: string;
  readonly text: string;
}

/** What else the instrument shows beside its figure. */
export function furtherFacts(reading: Reading): readonly Fact[] {
  if (reading.qualifier === 'unable') return [];
  switch (reading.quantity) {
    case 'pilot':
      return pilotFacts(reading);
    case 'loop':
      return reading.prospective === undefined
        ? []
        : [{ term: 'prospective current', text: figure(reading.prospective, 'A', 0) }];
    case 'voltage':
      return reading.dc === undefined || Math.abs(reading.dc) < 1
        ? []
        : [{ term: 'd.c.', text: signedFigure(reading.dc, 'V', 0) }];
    case 'residual':
      if (showsTripTime(reading))
        return [{ term: 'at', text: figure(1000 * (reading.tripAmps ?? reading.limit ?? 0), 'mA', 1) }];
      return [
        reading.tripMs === null || reading.tripMs === undefined
          ? { term: 'no trip up to', text: shownText({ ...reading, value: reading.limit ?? 0 }) }
          : {
              term: 'in the last step after',
              text: figure(reading.tripMs, 'ms', 0),
            },
      ];
    case 'insulation':
      return reading.volts === undefined ? [] : [{ term: 'at', text: figure(reading.volts, 'V d.c.', 0) }];
    default:
      return [];
  }
}

/** The times are on the trace, for the cursors; duty and amperes are left to work out. */
const pilotFacts = ({ low, frequency }: ReadingOf<'pilot'>): readonly Fact[] =>
  frequency === null || frequency === undefined
    ? [{ term: 'against time', text: 'steady, no period' }]
    : [{ term: 'low', text: signedFigure(low ?? 0, 'V', 2) }];

/** A typed figure, or null when it is none. Spaces are nothing, a comma is a point. */
export function typedNumber(text: string): number | null {
  const plain = text
    .replaceAll(/[\s\u202f]/g, '')
    .replace('−', '-')
    .replace(',', '.');
  const value = /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : Number.NaN;
  return Number.isFinite(value) ? value : null;
}

/** Units as somebody may type them behind a figure, in small letters; a great M is mega and never milli. */
const UNITS_TYPED: Readonly<Record<string, TypedUnit>> = {
  ω: 'Ω',
  ohm: 'Ω',
  kω: 'kΩ',
  kohm: 'kΩ',
  Mω: 'MΩ',
  Mohm: 'MΩ',
  v: 'V',
  mv: 'mV',
  a: 'A',
  ma: 'mA',
  s: 's',
  ms: 'ms',
};

/** A text such as `0.37 Ω` or `0,37ohm` as its figure and its unit; null where no unit of the record ends it. */
export function typedWithUnit(text: string): { readonly figure: string; readonly unit: TypedUnit } | null {
  const [, figure = '', letters = ''] = /^(.*\d)\s*(\p{L}+)$/u.exec(text) ?? [];
  const unit = UNITS_TYPED[letters.toLowerCase().replace(/^m/, letters.charAt(0))];
  return unit === undefined ? null : { figure, unit };
}

/** The eight characters by which a record is known again, in two groups that are easy to copy by hand. */
export const recordNumber = (head: string): string =>
  `${head.slice(0, 4)}${THIN}${head.slice(4)}`.toUpperCase();
