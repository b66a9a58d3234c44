/**
 * The marks of an attempt, by replay: the same file always gives the same marks, whatever it says of itself.
 *
 * Counted over the tests that a faultless trainee would do here, up to where that trainee stops; and after a repair,
 * over those that the unit as it then is lets be done. Gates are never points: a critical unsafe act, or accepting a
 * unit that is not sound, means not passed.
 */

import { toItsEnd } from '../bench/toItsEnd.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { allowedActions } from '../scenario/scenario.ts';
import type { PartName } from '../scenario/schema.ts';
import { PARTS } from '../scenario/schema.ts';
import type { Verified, VerifiedAction } from '../scenario/verify.ts';
import { verifyingOnce } from '../scenario/verify.ts';
import type { TestAction } from '../verification/testAction.ts';
import type { Attempt, EntryOf } from './attempt.ts';
import { differences } from './claims.ts';
import { gradingDiagnosis } from './diagnosis.ts';
import { isTrueReason } from './leftOut.ts';
import { isRightFigure, linesToChooseFrom, testFigures, testLines } from './lines.ts';
import { conclusionOf, reasonsShare } from './reasons.ts';
import type { DueRepeats } from './repeats.ts';
import { repeatsOf } from './repeats.ts';
import type { Run } from './run.ts';
import { entriesAbout, replaying } from './run.ts';
import { rungOf } from './rung.ts';
import { judgedRight, truthOf } from './truth.ts';
import { readRightly, recordedFully, typedOf } from './typed.ts';
import type { Untimely } from './untimely.ts';
import { countingEntries, endOf, firstPrediction, untimelyIn } from './untimely.ts';

export interface CriticalAct {
  readonly entry: number;
  readonly id: string;
  readonly act: string;
  /** A tutor's reason for setting this gate aside. */
  readonly setAside: string | null;
}

export interface Marks {
  readonly total: number;
  readonly parts: Readonly<Record<PartName, number>>;
  /** What each part is out of: as the scenario weighs them, but nothing for predictions that were given. */
  readonly weights: Readonly<Record<PartName, number>>;
  /** The total from which it can be passed. */
  readonly pass: number;
  readonly gates: { readonly critical: readonly CriticalAct[]; readonly verdict: boolean };
  readonly passed: boolean;
  /** Trainee's own time up to the conclusion, s; only reported. */
  readonly thinking: number;
  /** Which tests were due to be repeated, which of them were named and which were done. */
  readonly repeats: DueRepeats;
  /** What came too late or too early to count. */
  readonly untimely: readonly Untimely[];
  /** Where the file's own figures differ from the replay. */
  readonly differs: readonly string[];
}

export interface Marking {
  readonly run: Run;
  /** What a faultless trainee finds with the tests that are allowed: on the unit as it was met, and further once it was put right. */
  readonly expected: Verified;
  /** What one finds with all tests on the unit as it is at the end: the truth about the verdict. */
  readonly whole: Verified;
  readonly marks: Marks;
}

export const mark = (scenario: Scenario, attempt: Attempt): Marks => markWhole(scenario, attempt).marks;

/** Marks, with what they were worked out from, for the debrief. */
export const markWhole = (scenario: Scenario, attempt: Attempt): Marking =>
  toItsEnd(marking(scenario, attempt));

/** The same in pieces. */
export function* marking(scenario: Scenario, attempt: Attempt): Generator<null, Marking> {
  // Whatever stands after the conclusion is not done once more: with it the attempt ended.
  const counting = { ...attempt, entries: attempt.entries.slice(0, endOf(attempt) + 1) };
  const run = { ...(yield* replaying(scenario, counting)), attempt };
  const asMet = yield* verifyingOnce(scenario);
  const { faults } = run.world;
  const asNow = run.repairs.length === 0 ? asMet : yield* verifyingOnce(scenario, { faults });
  const expected = bothOf(scenario, asMet, asNow);
  const whole =
    scenario.allowed === 'all' ? asNow : yield* verifyingOnce(scenario, { everything: true, faults });
  const repeats = repeatsOf(run, whole);
  yield null;
  const prediction = mean(counted(run, expected).map(({ action }) => predictionShare(run, action)));
  yield null;
  const observation = mean(counted(run, expected).flatMap((done) => observationShare(run, done)));
  yield null;
  const judgement = judgementShare(run, expected);
  yield null;
  const record = recordShare(run, expected);
  yield null;
  const diagnosis = yield* diagnosisShare(run);
  yield null;
  const reasons = reasonsShare(run, whole, repeats);
  yield null;
  const shares: Record<PartName, number> = {
    prediction,
    observation,
    judgement,
    record,
    diagnosis,
    reasons,
  };
  const asWeighed = scenario.marking.weights ?? PARTS;
  const weights = isGiven(run) ? spread(asWeighed, 'prediction') : asWeighed;
  const parts = Object.fromEntries(
    Object.entries(shares).map(([part, share]) => [part, oneDigit(weights[part as PartName] * share)]),
  ) as Record<PartName, number>;
  const total = oneDigit(Object.values(parts).reduce((sum, x) => sum + x, 0));
  const gates = { critical: criticalActs(run), verdict: verdictGate(run, whole) };
  const pass = scenario.marking.pass ?? 70;
  const concluded = conclusionOf(run) !== undefined;
  const passed =
    concluded && total >= pass && gates.verdict && gates.critical.every(({ setAside }) => setAside !== null);
  const figures = { total, parts, weights, pass, gates, passed, repeats };
  const thinking = Math.round((counting.entries.at(-1)?.wall ?? 0) / 1000);
  const differs = differences(run, figures);
  const marks = { ...figures, thinking, untimely: untimelyIn(run), differs };
  return { run, expected, whole, marks };
}

