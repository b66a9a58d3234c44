/**
 * A trainee's attempt: the scenario it was made on and a log of entries, each chained to the one before by a hash.
 * Marks and debrief are always recomputed from it by replay; what a file says of them is only compared.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import * as v from 'valibot';
import { operationSchema } from '../../bench/operation.ts';
import { FAMILIES } from '../../faults/families.ts';
import { NEXT_STEPS, TELL } from '../../faults/fault.ts';
import type { WRITTEN, Written } from './written.ts';
import { asWritten, isConverted } from './written.ts';

/** Of the engine whose readings an attempt holds; a change that alters any reading or mark raises it. */
export const ENGINE = '2.3.0';

// What a trainee says is logged by id; its words, in whatever language, are the screen's business.
export const ANSWERS = ['should', 'should-not', 'cant-tell'] as const;
export type Answer = (typeof ANSWERS)[number];
/** From the least to the most. */
export const SURENESS = ['guessing', 'fairly-sure', 'would-sign'] as const;
export type Sure = (typeof SURENESS)[number];
/** What the unit or the circuit did of a line; whether that is right follows from the line. */
export const JUDGEMENTS = ['did', 'did-not', 'not-shown'] as const;
export type Judged = (typeof JUDGEMENTS)[number];
export const LIMIT_JUDGEMENTS = ['within', 'outside', 'too-close'] as const;
export type LimitJudged = (typeof LIMIT_JUDGEMENTS)[number];
/** Of a whole verification, in the order in which they are offered. */
export const VERDICTS = ['fit', 'not-fit', 'could-not-finish'] as const;
/** Of a task of one aim, about that alone, in the same order. */
export const AIM_VERDICTS = ['nothing-wrong', 'something-wrong', 'cannot-tell'] as const;
/** Of what is behind a symptom, in the same order: what its papers say of it is no fault, and has a name all the same. */
export const FIND_VERDICTS = ['nothing-wrong', 'as-designed', 'something-wrong', 'cannot-tell'] as const;
export type Verdict =
  | (typeof VERDICTS)[number]
  | (typeof AIM_VERDICTS)[number]
  | (typeof FIND_VERDICTS)[number];
/** Why a test was left out; when each is true: leftOut.ts. */
export const LEFT_OUT = [
  'not-safe',
  'no-supply',
  'not-allowed',
  'not-applicable',
  'handed-over',
  'not-asked',
  'no-time',
] as const;
/** A reason of format 1, which took any words; no page offers it, and it holds in no other format. */
export const IN_WORDS = 'in-words';
export type LeftOut = (typeof LEFT_OUT)[number] | typeof IN_WORDS;
export { NEXT_STEPS, TELL };

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

const name = v.pipe(v.string(), v.maxLength(60));
const words = v.pipe(v.string(), v.maxLength(1000));
const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const sure = v.picklist(SURENESS);
/** Causes that a conclusion may name beside the first: as many as a scenario can have. */
export const MOST_OTHERS = 9;

/** What each kind of entry holds. */
const contents = {
  operation: v.object({ test: v.nullable(name), operation: operationSchema }),
  prediction: v.object({
    test: name,
    /** `sure`: of this line, where it is less than of the whole. */
    lines: v.array(v.object({ id: name, answer: v.picklist(ANSWERS), sure: v.optional(sure) })),
    figures: v.array(v.object({ id: name, value: v.number() })),
    /** Of the whole; null where the lines were given. */
    sure: v.nullable(sure),
    /** Filled in by the page: the trainee did not say it. */
    given: v.optional(v.literal(true)),
  }),
  /**
   * What was typed of a reading (by its index among all readings): in its unit, never converted. Of a residual test at a
   * fixed current that is the time in which it tripped, ms, and no value; of a ramp the current, and its last step's ms
   * where they were typed.
   */
  observation: v.object({
    test: name,
    reading: count,
    value: v.nullable(v.number()),
    qualifier: v.nullable(v.picklist(['>', '<', 'no-reading'])),
    unit: v.picklist(Object.keys(TYPED_UNITS) as TypedUnit[]),
    /** Further figures of a pilot reading: low in volts, duty as a share, amps per line. */
    low: v.optional(v.number()),
    duty: v.optional(v.number()),
    amps: v.optional(v.number()),
    tripMs: v.optional(v.number()),
    /** What the trainee says tripped, and the test voltage used. */
    tripped: v.optional(name),
    volts: v.optional(v.number()),
  }),
  judgement: v.object({
    test: name,
    lines: v.array(v.object({ id: name, judged: v.picklist(JUDGEMENTS) })),
    limits: v.array(v.object({ id: name, reading: count, judged: v.picklist(LIMIT_JUDGEMENTS) })),
  }),
  /** Why a test was left out. */
  record: v.object({
    test: name,
    leftOut: v.picklist([...LEFT_OUT, IN_WORDS]),
    /** As format 1 has them. */
    words: v.optional(words),
  }),
  conclusion: v.object({
    verdict: v.picklist([...new Set([...VERDICTS, ...AIM_VERDICTS, ...FIND_VERDICTS])]),
    because: words,
    /** A catalogue id, `nothing`, or null where it is not known. */
    cause: v.nullable(name),
    family: v.nullable(v.picklist(FAMILIES)),
    /** Further causes, where more than one thing is wrong. */
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
    /** What is done next and who is told, where that is asked: of one aim only if something is wrong. */
    next: v.optional(v.picklist(NEXT_STEPS)),
    tell: v.optional(v.picklist(TELL)),
    /** Tests to be repeated after what is wrong is put right, where that is asked. */
    repeat: v.optional(v.pipe(v.array(name), v.maxLength(100))),
  }),
};

