/** The verb `mark`: attempts replayed and marked, each with the scenario that decides and where that is from. */
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { mark } from '../attempt/marks/mark.ts';
import type { Attempt } from '../attempt/record/attempt.ts';
import { headOf } from '../attempt/record/attempt.ts';
import { parseAttempt, readingAgainst } from '../attempt/record/file.ts';
import { idOf, originOf } from '../attempt/record/origin.ts';
import { rungOf } from '../attempt/record/rung.ts';
import { toItsEnd } from '../bench/toItsEnd.ts';
import { classOf } from '../desk/class.ts';
import type { Refused, Row } from '../desk/collect.ts';
import { Copies, collecting } from '../desk/collect.ts';
import { csvOf } from '../desk/csv.ts';
import type { Came } from '../desk/zip.ts';
import { MOST_LISTED } from '../scenario/problem.ts';
import { filesFor } from '../words/aimJobs.ts';
import { csvRows, whyNotMarked } from '../words/collect.ts';
import { doubtText, UNTIMELY_WORDS } from '../words/doubts.ts';
import { sumsInWords } from '../words/sums.ts';
import { unsafeActText } from '../words/unsafeActs.ts';
import { cameFrom, filesIn } from './came.ts';
import { BadInput, problemLines } from './files.ts';
import type { Deciding } from './given.ts';
import { comparedIn, decidingFile, decidingIn } from './given.ts';

const SHIPPED = fileURLToPath(new URL('../../scenarios', import.meta.url));

interface Marked {
  readonly file: string;
  readonly attempt: Attempt;
  readonly printed: Readonly<Record<string, unknown>> & { readonly differs: readonly string[] };
}

interface Printed {
  readonly text: string;
  readonly errors: readonly string[];
  readonly exit: number;
}

const shippedFiles = (): readonly object[] => comparedIn(filesIn(SHIPPED).filter(isOfTop));

/** Those that are offered; the benches of the first run lie a folder deeper. */
const isOfTop = (path: string): boolean => dirname(path) === SHIPPED.replace(/[/\\]$/, '');

/** `against`: what decides in place of the scenarios that the attempts carry; null: those. Files, folders and zips. */
export function markFiles(named: readonly string[], against: readonly string[] | null): Printed {
  const shipped = shippedFiles();
  const given = against === null ? null : decidingIn(against.flatMap(filesIn), shipped);
  const marked: Marked[] = [];
  const errors: string[] = [];
  const files = named.flatMap(filesIn);
  for (const came of cameFrom(files))
    try {
      if (came instanceof BadInput) throw came;
      if ('problem' in came) throw new BadInput([`${came.name}: ${whyNotMarked(asRefused(came))}`]);
      marked.push(markText(came.name, came.text, given, shipped));
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      errors.push(...error.lines);
    }
  const printed = marked.map((one) => ({
    file: one.file,
    ...one.printed,
    differs: withSameCode(one, marked),
  }));
  const isOne = files.length === 1 && files[0] === named[0] && printed[0]?.file === files[0];
  const text = isOne ? json(printed[0]) : printed.length === 0 && files.length === 1 ? '' : json(printed);
  return { text, errors, exit: errors.length > 0 ? 2 : 0 };
}

const asRefused = ({ name, problem }: Extract<Came, { problem: unknown }>): Refused => ({
  kind: 'refused',
  name,
  label: null,
  why: problem,
});

/** The class as a table: a row each, none left out; what was not marked says why there and on standard error. */
export function markCsv(named: readonly string[], against: readonly string[] | null): Printed {
  const shipped = shippedFiles();
  const given = decidingIn((against ?? []).flatMap(filesIn), shipped);
  const copies = new Copies(given.givings, shipped, given.scenarios);
  const rows: Row[] = [];
  const errors: string[] = [];
  for (const came of cameFrom(named.flatMap(filesIn))) {
    if (came instanceof BadInput) {
      errors.push(...came.lines);
      continue;
    }
    const row = toItsEnd(collecting(came, copies));
    rows.push(row);
    if (row.kind === 'refused') errors.push(`${row.name}: ${whyNotMarked(row)}`);
  }
  const made = classOf(
    rows,
    given.givings.map(({ giving }) => giving),
  );
  // Lines end as the terminal's do.
  const text = csvOf(csvRows(made.rows, made.sets)).replaceAll('\r\n', '\n').trimEnd();
  return { text, errors, exit: errors.length > 0 ? 2 : 0 };
}

const json = (value: unknown): string => JSON.stringify(value, null, 2);

function markText(file: string, text: string, given: Deciding | null, shipped: readonly unknown[]): Marked {
  const read = parseAttempt(text);
  if (!read.ok) throw new BadInput(problemLines(file, read.problems));
  const { attempt } = read.value;
  const decides = given === null ? undefined : decidingFile(attempt, given);
  const held = decides === undefined ? read : toItsEnd(readingAgainst(attempt, decides));
  if (!held.ok) throw new BadInput(problemLines(file, held.problems));
  const { scenario } = held.value;
  const origin = originOf(attempt, decides, filesFor(idOf(attempt.scenario), shipped));
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
