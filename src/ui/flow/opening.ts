/**
 * How an attempt begins from a file, or from what this device kept. Files of both kinds are told apart here, and one that is
 * far too large is refused unread. All of it is done in pieces: a log is done once more. It comes when something is opened.
 */
import type { ReadAttempt } from '../../attempt/record/file.ts';
import { notReplayed, parsingAttempt, readingAttempt } from '../../attempt/record/file.ts';
import { LARGEST_GIVING, looksLikeGiving } from '../../desk/giving.ts';
import { looksSealed } from '../../desk/seal.ts';
import { parseJson } from '../../scenario/json.ts';
import type { Parsed, Problem } from '../../scenario/problems.ts';
import { LARGEST_FILE, tooLarge } from '../../scenario/problems.ts';
import { readingScenario } from '../../scenario/readScenario.ts';
import type { KeptAttempt } from '../../store/keptAttempt.ts';
import { looksLikeRecord } from '../../store/recordFile.ts';
import { inWords } from '../../words/problems.ts';
import { takingUp } from './bench.ts';
import { placeIn } from './keptPlace.ts';
import type { Place } from './place.ts';
import type { Refused, Taken } from './start.ts';

/** `file`: the scenario file's own object. */
type Scenarios = { readonly kind: 'scenario'; readonly file: unknown };
/** What a tutor gave out, open or sealed; it is read where it is shown. */
type Given = { readonly kind: 'given'; readonly text: string };

const refusedFor = (problems: readonly Problem[]): Refused => ({
  kind: 'refused',
  problems: inWords(problems),
});
const refused = (message: string, path = ''): Refused => refusedFor([{ path, message }]);

/** What a file holds, or why it is not read. */
export async function textOf(file: File): Promise<string | Refused> {
  if (file.size > LARGEST_GIVING) return refused(tooLarge(LARGEST_FILE));
  try {
    return await file.text();
  } catch {
    return refused('cannot be read from this device');
  }
}

export function* opening(text: string): Generator<null, Refused | Taken | Scenarios | Given> {
  const json = parseJson(text, LARGEST_GIVING);
  if (!json.ok)
    return text.length > LARGEST_FILE ? refused(tooLarge(LARGEST_FILE)) : refusedFor(json.problems);
  const { value } = json;
  if (looksLikeRecord(value))
    return refused('is a record of several attempts: bring it in on the page My record');
  if (looksLikeGiving(value) || looksSealed(value)) return { kind: 'given', text };
  if (text.length > LARGEST_FILE) return refused(tooLarge(LARGEST_FILE));
  if (looksLikeAttempt(value)) return yield* openingAttempt(readingAttempt(value));
  const read = yield* readingScenario(value);
  return read.ok ? { kind: 'scenario', file: read.file } : refusedFor(read.problems);
}

/** An attempt has entries or an engine; everything else is held to be a scenario. */
const looksLikeAttempt = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && ('entries' in value || 'engine' in value);

/** What this device kept, at the place where it was left. */
export function* openingKept({
  text,
  draft,
}: KeptAttempt): Generator<null, Refused | (Taken & { readonly place: Place })> {
  const result = yield* openingAttempt(parsingAttempt(text));
  return result.kind === 'refused' ? result : { ...result, place: placeIn(result.bench, draft) };
}

function* openingAttempt(reading: Generator<null, Parsed<ReadAttempt>>): Generator<null, Refused | Taken> {
  const read = yield* reading;
  if (!read.ok) return refusedFor(read.problems);
  try {
    return { kind: 'attempt', bench: yield* takingUp(read.value.scenario, read.value.attempt) };
  } catch (error) {
    return refusedFor([notReplayed(error)]);
  }
}
