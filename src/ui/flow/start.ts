/**
 * How an attempt begins: anew on a scenario, from an attempt file, or from what this device kept. Files of both kinds
 * are told apart here, and one that is far too large is refused unread. All of it is done in pieces: a handover is
 * carried out, and a log is done once more.
 */
import type { ReadAttempt } from '../../attempt/file.ts';
import { notReplayed, parsingAttempt, readingAttempt } from '../../attempt/file.ts';
import type { Rung } from '../../attempt/rung.ts';
import { supportOf } from '../../attempt/rung.ts';
import type { AimAddress } from '../../scenario/aimAddress.ts';
import { readAimAddress } from '../../scenario/aimAddress.ts';
import { aimJob } from '../../scenario/aimJobs.ts';
import type { Parsed, Problem } from '../../scenario/problems.ts';
import { LARGEST_FILE, parseJson, tooLarge } from '../../scenario/problems.ts';
import { readingScenario } from '../../scenario/scenario.ts';
import type { KeptAttempt } from '../../store/keptAttempt.ts';
import { looksLikeRecord } from '../../store/recordFile.ts';
import { aimJobWords } from '../../words/aimJobs.ts';
import { inWords } from '../../words/problems.ts';
import type { Bench } from './bench.ts';
import { makingBench, takingUp } from './bench.ts';
import type { Place } from './place.ts';
import { placeIn } from './place.ts';

/** In words already: those of what is met at the bench too come with the bench, not with the first screen. */
type Refused = { readonly kind: 'refused'; readonly problems: readonly Problem<string>[] };
type Taken = { readonly kind: 'attempt'; readonly bench: Bench };
/** `file`: the scenario file's own object. */
type Scenarios = { readonly kind: 'scenario'; readonly file: unknown };

const refusedFor = (problems: readonly Problem[]): Refused => ({
  kind: 'refused',
  problems: inWords(problems),
});
const refused = (message: string, path = ''): Refused => refusedFor([{ path, message }]);

/** What a file holds, or why it is not read. */
export async function textOf(file: File): Promise<string | Refused> {
  if (file.size > LARGEST_FILE) return refused(tooLarge(LARGEST_FILE));
  try {
    return await file.text();
  } catch {
    return refused('cannot be read from this device');
  }
}

export function* opening(text: string): Generator<null, Refused | Taken | Scenarios> {
  const json = parseJson(text);
  if (!json.ok) return refusedFor(json.problems);
  const { value } = json;
  if (looksLikeRecord(value))
    return refused('is a record of several attempts: bring it in on the page My record');
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

/** A new attempt at a job of one aim, as its address asks for it. */
export function* beginningAim(address: AimAddress): Generator<null, Taken | Refused> {
  const read = readAimAddress(address);
  if (!read.ok) return { kind: 'refused', problems: inWords(read.problems) };
  const { rung, ...job } = read.value;
  return yield* beginningOn(aimJob(job, aimJobWords(job)), rung, '');
}

/** A new attempt, on the rung that the trainee asks for. */
export function* beginningOn(file: object, rung: Rung, trainee: string): Generator<null, Taken | Refused> {
  const read = yield* readingScenario({ ...file, support: supportOf(rung) });
  if (!read.ok) return refusedFor(read.problems);
  const label = trainee.trim();
  const labels = { rung, ...(label === '' ? {} : { trainee: label }) };
  return { kind: 'attempt', bench: yield* makingBench(read.scenario, read.file, labels) };
}