/** The tests of either, each as the later of the two finds it. */
function bothOf(scenario: Scenario, asMet: Verified, asNow: Verified): Verified {
  if (asMet === asNow) return asMet;
  const actions = allowedActions(scenario).flatMap(
    ({ id }) =>
      asNow.actions.find(({ action }) => action.id === id) ??
      asMet.actions.find(({ action }) => action.id === id) ??
      [],
  );
  return { ...asMet, actions };
}

/** The tests that count: an optional one only where it was done. */
const counted = (run: Run, { actions }: Verified): readonly VerifiedAction[] =>
  actions.filter(
    ({ action }) => action.optional !== true || run.samples.some(({ test }) => test === action.id),
  );

const oneDigit = (x: number): number => Math.round(10 * x) / 10;
const mean = (xs: readonly number[]): number =>
  xs.length === 0 ? 1 : xs.reduce((sum, x) => sum + x, 0) / xs.length;

/** Whether the page filled all predictions in, as it does on the first rung. */
export const isGiven = ({ scenario, attempt }: Run): boolean =>
  rungOf(scenario.support, attempt) === 1 &&
  entriesAbout(attempt, 'prediction').every(({ given }) => given === true);

/** The weight of one part spread over the others in proportion, to a tenth; the sum stays as it was. */
function spread(weights: Readonly<Record<PartName, number>>, away: PartName): Record<PartName, number> {
  const whole = Object.values(weights).reduce((sum, x) => sum + x, 0);
  const others = whole - weights[away];
  let upTo = 0;
  return Object.fromEntries(
    Object.entries(weights).map(([part, weight]) => {
      if (part === away || others === 0) return [part, 0];
      const before = oneDigit((upTo * whole) / others);
      upTo += weight;
      return [part, oneDigit(oneDigit((upTo * whole) / others) - before)];
    }),
  ) as Record<PartName, number>;
}

/** First prediction of a test: share of its lines and figures that were right. */
function predictionShare(run: Run, action: TestAction): number {
  const first = firstPrediction(run, action.id);
  if (first === undefined || first.given === true) return 0;
  if (rungOf(run.scenario.support, run.attempt) === 3) return chosenShare(run, action, first);
  const answers = new Map(first.lines.map(({ id, answer }) => [id, answer]));
  const values = new Map(first.figures.map(({ id, value }) => [id, value]));
  return mean([
    ...testLines(run.scenario, action).map((line) => (answers.get(line.id) === line.right ? 1 : 0)),
    ...testFigures(run.scenario, action).map((figure) =>
      isRightFigure(figure, values.get(figure.id)) ? 1 : 0,
    ),
  ]);
}

/**
 * Where the lines that matter were chosen: each line that the test tells, and each figure, counts one if it is right.
 * A line that it cannot tell is rightly left alone or answered so; answered otherwise it costs one.
 */
function chosenShare(run: Run, action: TestAction, first: EntryOf<'prediction'>): number {
  const answers = new Map(first.lines.map(({ id, answer }) => [id, answer]));
  const values = new Map(first.figures.map(({ id, value }) => [id, value]));
  const lines = linesToChooseFrom(run.scenario, action);
  const figures = testFigures(run.scenario, action);
  const told = lines.filter(({ judged }) => judged);
  const untold = lines.filter(({ judged }) => !judged);
  const of = told.length + figures.length;
  const right =
    told.filter(({ id, right: answer }) => answers.get(id) === answer).length +
    figures.filter((figure) => isRightFigure(figure, values.get(figure.id))).length;
  const wrong = untold.filter(({ id, right: answer }) => (answers.get(id) ?? answer) !== answer).length;
  return of === 0 ? (wrong === 0 ? 1 : 0) : Math.max(0, right - wrong) / of;
}

