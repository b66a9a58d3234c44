/**
 * What current a cable of copper, insulated for 70 °C, carries for good as it is laid: a table by cable and reference
 * method, and factors for what is worse than the table supposes. Leaves which current that has to be to the circuit.
 */

import type { Amps, Celsius, SquareMillimetres } from './quantities.ts';

/** Sheathed multicore (Table 4D2A), flat twin and earth (4D5), multicore with steel wire armour (4D4A). */
export const CABLES = ['sheathed', 'flat', 'armoured'] as const;
export type CableKind = (typeof CABLES)[number];

/**
 * Reference methods. A: in conduit in an insulated wall. B: in conduit or trunking on a wall. C: clipped direct.
 * D: in the ground. 100 and 102: touching a ceiling or a stud, beside thermal insulation. 103: inside it.
 */
export const METHODS = ['A', 'B', 'C', 'D', '100', '102', '103'] as const;
export type Method = (typeof METHODS)[number];

export const TABLES: Readonly<Record<CableKind, string>> = {
  sheathed: 'Table 4D2A',
  flat: 'Table 4D5',
  armoured: 'Table 4D4A',
};

/** The cable that is mostly laid by a method. Common practice, no source. */
export const usualCable = (method: Method): CableKind =>
  method === 'D' ? 'armoured' : ['100', '102', '103'].includes(method) ? 'flat' : 'sheathed';

const AREAS: readonly SquareMillimetres[] = [1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95];

/** A column of a table, by the areas above; it ends where the cable is not made any larger. */
type Column = readonly (Amps | null)[];
/** Two loaded conductors, and three; a flat cable has two. */
type Columns = readonly [Column, Column?];

/**
 * Source: BS 7671:2018+A2:2022, Tables 4D2A (as IEC 60364-5-52, B.52.2 and B.52.4), 4D4A and 4D5. From memory: 1 mm²,
 * 25 mm² but for three conductors by B and C of a sheathed cable, all above 25 mm², and a flat cable by A or 102.
 */
const TABLED: Readonly<Record<CableKind, Partial<Record<Method, Columns>>>> = {
  sheathed: {
    A: [
      [11, 14, 18.5, 25, 32, 43, 57, 75, 92, 110, 139, 167],
      [10, 13, 17.5, 23, 29, 39, 52, 68, 83, 99, 125, 150],
    ],
    B: [
      [13, 16.5, 23, 30, 38, 52, 69, 90, 111, 133, 168, 201],
      [11.5, 15, 20, 27, 34, 46, 62, 80, 99, 118, 149, 179],
    ],
    C: [
      [15, 19.5, 27, 36, 46, 63, 85, 112, 138, 168, 213, 258],
      [13.5, 17.5, 24, 32, 41, 57, 76, 96, 119, 144, 184, 223],
    ],
  },
  flat: {
    C: [[16, 20, 27, 37, 47, 64, 85]],
    '100': [[13, 16, 21, 27, 34, 45, 57]],
    '102': [[13, 16, 21, 27, 35, 47, 63]],
    '103': [[8, 10, 13.5, 17.5, 23.5, 32, 42.5]],
    A: [[11.5, 14.5, 20, 26, 32, 44, 57]],
  },
  armoured: {
    C: [
      [null, 21, 28, 38, 49, 67, 89, 118, 145, 175, 222, 269],
      [null, 18, 25, 33, 42, 58, 77, 102, 125, 151, 192, 231],
    ],
    D: [
      [null, 22, 29, 37, 46, 60, 78, 99, 119, 140, 173, 204],
      [null, 18, 24, 30, 38, 50, 64, 82, 98, 116, 143, 169],
    ],
  },
};

/** Air at other temperatures than 30 °C, for 70 °C insulation. Source: the same, Table 4B1. */
const AMBIENT: Readonly<Record<number, number>> = { 25: 1.03, 30: 1, 35: 0.94, 40: 0.87, 45: 0.79, 50: 0.71 };
export const AMBIENTS = [25, 30, 35, 40, 45, 50] as const;

/** One to five circuits bunched. Source: the same, Table 4C1. */
const GROUPED = [1, 0.8, 0.7, 0.65, 0.6] as const;
export const MOST_GROUPED = GROUPED.length;

/** So many mm of it wholly inside thermal insulation, for cables up to 10 mm². Source: the same, 523.9; from memory. */
const INSULATED: readonly { readonly upTo: number; readonly factor: number }[] = [
  { upTo: 0, factor: 1 },
  { upTo: 50, factor: 0.88 },
  { upTo: 100, factor: 0.78 },
  { upTo: 200, factor: 0.63 },
  { upTo: Infinity, factor: 0.5 },
];

export interface Laid {
  readonly cable: CableKind;
  readonly method: Method;
  readonly area: SquareMillimetres;
  readonly loaded: 2 | 3;
  /** Temperature of the air, one of AMBIENTS. In the ground the table’s own 20 °C stand. */
  readonly ambient: Celsius;
  /** Circuits bunched together, itself among them: 1 to MOST_GROUPED. */
  readonly grouped: number;
  /** Length wholly surrounded by thermal insulation, mm. */
  readonly insulated: number;
}

export interface Carried {
  readonly tabled: Amps;
  readonly ambient: number;
  readonly grouped: number;
  readonly insulated: number;
  /** All multiplied, A. */
  readonly amps: Amps;
}

/** Whether the table has a figure for it. */
export const isTabled = ({ cable, method, area, loaded }: Omit<Laid, keyof Factors>): boolean =>
  tabledFor({ cable, method, area, loaded }) !== null;
type Factors = Pick<Laid, 'ambient' | 'grouped' | 'insulated'>;

const tabledFor = ({ cable, method, area, loaded }: Omit<Laid, keyof Factors>): Amps | null =>
  TABLED[cable][method]?.[loaded - 2]?.[AREAS.indexOf(area)] ?? null;

/**
 * Current-carrying capacity of a cable as it is laid, A.
 *   Iz = It · Ca · Cg · Ci
 * Between tabled lengths of insulation the factor of the longer one stands. Range: what isTabled, the AMBIENTS, 1 to
 * MOST_GROUPED circuits, insulated >= 0; RangeError otherwise.
 * Source: BS 7671:2018+A2:2022, Appendix 4 section 5 and the tables above.
 */
export function currentCarrying(laid: Laid): Carried {
  const { cable, method, area, loaded } = laid;
  const tabled = tabledFor(laid);
  if (tabled === null)
    throw new RangeError(
      `No ${cable} cable of ${area} mm² by method ${method}, ${loaded} loaded, is tabled.`,
    );
  const inGround = method === 'D';
  const ambient = inGround ? 1 : AMBIENT[laid.ambient];
  const grouped = GROUPED[laid.grouped - 1];
  if (ambient === undefined) throw new RangeError(`No factor is tabled for air of ${laid.ambient} °C.`);
  if (grouped === undefined)
    throw new RangeError(`No factor is tabled for ${laid.grouped} circuits bunched.`);
  if (!(laid.insulated >= 0))
    throw new RangeError(`A cable cannot have ${laid.insulated} mm of it in insulation.`);
  const insulated = INSULATED.find(({ upTo }) => laid.insulated <= upTo)?.factor ?? 0.5;
  return { tabled, ambient, grouped, insulated, amps: tabled * ambient * grouped * insulated };
}
