/** Schemas that several quantities share: how leads are put on, and how a reading says where they were. */
import * as v from 'valibot';
import { LINES } from '../../laws/conductors.ts';
import { PLACES } from '../terminals.ts';

const terminal = v.pipe(
  v.string(),
  v.regex(
    /^(met|house|earth|case|earthing|(incoming|origin|supply|outlet)\.(L1|L2|L3|N|PE|CP|PP))$/,
    'a terminal is expected: met, house, earth, case, earthing, or place.conductor such as supply.L1',
  ),
);
const probe = v.union([terminal, v.pipe(v.array(terminal), v.minLength(1), v.maxLength(6))]);
/** Where two leads, or links, are put: one terminal each, or several joined. */
export const between = v.tuple([probe, probe]);

export const number = (least: number, greatest: number) =>
  v.pipe(v.number(), v.finite(), v.minValue(least), v.maxValue(greatest));

/** Places whose lines an instrument may be put on as they are; `incoming` is the live side of the origin. */
export const LINE_PLACES = ['incoming', ...PLACES] as const;
export type LinePlace = (typeof LINE_PLACES)[number];

/** Of a reading: the labels of both leads; the place of its conductors; its line. */
export const pair = v.tuple([v.string(), v.string()]);
export const place = v.picklist(LINE_PLACES);
export const line = v.picklist(LINES);

/** The operation that takes a reading of a quantity. */
export const measuring = <const Q extends string, const S extends v.ObjectEntries>(quantity: Q, setting: S) =>
  v.strictObject({ op: v.literal('measure'), quantity: v.literal(quantity), ...setting });
