/**
 * Resistance of copper conductors by area, class, length and temperature. Leaves joints, contacts
 * and parallel metalwork to the site.
 */

import type { Celsius, Metres, Ohms, SquareMillimetres } from './quantities.ts';

/**
 * Conductor classes: 2 stands for solid and stranded (classes 1 and 2 have the same values), 5 for
 * flexible. Source: IEC 60228.
 */
export const CONDUCTOR_CLASSES = [2, 5] as const;
export type ConductorClass = (typeof CONDUCTOR_CLASSES)[number];

/**
 * Greatest d.c. resistance of plain copper conductors at 20 °C, ohms per kilometre. Real cable reads
 * a little lower. Source: IEC 60228, tables for classes 1, 2 and 5.
 */
const PER_KILOMETRE: readonly { readonly area: SquareMillimetres; 2: Ohms; 5: Ohms }[] = [
  { area: 1, 2: 18.1, 5: 19.5 },
  { area: 1.5, 2: 12.1, 5: 13.3 },
  { area: 2.5, 2: 7.41, 5: 7.98 },
  { area: 4, 2: 4.61, 5: 4.95 },
  { area: 6, 2: 3.08, 5: 3.3 },
  { area: 10, 2: 1.83, 5: 1.91 },
  { area: 16, 2: 1.15, 5: 1.21 },
  { area: 25, 2: 0.727, 5: 0.78 },
  { area: 35, 2: 0.524, 5: 0.554 },
  { area: 50, 2: 0.387, 5: 0.386 },
  { area: 70, 2: 0.268, 5: 0.272 },
  { area: 95, 2: 0.193, 5: 0.206 },
];

/** The areas known here, mm², rising. */
export const CONDUCTOR_AREAS: readonly SquareMillimetres[] = PER_KILOMETRE.map((row) => row.area);

/**
 * Resistance per metre at 20 °C, ohms. Range: the areas in CONDUCTOR_AREAS; RangeError for any
 * other, naming them. Source: IEC 60228.
 */
export const resistancePerMetre = (area: SquareMillimetres, conductorClass: ConductorClass): Ohms => {
  const row = PER_KILOMETRE.find((candidate) => candidate.area === area);
  if (row === undefined) {
    throw new RangeError(
      `No conductor of ${area} mm² is known; known areas: ${CONDUCTOR_AREAS.join(', ')} mm².`,
    );
  }
  return row[conductorClass] / 1000;
};

/**
 * Resistance of one conductor at 20 °C.
 *   R = length · r(area, class)      ohms, metres, mm²
 * Range: length >= 0; RangeError for a negative length or an unknown area. Source: IEC 60228.
 */
export const conductorResistance = (conductor: {
  readonly length: Metres;
  readonly area: SquareMillimetres;
  readonly class: ConductorClass;
}): Ohms => {
  if (!(conductor.length >= 0)) {
    throw new RangeError(`A conductor cannot be ${conductor.length} m long.`);
  }
  return conductor.length * resistancePerMetre(conductor.area, conductor.class);
};

/**
 * Factor that turns a copper resistance measured at a temperature into its value at 20 °C.
 *   k = 250 / (230 + t)      t in °C
 * Range: t above -230 °C, in use about -20 to 90 °C; RangeError below. Source: IEC 60228, annex on
 * temperature correction (values published there; the formula reproduces them).
 */
export const toTwenty = (temperature: Celsius): number => {
  if (!(temperature > -230)) {
    throw new RangeError(`No correction exists for ${temperature} °C.`);
  }
  return 250 / (230 + temperature);
};

/** The reverse factor, from 20 °C to a temperature: (230 + t) / 250. Range and source as toTwenty. */
export const fromTwenty = (temperature: Celsius): number => 1 / toTwenty(temperature);

/**
 * Factor from 20 °C to the conductor's operating temperature: 70 °C thermoplastic and 90 °C
 * thermosetting insulation. Source: IET On-Site Guide, tables of R1+R2; 1.28 from memory.
 */
export const OPERATING_FACTORS = { thermoplastic: 1.2, thermosetting: 1.28 } as const;
