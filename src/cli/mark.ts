/** The verb `mark`: attempts replayed and marked, each with the scenario that decides and where that is from. */
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { mark } from '../attempt/marks/mark.ts';
import type { Attempt } from '../attempt/record/attempt.ts';
import { headOf } from '../attempt/record/attempt.ts';
import { parseAttempt, readingAgainst } from '../attempt/record/file.ts';
import { originOf, withIdOf } from '../attempt/record/origin.ts';
import { rungOf } from '../attempt/record/rung.ts';
import { toItsEnd } from '../bench/toItsEnd.ts';
import { MOST_LISTED } from '../scenario/problem.ts';
import { parseScenario } from '../scenario/scenarioText.ts';
import { doubtText, UNTIMELY_WORDS } from '../words/doubts.ts';
import { sumsInWords } from '../words/sums.ts';
import { unsafeActText } from '../words/unsafeActs.ts';
import { BadInput, problemLines, readText } from './files.ts';

const SHIPPED = fileURLToPath(new URL('../../scenarios', import.meta.url));

interface Marked {
  readonly file: string;
  readonly attempt: Attempt;
  readonly printed: Readonly<Record<string, unknown>> & { readonly differs: readonly string[] };
}

/** `against`: what decides in place of the scenarios that the attempts carry; null: those. Files and folders. */
export function markFiles(
  named: readonly string[],
  against: readonly string[] | null,
): { text: string; errors: readonly string[]; exit: number } {
  const given = against === null ? null : scenarioFiles(against.flatMap(filesIn));
  const shipped = scenarioFiles(filesIn(SHIPPED));
  const marked: Marked[] = [];
  const errors: string[] = [];
  const files = named.flatMap(filesIn);
  for (const file of files)
    try {
      marked.push(markFile(file, given, shipped));
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      errors.push(...error.lines);
    }
  const printed = marked.map((one) => ({
    file: one.file,
    ...one.printed,
    differs: withSameCode(one, marked),
  }));
  const isOne = files.length === 1 && files[0] === named[0];
  const text = isOne ? (printed[0] === undefined ? '' : json(printed[0])) : json(printed);
  return { text, errors, exit: errors.length > 0 ? 2 : 0 };
}

const json = (value: unknown): string => JSON.stringify(value, null, 2);

/** A file as it is; of a folder every JSON file in it, by name. */
function filesIn(path: string): readonly string[] {
  if (path === '-' || statSync(path, { throwIfNoEntry: false })?.isDirectory() !== true) return [path];
  const files = readdirSync(path)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => join(path, name));
  if (files.length === 0) throw new BadInput([`${path}: a folder without a .json file`]);
  return files;
}

function scenarioFiles(files: readonly string[]): readonly unknown[] {
  const byId = new Map<string, string>();
  return files.map((file) => {
    const read = parseScenario(readText(file));
    if (!read.ok) throw new BadInput(problemLines(file, read.problems));
    const { id } = read.scenario;
    const before = byId.get(id);
    if (before !== undefined)
      throw new BadInput([`${file}: id: "${id}" is that of ${before} too: which one decides?`]);
    byId.set(id, file);
    return read.file;
  });
}

function markFile(file: string, given: readonly unknown[] | null, shipped: readonly unknown[]): Marked {
  const text = readText(file);
  const read = parseAttempt(text);
  if (!read.ok) throw new BadInput(problemLines(file, read.problems));
  const { attempt } = read.value;
  const decides = given === null ? undefined : withIdOf(attempt, given);
  const held = decides === undefined ? read : toItsEnd(readingAgainst(attempt, decides as object));
  if (!held.ok) throw new BadInput(problemLines(file, held.problems));
  const { scenario } = held.value;
  const origin = originOf(attempt, decides, shipped);
  const marks = mark(scenario, attempt);
  const { total, parts, weights, pass, hurdles, gates, passed, repeats } = marks;
  const { thinking, untimely, differs } = marks;
  const ungiven =
    given !== null && decides === undefined
      ? [`scenario.id: none of the given scenarios is "${origin.id}"`]
      : [];
  return {
    file,
    attempt,
    printed: {
      label: attempt.trainee ?? null,
      scenario: { id: origin.id, sha256: origin.sha256, from: origin.from },
      code: headOf(attempt),
      rung: rungOf(scenario.support, attempt),
      thinking,
      weights,
      pass,
      ...(scenario.own.length === 0 ? {} : { own: scenario.own }),
      ...(scenario.accept.length === 0 ? {} : { accept: scenario.accept }),
      total,
      parts,
      sums: sumsInWords(marks),
      hurdles,
      gates: {
        ...gates,
        critical: gates.critical.map((one) => ({ ...one, act: unsafeActText(one.id) })),
        setAside: scenario.marking.setAside ?? [],
      },
      passed,
      repeats,
      untimely: few(
        untimely.map(({ entry, why }) => `entries[${entry}]: ${UNTIMELY_WORDS[why]}: earns nothing`),
      ),
      differs: few([...ungiven, ...[...origin.differs, ...differs].map(doubtText)]),
    },
  };
}

/** The first of them, and the count of the rest. */
const few = (lines: readonly string[]): readonly string[] =>
  lines.length <= MOST_LISTED
    ? lines
    : [...lines.slice(0, MOST_LISTED), `and ${lines.length - MOST_LISTED} more`];

/** Two files with one code hold one log: it was handed in twice. */
const withSameCode = ({ file, attempt, printed }: Marked, all: readonly Marked[]): readonly string[] => [
  ...printed.differs,
  ...all
    .filter((other) => other.file !== file && headOf(other.attempt) === headOf(attempt))
    .map((other) => `code: that of ${other.file} too`),
];
