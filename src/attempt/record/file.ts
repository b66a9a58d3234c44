/** Attempt files, as they are read: every problem is named. */

import { toItsEnd } from '../../bench/toItsEnd.ts';
import { parseJson } from '../../scenario/json.ts';
import { operationProblems } from '../../scenario/operationProblems.ts';
import type { Parsed, Problem } from '../../scenario/problems.ts';
import { check, longLists } from '../../scenario/problems.ts';
import { newerFormat, readingScenario } from '../../scenario/readScenario.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import type { Attempt } from './attempt.ts';
import { FORMAT } from './attempt.ts';
import { attemptSchema, LONGEST_LOG } from './attemptSchema.ts';
import { fromFormat1, isFormat1 } from './format1.ts';
import { asGiven } from './origin.ts';
import { replaying } from './run.ts';
import type { Written } from './written.ts';
import { WRITTEN } from './written.ts';

export interface ReadAttempt {
  readonly attempt: Attempt;
  readonly scenario: Scenario;
}

export const parseAttempt = (text: string): Parsed<ReadAttempt> => toItsEnd(parsingAttempt(text));

/** The same in pieces. */
export function* parsingAttempt(text: string): Generator<null, Parsed<ReadAttempt>> {
  const json = parseJson(text);
  return json.ok ? yield* readingAttempt(json.value) : json;
}

/** A file of a later format, or with a log longer than any that is read: nothing else in it is looked at. */
function notLookedAt(value: unknown): (Parsed<never> & { ok: false }) | null {
  const newer = newerFormat(value, 'attempt', FORMAT);
  if (newer !== null) return newer;
  // The scenario in it has shorter lists still, and sees to these itself.
  const long = longLists((value as { entries?: unknown } | null)?.entries, LONGEST_LOG, 'entries');
  return long.length > 0 ? { ok: false, problems: long } : null;
}

/** What a file's value says of itself and its log, for whoever has another scenario to hold it against than its own. */
export const readLog = (value: unknown): Parsed<Attempt> => notLookedAt(value) ?? checked(value);

/** An attempt's file, already read as JSON; in pieces. */
export function* readingAttempt(value: unknown): Generator<null, Parsed<ReadAttempt>> {
  const unread = notLookedAt(value);
  if (unread !== null) return unread;
  const attempt = checked(value);
  yield null;
  const read = yield* readingScenario((value as { scenario?: unknown } | null)?.scenario);
  const problems: Problem[] = [
    ...(attempt.ok ? [] : attempt.problems),
    ...(read.ok ? [] : read.problems.map(({ path, message }) => ({ path: inScenario(path), message }))),
  ];
  if (!attempt.ok || !read.ok) return { ok: false, problems };
  const lacking = lackingIn(attempt.value, read.scenario);
  if (lacking.length > 0) return { ok: false, problems: lacking };
  return { ok: true, value: { attempt: attempt.value, scenario: read.scenario } };
}

/** One of format 1 as this version has it, with what was written kept beside it. */
function checked(value: unknown): Parsed<Attempt> {
  if (!isFormat1(value)) return check(attemptSchema, value);
  const read = check(attemptSchema, fromFormat1(value));
  // Its own hashes and kinds were checked with the rest.
  return read.ok ? { ok: true, value: { ...read.value, [WRITTEN]: value as unknown as Written } } : read;
}

/** What its operations ask for and the scenario's site does not have. */
export const lackingIn = ({ entries }: Attempt, { site }: Scenario): readonly Problem[] =>
  entries.flatMap((entry, i) =>
    entry.kind === 'operation' ? operationProblems(entry.operation, `entries[${i}].operation`, site) : [],
  );

/** An attempt as another scenario than its own would have it: one that whoever marks gives. */
export function* readingAgainst(attempt: Attempt, given: object): Generator<null, Parsed<ReadAttempt>> {
  const read = yield* readingScenario(asGiven(given, attempt.scenario));
  if (!read.ok) return read;
  const lacking = lackingIn(attempt, read.scenario);
  return lacking.length > 0
    ? { ok: false, problems: lacking }
    : { ok: true, value: { attempt, scenario: read.scenario } };
}

/** What was read, once its log was replayed: a log that the bench cannot follow is refused, and says so. */
export function* readingToReplay(
  reading: Generator<null, Parsed<ReadAttempt>>,
): Generator<null, Parsed<ReadAttempt>> {
  const read = yield* reading;
  if (!read.ok) return read;
  try {
    yield* replaying(read.value.scenario, read.value.attempt);
    return read;
  } catch (error) {
    return { ok: false, problems: [notReplayed(error)] };
  }
}

/** What a log says that cannot be replayed. */
export const notReplayed = (error: unknown): Problem => ({
  path: 'entries',
  message: `cannot be replayed: ${error instanceof Error ? error.message : String(error)}`,
});

const inScenario = (path: string): string => (path === '' ? 'scenario' : `scenario.${path}`);