type Kind = keyof typeof contents;
type Content<K extends Kind> = v.InferOutput<(typeof contents)[K]>;

/** An entry as it is handed in: what the log adds is not yet there. */
export type NotedOf<K extends Kind> = { kind: K } & Content<K>;
export type Noted = { [K in Kind]: NotedOf<K> }[Kind];

/** `at`: bench time, s, recomputed by replay; `wall`: ms since the attempt began, only reported. */
interface Logged {
  at: number;
  wall: number;
  hash: string;
}
export type EntryOf<K extends Kind> = NotedOf<K> & Logged;
export type Entry = { [K in Kind]: EntryOf<K> }[Kind];

const frame = { at: v.number(), wall: v.number(), hash: v.string() };
const entrySchema: v.GenericSchema<unknown, Entry> = v.variant('kind', [
  v.looseObject({ kind: v.literal('operation'), ...frame, ...contents.operation.entries }),
  v.looseObject({ kind: v.literal('prediction'), ...frame, ...contents.prediction.entries }),
  v.looseObject({ kind: v.literal('observation'), ...frame, ...contents.observation.entries }),
  v.looseObject({ kind: v.literal('judgement'), ...frame, ...contents.judgement.entries }),
  v.looseObject({ kind: v.literal('record'), ...frame, ...contents.record.entries }),
  v.looseObject({ kind: v.literal('conclusion'), ...frame, ...contents.conclusion.entries }),
]);

/** The format that is written; older ones are converted when they are read (format1.ts), newer ones refused. */
export const FORMAT = 2;

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
export interface Attempt extends Omit<Written, 'format' | 'entries'> {
  format: typeof FORMAT;
  entries: Entry[];
  readonly [WRITTEN]?: Written;
}

/** The first engine whose chains begin with the trainee's label too; older ones are checked as they were made. */
const LABELLED = [1, 4];

function bindsLabel(engine: string): boolean {
  const [major = 0, minor = 0] = engine.split('.').map(Number);
  const [first = 0, second = 0] = LABELLED;
  return major > first || (major === first && minor >= second);
}

/**
 * Head of the chain before the first entry: it binds the log to its scenario, to its rung where it has one, to the
 * giving-out that it is of, and to the trainee's label.
 */
const genesis = ({ scenario, word, rung, given, trainee, engine }: Attempt): string =>
  digestOf({
    scenario,
    word: word ?? null,
    ...(rung === undefined ? {} : { rung }),
    ...(given === undefined ? {} : { given }),
    ...(bindsLabel(engine) ? { label: trainee ?? null } : {}),
  });

const canonical = (value: unknown): string => canonicalize(value) ?? 'null';
const digest = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));
/** SHA-256 of a JSON value, its keys in one order (RFC 8785); 64 hexadecimal digits. */
export const digestOf = (value: unknown): string => digest(canonical(value));

/** Hash of an entry on top of the one before it, as both were written. */
export function chainedHash(attempt: Attempt, index: number): string {
  const { entries } = asWritten(attempt);
  const entry = entries[index] ?? {};
  const before = index === 0 ? genesis(attempt) : entries[index - 1]?.hash;
  const known = hashed.get(entry);
  if (known !== undefined && known.before === before) return known.hash;
  const content = Object.fromEntries(Object.entries(entry).filter(([key]) => key !== 'hash'));
  const hash = digest(before + canonical(content));
  hashed.set(entry, { before, hash });
  return hash;
}

/** An entry never changes, and the whole chain is looked at whenever an attempt is marked or told. */
const hashed = new WeakMap<object, { readonly before: string | undefined; readonly hash: string }>();

/** The attempt with one more entry at its end. Throws for one of an older format: its chain cannot go on in this one. */
export function appended(attempt: Attempt, entry: Noted, at: number, wall: number): Attempt {
  if (isConverted(attempt)) throw new Error('an attempt of an older format cannot be gone on with');
  const unhashed = { ...attempt, entries: [...attempt.entries, { ...entry, at, wall, hash: '' } as Entry] };
  const hash = chainedHash(unhashed, attempt.entries.length);
  return {
    ...unhashed,
    entries: unhashed.entries.map((e, i) => (i === attempt.entries.length ? { ...e, hash } : e)),
  };
}

/** The record code, first eight characters of the last hash: what a tutor notes at hand-in. */
export const headOf = (attempt: Attempt): string =>
  (attempt.entries.at(-1)?.hash ?? genesis(attempt)).slice(0, 8);
