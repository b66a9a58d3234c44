/**
 * The marks of an attempt, by replay: the same file always gives the same marks, whatever it says of itself. Each part
 * stands in its own file in marks/, with the figures of its sum.
 *
 * Gates are never points: a critical unsafe act, or accepting a unit that cannot be shown to be sound, means not
 * passed; so does a hurdle that is not met. How sure a trainee was is nowhere in it.
 */

import { toItsEnd } from '../../bench/toItsEnd.ts';
import type { UnsafeId } from '../../bench/unsafe.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { allowedActions } from '../../scenario/scenario.ts';
import type { PartName } from '../../scenario/tasks.ts';
import type { Verified, VerifiedAction } from '../../scenario/verify.ts';
import { verifyingOnce } from '../../scenario/verify.ts';
import type { Attempt } from '../record/attempt.ts';
import type { Doubt } from '../record/claims.ts';
import { differences } from '../record/claims.ts';
import type { DueRepeats } from '../record/repeats.ts';
import { repeatsOf } from '../record/repeats.ts';
import type { Run } from '../record/run.ts';
import { entriesAbout, replaying } from '../record/run.ts';
import { rungOf } from '../record/rung.ts';
import type { Untimely } from '../record/untimely.ts';
import { endOf, untimelyIn } from '../record/untimely.ts';
import type { Expected, PartMark } from './counted.ts';
import type { DiagnosisSum } from './diagnosis.ts';
import { diagnosisMark } from './diagnosis.ts';
import type { Hurdle } from './hurdles.ts';
import { hurdlesNotMet } from './hurdles.ts';
import type { JudgementSum } from './judgement.ts';
import { judgementMark } from './judgement.ts';
import { countedOf } from './needed.ts';
import type { ObservationSum } from './observation.ts';
import { observationMark } from './observation.ts';
import { isDone } from './occasions.ts';
import type { PredictionSum } from './prediction.ts';
import { predictionMark } from './prediction.ts';
import type { ReasonsSum } from './reasons.ts';
import { reasonsMark } from './reasons.ts';
import type { RecordSum } from './record.ts';
import { recordMark } from './record.ts';
import { conclusionOf, isRightVerdict, meetsVerdictGate, verdictIsAbout } from './verdict.ts';

export interface CriticalAct {
  readonly entry: number;
  readonly id: UnsafeId;
  /** A tutor's reason for setting this gate aside. */
  readonly setAside: string | null;
}

export interface Sums {
  /** Null where the lines were filled in. */
  readonly prediction: PredictionSum | null;
  readonly observation: ObservationSum;
  readonly judgement: JudgementSum;
  readonly record: RecordSum;
  readonly diagnosis: DiagnosisSum;
  /** Null where nothing was concluded. */
  readonly reasons: ReasonsSum | null;
}

export interface Marks {
  readonly total: number;
  readonly parts: Readonly<Record<PartName, number>>;
  /** What each part is out of: as the scenario weighs them, but nothing for predictions that were given. */
  readonly weights: Readonly<Record<PartName, number>>;
  /** The figures that each part comes about by. */
  readonly sums: Sums;
  /** The total from which it can be passed. */
  readonly pass: number;
  /** Those that are not met. */
  readonly hurdles: readonly Hurdle[];
  readonly gates: { readonly critical: readonly CriticalAct[]; readonly verdict: boolean };
  /** Null where no pass is stated: with the lines filled in, and of one aim. */
  readonly passed: boolean | null;
  /** Trainee's own time up to the conclusion, s; only reported. */
  readonly thinking: number;
  /** Which tests were due to be repeated, which of them were named and which were done. */
  readonly repeats: DueRepeats;
  /** What came too late or too early to count. */
  readonly untimely: readonly Untimely[];
  /** Where the file's own figures differ from the replay. */
  readonly differs: readonly Doubt[];
}

