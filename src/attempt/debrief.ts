/**
 * What a trainee is told at the end: whether the verdict was right, the gates, where one was sure and wrong, one goal
 * for next time, and below it every line with its truth, reason and source.
 */

import { toItsEnd } from '../bench/toItsEnd.ts';
import { UNSAFE_ACTS } from '../bench/unsafe.ts';
import { entryNamed, faultsAmong } from '../faults/catalogue.ts';
import { FAMILIES } from '../faults/families.ts';
import type { Fault, Tell } from '../faults/fault.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { PARTS } from '../scenario/schema.ts';
import type { Conclusion } from '../scenario/verify.ts';
import { ACTIONS, actionNamed } from '../verification/actions.ts';
import type { Source } from '../verification/sources.ts';
import type { Advice, TestAction } from '../verification/testAction.ts';
import type { Answer, Attempt, EntryOf, Judged, LimitJudged, Sure, Verdict } from './attempt.ts';
import { SURENESS } from './attempt.ts';
import type { Line } from './lines.ts';
import { isRightFigure, testFigures } from './lines.ts';
import type { Marks } from './mark.ts';
import { isGiven, marking } from './mark.ts';
import { conclusionOf, dueSteps } from './reasons.ts';
import { repairedIn } from './repeats.ts';
import type { Run } from './run.ts';
import { rungOf } from './rung.ts';
import type { TruthOfLimit } from './truth.ts';
import { judgedRight, truthOf } from './truth.ts';
import { countingEntries, firstPrediction } from './untimely.ts';

export interface DebriefLine {
  readonly test: string;
  readonly id: string;
  readonly text: string;
  readonly subject: 'unit' | 'circuit';
  readonly predicted: Answer | null;
  readonly right: Answer;
  readonly judged: Judged | null;
  readonly judgement: Judged | null;
  /** Rightly not taken among those that the test tells, where those were to be chosen. */
  readonly leftAlone: boolean;
  /** Of what the test cannot tell: titles of the tests that do. */
  readonly toldBy: readonly string[];
  readonly why: string;
  readonly source: Source;
  /** What it is about: where the line points, or that a test cannot tell. */
  readonly topic: string;
}

/** What lies behind a wrong prediction, by what was said and what is true. */
export const MISCONCEPTIONS = {
  'reads too much': 'takes a test to tell what it cannot',
  'expects a fault': 'expects what must not be',
  'forbids what is sound': 'rules out what a correct unit does',
  'misses what it tells': 'misses what the test does tell',
} as const;
export type Misconception = keyof typeof MISCONCEPTIONS;

/** Wrong lines that one was sure of and that have the same behind them. */
export interface WrongGroup {
  readonly misconception: Misconception;
  readonly topic: string;
  readonly lines: readonly DebriefLine[];
}

export interface DebriefTest {
  readonly test: string;
  readonly title: string;
  readonly done: boolean;
  /** Whether it is marked: a faultless trainee would have done it here. */
  readonly counts: boolean;
  readonly sure: Sure | null;
  /** Its lines were filled in by the page: then nobody predicted them. */
  readonly given: boolean;
  readonly lines: readonly DebriefLine[];
  readonly figures: readonly {
    readonly text: string;
    readonly unit: string;
    readonly said: number | null;
    readonly right: number;
    readonly isRight: boolean;
    readonly why: string;
    readonly source: Source;
  }[];
  readonly limits: readonly (TruthOfLimit & { readonly judged: LimitJudged | null })[];
}

export interface Debrief {
  readonly run: Run;
  readonly marks: Marks;
  readonly verdict: { readonly said: Verdict | null; readonly right: boolean; readonly truth: Conclusion };
  readonly stopped: { readonly action: string; readonly why: string } | null;
  readonly causes: readonly Fault[];
  /** What was to be written down and advised, though nothing was broken by it. */
  readonly advice: readonly Advice[];
  /** What the trainee put right, and whether anything was wrong there. */
  readonly repaired: readonly { readonly title: string; readonly wasWrong: boolean }[];
  readonly due: { readonly next: readonly string[]; readonly tell: readonly Tell[] };
  /** Every test that was due or begun. */
  readonly tests: readonly DebriefTest[];
  /** Predictions made over 80 % sure that were wrong, grouped by misconception, the largest group first. */
  readonly sureAndWrong: readonly WrongGroup[];
  /** The cause that was named over 80 % sure, where it is neither right nor of the right block. */
  readonly wrongCause: string | null;
  /** All predictions were filled in by the page. */
  readonly given: boolean;
  /** How often each sureness was right: right lines of all lines. */
  readonly calibration: readonly { readonly sure: Sure; readonly right: number; readonly of: number }[];
  readonly goal: string;
}

