/**
 * Reads a scenario from a value that came out of a file: everything that is wrong with it is said, and where; what is
 * handed over is tried.
 */

import { toItsEnd } from '../bench/toItsEnd.ts';
import '../verification/allLines.ts';
import { onPapers } from '../verification/onPapers.ts';
import type { Replaceable } from '../verification/replaceable.ts';
import { inForce, replaceableIn } from '../verification/replaceable.ts';
import type { Expectation, Papers, TestAction } from '../verification/testAction.ts';
import type { Readable } from './checks.ts';
import { checkScenario, TESTS_OF_FIND, warningsOf } from './checks.ts';
import { handoverFaults } from './handoverFaults.ts';
import { listed } from './problem.ts';
import type { Parsed, Problem } from './problems.ts';
import { check, longLists } from './problems.ts';
import { quoted, shortened } from './quoted.ts';
import type { Scenario } from './scenario.ts';
import {
  allowedActions,
  applicableActions,
  beginning,
  papersOf,
  rightPapers,
  toScenario,
} from './scenario.ts';
import { LONGEST_LIST, scenarioSchema } from './schema.ts';
import { meant, WHERE_LIMITS, WHERE_TESTS } from './tradeNames.ts';

export type ReadScenario =
  | {
      readonly ok: true;
      readonly scenario: Scenario;
      /** The file's own object, to be kept whole in an attempt. */
      readonly file: unknown;
      readonly warnings: readonly Problem[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A scenario from a value that came out of a file. */
export const readScenario = (file: unknown): ReadScenario => toItsEnd(readingScenario(file));

/** The same in pieces: what is handed over is tried, which takes long. */
export function* readingScenario(file: unknown): Generator<null, ReadScenario> {
  if (Array.isArray(file))
    return { ok: false, problems: [{ path: '', message: 'a list does not fit: an object is expected' }] };
  const newer = newerFormat(file, 'scenario');
  if (newer !== null) return newer;
  const long = longLists(file, LONGEST_LIST);
  if (long.length > 0) return { ok: false, problems: listed(long) };
  const parsed = check(scenarioSchema, file);
  if (!parsed.ok)
    return { ok: false, problems: listed([...parsed.problems, ...checkScenario(readable(file))]) };
  const problems = checkScenario(parsed.value);
  if (problems.length > 0) return { ok: false, problems: listed(problems) };
  yield null;
  const scenario = toScenario(parsed.value);
  const inside = [
    ...lineProblems(scenario),
    ...ownProblems(scenario),
    ...fewProblems(scenario),
    ...(yield* handoverProblems(scenario)),
  ];
  if (inside.length > 0) return { ok: false, problems: listed(inside) };
  return { ok: true, scenario, file, warnings: warningsOf(parsed.value, rightPapers(scenario)) };
}

/** The sections that are well formed by themselves, in a file that as a whole is not. */
function readable(file: unknown): Readable {
  if (typeof file !== 'object' || file === null) return {};
  const { clock, task, aim, symptom, site, unit, faults, accept, allowed, marking, handover } =
    scenarioSchema.entries;
  return Object.fromEntries(
    Object.entries({
      clock,
      task,
      aim,
      symptom,
      site,
      unit,
      faults,
      accept,
      allowed,
      marking,
      handover,
    }).flatMap(([name, section]) => {
      const read = check(section, (file as Record<string, unknown>)[name]);
      return read.ok ? [[name, read.value]] : [];
    }),
  );
}

/** A file of a later format is refused before anything else in it is complained of. */
export function newerFormat(file: unknown, kind: string, newest = 1): (Parsed<never> & { ok: false }) | null {
  const format =
    typeof file === 'object' && file !== null ? (file as { format?: unknown }).format : undefined;
  if (typeof format !== 'number' || format <= newest) return null;
  const reads = newest === 1 ? 'format 1' : `formats 1 to ${newest}`;
  const message = `this ${kind} is from a newer version (format ${format}); this version reads ${reads}. Update, or ask for format ${newest}`;
  return { ok: false, problems: [{ path: 'format', message }] };
}

/** Lines asked for that no test of this scenario has. */
function lineProblems(scenario: Scenario): readonly Problem[] {
  const papers = papersOf(scenario);
  const applicable = applicableActions(scenario);
  return Object.entries(scenario.lines).flatMap(([test, wanted]): readonly Problem[] => {
    const action = applicable.find(({ id }) => id === test);
    if (action === undefined) {
      const ids = applicable.map(({ id }) => id);
      return [
        {
          path: `lines.${shortened(test)}`,
          message: `no test action here is named ${quoted(test)}; ${meant(test, ids, WHERE_TESTS)}`,
        },
      ];
    }
    const ids = lineIdsOf(action, papers);
    return wanted
      .filter((id) => !ids.includes(id))
      .map((id) => ({
        path: `lines.${shortened(test)}`,
        message: `no line of it is named ${quoted(id)}; ${meant(id, ids)}`,
      }));
  });
}

/** Figures set in place of others that no test of this scenario has, that are set twice, or that leave no range. */
function ownProblems(scenario: Scenario): readonly Problem[] {
  const papers = papersOf(scenario);
  const all = applicableActions(scenario).flatMap((action) => replaceableIn(action, papers));
  const ids = all.map(({ name }) => name);
  const given = scenario.own.map(({ limit }) => limit);
  const noRange = applicableActions(scenario).flatMap((action) =>
    onPapers(action, papers).expectations.flatMap((line) =>
      upsideDown(line).map((id) => `${action.id}/${id}`),
    ),
  );
  return scenario.own.flatMap(({ limit, value }, i): readonly Problem[] => [
    ...(ids.includes(limit)
      ? []
      : [
          {
            path: `own[${i}].limit`,
            message: `no test here has the limit ${quoted(limit)}; ${meant(limit, ids, WHERE_LIMITS)}`,
          },
        ]),
    ...(noRange.includes(limit)
      ? [{ path: `own[${i}].value`, message: 'the range would end before it begins' }]
      : []),
    ...(all.some((one) => one.name === limit && !mayBe(one, value))
      ? [{ path: `own[${i}].value`, message: 'a figure below 0 is expected for a negative peak alone' }]
      : []),
    ...(given.indexOf(limit) < i
      ? [{ path: `own[${i}].limit`, message: `${quoted(limit)} stands in it already` }]
      : []),
  ]);
}

/** Ranges that end before they begin, once both ends are replaced or one of them is: by the name of an end. */
const upsideDown = (line: Expectation): readonly string[] =>
  (line.states ?? []).flatMap((one, _, states) => {
    const other = states.find(({ id }) => id !== one.id && id === one.id.replace(/-least$/, '-greatest'));
    return other !== undefined && inForce(line, one) > inForce(line, other) ? [one.id, other.id] : [];
  });

/** Below nothing only what is below nothing by the standard: a peak of the pilot's negative half. */
const mayBe = (one: Replaceable, value: number): boolean =>
  value >= 0 || ('figure' in one && one.figure.usual < 0);

/** Of tests that the papers give nothing to test for there is nothing to choose. */
function fewProblems(scenario: Scenario): readonly Problem[] {
  if (scenario.task !== 'find') return [];
  const apply = allowedActions(scenario).map(({ id }) => id);
  if (apply.length >= TESTS_OF_FIND.least) return [];
  const others = (scenario.allowed === 'all' ? [] : scenario.allowed).filter((id) => !apply.includes(id));
  return [
    {
      path: 'allowed',
      message: `${quoted(others.join(', '))} does not apply here: at least ${TESTS_OF_FIND.least} tests that do are expected`,
    },
  ];
}

const lineIdsOf = (action: TestAction, papers: Papers): readonly string[] =>
  [...action.expectations(papers), ...action.untold(papers), ...action.figures(papers)].map(({ id }) => id);

/** What cannot have been done and signed as the file says: it is tried. */
function* handoverProblems(scenario: Scenario): Generator<null, readonly Problem[]> {
  if (scenario.handover === null) return [];
  const tried = yield* beginning(scenario);
  return tried.handedOver === null ? [] : handoverFaults(tried.handedOver, papersOf(scenario));
}
