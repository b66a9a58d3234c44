/**
 * Diagnosis: full for the fault, for what a sufficient set of tests could not tell from it, or for what the scenario
 * accepts in its place; half for the right
 * block; by share with several faults. Nothing where no test that was done broke a line or limit that points to the
 * fault's block: a cause that was guessed from the papers is none that was found. That nothing is wrong is worth as
 * much as was tested; where a symptom is told and its papers say why, half of that without what they say.
 */

import type { Operation } from '../../bench/operation.ts';
import type { Outcome } from '../../bench/perform.ts';
import { perform } from '../../bench/perform.ts';
import type { FaultChoice } from '../../faults/catalogue.ts';
import { entryNamed, faultsAmong } from '../../faults/catalogue.ts';
import type { Family } from '../../faults/families.ts';
import type { CatalogueEntry, Fault } from '../../faults/fault.ts';
import { seconds } from '../../laws/quantities.ts';
import type { Beginning, Scenario } from '../../scenario/scenario.ts';
import { allowedActions, beginning } from '../../scenario/scenario.ts';
import type { Verified, VerifiedAction } from '../../scenario/verify.ts';
import { judgeEachLimit } from '../../verification/assess.ts';
import { onPapers } from '../../verification/onPapers.ts';
import type { TestAction } from '../../verification/testAction.ts';
import { oncePerRun } from '../record/once.ts';
import { doneIn } from '../record/places.ts';
import type { Run } from '../record/run.ts';
import { replaying } from '../record/run.ts';
import type { Expected, PartMark, Rate } from './counted.ts';
import { doneOf, shareOf } from './counted.ts';
import { isDone } from './occasions.ts';
import { alikeReadings, sameToTheBench } from './telling.ts';
import { conclusionOf } from './verdict.ts';

/** The answer that nothing is wrong. */
export const NOTHING = 'nothing';

/** From the best to the worst. */
const RANK = ['right', 'block', 'guessed', 'wrong'] as const;
export type Grade = (typeof RANK)[number];
/** What was said: nothing, that nothing is wrong (rightly, or although something is), causes (or though nothing is). */
export type DiagnosisSum =
  | { readonly said: 'none' | 'something is wrong' | 'nothing is wrong' }
  | { readonly said: 'nothing'; readonly done: Rate }
  /** Of a symptom that is as designed: what it is by the papers, nothing, or something else. */
  | { readonly said: 'as designed'; readonly grade: Grade; readonly done: Rate }
  | { readonly said: 'causes'; readonly grades: readonly Grade[]; readonly faults: number };

const WORTH: Readonly<Record<Grade, number>> = { right: 1, block: 0.5, guessed: 0, wrong: 0 };

interface Named {
  readonly cause: string | null;
  readonly family: string | null;
}

/** In pieces, one an operation: what reads the same is found out by doing it all once more. */
export function* diagnosisMark(run: Run, expected: Expected): Generator<null, PartMark<DiagnosisSum>> {
  const conclusion = conclusionOf(run);
  if (conclusion === undefined) return { share: 0, sum: { said: 'none' } };
  const said: readonly Named[] = [conclusion, ...(conclusion.others ?? [])];
  const faults = faultsAmong(run.scenario.faults);
  const isFind = run.scenario.task === 'find';
  if (isFind && faults.length === 0 && notFaultsOf(run.scenario).length > 0)
    return asDesigned(run, expected, said);
  // That it is as designed points to no block.
  const named = isFind ? said.map(withoutBlock) : said;
  if (named.every(({ cause }) => cause === NOTHING)) {
    const isRight =
      faults.length === 0 ||
      (expected.asMet.conclusion !== 'not sound' && (yield* readsTheSame(run, expected, [])));
    return isRight ? nothingWrong(run, expected) : { share: 0, sum: { said: 'something is wrong' } };
  }
  if (faults.length === 0) return { share: 0, sum: { said: 'nothing is wrong' } };
  const met = yield* asMet(run);
  const pointed = familiesPointedTo(met);
  const due = faultsShown(run.scenario, expected.asMet, pointed);
  const grades = yield* gradesOf(met, expected, due, named, pointed);
  const earned = grades.reduce((sum, grade) => sum + WORTH[grade], 0);
  // Naming more than there is earns no more: what is needless costs a share too.
  return {
    share: earned / Math.max(due.length, named.length),
    sum: { said: 'causes', grades, faults: due.length },
  };
}

