/**
 * The residual current at which something trips, and how soon. The figure is the current that tripped; where nothing did,
 * the greatest that flowed is the end of the range.
 */
import { MILLISECONDS } from './display.ts';
import { TIME_UNCERTAINTY } from './openingTime.ts';
import { quantityOf } from './quantity.ts';
import { roundTo, swing, TWO, within } from './scale.ts';

/** Test currents come out 0 to +5 % high: half a tenth, never less than was set. */
const GAIN = 0.05;
/** Resolutions: A, ms. */
const STEPS = { amps: 0.0001, ms: 1 } as const;

export const residual = quantityOf({
  quantity: 'residual',
  unit: 'A',
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
