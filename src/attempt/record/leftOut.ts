/**
 * Which reasons for leaving a test out are true of it in an attempt. They rest on the papers, the job and what the
 * trainee has found and written down, never on what is truly wrong: a reason is what could be known.
 */
import type { Reading } from '../../bench/reading.ts';
import { entryNamed } from '../../faults/catalogue.ts';
import { actionNamed } from '../../verification/actions.ts';
import { showsVoltage } from '../../verification/judging.ts';
import { gaveNoSupply, ofOutletLine } from '../../verification/noSupply.ts';
import type { Expectation, TestAction } from '../../verification/testAction.ts';
import { testsToRepeat } from '../../verification/testsToRepeat.ts';
import type { EntryOf, LeftOut } from './attempt.ts';
import { IN_WORDS } from './attempt.ts';
import type { Run } from './run.ts';
import { lastSitting } from './sitting.ts';
import { truthOf } from './truth.ts';
import { observedAsTyped } from './typed.ts';
import { isConverted } from './written.ts';

/**
 * - `not-applicable`: the papers give it nothing to test;
 * - `not-allowed`: the job does not have it among its tests;
 * - `handed-over`: it was handed over as done, and nothing that it rests on was put right since;
 * - `not-asked`: no document asks for it;
 * - `not-safe`: a finding, as written down, forbids to go on to it; dead tests are forbidden by a failing tester alone;
 * - `no-supply`: it tells nothing of an outlet that is not supplied, and the unit, asked rightly after a reset, gave none;
 * - `no-time`: none of these, so that only time, or the will, was wanting.
 *
 * Of a test that was done it says the same, and of an id that is none that it does not apply.
 */
export function trueReasons(run: Run, test: string): readonly LeftOut[] {
  const action = actionNamed(test);
  if (action?.applies(run.papers) !== true) return ['not-applicable'];
  const { allowed } = run.scenario;
  const reasons: LeftOut[] = [
    ...(allowed === 'all' || allowed.includes(test) ? [] : (['not-allowed'] as const)),
    ...(isStillHandedOver(run, action) ? (['handed-over'] as const) : []),
    ...(action.optional === true ? (['not-asked'] as const) : []),
    ...(hasFoundDanger(run, !isDeadTest(action)) ? (['not-safe'] as const) : []),
    ...(action.needsSupply === true && hasFoundNoSupply(run) ? (['no-supply'] as const) : []),
  ];
  return reasons.length === 0 ? ['no-time'] : reasons;
}

/** Whether what was given as the reason is true; words of format 1 are taken as they were: any but none. */
export const isTrueReason = (run: Run, { test, leftOut, words }: EntryOf<'record'>): boolean =>
  leftOut === IN_WORDS
    ? isConverted(run.attempt) && (words ?? '').trim() !== ''
    : trueReasons(run, test).includes(leftOut);

function isStillHandedOver({ handedOver, papers, repairs }: Run, action: TestAction): boolean {
  if (handedOver?.tests.some((done) => done.action.id === action.id) !== true) return false;
  const causes = repairs.flatMap(({ what }) => entryNamed(what) ?? []);
  return testsToRepeat(papers, [{ action, outcome: 'as it should' }], causes).due.length === 0;
}

const isDeadTest = ({ from, stage }: TestAction): boolean => from === 'isolated' && stage === 'before power';

/** Asked of every test that was left out, and worked out once a run. */
function onceARun(finds: (run: Run) => boolean): (run: Run) => boolean {
  const known = new WeakMap<Run, boolean>();
  return (run) => {
    const found = known.get(run) ?? finds(run);
    known.set(run, found);
    return found;
  };
}

const findsFailingTester = onceARun((run) => findsDanger(run, (of) => of === 'tester'));
const findsAnyDanger = onceARun((run) => findsDanger(run, () => true));
const hasFoundDanger = (run: Run, isLive: boolean): boolean =>
  isLive ? findsAnyDanger(run) : findsFailingTester(run);
const hasFoundNoSupply = onceARun(findsNoSupply);

/** Tests that were done. */
const doneIn = (run: Run): readonly TestAction[] =>
  [...new Set(run.samples.flatMap(({ test }) => test ?? []))].flatMap((test) => actionNamed(test) ?? []);

/** A finding after which a faultless trainee goes no further, in the last sitting of any test, by what was typed. */
function findsDanger(run: Run, counts: (of: Expectation['of']) => boolean): boolean {
  return doneIn(run).some((action) => {
    const stops = action
      .expectations(run.papers)
      .filter(({ id, of }) => action.stops.includes(id) && counts(of));
    const { lines, limits } = truthOf(run, action, lastSitting(run, action.id));
    const broken = [
      ...lines.filter(({ finding }) => finding === 'broken').map(({ id }) => id),
      ...limits.filter(({ right }) => right === 'outside').map(({ limit }) => limit.id),
    ];
    return broken.some((id) => stops.some((stop) => stop.id === id));
  });
}

/** What a test that needs a supply found of it, as typed, once everything that may have tripped since the last was reset. */
function findsNoSupply(run: Run): boolean {
  const { residualDevice } = run.papers.site.circuit;
  const supplied = run.samples.findLast(({ sample }) => sample.readings.some(takesSupply))?.entry ?? -1;
  const resets = run.samples.filter(
    ({ entry, sample }) => entry > supplied && sample.operation.op === 'reset',
  );
  const whereReset = (isOne: (what: string) => boolean) =>
    resets.find(({ sample: { operation } }) => operation.op === 'reset' && isOne(operation.what))?.entry ??
    Infinity;
  const since = Math.max(
    whereReset((what) => what !== 'upstream'),
    residualDevice === null ? -1 : whereReset((what) => what === 'upstream'),
  );
  return doneIn(run).some((action) => {
    const sitting = lastSitting(run, action.id);
    const after = Math.max(sitting.after, since);
    return gaveNoSupply(action, run.papers, observedAsTyped(run, { ...sitting, after }));
  });
}

/** Of the outlet, and only to be had while it is supplied. */
const takesSupply = (reading: Reading): boolean =>
  reading.qualifier !== 'unable' &&
  ((reading.quantity === 'residual' && reading.place === undefined) ||
    reading.quantity === 'opening-time' ||
    (reading.quantity === 'loop' && reading.between?.[0].startsWith('outlet.') === true) ||
    (ofOutletLine(reading) && showsVoltage(reading)));
