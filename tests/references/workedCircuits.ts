/**
 * Circuits that textbooks and handbooks have worked out, with their figures as printed. The figures were seen in the
 * texts named, but where a row says otherwise.
 */

import type { ReferenceRow } from './row.ts';

/** Ω, and a source in volts in series, driving from a to b; a phase in degrees. */
interface WorkedElement {
  readonly id: string;
  readonly a: string;
  readonly b: string;
  readonly ohms: number;
  /** Of a capacitor in place of a resistor, Ω. */
  readonly reactance?: number;
  readonly volts?: number;
  readonly degrees?: number;
}

/** A voltage as printed, with half a unit of its last figure. */
interface WorkedVoltage {
  readonly between: readonly [string, string];
  readonly volts: number;
  readonly degrees?: number;
  readonly half: number;
}

export interface WorkedCircuit extends ReferenceRow {
  readonly name: string;
  readonly elements: readonly WorkedElement[];
  readonly voltages: readonly WorkedVoltage[];
}

const KUPHALDT = 'T. R. Kuphaldt, Lessons In Electric Circuits';
const DIRECT = `${KUPHALDT}, volume I, chapter 10, DC network analysis`;
const POWELL = 'R. Powell, Introduction to Electric Circuits, 1995';
/** A source without a resistance of its own. */
const STIFF = 1e-6;

/** Three sources of a star, each behind its own 10 Ω to the star point of the load. */
const star = (lineVolts: number, lines: readonly number[]): readonly WorkedElement[] =>
  lines.map((line) => ({
    id: `line ${line}`,
    a: 'earth',
    b: `${line}`,
    ohms: STIFF,
    volts: lineVolts / Math.sqrt(3),
    degrees: -120 * line,
  }));
const loads = (lines: readonly number[]): readonly WorkedElement[] =>
  lines.map((line) => ({ id: `load ${line}`, a: `${line}`, b: 'point', ohms: 10 }));

export const WORKED_CIRCUITS: readonly WorkedCircuit[] = [
  {
    name: 'two batteries, three resistors: 20, 8 and 1 V, 5, 4 and 1 A',
    source: `${DIRECT}, branch current method and Millman’s theorem`,
    elements: [
      { id: 'R1', a: 'earth', b: 'middle', ohms: 4, volts: 28 },
      { id: 'R2', a: 'middle', b: 'earth', ohms: 2 },
      { id: 'R3', a: 'earth', b: 'middle', ohms: 1, volts: 7 },
    ],
    voltages: [{ between: ['middle', 'earth'], volts: 8, half: 0.0005 }],
  },
  {
    name: 'an unbalanced bridge on 10 V',
    source: `${DIRECT}, Δ–Y conversions`,
    elements: [
      { id: 'battery', a: 'earth', b: '1', ohms: STIFF, volts: 10 },
      { id: 'R1', a: '1', b: '2', ohms: 12 },
      { id: 'R2', a: '1', b: '3', ohms: 18 },
      { id: 'R3', a: '2', b: '3', ohms: 6 },
      { id: 'R4', a: '2', b: 'earth', ohms: 18 },
      { id: 'R5', a: '3', b: 'earth', ohms: 12 },
    ],
    voltages: [
      { between: ['1', '2'], volts: 4.706, half: 0.0005 },
      { between: ['1', '3'], volts: 5.294, half: 0.0005 },
      { between: ['2', '3'], volts: 0.5882, half: 0.00005 },
      { between: ['2', 'earth'], volts: 5.294, half: 0.0005 },
      { between: ['3', 'earth'], volts: 4.706, half: 0.0005 },
    ],
  },
  {
    name: '5 Ω and 26.5258 Ω of capacitor in series on 10 V',
    source: `${KUPHALDT}, volume II, series resistor-capacitor circuits`,
    elements: [
      { id: 'source', a: 'earth', b: '1', ohms: STIFF, volts: 10 },
      { id: 'R', a: '1', b: '2', ohms: 5 },
      { id: 'C', a: '2', b: 'earth', ohms: Infinity, reactance: 26.5258 },
    ],
    voltages: [
      { between: ['1', '2'], volts: 1.852, degrees: 79.33, half: 0.0005 },
      { between: ['2', 'earth'], volts: 9.827, degrees: -10.67, half: 0.0005 },
    ],
  },
  {
    name: 'three resistors of 10 Ω in star on 440 V: 254 V each, 25.4 A',
    source: `${POWELL}, example 5.1, parts 1 and 2, page 113`,
    elements: [...star(440, [0, 1, 2]), ...loads([0, 1, 2])],
    voltages: [0, 1, 2].map((line) => ({ between: [`${line}`, 'point'] as const, volts: 254, half: 0.5 })),
  },
  {
    name: 'the same with one resistor open: 22 A through the other two, 220 V each',
    source: `${POWELL}, example 5.1, part 3, page 113`,
    elements: [...star(440, [0, 1, 2]), ...loads([0, 2])],
    voltages: [0, 2].map((line) => ({ between: [`${line}`, 'point'] as const, volts: 220, half: 0.05 })),
  },
];

/** A delta of resistors as the star that takes its place, Ω. */
export const WORKED_STAR = {
  source: `${POWELL}, example on a bridged T, figure 3.32, page 58`,
  delta: { ab: 10, bc: 15, ca: 5 },
  /** At a, b and c. */
  star: { a: 1.67, b: 5, c: 2.5 },
} as const;

/** Sums of the trade that an instrument on the bench can repeat. */
export const ELECTRODE_EXAMPLE = {
  source:
    'IET On-Site Guide, example for TT systems: 200 Ω and 250 mA make 50 V; as quoted, not seen in print',
  electrode: 200,
  amps: 0.25,
  volts: 50,
} as const;
