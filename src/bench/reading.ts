/**
 * From a true value to what an instrument shows: range, resolution, and an error drawn by key. The gain error is
 * one for an instrument, the digits' error one for a reading. Instruments know only true values; this file alone
 * knows errors.
 *
 * The half-widths are a design choice, far inside the operating uncertainty that IEC 61557 allows (±30 %, from
 * memory); `uncertainty` is the half-width at the shown value.
 */
import { currentForDuty } from '../laws/pilotDuty.ts';
import type { Amps, Duty, Hertz, Ohms, Seconds, Volts } from '../laws/quantities.ts';
import type { Draw } from '../unit/design.ts';
import type { Refusal } from './refusal.ts';

export const QUANTITIES = [
  'continuity',
  'insulation',
  'voltage',
  'pilot',
  'coding',
  'loop',
  'residual',
  'opening-time',
  'electrode',
  'phase-sequence',
] as const;
export type Quantity = (typeof QUANTITIES)[number];
export type Unit = 'Ω' | 'V' | 'A' | 's' | '';

export const UNITS: Readonly<Record<Quantity, Unit>> = {
  continuity: 'Ω',
  insulation: 'Ω',
  voltage: 'V',
  pilot: 'V',
  coding: 'Ω',
  loop: 'Ω',
  residual: 'A',
  'opening-time': 's',
  electrode: 'Ω',
  'phase-sequence': '',
};

export const TRIPPED_WHAT = ['unit', 'upstream', 'both', 'breaker', 'none'] as const;
export type TrippedWhat = (typeof TRIPPED_WHAT)[number];

/** How the instrument was set and what else it shows; which fields there are depends on the quantity. */
export interface Details {
  readonly between?: readonly [string, string];
  readonly tool?: 'two-pole' | 'meter';
  readonly volts?: Volts;
  readonly current?: 'low' | 'full';
  readonly dc?: Volts;
  readonly high?: Volts;
  readonly low?: Volts;
  readonly frequency?: Hertz | null;
  readonly duty?: Duty | null;
  readonly amps?: Amps | null;
  readonly line?: string;
  readonly waveform?: string;
  readonly mode?: string;
  readonly of?: string;
  readonly place?: string;
  readonly tripAmps?: Amps | null;
  readonly tripMs?: number | null;
  readonly trippedWhat?: TrippedWhat;
  readonly prospective?: Amps;
}

/** What an ideal instrument would show; `refused` where it cannot test at all. */
export type Truth =
  | { readonly quantity: Quantity; readonly value: number; readonly details: Details }
  | { readonly quantity: Quantity; readonly refused: Refusal; readonly details: Details };

export interface Reading extends Details {
  readonly quantity: Quantity;
  readonly value: number | null;
  readonly unit: Unit;
  readonly uncertainty: number | null;
  readonly qualifier: '>' | '<' | 'unable' | null;
  /** The end of the range, beside a qualifier `>` or `<`. */
  readonly limit?: number;
  /** Why the instrument refused, beside `unable`. */
  readonly reason?: Refusal;
  readonly at: Seconds;
}

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

const OHMS: readonly [Span, ...Span[]] = [
  { to: 20, step: 0.01 },
  { to: 200, step: 0.1 },
  { to: 2000, step: 1 },
];
/** Half-width of a measured time, s. */
export const TIME_UNCERTAINTY: Seconds = 0.002;
const PILOT_DIGITS: Volts = 0.05;
/** Pilot levels closer than two readings of one can be are one and the same, V. */
export const PILOT_ALIKE: Volts = 2 * PILOT_DIGITS;
export const SCALES = {
  continuity: { gain: 0.03, digits: 0.02, spans: OHMS },
  coding: { gain: 0.03, digits: 0.02, spans: [...OHMS, { to: 20_000, step: 10 }] },
  insulation: {
    gain: 0.05,
    digits: 2,
    inSteps: true,
    spans: [
      { to: 2e6, step: 1e4 },
      { to: 20e6, step: 1e5 },
      { to: 200e6, step: 1e6 },
    ],
  },
  voltage: { gain: 0.01, digits: 1, spans: [{ to: 700, step: 1 }] },
  pilot: { gain: 0, digits: PILOT_DIGITS, spans: [{ to: 30, step: 0.01 }], signed: true },
  loop: { gain: 0.05, digits: 0.03, spans: OHMS },
  electrode: { gain: 0.05, digits: 0.5, spans: OHMS },
  time: { gain: 0, digits: TIME_UNCERTAINTY, spans: [{ to: 5, step: 0.001 }] },
} as const satisfies Record<string, Scale>;

/** From 20 Ω up a loop reading has no digits' error worth counting (contract). */
export const LOOP_DIGITS_UP_TO: Ohms = 20;
/** Half a tenth: residual test currents come out 0 to +5 % high. */
export const RESIDUAL_GAIN = 0.05;
/** Half-width of the duty reading, share of a period (0.2 of a percentage point). */
export const DUTY_UNCERTAINTY: Duty = 0.002;
/** Half-width of the frequency reading, Hz, and its resolution. A design choice. */
export const FREQUENCY_DIGITS: Hertz = 0.5;

