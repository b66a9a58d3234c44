/**
 * What `play` prints, and its schema: readings, what was seen and heard, unsafe acts, each with the index of the
 * script's operation that it belongs to. Names and shapes are the contract's.
 */
import * as v from 'valibot';
import { QUANTITIES } from '../bench/readings/quantities.ts';
import { READING_FIELDS } from '../bench/readings/schemas.ts';
import { UNSAFE_ACTS, type UnsafeId } from '../bench/unsafe.ts';
import { HAPPENINGS } from '../bench/world.ts';
import type { PlayedStep } from '../scenario/script.ts';
import { INDICATORS } from '../unit/unitChart.ts';
import { readingInWords, refusalText } from '../words/refusals.ts';
import { sightText } from '../words/seen.ts';
import { UNSAFE_ACT_WORDS, unsafeInWords } from '../words/unsafeActs.ts';

const op = v.pipe(v.number(), v.integer());
const at = v.number();

/** All that readings may say beside their figure. */
const allFields: v.ObjectEntries = Object.assign({}, ...Object.values(READING_FIELDS));

const readingSchema = v.object({
  op,
  action: v.nullable(v.string()),
  quantity: v.picklist(QUANTITIES),
  value: v.nullable(v.number()),
  unit: v.picklist(['Ω', 'V', 'A', 's', '']),
  uncertainty: v.nullable(v.number()),
  qualifier: v.nullable(v.picklist(['>', '<', 'unable'])),
  limit: v.optional(v.number()),
  reason: v.optional(v.string()),
  at,
  ...v.partial(v.object(allFields)).entries,
});

/** Each unsafe act with its own `critical`: a closed list. */
const unsafeSchema = v.variant(
  'id',
  (Object.keys(UNSAFE_ACTS) as UnsafeId[]).map((id) =>
    v.object({
      op,
      id: v.literal(id),
      critical: v.literal(UNSAFE_ACTS[id].critical),
      act: v.literal(UNSAFE_ACT_WORDS[id].act),
      why: v.string(),
    }),
  ) as unknown as [v.ObjectSchema<{ id: v.LiteralSchema<UnsafeId, undefined> }, undefined>],
);

export const playSchema = v.object({
  readings: v.array(readingSchema),
  seen: v.array(
    v.object({ op, at, indicator: v.picklist(INDICATORS), plug: v.picklist(['out', 'free', 'held']) }),
  ),
  events: v.array(v.object({ at, what: v.picklist(HAPPENINGS) })),
  unsafe: v.array(unsafeSchema),
  /** Operations that the bench did not allow, with the reason. */
  refused: v.array(v.object({ op, reason: v.string() })),
  /** What an inspection found. */
  found: v.array(v.object({ op, where: v.string(), what: v.string() })),
  stopped: v.nullable(v.string()),
});

/** The output of a played script, in the order in which things happened. */
export function playOutput(steps: readonly PlayedStep[], stopped: string | null) {
  return {
    readings: steps.flatMap(({ op, action, outcome }) =>
      outcome.readings.map((reading) => ({ op, action, ...readingInWords(reading) })),
    ),
    seen: steps.map(({ op, outcome }) => ({ op, ...outcome.seen })),
    events: steps.flatMap(({ outcome }) => outcome.events),
    unsafe: steps.flatMap(({ op, outcome }) => outcome.unsafe.map((act) => ({ op, ...unsafeInWords(act) }))),
    refused: steps.flatMap(({ op, outcome }) =>
      outcome.refused === null ? [] : [{ op, reason: refusalText(outcome.refused) }],
    ),
    found: steps.flatMap(({ op, outcome }) =>
      outcome.found.map(({ where, what }) => ({ op, where, what: sightText(what) })),
    ),
    stopped,
  };
}
