/**
 * Test current against time up to the trip, from what the instrument shows and how its test is done: a fixed current, or
 * the steps of a rising one. Which step was the last follows from the bench time that the test took.
 */

import {
  ALTERNATING_STEP,
  ALTERNATING_STEPS,
  DIRECT_STEP,
  DIRECT_STEPS,
  isDirect,
  signOf,
} from '../../../bench/instruments/residualTester.ts';
import type { ReadingOf } from '../../../bench/reading.ts';
import type { Waveform } from '../../../bench/readings/choices.ts';
import { TIME_UNCERTAINTY } from '../../../bench/readings/openingTime.ts';
import { timeText, trueMinus } from '../../format/figures.ts';
import type { Level, Trace } from './trace.ts';
import { FACTOR, roundNumbers } from './trace.ts';

/** Above this span the axis is in seconds, s. */
const LONG = 1;
/** What is shown before the current comes on and after it is gone, as shares of the time between. */
const BEFORE = 0.08;
const AFTER = 0.15;

/** `took`: bench time of the whole test, s. */
export function residualTrace(reading: ReadingOf<'residual'>, took: number): Trace | null {
  const { tripAmps, tripMs, waveform, qualifier, limit } = reading;
  const amps = tripAmps ?? limit;
  if (qualifier === 'unable' || waveform === undefined || amps === undefined) return null;
  const trip = tripMs === null || tripMs === undefined ? null : tripMs / 1000;
  const steps = reading.mode === 'ramp' ? rising(waveform, amps, trip, took) : [{ at: 0, value: amps }];
  const lastStep = steps.at(-1) ?? { at: 0, value: amps };
  const end = trip === null ? Math.max(took, lastStep.at) : lastStep.at + trip;
  const sign = signOf(waveform);
  const levels: readonly [Level, ...Level[]] = [
    { at: -end, value: 0 },
    ...steps.map(({ at, value }) => ({ at, value: sign * value })),
    { at: end, value: 0 },
  ];
  const from = -BEFORE * end;
  const to = (1 + AFTER) * end;
  const unit = end > LONG ? 's' : 'ms';
  return {
    title: `test current against time, ${kindText(waveform)}`,
    time: {
      unit,
      decimals: unit === 's' ? 3 : 0,
      from,
      to,
      ticks: ticksOf(0, to, FACTOR[unit], unit),
    },
    level: currentAxis(sign * amps),
    levelText: currentText,
    stepText: currentText,
    levels,
    cursors: [lastStep.at, end],
    dimension: null,
    uncertainty:
      trip === null
        ? 'no trip: the instrument took the current off'
        : `±${timeText(TIME_UNCERTAINTY, 'ms', 0)}; current 0 to 5 % above its setting`,
  };
}

const kindText = (waveform: Waveform): string =>
  isDirect(waveform) ? 'd.c.' : waveform === 'sinusoidal' ? 'r.m.s.' : 'half-wave, r.m.s.';

/** The staircase as far as it went, its last step as shown. */
function rising(waveform: Waveform, amps: number, trip: number | null, took: number): readonly Level[] {
  const shares: readonly number[] = isDirect(waveform) ? DIRECT_STEPS : ALTERNATING_STEPS;
  const hold = isDirect(waveform) ? DIRECT_STEP : ALTERNATING_STEP;
  const whole = trip === null ? shares.length : 1 + Math.round((took - trip) / hold);
  const count = Math.min(shares.length, Math.max(1, whole));
  const scale = amps / (shares[count - 1] ?? 1);
  return shares.slice(0, count).map((share, i) => ({ at: i * hold, value: share * scale }));
}

const currentText = (amps: number): string => `${trueMinus((1000 * amps).toFixed(1))}\u202fmA`;

function currentAxis(amps: number): Trace['level'] {
  const reach = 1.15 * amps;
  const [from, to] = amps < 0 ? [reach, -0.1 * reach] : [-0.1 * reach, reach];
  return { from, to, ticks: ticksOf(from, to, 0.001, 'mA') };
}

/** Round numbers in a unit, which stands at the last. */
function ticksOf(from: number, to: number, factor: number, unit: string) {
  const numbers = roundNumbers(from / factor, to / factor, 4);
  return numbers.map((number, i) => ({
    value: number * factor,
    text: `${trueMinus(String(number))}${i === numbers.length - 1 ? `\u202f${unit}` : ''}`,
  }));
}