/** Each that was named stands for one fault: of those not yet hit, the one that it hits best. */
function* gradesOf(
  met: Run,
  expected: Expected,
  faults: readonly Fault[],
  named: readonly Named[],
  pointed: ReadonlySet<Family>,
): Generator<null, readonly Grade[]> {
  const grades: Grade[] = [];
  const hit = new Set<Fault>();
  for (const one of named) {
    const tried: { readonly fault: Fault; readonly grade: Grade }[] = [];
    for (const fault of faults)
      if (!hit.has(fault)) tried.push({ fault, grade: yield* gradeOf(met, expected, fault, one, pointed) });
    const [best] = tried.toSorted((x, y) => RANK.indexOf(x.grade) - RANK.indexOf(y.grade));
    grades.push(best?.grade ?? 'wrong');
    if (best !== undefined && WORTH[best.grade] > 0) hit.add(best.fault);
  }
  return grades;
}

const isNotFault = (id: string | null): boolean => id !== null && entryNamed(id)?.kind === 'not-fault';

/** What of a scenario stands in its papers and is right, though it is often taken for wrong. */
export const notFaultsOf = ({ faults }: Scenario): readonly CatalogueEntry[] =>
  faults.flatMap(({ fault }) => (isNotFault(fault) ? (entryNamed(fault) ?? []) : []));

const withoutBlock = ({ cause, family }: Named): Named => ({
  cause,
  family: isNotFault(cause) ? null : family,
});

function asDesigned(run: Run, expected: Expected, named: readonly Named[]): PartMark<DiagnosisSum> {
  const designed = notFaultsOf(run.scenario).map(({ id }) => id);
  const isOf = ({ cause }: Named) => cause !== null && designed.includes(cause);
  const isNothing = named.every(({ cause }) => cause === NOTHING);
  const grade: Grade = named.every(isOf) ? 'right' : isNothing ? 'block' : 'wrong';
  const done = doneOf(run, expected);
  return { share: WORTH[grade] * shareOf(done), sum: { said: 'as designed', grade, done } };
}

function nothingWrong(run: Run, expected: Expected): PartMark<DiagnosisSum> {
  const done = doneOf(run, expected);
  return { share: shareOf(done), sum: { said: 'nothing', done } };
}

function* gradeOf(
  met: Run,
  expected: Expected,
  fault: Fault,
  { cause, family }: Named,
  pointed: ReadonlySet<Family>,
): Generator<null, Grade> {
  if (!pointed.has(fault.family)) return 'guessed';
  if (cause === fault.id || (cause !== null && met.scenario.accept.includes(cause))) return 'right';
  if (cause !== null && (yield* isLookalike(met, expected, fault, cause))) return 'right';
  return family === fault.family ? 'block' : 'wrong';
}

/** Where the tests lead that were done before anything was put right. */
export function* pointedAsMet(run: Run): Generator<null, ReadonlySet<Family>> {
  return familiesPointedTo(yield* asMet(run));
}

/** The attempt up to the first repair: a diagnosis is about the unit as it was met. */
function* asMet(run: Run): Generator<null, Run> {
  const [first] = run.repairs;
  if (first === undefined) return run;
  return yield* replaying(run.scenario, {
    ...run.attempt,
    entries: run.attempt.entries.slice(0, first.entry),
  });
}

/**
 * The faults' families to which a line or limit leads that the tests which were done broke, by what the instruments
 * showed. Where else these lead decides nothing.
 */
const familiesPointedTo = oncePerRun((run: Run): ReadonlySet<Family> => {
  const families = new Set(faultsAmong(run.scenario.faults).map(({ family }) => family));
  const tests = allowedActions(run.scenario).filter(({ id }) => isDone(run, id));
  return new Set([...families].filter((family) => tests.some((test) => pointsTo(run, test, family))));
});

function pointsTo(run: Run, test: TestAction, family: Family): boolean {
  const observed = { samples: doneIn(run, test.id).map(({ sample }) => sample) };
  const { expectations, limits } = onPapers(test, run.papers);
  const leads = ({ points }: { readonly points: readonly Family[] }) => points.includes(family);
  return (
    expectations.some((one) => leads(one) && one.judge(observed) === 'broken') ||
    judgeEachLimit(limits.filter(leads), observed).some(({ pass }) => !pass)
  );
}

