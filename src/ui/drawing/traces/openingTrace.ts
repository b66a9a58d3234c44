/**
 * Whether the outlet is supplied, before and after a change at the stand-in. The instrument tells only over 50 V from
 * not over 50 V, so the trace has these two levels and no volts.
 */

import { LIVE } from '../../../bench/port.ts';
import type { ReadingOf } from '../../../bench/reading.ts';
import { LONGEST, TIME_UNCERTAINTY } from '../../../bench/readings/openingTime.ts';
import { timeText } from '../../format/figures.ts';
import type { Trace } from './trace.ts';
import { FACTOR, roundNumbers } from './trace.ts';

const SUPPLIED = 1;
const OVER = `over ${LIVE.volts}\u202fV`;
const NOT_OVER = `not over ${LIVE.volts}\u202fV`;
/** Least span that is worth an axis, s. */
const LEAST_SPAN = 0.05;

export function openingTrace({ value, qualifier }: ReadingOf<'opening-time'>): Trace | null {
  if (qualifier === 'unable') return null;
  const opened = qualifier === '>' ? null : value;
  const end = opened ?? LONGEST;
  const span = Math.max(LEAST_SPAN, end);
  const from = -0.2 * span;
  const to = opened === null ? LONGEST : 1.3 * span;
  const unit = span > 1 ? 's' : 'ms';
  const numbers = roundNumbers(from / FACTOR[unit], to / FACTOR[unit], 4);
  return {
    title: 'outlet, every line to PE and N, from the change at the stand-in',
    time: {
      unit,
      decimals: unit === 's' ? 3 : 0,
      from,
      to,
      ticks: numbers.map((number, i) => ({
        value: number * FACTOR[unit],
        text: `${number < 0 ? '−' : ''}${Math.abs(number)}${i === numbers.length - 1 ? `\u202f${unit}` : ''}`,
      })),
    },
    level: {
      from: -0.4,
      to: 1.4,
      ticks: [
        { value: SUPPLIED, text: `> ${LIVE.volts}\u202fV` },
        { value: 0, text: `≤ ${LIVE.volts}\u202fV` },
      ],
    },
    levelText: (level) => (level === SUPPLIED ? OVER : NOT_OVER),
    stepText: () => null,
    levels: [{ at: from, value: SUPPLIED }, ...(opened === null ? [] : [{ at: opened, value: 0 }])],
    cursors: [0, end],
    dimension: null,
    uncertainty:
      opened === null
        ? `supplied all the time, up to ${timeText(LONGEST, 's', 0)}`
        : `±${timeText(TIME_UNCERTAINTY, 'ms', 0)}; a is the change`,
  };
}
