/**
 * How an attempt begins: anew on a scenario, from an attempt file, or from what this device kept. Files of both kinds
 * are told apart here, and one that is far too large is refused unread.
 */
import { parseAttempt } from '../../attempt/file.ts';
import type { Rung } from '../../attempt/rung.ts';
import { supportOf } from '../../attempt/rung.ts';
import type { Problem } from '../../scenario/problems.ts';
import { LARGEST_FILE, tooLarge } from '../../scenario/problems.ts';
import type { ReadScenario } from '../../scenario/scenario.ts';
import { parseScenario, readScenario } from '../../scenario/scenario.ts';
import type { KeptAttempt } from '../../store/keptAttempt.ts';
import { looksLikeRecord } from '../../store/recordFile.ts';
import type { Bench } from './bench.ts';
import { newBench, takenUp } from './bench.ts';
import type { Place } from './place.ts';
import { placeIn } from './place.ts';

type Refused = { readonly kind: 'refused'; readonly problems: readonly Problem[] };
type Taken = { readonly kind: 'attempt'; readonly bench: Bench };
/** `file`: the scenario file's own object. */
type Scenarios = { readonly kind: 'scenario'; readonly file: unknown };

const refused = (message: string, path = ''): Refused => ({ kind: 'refused', problems: [{ path, message }] });

export async function opened(file: File): Promise<Refused | Taken | Scenarios> {
  if (file.size > LARGEST_FILE) return refused(tooLarge(LARGEST_FILE));
  try {
    return openedText(await file.text());
  } catch {
    return refused('cannot be read from this device');
  }
}

function openedText(text: string): Refused | Taken | Scenarios {
  const value = jsonIn(text);
  if (looksLikeRecord(value))
    return refused('is a record of several attempts: bring it in on the page My record');
  if (looksLikeAttempt(value)) return openedAttempt(text);
  const read = parseScenario(text);
  return read.ok ? { kind: 'scenario', file: read.file } : { kind: 'refused', problems: read.problems };
}

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

/** An attempt has entries or an engine; everything else is held to be a scenario. */
const looksLikeAttempt = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && ('entries' in value || 'engine' in value);

/** What this device kept, at the place where it was left. */
export function openedKept({ text, draft }: KeptAttempt): Refused | (Taken & { readonly place: Place }) {
  const result = openedAttempt(text);
  return result.kind === 'refused' ? result : { ...result, place: placeIn(result.bench, draft) };
}

function openedAttempt(text: string): Refused | Taken {
  const read = parseAttempt(text);
  if (!read.ok) return { kind: 'refused', problems: read.problems };
  try {
    return { kind: 'attempt', bench: takenUp(read.value.scenario, read.value.attempt) };
  } catch (error) {
    return refused(
      `cannot be replayed: ${error instanceof Error ? error.message : String(error)}`,
      'entries',
    );
  }
}

/** A new attempt, on the rung that the trainee asks for. */
export function begun(file: object, rung: Rung, trainee: string): Taken | Refused {
  const read: ReadScenario = readScenario({ ...file, support: supportOf(rung) });
  if (!read.ok) return { kind: 'refused', problems: read.problems };
  const label = trainee.trim();
  return {
    kind: 'attempt',
    bench: newBench(read.scenario, read.file, { rung, ...(label === '' ? {} : { trainee: label }) }),
  };
}
