/**
 * How the instrument of each quantity may be set, and what a reading of it may say beside its figure: for whatever reads
 * or writes a file, and for the types of all else.
 */
import * as v from 'valibot';
import { LINES } from '../../laws/conductors.ts';
import { TESTED_PLACES } from '../plant.ts';
import { MEASUREMENTS } from '../usual.ts';
import {
  GREATEST_TEST_CURRENT,
  LINE_PLACES,
  LOOP_CURRENTS,
  MODES,
  OPENINGS,
  TEST_VOLTAGES,
  TRIPPED_WHAT,
  VOLTAGE_TOOLS,
  WAVEFORMS,
} from './choices.ts';

export const terminal = v.pipe(
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

/** Of a reading: the labels of both leads; the place of its conductors. */
const pair = v.tuple([v.string(), v.string()]);
const place = v.picklist(LINE_PLACES);

/** The operation that takes a reading of a quantity. */
const measuring = <const Q extends string, const S extends v.ObjectEntries>(quantity: Q, setting: S) =>
  v.strictObject({ op: v.literal('measure'), quantity: v.literal(quantity), ...setting });

/** The operations that take a reading. */
export const measurement = v.variant('quantity', [
  measuring('continuity', { between }),
  measuring('insulation', { between, volts: v.picklist(TEST_VOLTAGES) }),
  measuring('voltage', {
    between,
    tool: v.optional(v.picklist(VOLTAGE_TOOLS), MEASUREMENTS.voltage.tool),
  }),
  measuring('pilot', {}),
  measuring('coding', {}),
  measuring('loop', { between, current: v.optional(v.picklist(LOOP_CURRENTS), MEASUREMENTS.loop.current) }),
  measuring('residual', {
    line: v.optional(v.picklist(LINES), MEASUREMENTS.residual.line),
    waveform: v.picklist(WAVEFORMS),
    mode: v.picklist(MODES),
    amps: v.optional(number(0.001, GREATEST_TEST_CURRENT)),
    seconds: v.optional(number(0.01, 60)),
    angle: v.optional(v.picklist([0, 180])),
    at: v.optional(v.picklist(TESTED_PLACES), MEASUREMENTS.residual.at),
  }),
  measuring('opening-time', { of: v.optional(v.picklist(OPENINGS), MEASUREMENTS['opening-time'].of) }),
  measuring('electrode', {}),
  measuring('phase-sequence', { at: v.picklist(LINE_PLACES) }),
]);

/** By quantity, what a reading says beside its figure; which there are hangs on the setting and on what was met. */
export const READING_FIELDS = {
  continuity: { between: pair },
  insulation: { between: pair, volts: v.picklist(TEST_VOLTAGES) },
  voltage: { between: pair, tool: v.picklist(VOLTAGE_TOOLS), dc: v.number() },
  /** `low` is `high` on a steady pilot, whose frequency is null; a steady duty is 1, or 0 at −12 V. */
  pilot: {
    between: pair,
    high: v.number(),
    low: v.number(),
    frequency: v.nullable(v.number()),
    duty: v.nullable(v.number()),
    amps: v.nullable(v.number()),
  },
  coding: { between: pair },
  loop: { between: pair, current: v.picklist(LOOP_CURRENTS), prospective: v.number() },
  /** Without a place it is the outlet; a `tripAmps` of null: nothing tripped. In a ramp `tripMs` is of the last step. */
  residual: {
    line: v.picklist(LINES),
    waveform: v.picklist(WAVEFORMS),
    mode: v.picklist(MODES),
    place,
    tripAmps: v.nullable(v.number()),
    tripMs: v.nullable(v.number()),
    trippedWhat: v.picklist(TRIPPED_WHAT),
  },
  'opening-time': { of: v.picklist(OPENINGS) },
  electrode: {},
  'phase-sequence': { place },
} as const;
