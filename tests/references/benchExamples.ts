/**
 * Worked examples of what a bench has to show, W24 and W27 to W30: the figures, and what each rests on. Those that are
 * sums of the laws stand in designCheckValues.ts.
 */

import type { ReferenceRow } from './row.ts';

/** P: a published rule; D: arithmetic of it. */
interface BenchExample extends ReferenceRow {
  readonly input: string;
  readonly mark: 'P' | 'D';
}

const BS = 'BS 7671:2018+A2:2022';

/** An open-PEN measure that watches the earthing terminal. V, s. */
export const W24 = {
  input: 'indent (iii), earthing terminal at 75 V',
  source: `${BS}, 722.411.4.1(iii): within 5 s over 70 V; that less than 4 s may be ridden out, and that it closes only at 70 V or less`,
  mark: 'P',
  touch: 75,
  opens: [
    { after: 1.2, complies: true },
    { after: 4.6, complies: true },
    { after: 5.3, complies: false },
  ],
  /** Over again after so long: to stay on complies, and so does to open; the unit's sheet says which. */
  back: 3,
  closes: [
    { at: 72, allowed: false },
    { at: 68, allowed: true },
  ],
} as const;

/** From C to B and back to C, with a random delay. s. */
export const W27 = {
  input: 'asked again (C, B, C) after 5 min, a delay of 600 s set',
  source: 'IEC 61851-1:2017, Table A.6: supply within 3 s; SI 2021/1467, regulation 11',
  mark: 'P',
  after: 300,
  within: 3,
  delay: 600,
} as const;

/** A device that trips at 22 mA behind standing leakage: what a tester's current adds up to with it. A. */
export const W28 = {
  input: 'pick-up 22 mA; leakage of 10 mA under a ramp, of 8 mA under 15 mA',
  source: 'sum of phasors: resistive in phase with the test current, capacitive in quadrature',
  mark: 'D',
  pickup: 0.022,
  ramp: [
    { leakage: 'resistive', amps: 0.01, reads: 0.012 },
    { leakage: 'capacitive', amps: 0.01, reads: 0.0196 },
  ],
  half: [
    { leakage: 'resistive', amps: 0.008, felt: 0.023, trips: true },
    { leakage: 'capacitive', amps: 0.008, felt: 0.017, trips: false },
  ],
} as const;

/**
 * A joint that warms: what it is cold, and where it settles. 2 K/W is a model; how copper's resistance rises is that of
 * IEC 60228.
 */
export const W29 = {
  input: 'a joint of 20 mΩ, 32 A, 2 K/W',
  source: 'Joule’s law; IEC 60228 for the rise, 0.4 % a kelvin from 20 °C',
  mark: 'D',
  ohms: 0.02,
  amps: 32,
  kelvinsPerWatt: 2,
  cold: { watts: 20.5, volts: 0.64 },
  settled: { kelvins: 49, ohms: 0.0238, watts: 24.4 },
  /** From here on it never settles. */
  runsAwayFrom: 0.124,
} as const;

/** A neutral that another circuit returns through, and one that touches PE on the way. */
export const W30 = {
  input: 'a lamp of 60 W, the neutral off at the board, a detector of 7 kΩ; 18 m of 6 mm²',
  source: 'voltage divider; IEC 60228, 3.08 mΩ/m; 230 V',
  mark: 'D',
  lamp: 882,
  detector: 7000,
  /** What the detector then shows between the neutral that was lifted and PE, V. */
  volts: 204,
  /** The lamp's whole current through the circuit's residual device, the neutral joined, A. */
  residual: 0.261,
  run: { length: 18, area: 6 },
  /** A fault N–PE at the far end carries 30 mA by the drop along the neutral alone. */
  crossing: [
    { amps: 32, ohms: 59 },
    { amps: 6, ohms: 11 },
  ],
  crosses: 0.03,
} as const;

export const BENCH_EXAMPLES: Readonly<Record<string, BenchExample>> = { W24, W27, W28, W29, W30 };
