/**
 * A figure on an instrument's scale: what is shown of a true value, by range, resolution and an error drawn by key, and
 * between which figures it may be shown. The gain error is one for an instrument, the digits' error one for a reading.
 */
import type { Draw } from '../../unit/design.ts';
import type { Band, Figure, Figures } from './quantity.ts';

/** Up to `to`, shown in steps of `step`. */
export interface Span {
  readonly to: number;
  readonly step: number;
}

export interface Scale {
  readonly gain: number;
  /** Half-width of the digits' error, in the unit; `inSteps`: in steps of the resolution. */
  readonly digits: number;
  readonly inSteps?: boolean;
  readonly spans: readonly [Span, ...Span[]];
  /** Shown as they are below zero, or never below it. */
  readonly signed?: boolean;
}

export const OHMS: readonly [Span, ...Span[]] = [
  { to: 20, step: 0.01 },
  { to: 200, step: 0.1 },
  { to: 2000, step: 1 },
];

/** −1 to +1, the same for the same key. */
export const swing = (draw: Draw, key: string): number => 2 * draw(key) - 1;

export const roundTo = (value: number, step: number): number => {
  // By whole steps per unit where there are such, so that 0.37 comes out as 0.37 and not 0.37000000000000005.
  const perUnit = 1 / step;
  const whole = Math.round(perUnit);
  return Math.abs(perUnit - whole) < 1e-6 * whole
    ? Math.round(value * whole) / whole
    : Math.round(value / step) * step;
};

/** Of a step: what is lost in dividing by it. */
const A_LITTLE = 1e-6;

/**
 * Between what a reading of a true value has to lie, so that, rounding and all, it is not further away than the
 * half-width at the true value nor than that at the value shown.
 */
function honest(truth: number, gain: number, digits: number): readonly [number, number] {
  const size = Math.abs(truth);
  const near = size > digits ? (size - digits) / (1 + gain) : size - digits;
  const far = size * (1 + gain) + digits;
  return truth < 0 ? [-far, -near] : [near, far];
}

const endOf = ({ spans }: Scale): number => (spans.at(-1) as Span).to;

const digitsIn = ({ digits, inSteps }: Scale, { step }: Span): number =>
  inSteps === true ? digits * step : digits;

/** What is shown of a value within the range, with its half-width there. `key` names the reading. */
export function onScale(scale: Scale, truth: number, instrument: string, key: string, draw: Draw) {
  const rough = truth * (1 + scale.gain * swing(draw, `gain ${instrument}`));
  const span = scale.spans.find(({ to }) => Math.abs(rough) < to) ?? (scale.spans.at(-1) as Span);
  const digits = digitsIn(scale, span);
  const drawn = rough + digits * swing(draw, `digits ${key}`);
  const [least, greatest] = honest(truth, scale.gain, digits);
  const steps = (of: number) => of / span.step;
  const shownSteps = Math.min(
    Math.floor(steps(greatest) + A_LITTLE),
    Math.max(Math.ceil(steps(least) - A_LITTLE), Math.round(steps(drawn))),
  );
  const signed = shownSteps * span.step;
  const value = roundTo(scale.signed === true ? signed : Math.max(0, signed), span.step);
  return { value, uncertainty: scale.gain * Math.abs(value) + digits };
}

/** The same of any value: beyond the range the instrument says so and shows no figure. */
export function figuresOn(scale: Scale, truth: number, instrument: string, key: string, draw: Draw): Figures {
  const limit = endOf(scale);
  const beyond: Figures = { value: null, uncertainty: null, qualifier: '>', limit };
  if (Math.abs(truth) >= limit) return beyond;
  const { value, uncertainty } = onScale(scale, truth, instrument, key, draw);
  return value >= limit ? beyond : { value, uncertainty, qualifier: null };
}

/** Digits of the display that a band is wider by than the error drawn, so that nobody has to tell two readings apart by the last one. */
export const TWO = 2;

export const within = (name: Figure['name'], value: number, half: number): Figure => ({
  name,
  true: value,
  least: value - half,
  greatest: value + half,
});

export function bandOn(scale: Scale, name: Figure['name'], value: number): Figure {
  const size = Math.abs(value);
  const span = scale.spans.find(({ to }) => size < to);
  if (span === undefined) {
    const end = endOf(scale);
    return value < 0
      ? { name, true: value, least: -Infinity, greatest: -end }
      : { name, true: value, least: end, greatest: Infinity };
  }
  const figure = within(name, value, scale.gain * size + digitsIn(scale, span) + TWO * span.step);
  return scale.signed === true ? figure : { ...figure, least: Math.max(0, figure.least) };
}

/** Of a quantity that is one figure on one scale. */
export const onOneScale = (instrument: string, scale: Scale) => ({
  shown: (truth: number, _: unknown, key: string, draw: Draw): Figures =>
    figuresOn(scale, truth, instrument, key, draw),
  band: (truth: number): Band => ({ told: '', figures: [bandOn(scale, 'value', truth)] }),
});
