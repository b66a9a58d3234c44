/**
 * A trainee's attempt: the scenario it was made on and a log of entries, each chained to the one before by a hash.
 * Marks and debrief are always recomputed from it by replay; what a file says of them is only compared.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import type { Operation } from '../../bench/operation.ts';
import type { TypedUnit } from '../../bench/readings/display.ts';
import type { Family } from '../../faults/families.ts';
import type { NextStep, Tell } from '../../faults/fault.ts';
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

/** Causes that a conclusion may name beside the first: as many as a scenario can have. */
export const MOST_OTHERS = 9;

interface NamedCause {
  /** A catalogue id, `nothing`, or null where it is not known. */
  cause: string | null;
  family: Family | null;
}

/** What each kind of entry holds. What a file has in its place is checked by attemptSchema.ts. */
interface Contents {
  operation: { test: string | null; operation: Operation };
  prediction: {
    test: string;
    /** `sure`: of this line, where it is less than of the whole. */
    lines: { id: string; answer: Answer; sure?: Sure | undefined }[];
    figures: { id: string; value: number }[];
    /** Of the whole; null where the lines were given. */
    sure: Sure | null;
    /** Filled in by the page: the trainee did not say it. */
    given?: true | undefined;
  };
  /**
   * What was typed of a reading (by its index among all readings): in its unit, never converted. Of a residual test at a
   * fixed current that is the time in which it tripped, ms, and no value; of a ramp the current, and its last step's ms
   * where they were typed.
   */
  observation: {
    test: string;
    reading: number;
    value: number | null;
    qualifier: '>' | '<' | 'no-reading' | null;
    unit: TypedUnit;
    /** Further figures of a pilot reading: low in volts, duty as a share, amps per line. */
    low?: number | undefined;
    duty?: number | undefined;
    amps?: number | undefined;
    tripMs?: number | undefined;
    /** What the trainee says tripped, and the test voltage used. */
    tripped?: string | undefined;
    volts?: number | undefined;
  };
  judgement: {
    test: string;
    lines: { id: string; judged: Judged }[];
    limits: { id: string; reading: number; judged: LimitJudged }[];
  };
  /** Why a test was left out; `words` as format 1 has them. */
  record: { test: string; leftOut: LeftOut; words?: string | undefined };
  conclusion: NamedCause & {
    verdict: Verdict;
    because: string;
    /** Further causes, where more than one thing is wrong. */
    others?: NamedCause[] | undefined;
    sure: Sure;
    findings: { test: string; id: string }[];
    /** What is done next and who is told, where that is asked: of one aim only if something is wrong. */
    next?: NextStep | undefined;
    tell?: Tell | undefined;
    /** Tests to be repeated after what is wrong is put right, where that is asked. */
    repeat?: string[] | undefined;
  };
}

type Kind = keyof Contents;

/** An entry as it is handed in: what the log adds is not yet there. */
export type NotedOf<K extends Kind> = { kind: K } & Contents[K];
export type Noted = { [K in Kind]: NotedOf<K> }[Kind];

/** `at`: bench time, s, recomputed by replay; `wall`: ms since the attempt began, only reported. */
interface Logged {
  at: number;
  wall: number;
  hash: string;
}
export type EntryOf<K extends Kind> = NotedOf<K> & Logged;
export type Entry = { [K in Kind]: EntryOf<K> }[Kind];

/** The format that is written; older ones are converted when they are read (format1.ts), newer ones refused. */
export const FORMAT = 2;

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
function hashOn(before: string | undefined, entry: Written['entries'][number]): string {
  const made = hashed.get(entry);
  if (made !== undefined && made.before === before) return made.hash;
  const { hash: _, ...content } = entry;
  const hash = digest(before + canonical(content));
  hashed.set(entry, { before, hash });
  return hash;
}

/** An entry never changes, and the whole chain is looked at whenever an attempt is marked or told. */
const hashed = new WeakMap<object, { readonly before: string | undefined; readonly hash: string }>();

/** Where in a log a hash is not that of its entry on top of the one before, in one pass. */
export function brokenLinks(attempt: Attempt): readonly number[] {
  const { entries } = asWritten(attempt);
  return entries.flatMap((entry, i) =>
    entry.hash === hashOn(entries[i - 1]?.hash ?? genesis(attempt), entry) ? [] : [i],
  );
}

/** The attempt with one more entry at its end. Throws for one of an older format: its chain cannot go on in this one. */
export function appended(attempt: Attempt, entry: Noted, at: number, wall: number): Attempt {
  if (isConverted(attempt)) throw new Error('an attempt of an older format cannot be gone on with');
  const logged = { ...entry, at, wall, hash: '' };
  const hash = hashOn(attempt.entries.at(-1)?.hash ?? genesis(attempt), logged);
  return { ...attempt, entries: [...attempt.entries, { ...logged, hash } as Entry] };
}

/** The record code, first eight characters of the last hash: what a tutor notes at hand-in. */
export const headOf = (attempt: Attempt): string =>
  (attempt.entries.at(-1)?.hash ?? genesis(attempt)).slice(0, 8);
