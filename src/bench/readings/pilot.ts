/** The control pilot against time: both levels, frequency, duty, and the current that it offers. The figure is the high level. */
import { currentForDuty } from '../../laws/pilotDuty.ts';
import type { Amps, Duty, Hertz, Volts } from '../../laws/quantities.ts';
import { quantityOf } from './quantity.ts';
import { bandOn, onScale, roundTo, type Scale, swing, TWO, within } from './scale.ts';

const DIGITS: Volts = 0.05;
/** Pilot levels closer than two readings of one can be are one and the same, V. */
export const PILOT_ALIKE: Volts = 2 * DIGITS;
/** Half-width of the duty reading, share of a period (0.2 of a percentage point). */
export const DUTY_UNCERTAINTY: Duty = 0.002;
/** Half-width of the frequency reading, Hz. A design choice. */
export const FREQUENCY_DIGITS: Hertz = 0.5;

const LEVELS: Scale = { gain: 0, digits: DIGITS, spans: [{ to: 30, step: 0.01 }], signed: true };
/** Resolutions: share of a period, Hz, A. */
const STEPS = { duty: 0.001, frequency: 0.1, amps: 0.1 } as const;

/** What a vehicle may take at the duty shown, A; 0 where nothing may be drawn. */
function ampsOf(duty: Duty, oscillating: boolean): Amps {
  const meaning = currentForDuty(duty);
  return oscillating && meaning.kind === 'current' ? meaning.amps : 0;
}

export const pilot = quantityOf({
  quantity: 'pilot',
  unit: 'V',
  shown: (_, { high = 0, low = 0, frequency = null, duty = null }, key, draw) => {
    const volts = (level: Volts, half: string) =>
      onScale(LEVELS, level, 'pilot', `${key} ${half}`, draw).value;
    const oscillating = frequency !== null;
    const shownHigh = volts(high, 'high');
    const shownDuty =
      duty === null || !oscillating
        ? duty
        : roundTo(duty + DUTY_UNCERTAINTY * swing(draw, `digits ${key} duty`), STEPS.duty);
    return {
      value: shownHigh,
      uncertainty: DIGITS,
      qualifier: null,
      high: shownHigh,
      low: oscillating ? volts(low, 'low') : shownHigh,
      frequency: oscillating
        ? roundTo(frequency + FREQUENCY_DIGITS * swing(draw, `digits ${key} frequency`), STEPS.frequency)
        : null,
      duty: shownDuty,
      amps: shownDuty === null ? null : roundTo(ampsOf(shownDuty, oscillating), STEPS.amps),
    };
  },
  band: (_, { high = 0, low = 0, frequency = null, duty = null }) => {
    const steady = bandOn(LEVELS, 'high', high);
    if (frequency === null) return { told: `steady ${duty}`, figures: [steady] };
    return {
      told: 'oscillating',
      figures: [
        steady,
        bandOn(LEVELS, 'low', low),
        within('frequency', frequency, FREQUENCY_DIGITS + TWO * STEPS.frequency),
        ...(duty === null ? [] : [within('duty', duty, DUTY_UNCERTAINTY + TWO * STEPS.duty)]),
      ],
    };
  },
  display: () => ({ unit: 'V', decimals: 2 }),
  typedIn: ['V', 'mV'],
});
