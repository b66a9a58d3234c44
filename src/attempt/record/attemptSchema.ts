/** An attempt's file, as a schema: the shapes of attempt.ts, with how large each part may be. */
import * as v from 'valibot';
import { operationSchema } from '../../bench/operationSchema.ts';
import { TYPED_UNITS, type TypedUnit } from '../../bench/readings/display.ts';
import { FAMILIES } from '../../faults/families.ts';
import type { Entry } from './attempt.ts';
import {
  AIM_VERDICTS,
  ANSWERS,
  FIND_VERDICTS,
  FORMAT,
  IN_WORDS,
  JUDGEMENTS,
  LEFT_OUT,
  LIMIT_JUDGEMENTS,
  MOST_OTHERS,
  NEXT_STEPS,
  SURENESS,
  TELL,
  VERDICTS,
} from './attempt.ts';

const name = v.pipe(v.string(), v.maxLength(60));
const words = v.pipe(v.string(), v.maxLength(1000));
const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const sure = v.picklist(SURENESS);

/** What each kind of entry holds. */
const contents = {
  operation: v.object({ test: v.nullable(name), operation: operationSchema }),
  prediction: v.object({
    test: name,
    lines: v.array(v.object({ id: name, answer: v.picklist(ANSWERS), sure: v.optional(sure) })),
    figures: v.array(v.object({ id: name, value: v.number() })),
    sure: v.nullable(sure),
    given: v.optional(v.literal(true)),
  }),
  observation: v.object({
    test: name,
    reading: count,
    value: v.nullable(v.number()),
    qualifier: v.nullable(v.picklist(['>', '<', 'no-reading'])),
    unit: v.picklist(Object.keys(TYPED_UNITS) as TypedUnit[]),
    low: v.optional(v.number()),
    duty: v.optional(v.number()),
    amps: v.optional(v.number()),
    tripMs: v.optional(v.number()),
    tripped: v.optional(name),
    volts: v.optional(v.number()),
  }),
  judgement: v.object({
    test: name,
    lines: v.array(v.object({ id: name, judged: v.picklist(JUDGEMENTS) })),
    limits: v.array(v.object({ id: name, reading: count, judged: v.picklist(LIMIT_JUDGEMENTS) })),
  }),
  record: v.object({
    test: name,
    leftOut: v.picklist([...LEFT_OUT, IN_WORDS]),
    words: v.optional(words),
  }),
  conclusion: v.object({
    verdict: v.picklist([...new Set([...VERDICTS, ...AIM_VERDICTS, ...FIND_VERDICTS])]),
    because: words,
    cause: v.nullable(name),
    family: v.nullable(v.picklist(FAMILIES)),
    others: v.optional(
      v.pipe(
        v.array(
          v.object({
            cause: v.nullable(name),
            family: v.nullable(v.picklist(FAMILIES)),
          }),
        ),
        v.maxLength(MOST_OTHERS),
      ),
    ),
    sure,
    findings: v.array(v.object({ test: name, id: name })),
    next: v.optional(v.picklist(NEXT_STEPS)),
    tell: v.optional(v.picklist(TELL)),
    repeat: v.optional(v.pipe(v.array(name), v.maxLength(100))),
  }),
};

const frame = { at: v.number(), wall: v.number(), hash: v.string() };
const entrySchema: v.GenericSchema<unknown, Entry> = v.variant('kind', [
  v.looseObject({ kind: v.literal('operation'), ...frame, ...contents.operation.entries }),
  v.looseObject({ kind: v.literal('prediction'), ...frame, ...contents.prediction.entries }),
  v.looseObject({ kind: v.literal('observation'), ...frame, ...contents.observation.entries }),
  v.looseObject({ kind: v.literal('judgement'), ...frame, ...contents.judgement.entries }),
  v.looseObject({ kind: v.literal('record'), ...frame, ...contents.record.entries }),
  v.looseObject({ kind: v.literal('conclusion'), ...frame, ...contents.conclusion.entries }),
]);

/** Longest log that is read, entries. */
export const LONGEST_LOG = 5000;

/**
 * Which giving-out a job is of. `held`: the hash of the word that opens the debrief, where that waits for one (heldBy);
 * `clears`: nothing stays on the device once it is handed in.
 */
const given = v.object({
  id: name,
  held: v.optional(v.pipe(v.string(), v.maxLength(64))),
  clears: v.optional(v.literal(true)),
});

/** Unknown fields are kept, never executed: loose objects, with the log's entries among them. */
export const attemptSchema = v.looseObject({
  format: v.literal(FORMAT),
  engine: v.string(),
  scenario: v.unknown(),
  trainee: v.optional(name),
  word: v.optional(name),
  /** The rung of support (rung.ts); without it what the scenario's support means. */
  rung: v.optional(v.picklist([1, 2, 3, 4])),
  /** Of a job that a tutor gave out. */
  given: v.optional(given),
  entries: v.pipe(v.array(entrySchema), v.maxLength(LONGEST_LOG)),
  /** As the page that wrote the file had them; never believed. */
  marks: v.optional(v.unknown()),
});
