/** How an instrument's display gives a figure, and the units in which it may be typed. */

/** Units that a reading may be typed in, each with its factor to SI. */
export const TYPED_UNITS = {
  Ω: 1,
  kΩ: 1e3,
  MΩ: 1e6,
  V: 1,
  mV: 1e-3,
  A: 1,
  mA: 1e-3,
  s: 1,
  ms: 1e-3,
  '': 1,
} as const;
export type TypedUnit = keyof typeof TYPED_UNITS;

/** In which unit, and with how many digits after the point. */
export interface Display {
  readonly unit: TypedUnit;
  readonly decimals: number;
}

export const MILLISECONDS: Display = { unit: 'ms', decimals: 0 };

/** `size`: Ω. */
export const ohmsShown = (size: number): Display => ({
  unit: 'Ω',
  decimals: size < 20 ? 2 : size < 200 ? 1 : 0,
});
