/**
 * The file that everything on this device is exported to and brought in from, JSON:
 *
 *   format     1
 *   attempts   one object an attempt:
 *     id         its name on the device it comes from, up to 60 letters, digits and -
 *     began      ms since 1970 when it was first kept, or null; `changed` likewise when it was last
 *     handedIn   ms since 1970 when its file was handed in, or null
 *     putAway    true: not offered to go on with
 *     stands     where it stands, as step/test, while it is not concluded, or null
 *     isGuest    true: opened from a file and not worked on; it counts for nobody's record
 *     attempt    the attempt's own file as it is (its log is replayed before anything is told of it)
 *     draft      the place it was left at, and what is not yet in its log; absent once it is concluded
 *   goal       { text, at, tests }, or null; `tests`: the ids of those it speaks of, where it does
 *   questions  what was asked: { cards, assessment, session }, as questions.ts keeps it; absent where there is nothing
 *   unreadable what was kept as an attempt and is none that could be read: { id, text }, as it was; absent where there
 *              is nothing of the kind. Whoever brings it in tries again.
 *
 * Fields that this version does not know are kept and go out again. Marks and sums are not in it: they follow from
 * the logs. A file as a whole is refused where it is too large, hostile, newer or no such file; a single attempt that
 * cannot be read or replayed is left out and named.
 */
import * as v from 'valibot';
import { parsingAttempt, readingAttempt, readingToReplay } from '../attempt/record/file.ts';
import type { Written } from '../attempt/record/written.ts';
import { asWritten } from '../attempt/record/written.ts';
import { toItsEnd } from '../bench/toItsEnd.ts';
import { parseJson } from '../scenario/json.ts';
import type { Parsed, Problem } from '../scenario/problems.ts';
import { check } from '../scenario/problems.ts';
import { newerFormat } from '../scenario/readScenario.ts';
import { NO_QUESTIONS } from './questionRecord.ts';
import { questionsSchema } from './questionsFile.ts';
import type { RecordItem } from './recordItem.ts';
import { recordItem } from './recordItem.ts';
import type { KeptRecord, Unreadable } from './recordText.ts';

/** Largest record file that is read, characters; an attempt has about a hundred thousand. */
export const LARGEST_RECORD = 50_000_000;
/** More of a draft than a person types. */
const LARGEST_DRAFT = 100_000;

/** Milliseconds since 1970, as far as a date goes. */
const moment = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(8.64e15));
const id = v.pipe(v.string(), v.regex(/^[\w-]{1,60}$/, 'up to 60 letters, digits and - are expected'));
const keptItem = v.looseObject({
  id,
  began: v.nullable(moment),
  changed: moment,
  handedIn: v.nullable(moment),
  putAway: v.boolean(),
  stands: v.nullable(v.pipe(v.string(), v.maxLength(200))),
  isGuest: v.boolean(),
  attempt: v.unknown(),
  draft: v.optional(v.unknown()),
});
const goalSchema = v.object({
  text: v.pipe(v.string(), v.maxLength(300)),
  at: moment,
  tests: v.exactOptional(v.pipe(v.array(v.pipe(v.string(), v.maxLength(60))), v.maxLength(100))),
});
const recordSchema = v.looseObject({
  format: v.literal(1),
  attempts: v.pipe(v.array(keptItem), v.maxLength(5000)),
  goal: v.nullable(goalSchema),
  questions: v.optional(v.unknown()),
  unreadable: v.optional(v.pipe(v.array(v.object({ id, text: v.string() })), v.maxLength(5000)), []),
});

export interface ReadRecord {
  readonly record: KeptRecord;
  /** What is wrong with the attempts that are left out. */
  readonly leftOut: readonly Problem[];
}

export const parseRecord = (text: string): Parsed<ReadRecord> => toItsEnd(parsingRecord(text));

/** The same in pieces: each attempt's scenario is tried. */
export function* parsingRecord(text: string): Generator<null, Parsed<ReadRecord>> {
  const json = parseJson(text, LARGEST_RECORD);
  if (!json.ok) return json;
  const newer = newerFormat(json.value, 'record');
  if (newer !== null) return newer;
  const read = check(recordSchema, json.value);
  if (!read.ok) return read;
  const { format: _, attempts, goal, questions, unreadable, ...further } = read.value;
  const items: RecordItem[] = [];
  const leftOut: Problem[] = [];
  for (const [i, item] of attempts.entries()) {
    yield null;
    const own = yield* readingToReplay(readingAttempt(item.attempt));
    if (own.ok) items.push(itemOf(item, asWritten(own.value.attempt)));
    else leftOut.push(...own.problems.map((problem) => within(problem, `attempts[${i}].attempt`)));
  }
  const stillNot: Unreadable[] = [];
  for (const [i, { id: name, text: own }] of unreadable.entries()) {
    const again = yield* readingToReplay(parsingAttempt(own));
    if (again.ok) items.push(itemOf(AS_FOUND(name), asWritten(again.value.attempt)));
    else {
      stillNot.push({ id: name, text: own });
      leftOut.push({ path: `unreadable[${i}]`, message: { id: 'kept-unread' } });
    }
  }
  const asked = questions === undefined ? null : check(questionsSchema, questions);
  if (asked?.ok === false) leftOut.push(...asked.problems.map((problem) => within(problem, 'questions')));
  const record = {
    items,
    unreadable: stillNot,
    goal,
    questions: asked?.ok === true ? asked.value : NO_QUESTIONS,
    further,
  };
  return { ok: true, value: { record, leftOut } };
}

/** All that is known of an attempt of which only its text was kept. */
const AS_FOUND = (name: string) => ({
  id: name,
  began: null,
  changed: 0,
  handedIn: null,
  putAway: false,
  stands: null,
  isGuest: false,
  attempt: null,
});

/** Whether a file that was opened is meant as one of these. */
export const looksLikeRecord = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && Array.isArray((value as { attempts?: unknown }).attempts);

function itemOf(item: v.InferOutput<typeof keptItem>, attempt: Written): RecordItem {
  const further = Object.fromEntries(Object.entries(item).filter(([name]) => !(name in keptItem.entries)));
  return recordItem({ ...item, further }, attempt, smallEnough(item.draft));
}

const smallEnough = (draft: unknown): unknown =>
  draft === undefined || JSON.stringify(draft).length > LARGEST_DRAFT ? null : draft;

const within = ({ path, message }: Problem, place: string): Problem => ({
  path: path === '' ? place : `${place}.${path}`,
  message,
});
