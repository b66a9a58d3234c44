/** What decides over attempts, named on the command line: scenario files, and what was given out. */
import type { Attempt } from '../attempt/record/attempt.ts';
import { idOf, withIdOf } from '../attempt/record/origin.ts';
import { toItsEnd } from '../bench/toItsEnd.ts';
import type { ReadGiving } from '../desk/giving.ts';
import { LARGEST_GIVING, looksLikeGiving, readingGiving } from '../desk/giving.ts';
import { madeWhole } from '../desk/link.ts';
import { variantFrom } from '../desk/variantOf.ts';
import { parseJson } from '../scenario/json.ts';
import { readScenario } from '../scenario/readScenario.ts';
import { BadInput, problemLines, readText } from './files.ts';

export interface Deciding {
  readonly givings: readonly ReadGiving[];
  readonly scenarios: readonly object[];
}

/** Takes an id once: of one that two files have nobody could say which decides. */
function takingOnce() {
  const taken = new Map<string, string>();
  return (file: string, id: string, path: string): void => {
    const before = taken.get(id);
    if (before !== undefined)
      throw new BadInput([`${file}: ${path}: "${id}" is that of ${before} too: which one decides?`]);
    taken.set(id, file);
  };
}

/** Scenario files with which others are compared, or which make others whole: for that they need not be tried. */
export function comparedIn(files: readonly string[]): readonly object[] {
  const take = takingOnce();
  return files.map((file) => {
    const value = valueIn(file);
    take(file, idOf(value), 'id');
    return value as object;
  });
}

/** Every one of them read with all checks. */
export function decidingIn(files: readonly string[], shipped: readonly object[]): Deciding {
  const take = takingOnce();
  const givings: ReadGiving[] = [];
  const scenarios: object[] = [];
  for (const file of files) {
    const value = valueIn(file);
    if (looksLikeGiving(value)) {
      const whole = madeWhole(value, shipped);
      const read = whole.ok ? toItsEnd(readingGiving(whole.value)) : whole;
      if (!read.ok) throw new BadInput(problemLines(file, read.problems));
      take(file, read.value.giving.giving, 'giving');
      givings.push(read.value);
    } else {
      const read = readScenario(value);
      if (!read.ok) throw new BadInput(problemLines(file, read.problems));
      take(file, read.scenario.id, 'id');
      scenarios.push(read.file as object);
    }
  }
  return { givings, scenarios };
}

/** What a file says, unchecked. */
function valueIn(file: string): unknown {
  const json = parseJson(readText(file, LARGEST_GIVING), LARGEST_GIVING);
  if (!json.ok) throw new BadInput(problemLines(file, json.problems));
  return json.value;
}

/** The file that decides over this attempt, where there is one: of what it was given out by, or by its id. */
export function decidingFile(attempt: Attempt, { givings, scenarios }: Deciding): object | undefined {
  const own = givings.find(({ giving }) => giving.giving === attempt.given?.id);
  if (own === undefined) return withIdOf(attempt, scenarios) as object | undefined;
  const job = withIdOf(
    attempt,
    own.jobs.map(({ file }) => file),
  ) as object | undefined;
  return job === undefined ? job : variantFrom(job, own.giving, attempt.trainee ?? '');
}