/** Share of a test's readings typed as shown; a test with something to read and nothing read counts as none. */
function observationShare(run: Run, done: VerifiedAction): readonly number[] {
  const typed = typedOf(run);
  const own = run.readings
    .map((taken, index) => ({ taken, entry: typed.get(index) }))
    .filter(({ taken, entry }) => taken.test === done.action.id && isToBeTyped(run, taken, entry));
  if (own.length === 0) return hasReadings(done) ? [0] : [];
  return [mean(own.map(({ taken, entry }) => (entry !== undefined && readRightly(entry, taken) ? 1 : 0)))];
}

/** Of the many pairs of one proving, one figure is typed; any one typed stands for all. */
function isToBeTyped(
  run: Run,
  taken: Run['readings'][number],
  entry: EntryOf<'observation'> | undefined,
): boolean {
  const operation = run.attempt.entries[taken.entry];
  const proving = operation?.kind === 'operation' && operation.operation.op === 'prove-dead';
  if (!proving || entry !== undefined) return true;
  const typed = typedOf(run);
  return !run.readings.some((other, i) => other.entry === taken.entry && typed.has(i));
}

const hasReadings = ({ run }: VerifiedAction): boolean =>
  run.samples.some(({ readings }) => readings.length > 0);

/** Mean of the rates at which what is right was accepted and what is wrong was rejected. */
function judgementShare(run: Run, expected: Verified): number {
  const accept: number[] = [];
  const reject: number[] = [];
  for (const done of counted(run, expected)) {
    const last = countingEntries(run, 'judgement', done.action.id).at(-1);
    if (last === undefined) {
      const asked = testLines(run.scenario, done.action).map(({ id }) => id);
      for (const { expectation, finding } of done.expectations)
        if (asked.includes(expectation.id)) (finding === 'broken' ? reject : accept).push(0);
      for (const { pass } of done.limits) (pass ? accept : reject).push(0);
      continue;
    }
    const truth = truthOf(run, done.action);
    const lines = new Map(last.lines.map(({ id, judged }) => [id, judged]));
    for (const line of truth.lines)
      if (line.finding !== null)
        (line.finding === 'broken' ? reject : accept).push(lines.get(line.id) === judgedRight(line) ? 1 : 0);
    for (const { limit, reading, right } of truth.limits) {
      const judged = last.limits.find((l) => l.id === limit.id && l.reading === reading)?.judged;
      (right === 'outside' ? reject : accept).push(judged === right ? 1 : 0);
    }
  }
  return mean([...(accept.length > 0 ? [mean(accept)] : []), ...(reject.length > 0 ? [mean(reject)] : [])]);
}

/** Share of typed readings recorded with all that belongs to them, and of left-out tests with a reason. */
function recordShare(run: Run, expected: Verified): number {
  const typed = typedOf(run);
  const readings = run.readings.flatMap((taken, i) => {
    const entry = typed.get(i);
    return entry === undefined || taken.test === null ? [] : [recordedFully(entry, taken) ? 1 : 0];
  });
  const leftOut = counted(run, expected)
    .filter(({ action }) => !run.samples.some(({ test }) => test === action.id))
    .map(({ action }) =>
      countingEntries(run, 'record', action.id).some((entry) => isTrueReason(run, entry)) ? 1 : 0,
    );
  const all = [...readings, ...leftOut];
  return all.length === 0 ? 0 : mean(all);
}

function* diagnosisShare(run: Run): Generator<null, number> {
  const conclusion = conclusionOf(run);
  if (conclusion === undefined) return 0;
  const grade = yield* gradingDiagnosis(run, conclusion.cause, conclusion.family);
  return { right: 1, block: 0.5, wrong: 0 }[grade];
}

function criticalActs(run: Run): readonly CriticalAct[] {
  const setAside = new Map(run.scenario.marking.setAside?.map(({ gate, reason }) => [gate, reason]) ?? []);
  return run.unsafe
    .filter(({ critical }) => critical)
    .map(({ entry, id, act }) => ({ entry, id, act, setAside: setAside.get(id) ?? null }));
}

/** Met unless a unit that is not sound was called fit for service. */
const verdictGate = (run: Run, whole: Verified): boolean =>
  conclusionOf(run)?.verdict !== 'fit' || whole.conclusion !== 'not sound';