/** −1 to +1, the same for the same key. */
const swing = (draw: Draw, key: string): number => 2 * draw(key) - 1;

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

function onScale(scale: Scale, truth: number, instrument: string, key: string, draw: Draw) {
  const rough = truth * (1 + scale.gain * swing(draw, `gain ${instrument}`));
  const span = scale.spans.find(({ to }) => Math.abs(rough) < to) ?? (scale.spans.at(-1) as Span);
  const digits = scale.inSteps === true ? scale.digits * span.step : scale.digits;
  const drawn = rough + digits * swing(draw, `digits ${key}`);
  const [least, greatest] = honest(truth, scale.gain, digits);
  const steps = (of: number) => of / span.step;
  const shownSteps = Math.min(
    Math.floor(steps(greatest) + A_LITTLE),
    Math.max(Math.ceil(steps(least) - A_LITTLE), Math.round(steps(drawn))),
  );
  const signed = shownSteps * span.step;
  const value = roundTo(scale.signed === true ? signed : Math.max(0, signed), span.step);
  return {
    value,
    uncertainty: scale.gain * Math.abs(value) + digits,
    limit: (scale.spans.at(-1) as Span).to,
  };
}

/** The reading shown for a true value. `key` names this reading, so that its error never depends on other readings. */
export function shown(truth: Truth, key: string, at: Seconds, draw: Draw): Reading {
  const { quantity, details } = truth;
  const frame = { quantity, unit: UNITS[quantity], at, ...details };
  if ('refused' in truth)
    return { ...frame, value: null, uncertainty: null, qualifier: 'unable', reason: truth.refused };
  if (quantity === 'residual') return shownResidual(truth.value, details, frame, key, draw);
  if (quantity === 'phase-sequence') return { ...frame, value: truth.value, uncertainty: 0, qualifier: null };
  if (quantity === 'pilot') return shownPilot(details, frame, key, draw);
  const scale: Scale = quantity === 'opening-time' ? SCALES.time : SCALES[quantity];
  const over = Math.abs(truth.value) >= (scale.spans.at(-1) as Span).to;
  const free = quantity === 'loop' && truth.value >= LOOP_DIGITS_UP_TO ? { ...scale, digits: 0 } : scale;
  const { value, uncertainty, limit } = onScale(free, over ? 0 : truth.value, quantity, key, draw);
  if (over || value >= limit) return { ...frame, value: null, uncertainty: null, qualifier: '>', limit };
  return {
    ...frame,
    value,
    uncertainty,
    qualifier: null,
    ...(details.dc === undefined
      ? {}
      : { dc: onScale({ ...SCALES.voltage, signed: true }, details.dc, quantity, `${key} dc`, draw).value }),
    ...(quantity === 'loop' ? { prospective: Math.round(230 / Math.max(0.01, value)) } : {}),
  };
}

/** What a vehicle may take at the duty shown, A; 0 where nothing may be drawn. */
function ampsOf(duty: Duty, oscillating: boolean): Amps {
  const meaning = currentForDuty(duty);
  return oscillating && meaning.kind === 'current' ? meaning.amps : 0;
}

type Frame = Pick<Reading, 'quantity' | 'unit' | 'at'>;

function shownPilot(details: Details, frame: Frame, key: string, draw: Draw): Reading {
  const volts = (true_: number, half: string) =>
    onScale(SCALES.pilot, true_, 'pilot', `${key} ${half}`, draw).value;
  const { high = 0, low = 0, frequency = null, duty = null } = details;
  const oscillating = frequency !== null;
  const shownHigh = volts(high, 'high');
  const shownDuty =
    duty === null || !oscillating
      ? duty
      : roundTo(duty + DUTY_UNCERTAINTY * swing(draw, `digits ${key} duty`), 0.001);
  return {
    ...frame,
    value: shownHigh,
    uncertainty: SCALES.pilot.digits,
    qualifier: null,
    high: shownHigh,
    low: oscillating ? volts(low, 'low') : shownHigh,
    frequency: oscillating
      ? roundTo(frequency + FREQUENCY_DIGITS * swing(draw, `digits ${key} frequency`), 0.1)
      : null,
    duty: shownDuty,
    amps: shownDuty === null ? null : roundTo(ampsOf(shownDuty, oscillating), 0.1),
  };
}

function shownResidual(value: number, details: Details, frame: Frame, key: string, draw: Draw): Reading {
  const gain = 1 + RESIDUAL_GAIN * draw(`gain residual`);
  const tripAmps = roundTo(value * gain, 0.0001);
  if (details.tripAmps === null)
    return { ...frame, value: null, uncertainty: null, qualifier: '>', limit: roundTo(value, 0.0001) };
  return {
    ...frame,
    value: tripAmps,
    uncertainty: RESIDUAL_GAIN * tripAmps,
    qualifier: null,
    tripAmps,
    tripMs:
      details.tripMs === null || details.tripMs === undefined
        ? null
        : Math.round(
            Math.max(0, details.tripMs + 1000 * TIME_UNCERTAINTY * swing(draw, `digits ${key} time`)),
          ),
  };
}
