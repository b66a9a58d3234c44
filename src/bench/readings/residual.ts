/**
 * The residual current at which something trips, and how soon. The figure is the current that tripped; where nothing did,
 * the greatest that flowed is the end of the range.
 */
import * as v from 'valibot';
import { LINES } from '../../laws/conductors.ts';
import type { Amps } from '../../laws/quantities.ts';
import { TESTED_PLACES } from '../plant.ts';
import { MILLISECONDS } from './display.ts';
import { line, measuring, number, place } from './fields.ts';
import { TIME_UNCERTAINTY } from './openingTime.ts';
import { quantityOf } from './quantity.ts';
import { roundTo, swing, TWO, within } from './scale.ts';

export const WAVEFORMS = [
  'sinusoidal',
  'half-wave-positive',
  'half-wave-negative',
  'smooth-dc-positive',
  'smooth-dc-negative',
] as const;
export type Waveform = (typeof WAVEFORMS)[number];

const MODES = ['fixed', 'ramp'] as const;
export type ResidualMode = (typeof MODES)[number];

export const TRIPPED_WHAT = ['unit', 'upstream', 'both', 'breaker', 'none'] as const;
export type TrippedWhat = (typeof TRIPPED_WHAT)[number];

/** Five times the greatest residual rating of a scenario, 0.5 A. */
export const GREATEST_TEST_CURRENT: Amps = 2.5;
/** Test currents come out 0 to +5 % high: half a tenth, never less than was set. */
const GAIN = 0.05;
/** Resolutions: A, ms. */
const STEPS = { amps: 0.0001, ms: 1 } as const;

export const residual = quantityOf({
  quantity: 'residual',
  unit: 'A',
  measurement: measuring('residual', {
    line: v.optional(v.picklist(LINES), 'L1'),
    waveform: v.picklist(WAVEFORMS),
    mode: v.picklist(MODES),
    amps: v.optional(number(0.001, GREATEST_TEST_CURRENT)),
    seconds: v.optional(number(0.01, 60)),
    angle: v.optional(v.picklist([0, 180])),
    at: v.optional(v.picklist(TESTED_PLACES), 'outlet'),
  }),
  /** Without a place it is the outlet; a `tripAmps` of null: nothing tripped. In a ramp `tripMs` is of the last step. */
  fields: {
    line,
    waveform: v.picklist(WAVEFORMS),
    mode: v.picklist(MODES),
    place,
    tripAmps: v.nullable(v.number()),
    tripMs: v.nullable(v.number()),
    trippedWhat: v.picklist(TRIPPED_WHAT),
  },
  shown: (truth, met, key, draw) => {
    if (met.tripAmps === null)
      return { value: null, uncertainty: null, qualifier: '>', limit: roundTo(truth, STEPS.amps) };
    const tripAmps = roundTo(truth * (1 + GAIN * draw('gain residual')), STEPS.amps);
    const ms = met.tripMs ?? null;
    return {
      value: tripAmps,
      uncertainty: GAIN * tripAmps,
      qualifier: null,
      tripAmps,
      tripMs:
        ms === null
          ? null
          : Math.round(Math.max(0, ms + 1000 * TIME_UNCERTAINTY * swing(draw, `digits ${key} time`))),
    };
  },
  band: (truth, { tripAmps, tripMs, trippedWhat }) => {
    if (tripAmps === null) return { told: `no trip ${trippedWhat}`, figures: [] };
    const digits = TWO * STEPS.amps;
    const half = 1000 * TIME_UNCERTAINTY + TWO * STEPS.ms;
    return {
      told: `tripped ${trippedWhat}`,
      figures: [
        { name: 'value', true: truth, least: truth - digits, greatest: truth * (1 + GAIN) + digits },
        ...(tripMs === null || tripMs === undefined ? [] : [within('tripMs', tripMs, half)]),
      ],
    };
  },
  // At a fixed test current the instrument shows the time in which it tripped; the current is its setting.
  display: (_, { mode }) => (mode === 'fixed' ? MILLISECONDS : { unit: 'mA', decimals: 1 }),
  typedIn: ['mA', 'A'],
});