const UNTOLD = 'what a test cannot tell';

export const debriefOf = (scenario: Scenario, attempt: Attempt): Debrief =>
  toItsEnd(debriefing(scenario, attempt));

/** The same in pieces. */
export function* debriefing(scenario: Scenario, attempt: Attempt): Generator<null, Debrief> {
  const { run, expected, whole, marks } = yield* marking(scenario, attempt);
  const due = expected.actions.map(({ action }) => action.id);
  const begun = new Set(attempt.entries.flatMap((entry) => ('test' in entry ? [entry.test] : [])));
  const tests: DebriefTest[] = [];
  for (const action of ACTIONS.filter(({ id }) => due.includes(id) || begun.has(id))) {
    yield null;
    tests.push(debriefTest(run, action, due.includes(action.id)));
  }
  yield null;
  const said = conclusionOf(run)?.verdict ?? null;
  const sureAndWrong = groupedWrong(tests);
  return {
    run,
    marks,
    verdict: { said, right: isRightVerdict(said, whole.conclusion), truth: whole.conclusion },
    stopped: expected.stopped,
    causes: faultsAmong(scenario.faults),
    advice: expected.actions.flatMap(({ advice }) => advice),
    repaired: repairsOf(run),
    due: dueSteps(run, whole),
    tests,
    sureAndWrong,
    given: isGiven(run),
    wrongCause: wrongCauseOf(run, marks),
    calibration: SURENESS.map((sure) => calibrationOf(tests, sure)),
    goal: goalOf(marks, run.repairs.length > 0, sureAndWrong, tests),
  };
}

function repairsOf(run: Run): Debrief['repaired'] {
  const { repaired } = repairedIn(run);
  return run.repairs.map(({ what }) => ({
    title: entryNamed(what)?.title ?? what,
    wasWrong: repaired.some(({ id }) => id === what),
  }));
}

const isRightVerdict = (said: Verdict | null, truth: Conclusion): boolean =>
  said ===
  (truth === 'sound'
    ? 'fit for service'
    : truth === 'not sound'
      ? 'not fit for service'
      : 'could not finish');

function debriefTest(run: Run, action: TestAction, counts: boolean): DebriefTest {
  const locked = firstPrediction(run, action.id);
  const given = locked?.given === true;
  const prediction = given ? undefined : locked;
  const judgement = countingEntries(run, 'judgement', action.id).at(-1);
  const truth = truthOf(run, action);
  return {
    test: action.id,
    title: action.title,
    done: run.samples.some(({ test }) => test === action.id),
    counts,
    sure: prediction?.sure ?? null,
    given,
    lines: truth.lines.map((line) => ({
      test: action.id,
      id: line.id,
      text: line.text,
      subject: line.subject,
      predicted: prediction?.lines.find(({ id }) => id === line.id)?.answer ?? null,
      right: line.right,
      judged: judgement?.lines.find(({ id }) => id === line.id)?.judged ?? null,
      judgement: line.finding === null ? null : judgedRight(line.finding),
      why: line.why,
      source: line.source,
      leftAlone: isLeftAlone(run, line, prediction),
      toldBy: titlesOf(line.toldBy),
      topic: line.points[0] === undefined ? UNTOLD : FAMILIES[line.points[0]],
    })),
    figures: testFigures(run.scenario, action).map((figure) => {
      const { id, text, unit, value, why, source } = figure;
      const said = prediction?.figures.find((f) => f.id === id)?.value ?? null;
      return { text, unit, said, right: value, isRight: isRightFigure(figure, said), why, source };
    }),
    limits: truth.limits.map((limit) => ({
      ...limit,
      judged:
        judgement?.limits.find((l) => l.id === limit.limit.id && l.reading === limit.reading)?.judged ?? null,
    })),
  };
}

