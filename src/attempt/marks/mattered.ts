/**
 * What mattered most in an attempt, the weightiest first: safety and the verdict, then what one was sure of and wrong in,
 * what was misjudged and misread, and what was left out. The first of it is the goal for next time. In ids and readings;
 * the sentences are the screen's (src/words/mattered.ts).
 */
import type { UnsafeId } from '../../bench/unsafe.ts';
import type { LimitJudged } from '../record/attempt.ts';
import type { Taken } from '../record/run.ts';
import { lastSitting, readingsIn } from '../record/sitting.ts';
import type { TruthOfLimit } from '../record/truth.ts';
import type { Typed } from '../record/typed.ts';
import { asTyped, readRightly, typedOf } from '../record/typed.ts';
import type { Debrief, DebriefLine, DebriefTest, WrongGroup } from './debrief.ts';
import type { Showing } from './showing.ts';

/** A reading as it was written down. */
type Written = ReturnType<typeof asTyped>;

export type Mattered =
  | { readonly what: 'critical act'; readonly act: UnsafeId; readonly test: string | null }
  /** Called fit, and was not shown to be sound; where it first shows, if it does, and whether that test was done. */
  | { readonly what: 'called fit'; readonly showing: Showing | null; readonly done: boolean }
  | { readonly what: 'verdict' }
  | { readonly what: 'wrong cause'; readonly cause: string; readonly showing: Showing | null }
  /** A prediction; `written` is what was then written down in that test. */
  | { readonly what: 'wrong line'; readonly line: DebriefLine; readonly written: readonly Written[] }
  | { readonly what: 'misjudged line'; readonly line: DebriefLine; readonly written: readonly Written[] }
  | {
      readonly what: 'misjudged limit';
      readonly test: string;
      readonly limit: TruthOfLimit;
      readonly judged: LimitJudged;
    }
  | { readonly what: 'misread'; readonly test: string; readonly taken: Taken; readonly typed: Typed }
  | { readonly what: 'repeats'; readonly tests: readonly string[] }
  | { readonly what: 'tests left out'; readonly tests: readonly string[] };

/** The tests that it speaks of, by their ids. */
export function testsOf(one: Mattered | null): readonly string[] {
  if (one === null) return [];
  if ('line' in one) return [one.line.test];
  if ('tests' in one) return one.tests;
  return 'test' in one && one.test !== null ? [one.test] : [];
}

/** All of it, in that order; nothing where nothing that counts was wrong. */
export function mattered(told: Debrief): readonly Mattered[] {
  const counted = told.tests.filter(({ counts }) => counts);
  const all: readonly Mattered[] = [
    ...criticalActs(told),
    ...verdictMattered(told),
    ...worstOf(told, told.sureAndWrong),
    ...(told.wrongCause === null
      ? []
      : [{ what: 'wrong cause' as const, cause: told.wrongCause, showing: showingNow(told) }]),
    ...counted.flatMap(misjudgedLimits),
    ...counted.flatMap((test) => misjudgedLines(told, test)),
    ...misread(told, counted),
    ...repeatsLeft(told),
    ...leftOut(counted),
    ...worstOf(told, told.unsureAndWrong),
  ];
  // One of a kind and a test: three of the same say less than three.
  return all.filter((one, i) => all.findIndex((other) => kindOf(other) === kindOf(one)) === i);
}

const kindOf = (one: Mattered): string =>
  `${one.what} ${'line' in one ? one.line.test : 'test' in one ? one.test : ''}`;

/** One of each kind of act, the first. */
function criticalActs({ marks, run }: Debrief): readonly Mattered[] {
  const { critical } = marks.gates;
  return critical
    .filter(({ id, setAside }, i) => setAside === null && critical.findIndex((one) => one.id === id) === i)
    .map(({ id, entry }) => {
      const done = run.attempt.entries[entry];
      const test = done !== undefined && 'test' in done ? done.test : null;
      return { what: 'critical act', act: id as UnsafeId, test };
    });
}

function verdictMattered(told: Debrief): readonly Mattered[] {
  const { marks, verdict } = told;
  if (!marks.gates.verdict) {
    const showing = showingNow(told);
    const done = told.tests.some((test) => test.test === showing?.test && test.done);
    return [{ what: 'called fit', showing, done }];
  }
  return verdict.right ? [] : [{ what: 'verdict' }];
}

/** Where it shows was worked out on the unit as it was met: after a repair that says nothing of the one called fit. */
const showingNow = ({ showing, run }: Debrief): Showing | null => (run.repairs.length === 0 ? showing : null);

/** Of lines with the same behind them one, and those first in which this very unit is not as it should be. */
const worstOf = ({ run }: Debrief, groups: readonly WrongGroup[]): readonly Mattered[] =>
  groups
    .flatMap(({ lines }) => lines.toSorted(brokenFirst).slice(0, 1))
    .toSorted(brokenFirst)
    .map((line) => ({ what: 'wrong line', line, written: writtenIn(run, line.test) }));

const brokenFirst = (x: DebriefLine, y: DebriefLine): number => Number(y.isBroken) - Number(x.isBroken);

const misjudgedLimits = ({ test, limits }: DebriefTest): readonly Mattered[] =>
  limits.flatMap((limit) =>
    limit.judged === null || limit.judged === limit.right
      ? []
      : [{ what: 'misjudged limit' as const, test, limit, judged: limit.judged }],
  );

/** Those in which something wrong was passed over before all others. */
const misjudgedLines = ({ run }: Debrief, { test, lines }: DebriefTest): readonly Mattered[] =>
  lines
    .filter(({ judged, judgement }) => judged !== null && judgement !== null && judged !== judgement)
    .toSorted(brokenFirst)
    .map((line) => ({ what: 'misjudged line', line, written: writtenIn(run, test) }));

function misread({ run }: Debrief, counted: readonly DebriefTest[]): readonly Mattered[] {
  const tests = counted.map(({ test }) => test);
  return [...typedOf(run)].flatMap(([index, typed]): readonly Mattered[] => {
    const taken = run.readings[index];
    if (taken === undefined || !tests.includes(typed.test) || readRightly(typed, taken)) return [];
    return [{ what: 'misread', test: typed.test, taken, typed }];
  });
}

function repeatsLeft({ repaired, marks }: Debrief): readonly Mattered[] {
  const { due, done } = marks.repeats;
  const tests = due.filter((test) => !done.includes(test));
  return repaired.length > 0 && tests.length > 0 ? [{ what: 'repeats', tests }] : [];
}

function leftOut(counted: readonly DebriefTest[]): readonly Mattered[] {
  const tests = counted.filter(({ done }) => !done).map(({ test }) => test);
  return tests.length === 0 ? [] : [{ what: 'tests left out', tests }];
}

/** What was written down in the last sitting of a test, as it was written. */
function writtenIn(run: Debrief['run'], test: string): readonly Written[] {
  const typed = typedOf(run);
  return readingsIn(run, lastSitting(run, test)).flatMap(({ reading, index }) => {
    const entry = typed.get(index);
    return entry === undefined ? [] : [asTyped(reading, entry)];
  });
}
