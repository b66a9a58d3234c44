/**
 * Which reasons for leaving a test out are true of it in an attempt. They rest on the papers, the job and what the
 * trainee has found and written down, never on what is truly wrong: a reason is what could be known.
 */
import { entryNamed } from '../faults/catalogue.ts';
import { actionNamed } from '../verification/actions.ts';
import type { TestAction } from '../verification/testAction.ts';
import { testsToRepeat } from '../verification/testsToRepeat.ts';
import type { EntryOf, LeftOut } from './attempt.ts';
import { IN_WORDS } from './attempt.ts';
import type { Run } from './run.ts';
import { lastSitting } from './sitting.ts';
import { truthOf } from './truth.ts';
import { isConverted } from './written.ts';

/**
 * - `not-applicable`: the papers give it nothing to test;
 * - `not-allowed`: the job does not have it among its tests;
 * - `handed-over`: it was handed over as done, and nothing that it rests on was put right since;
 * - `not-asked`: no document asks for it;
 * - `not-safe`: a finding, as written down, forbids to go on to it; dead tests are not forbidden;
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
    ...(!isDeadTest(action) && hasFoundDanger(run) ? (['not-safe'] as const) : []),
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

/** Asked of every test that was left out. */
const danger = new WeakMap<Run, boolean>();

function hasFoundDanger(run: Run): boolean {
  const found = danger.get(run) ?? findsDanger(run);
  danger.set(run, found);
  return found;
}

/** A finding after which a faultless trainee goes no further, in the last sitting of any test, by what was typed. */
function findsDanger(run: Run): boolean {
  const done = new Set(run.samples.flatMap(({ test }) => test ?? []));
  return [...done].some((test) => {
    const action = actionNamed(test);
    if (action === undefined) return false;
    const { lines, limits } = truthOf(run, action, lastSitting(run, test));
    const broken = [
      ...lines.filter(({ finding }) => finding === 'broken').map(({ id }) => id),
      ...limits.filter(({ right }) => right === 'outside').map(({ limit }) => limit.id),
    ];
    return broken.some((id) => action.stops.includes(id));
  });
}