export interface Marking {
  readonly run: Run;
  /** What a faultless trainee finds with the tests that are allowed, on the unit as it was met and as it is at the end. */
  readonly expected: Expected;
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
  const expected = yield* expecting(run);
  const { asNow } = expected;
  const repeats = repeatsOf(run, asNow);
  yield null;
  const prediction = predictionMark(run, expected);
  yield null;
  const observation = observationMark(run, expected);
  yield null;
  const judgement = judgementMark(run, expected);
  yield null;
  const record = recordMark(run, expected);
  yield null;
  const diagnosis = yield* diagnosisMark(run, expected);
  yield null;
  const reasons = reasonsMark(run, expected, repeats);
  yield null;
  const marked = { prediction, observation, judgement, record, diagnosis, reasons };
  const shares = mapped<PartMark<unknown>, number>(marked, ({ share }) => share);
  const asWeighed = scenario.marking.weights;
  const given = isGiven(run);
  const weights = given ? spread(asWeighed, 'prediction') : asWeighed;
  const parts = mapped(shares, (share, part) => oneDigit(weights[part] * share));
  const total = oneDigit(Object.values(parts).reduce((sum, x) => sum + x, 0));
  const hurdles = hurdlesNotMet({
    isRightVerdict: isRightVerdict(run, conclusionOf(run)?.verdict, verdictIsAbout(scenario, expected)),
    shares,
    ofFigures: observation.ofFigures,
    judgement,
    weights,
  });
  const gates = { critical: criticalActs(run), verdict: meetsVerdictGate(run, asNow) };
  const pass = scenario.marking.pass ?? 70;
  const isPassed =
    hurdles.length === 0 &&
    total >= pass &&
    gates.verdict &&
    gates.critical.every(({ setAside }) => setAside !== null);
  const passed = scenario.task === 'aim' || rungOf(scenario.support, attempt) === 1 ? null : isPassed;
  const sums: Sums = {
    prediction: given ? null : prediction.sum,
    observation: observation.sum,
    judgement: judgement.sum,
    record: record.sum,
    diagnosis: diagnosis.sum,
    reasons: reasons.sum,
  };
  const figures = { total, parts, weights, sums, pass, hurdles, gates, passed, repeats };
  const thinking = Math.round((counting.entries.at(-1)?.wall ?? 0) / 1000);
  const differs = differences(run, figures);
  return { run, expected, marks: { ...figures, thinking, untimely: untimelyIn(run), differs } };
}

const mapped = <T, U>(
  of: Readonly<Record<PartName, T>>,
  change: (value: T, part: PartName) => U,
): Readonly<Record<PartName, U>> =>
  Object.fromEntries(
    (Object.entries(of) as [PartName, T][]).map(([part, value]) => [part, change(value, part)]),
  ) as Record<PartName, U>;

function* expecting(run: Run): Generator<null, Expected> {
  const { scenario, world } = run;
  const asMet = yield* verifyingOnce(scenario);
  const asNow = run.repairs.length === 0 ? asMet : yield* verifyingOnce(scenario, { faults: world.faults });
  const due = bothOf(scenario, asMet, asNow).filter(
    ({ action }) => action.optional !== true || isDone(run, action.id),
  );
  return { asMet, asNow, counted: yield* countedOf(run, asMet, due) };
}

/** The tests of either, each as the later of the two finds it. */
const bothOf = (scenario: Scenario, asMet: Verified, asNow: Verified): readonly VerifiedAction[] =>
  asMet === asNow
    ? asMet.actions
    : allowedActions(scenario).flatMap(
        ({ id }) =>
          asNow.actions.find(({ action }) => action.id === id) ??
          asMet.actions.find(({ action }) => action.id === id) ??
          [],
      );

const oneDigit = (x: number): number => Math.round(10 * x) / 10;

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

function criticalActs(run: Run): readonly CriticalAct[] {
  const setAside = new Map(run.scenario.marking.setAside?.map(({ gate, reason }) => [gate, reason]) ?? []);
  return run.unsafe
    .filter(({ critical }) => critical)
    .map(({ entry, id }) => ({ entry, id, setAside: setAside.get(id) ?? null }));
}