/** Where lines are to be chosen, one that the test cannot tell is rightly left without an answer. */
export const isLeftAlone = (
  { scenario, attempt }: Run,
  { id, judged }: Pick<Line, 'id' | 'judged'>,
  prediction: EntryOf<'prediction'> | undefined,
): boolean =>
  rungOf(scenario.support, attempt) === 3 &&
  !judged &&
  prediction?.lines.every((line) => line.id !== id) === true;

export const titlesOf = (tests: readonly string[]): readonly string[] =>
  tests.map((test) => actionNamed(test)?.title ?? test);

const isWrong = ({ predicted, right }: DebriefLine): boolean => predicted !== null && predicted !== right;

function groupedWrong(tests: readonly DebriefTest[]): readonly WrongGroup[] {
  const wrong = tests
    .filter(({ sure }) => sure === 'over 80 %')
    .flatMap(({ lines }) => lines.filter(isWrong))
    .map((line) => ({ line, misconception: misconceptionIn(line) }));
  const keyOf = ({ line, misconception }: (typeof wrong)[number]) => `${misconception} ${line.topic}`;
  return [...new Set(wrong.map(keyOf))]
    .map((key) => {
      const group = wrong.filter((one) => keyOf(one) === key);
      const [first] = group as [(typeof wrong)[number]];
      return {
        misconception: first.misconception,
        topic: first.line.topic,
        lines: group.map(({ line }) => line),
      };
    })
    .sort((x, y) => y.lines.length - x.lines.length);
}

const misconceptionIn = ({ predicted, right }: DebriefLine): Misconception =>
  right === "can't tell"
    ? 'reads too much'
    : predicted === "can't tell"
      ? 'misses what it tells'
      : right === 'should'
        ? 'forbids what is sound'
        : 'expects a fault';

/** Nothing of the diagnosis was earned, and one was sure. */
function wrongCauseOf(run: Run, { parts }: Marks): string | null {
  const conclusion = conclusionOf(run);
  const counts = (run.scenario.marking.weights ?? PARTS).diagnosis > 0;
  if (!counts || conclusion?.sure !== 'over 80 %' || conclusion.cause === null) return null;
  return parts.diagnosis > 0 ? null : (entryNamed(conclusion.cause)?.title ?? 'nothing is wrong');
}

function calibrationOf(tests: readonly DebriefTest[], sure: Sure): Debrief['calibration'][number] {
  const lines = tests
    .filter((test) => test.sure === sure)
    .flatMap((test) => test.lines.filter(({ predicted }) => predicted !== null));
  return { sure, right: lines.filter((line) => !isWrong(line)).length, of: lines.length };
}

/** What would have helped most: safety first, then the verdict, then what one was sure of and wrong. */
function goalOf(
  marks: Marks,
  repaired: boolean,
  sureAndWrong: Debrief['sureAndWrong'],
  tests: readonly DebriefTest[],
): string {
  const [critical] = marks.gates.critical;
  if (critical !== undefined) return UNSAFE_ACTS[critical.id as keyof typeof UNSAFE_ACTS].why;
  if (!marks.gates.verdict)
    return 'Before calling a unit fit, name for every test the finding that allows it.';
  const [worst] = sureAndWrong;
  if (worst !== undefined)
    return `Look again at ${worst.topic}: ${worst.lines.length} of the lines you were sure of were wrong.`;
  const { due, done } = marks.repeats;
  const unrepeated = due.filter((test) => !done.includes(test));
  if (repaired && unrepeated.length > 0)
    return 'After a repair, repeat the failed test and every earlier one that the fault may have influenced, before calling it fit.';
  const undone = tests.filter(({ done, counts }) => counts && !done);
  if (undone.length > 0) return `Do the tests you left out: ${undone.map(({ title }) => title).join('; ')}.`;
  const missed = tests.flatMap(({ lines }) =>
    lines.filter((line) => line.judgement === 'not as it should' && line.judged !== line.judgement),
  );
  if (missed.length > 0)
    return 'Hold every reading against its line before going on: what should not be was passed over.';
  return 'Do the same on a unit you have not seen.';
}
