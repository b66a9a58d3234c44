/**
 * How an attempt begins: anew on a scenario, or from an attempt file. Files of both kinds are told apart here, and
 * one that is far too large is refused unread.
 */
import { parseAttempt } from '../../attempt/file.ts';
import type { Problem } from '../../scenario/problems.ts';
import { LARGEST_FILE } from '../../scenario/problems.ts';
import type { ReadScenario, Scenario } from '../../scenario/scenario.ts';
import { parseScenario, readScenario } from '../../scenario/scenario.ts';
import type { Bench } from './bench.ts';
import { newBench, takenUp } from './bench.ts';

type Refused = { readonly kind: 'refused'; readonly problems: readonly Problem[] };
type Taken = { readonly kind: 'attempt'; readonly bench: Bench };
/** `file`: the scenario file's own object. */
type Scenarios = { readonly kind: 'scenario'; readonly file: unknown };

const refused = (message: string, path = ''): Refused => ({ kind: 'refused', problems: [{ path, message }] });

export async function opened(source: File | string): Promise<Refused | Taken | Scenarios> {
  if (typeof source === 'string') return openedText(source);
  if (source.size > LARGEST_FILE)
    return refused(`larger than ${LARGEST_FILE / 1_000_000} MB; scenario and attempt files are far smaller`);
  try {
    return openedText(await source.text());
  } catch {
    return refused('cannot be read from this device');
  }
}

function openedText(text: string): Refused | Taken | Scenarios {
  if (looksLikeAttempt(text)) return openedAttempt(text);
  const read = parseScenario(text);
  return read.ok ? { kind: 'scenario', file: read.file } : { kind: 'refused', problems: read.problems };
}

/** An attempt has entries or an engine; everything else is held to be a scenario. */
function looksLikeAttempt(text: string): boolean {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && ('entries' in value || 'engine' in value);
  } catch {
    return false;
  }
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

/** A new attempt, with feedback at once or at the end as the trainee asks. */
export function begun(file: object, support: Scenario['support'], trainee: string): Taken | Refused {
  const read: ReadScenario = readScenario({ ...file, support });
  if (!read.ok) return { kind: 'refused', problems: read.problems };
  const label = trainee.trim();
  return { kind: 'attempt', bench: newBench(read.scenario, read.file, ...(label === '' ? [] : [label])) };
}