const pointedBy = (judged: readonly Pick<VerifiedAction, 'expectations' | 'limits'>[]): ReadonlySet<Family> =>
  new Set(
    judged.flatMap(({ expectations, limits }) => [
      ...expectations
        .filter(({ finding }) => finding === 'broken')
        .flatMap(({ expectation }) => expectation.points),
      ...limits.filter(({ pass }) => !pass).flatMap(({ limit }) => limit.points),
    ]),
  );

/**
 * The faults that can be named: those in blocks to which the tests of a faultless trainee lead, up to where that one
 * stops, or the trainee's own; all of them where no test leads to any.
 */
export function faultsShown(
  { faults }: Scenario,
  { actions }: Verified,
  own: ReadonlySet<Family> = new Set(),
): readonly Fault[] {
  const all = faultsAmong(faults);
  const pointed = pointedBy(actions);
  const shown = all.filter(({ family }) => pointed.has(family) || own.has(family));
  return shown.length > 0 ? shown : all;
}

/** Whether this cause in the fault's place would have read the same, in one severity or another. */
function* isLookalike(met: Run, expected: Expected, fault: Fault, cause: string): Generator<null, boolean> {
  const entry = entryNamed(cause);
  // A wrong design stands in the papers: nothing else reads like it, and it like nothing else.
  if (entry?.kind !== 'fault' || entry.alter !== undefined || fault.alter !== undefined) return false;
  for (const values of severities(entry)) {
    const faults = met.scenario.faults.map((choice) =>
      choice.fault === fault.id ? { fault: cause, values } : choice,
    );
    if (isPossible(met, faults) && (yield* readsTheSame(met, expected, faults))) return true;
  }
  return false;
}

/**
 * With these faults in place of the true ones: no difference that the bench could tell, neither in what was done nor in
 * all that is allowed, nor on the sheet that was handed over.
 */
function* readsTheSame(
  { scenario, samples }: Run,
  { asMet: whole }: Expected,
  faults: readonly FaultChoice[],
): Generator<null, boolean> {
  const own = samples.map(({ sample }) => sample.operation);
  const sufficient = whole.actions.flatMap(({ run }) => run.samples.map(({ operation }) => operation));
  return (yield* actsAlike(scenario, faults, own)) && (yield* actsAlike(scenario, faults, sufficient));
}

/** Acts the same operations out on the unit as it is and with these faults, as far as the bench shows no difference. */
function* actsAlike(
  scenario: Scenario,
  faults: readonly FaultChoice[],
  operations: readonly Operation[],
): Generator<null, boolean> {
  const [truth, other] = [yield* beginning(scenario), yield* beginning(scenario, faults)];
  if (!sameSheet(truth, other)) return false;
  for (const operation of operations) {
    yield null;
    const [x, y] = [acted(truth, operation), acted(other, operation)];
    if (!sameToTheBench(x.outcome, y.outcome, { x: x.began, y: y.began })) return false;
  }
  return true;
}

function acted({ world }: Beginning, operation: Operation): { outcome: Outcome; began: number } {
  const began = seconds(world.timeline.now);
  return { outcome: perform(world, operation), began };
}

/** What was handed over as done holds the readings that its instruments showed. */
function sameSheet(truth: Beginning, other: Beginning): boolean {
  const readings = ({ handedOver }: Beginning) =>
    handedOver?.steps.flatMap(({ outcome }) => outcome.readings) ?? [];
  const [x, y] = [readings(truth), readings(other)];
  return (
    x.length === y.length &&
    x.every((reading, i) => {
      const twin = y[i];
      return twin !== undefined && alikeReadings(reading, twin);
    })
  );
}

/** The parameter's range in a few steps. */
function severities(entry: CatalogueEntry): readonly FaultChoice['values'][] {
  const [parameter] = entry.parameters;
  if (parameter === undefined) return [{}];
  const { name, min, max } = parameter;
  return [0, 0.02, 0.05, 0.1, 0.2, 0.4, 0.7, 1].map((share) => ({
    [name]: Math.round(1000 * (min + share * (max - min))) / 1000,
  }));
}

const isPossible = ({ papers }: Run, faults: readonly FaultChoice[]): boolean =>
  faults.every(({ fault, values }) => {
    const entry = entryNamed(fault);
    return entry?.kind !== 'fault' || (entry.impossible?.(papers, values) ?? null) === null;
  });
