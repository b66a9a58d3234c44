/**
 * The reasons for a verdict: the findings that it rests on, what next and whom to tell, and which tests are repeated
 * after something was put right.
 */
import type { NextStep, Tell } from '../faults/fault.ts';
import type { Verified } from '../scenario/verify.ts';
import type { TestAction } from '../verification/testAction.ts';
import type { EntryOf } from './attempt.ts';
import type { DueRepeats } from './repeats.ts';
import { repairedIn, shareDone, shareNamed } from './repeats.ts';
import type { Run } from './run.ts';
import { sittingsOf } from './sitting.ts';
import { truthOf } from './truth.ts';
import { countingEntries } from './untimely.ts';

/** The first one: with it the attempt ended. */
export const conclusionOf = (run: Run): EntryOf<'conclusion'> | undefined =>
  countingEntries(run, 'conclusion')[0];

/** Findings two fifths, next, whom to tell and repeats a fifth each. */
const WITH_REPEATS = { findings: 0.4, next: 0.2, tell: 0.2, repeats: 0.2 } as const;
/** Where no repeat was asked for, the others share it. */
const WITHOUT_REPEATS = { findings: 0.5, next: 0.25, tell: 0.25, repeats: 0 } as const;

/** `now`: the whole verification of the unit as it is at the end. */
export function reasonsShare(run: Run, now: Verified, repeats: DueRepeats): number {
  const conclusion = conclusionOf(run);
  if (conclusion === undefined) return 0;
  const share = repeats.named === null ? WITHOUT_REPEATS : WITH_REPEATS;
  const { next, tell } = dueSteps(run, now);
  return (
    share.findings * findingsShare(run, now, conclusion, repeats) +
    share.next * (next.includes(conclusion.next) ? 1 : 0) +
    share.tell * (tell.includes(conclusion.tell) ? 1 : 0) +
    share.repeats * shareNamed(repeats)
  );
}

function findingsShare(
  run: Run,
  now: Verified,
  { findings, verdict }: EntryOf<'conclusion'>,
  repeats: DueRepeats,
): number {
  const broken = now.actions.flatMap(({ action }) => brokenIn(run, action));
  const rightCited = findings.filter(({ test, id }) => broken.includes(`${test} ${id}`)).length;
  // A sound unit needs no finding against it; one that is not sound needs at least one that holds.
  const supported = now.conclusion !== 'not sound' || rightCited > 0;
  const precision = findings.length === 0 ? 1 : rightCited / findings.length;
  // Fit after a repair rests on the tests that were repeated.
  const repeated = verdict === 'fit' && run.repairs.length > 0 ? shareDone(repeats) : 1;
  return supported ? precision * repeated : 0;
}

/** Expectations and limits that what was typed shows to be broken in any sitting of a test, as `test id`. */
function brokenIn(run: Run, action: TestAction): readonly string[] {
  return sittingsOf(run, action.id).flatMap((sitting) => {
    const truth = truthOf(run, action, sitting);
    return [
      ...truth.lines.filter(({ finding }) => finding === 'broken').map(({ id }) => `${action.id} ${id}`),
      ...truth.limits
        .filter(({ right }) => right === 'outside')
        .map(({ limit }) => `${action.id} ${limit.id}`),
    ];
  });
}

/** What is to be done next and who is to be told, by the truth about the unit as it is at the end. */
export function dueSteps(
  run: Run,
  now: Verified,
): { readonly next: readonly NextStep[]; readonly tell: readonly Tell[] } {
  const { repaired, left } = repairedIn(run);
  if (left.length === 0 && now.conclusion !== 'not sound')
    return { next: ['hand-over'], tell: ['client', ...repaired.flatMap((fault) => fault.tell)] };
  // Leaving it off and labelled is right after any fault; nothing less is where the fault itself asks for it.
  const next: readonly NextStep[] = ['lock-off-and-label', ...left.map((fault) => fault.next)];
  const tell = left.flatMap((fault) => fault.tell);
  return { next, tell: tell.length > 0 ? tell : ['client', 'installer'] };
}
