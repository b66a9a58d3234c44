/**
 * What an operation may say, for whatever reads one from a file. Whether a terminal exists on this site is checked where
 * the site is known.
 */
import * as v from 'valibot';
import { CATALOGUE } from '../faults/catalogue.ts';
import { LINES, LIVES } from '../laws/conductors.ts';
import { CABLE_CODINGS } from '../laws/proximity.ts';
import { ISOLATORS, REMOVABLES } from './plant.ts';
import { VOLTAGE_TOOLS } from './readings/choices.ts';
import { between, measurement, number } from './readings/schemas.ts';
import { VEHICLE_STATES } from './standIn.ts';
import { PLACES } from './terminals.ts';
import { OPERATIONS, PRESSABLE, PROOFS } from './usual.ts';

const load = v.strictObject({ line: v.picklist(LINES), power: number(0, 100_000) });
export const leakageSchema = v.strictObject({
  ac: number(0, 1),
  dc: number(-0.1, 0.1),
  line: v.picklist(LINES),
});

const plainOperations = v.variant('op', [
  v.strictObject({
    op: v.literal('isolate'),
    at: v.optional(v.picklist(ISOLATORS), OPERATIONS.isolate.at),
    poles: v.optional(v.picklist(['all', 'line']), OPERATIONS.isolate.poles),
    lock: v.optional(v.boolean(), OPERATIONS.isolate.lock),
  }),
  v.strictObject({ op: v.literal('energise'), at: v.optional(v.picklist(ISOLATORS)) }),
  v.strictObject({ op: v.literal('open-cover') }),
  v.strictObject({ op: v.literal('close-cover') }),
  /** `known`: the tester on its known resistor too. */
  v.strictObject({ op: v.literal('check-instruments'), known: v.optional(v.boolean()) }),
  v.strictObject({ op: v.literal('discharge') }),
  v.strictObject({ op: v.literal('null-leads'), on: v.optional(v.boolean(), OPERATIONS['null-leads'].on) }),
  v.strictObject({
    op: v.literal('prove-dead'),
    at: v.picklist(PLACES),
    tool: v.optional(v.picklist(VOLTAGE_TOOLS), OPERATIONS['prove-dead'].tool),
    proof: v.optional(v.picklist(PROOFS), OPERATIONS['prove-dead'].proof),
  }),
  v.strictObject({ op: v.literal('disconnect'), what: v.picklist(REMOVABLES) }),
  v.strictObject({ op: v.literal('reconnect'), what: v.picklist(REMOVABLES) }),
  /** A cause by its id; whoever puts it right does so wherever on the installation it is. */
  v.strictObject({ op: v.literal('put-right'), what: v.picklist(CATALOGUE.map(({ id }) => id)) }),
  v.strictObject({ op: v.literal('link'), between }),
  v.strictObject({ op: v.literal('unlink'), between }),
  v.strictObject({
    op: v.literal('vehicle'),
    plugged: v.optional(v.boolean()),
    state: v.optional(v.picklist(VEHICLE_STATES)),
    coding: v.optional(v.nullable(v.picklist(CABLE_CODINGS))),
    pilot: v.optional(v.picklist(['sound', 'shorted-to-earth', 'open'])),
    diode: v.optional(v.picklist(['sound', 'shorted'])),
    earth: v.optional(v.picklist(['sound', 'open'])),
    load: v.optional(number(0, 80)),
    leakage: v.optional(v.nullable(leakageSchema)),
  }),
  v.strictObject({ op: v.literal('wait'), seconds: number(0, 86_400) }),
  v.strictObject({ op: v.literal('pull-plug') }),
  v.strictObject({ op: v.literal('press'), button: v.picklist(PRESSABLE) }),
  v.strictObject({
    op: v.literal('supply'),
    pen: v.optional(v.picklist(['sound', 'open'])),
    // Null: as it was before anybody disturbed it.
    voltage: v.optional(v.nullable(number(100, 300))),
    missing: v.optional(v.nullable(v.picklist(LIVES))),
    neighbours: v.optional(v.nullable(v.pipe(v.array(load), v.maxLength(20)))),
    loadLimit: v.optional(v.nullable(number(0, 80))),
    siteLoad: v.optional(number(0, 250)),
    // What a vehicle at the next point draws, A per line.
    nextPoint: v.optional(number(0, 80)),
  }),
  v.strictObject({ op: v.literal('guard') }),
  v.strictObject({ op: v.literal('inspect') }),
  v.strictObject({ op: v.literal('flex-cable'), on: v.optional(v.boolean(), OPERATIONS['flex-cable'].on) }),
  v.strictObject({ op: v.literal('reset'), what: v.picklist(['unit', 'supply', 'upstream']) }),
  v.strictObject({ op: v.literal('stop'), why: v.pipe(v.string(), v.maxLength(500)) }),
]);

/** One operation that acts on the bench by itself. */
export const operationSchema = v.variant('op', [plainOperations, measurement]);
