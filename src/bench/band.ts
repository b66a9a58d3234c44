/**
 * Between which figures an instrument may show a true value: the half-width of its drawn error, and two digits of its
 * display more, so that nobody has to tell two readings apart by the last digit. Two true values whose bands do not meet
 * are told apart whatever errors are drawn.
 */
import type { Seconds } from '../laws/quantities.ts';
import type { Scale, Truth } from './reading.ts';
import {
  DUTY_UNCERTAINTY,
  FREQUENCY_DIGITS,
  LOOP_DIGITS_UP_TO,
  RESIDUAL_GAIN,
  SCALES,
  TIME_UNCERTAINTY,
} from './reading.ts';

/** Two sounds this far apart in time are told apart by ear. A design choice. */
export const BY_EAR: Seconds = 1;

const TWO = 2;
/** Steps of the display: of a duty, a share; of a frequency, Hz; of a test current, A; of a time of tripping, ms. */
const STEPS = { duty: 0.001, frequency: 0.1, tripAmps: 0.0001, tripMs: 1 } as const;

export interface Figure {
  /** Which figure of the display. */
  readonly name: 'value' | 'dc' | 'high' | 'low' | 'duty' | 'frequency' | 'tripMs';
  readonly true: number;
  /** SI units as in the reading; the greatest of what is beyond the range is Infinity. */
  readonly least: number;
  readonly greatest: number;
}

export interface Band {
  /** What is shown besides figures: a refusal, what tripped, that nothing did. The same text for the same. */
  readonly told: string;
  readonly figures: readonly Figure[];
}

export function bandOf(truth: Truth): Band {
  const { quantity, details } = truth;
  if ('refused' in truth) return { told: `unable ${truth.refused.id}`, figures: [] };
  const { value } = truth;
  switch (quantity) {
    case 'phase-sequence':
      return { told: String(value), figures: [] };
    case 'residual':
      return residualBand(value, details);
    case 'pilot':
      return pilotBand(details);
    case 'opening-time':
      return { told: '', figures: [onScale('value', SCALES.time, value)] };
    case 'loop': {
      const scale = value >= LOOP_DIGITS_UP_TO ? { ...SCALES.loop, digits: 0 } : SCALES.loop;
      return { told: '', figures: [onScale('value', scale, value)] };
    }
    case 'voltage': {
      const { dc } = details;
      const direct = dc === undefined ? [] : [onScale('dc', { ...SCALES.voltage, signed: true }, dc)];
      return { told: '', figures: [onScale('value', SCALES.voltage, value), ...direct] };
    }
    default:
      return { told: '', figures: [onScale('value', SCALES[quantity], value)] };
  }
}

function onScale(name: Figure['name'], scale: Scale, value: number): Figure {
  const size = Math.abs(value);
  const span = scale.spans.find(({ to }) => size < to);
  // Beyond its range an instrument says so and shows no figure.
  if (span === undefined) {
    const end = scale.spans.at(-1)?.to ?? 0;
    return value < 0
      ? { name, true: value, least: -Infinity, greatest: -end }
      : { name, true: value, least: end, greatest: Infinity };
  }
  const digits = scale.inSteps === true ? scale.digits * span.step : scale.digits;
  const half = scale.gain * size + digits + TWO * span.step;
  const least = value - half;
  return {
    name,
    true: value,
    least: scale.signed === true ? least : Math.max(0, least),
    greatest: value + half,
  };
}

const within = (name: Figure['name'], value: number, half: number): Figure => ({
  name,
  true: value,
  least: value - half,
  greatest: value + half,
});

type Details = Truth['details'];

function pilotBand({ high = 0, low = 0, duty = null, frequency = null }: Details): Band {
  const oscillating = frequency !== null;
  const steady = [onScale('high', SCALES.pilot, high)];
  return oscillating
    ? {
        told: 'oscillating',
        figures: [
          ...steady,
          onScale('low', SCALES.pilot, low),
          within('frequency', frequency, FREQUENCY_DIGITS + TWO * STEPS.frequency),
          ...(duty === null ? [] : [within('duty', duty, DUTY_UNCERTAINTY + TWO * STEPS.duty)]),
        ],
      }
    : { told: `steady ${duty}`, figures: steady };
}

function residualBand(value: number, { tripAmps, tripMs, trippedWhat }: Details): Band {
  if (tripAmps === null) return { told: `no trip ${trippedWhat}`, figures: [] };
  const digits = TWO * STEPS.tripAmps;
  return {
    told: `tripped ${trippedWhat}`,
    figures: [
      // What flows is never less than the instrument was set to.
      { name: 'value', true: value, least: value - digits, greatest: value * (1 + RESIDUAL_GAIN) + digits },
      ...(tripMs === null || tripMs === undefined
        ? []
        : [within('tripMs', tripMs, 1000 * TIME_UNCERTAINTY + TWO * STEPS.tripMs)]),
    ],
  };
}
