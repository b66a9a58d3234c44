/** Control pilot against time over 2 ms, from what the instrument shows: both halves, frequency, duty. */
import type { ReadingOf } from '../../../bench/reading.ts';
import { DUTY_UNCERTAINTY } from '../../../bench/readings/pilot.ts';
import { signedFigure, timeText } from '../../format/figures.ts';
import type { Level, Trace } from './trace.ts';

/** Two periods of 1 kHz (IEC 61851-1:2017 Table A.2). */
const SPAN = 0.002;
/** The axis reaches this far beyond ±12 V, and further where a half does. */
const LEAST_AXIS = 13.5;

export function pilotTrace(reading: ReadingOf<'pilot'>): Trace | null {
  const { high, low, frequency, duty, uncertainty } = reading;
  if (high === undefined || low === undefined || uncertainty === null) return null;
  const reach = Math.max(LEAST_AXIS, 1.1 * Math.abs(high), 1.1 * Math.abs(low));
  const isSteady = frequency === null || frequency === undefined || duty === null || duty === undefined;
  const period = isSteady ? null : 1 / frequency;
  const volts = `±${signedFigure(uncertainty, 'V', 2).slice(1)}`;
  return {
    title: 'control pilot against time, CP to PE',
    time: {
      unit: 'ms',
      decimals: 3,
      from: 0,
      to: SPAN,
      ticks: [
        { value: 0, text: '0' },
        { value: 0.001, text: '1' },
        { value: 0.002, text: '2 ms' },
      ],
    },
    level: {
      from: -reach,
      to: reach,
      ticks: [12, 6, 0, -6, -12].map((value) => ({
        value,
        text: value === 0 ? '0' : value === 12 ? '+12 V' : value > 0 ? `+${value}` : `−${-value}`,
      })),
    },
    levelText: (value) => signedFigure(value, 'V', 2),
    stepText: (value) => signedFigure(value, 'V', 2),
    levels: period === null ? [{ at: 0, value: high }] : halves(high, low, period, period * (duty ?? 0)),
    cursors: period === null ? [0.0005, 0.0015] : [0, period * (duty ?? 0)],
    dimension: period === null ? null : { name: 'period', from: 0, to: period },
    uncertainty: period === null ? volts : `${volts}, ±${timeText(DUTY_UNCERTAINTY * period, 'ms', 3)}`,
  };
}

/** The rising edge stands at the beginning; what was before it is the low half. */
function halves(high: number, low: number, period: number, highFor: number): readonly [Level, ...Level[]] {
  const levels: [Level, ...Level[]] = [{ at: -period, value: low }];
  for (let start = 0; start <= SPAN; start += period)
    levels.push({ at: start, value: high }, { at: start + highFor, value: low });
  return levels;
}
