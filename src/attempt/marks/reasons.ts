/**
 * The reasons for a verdict: the findings that it rests on, what next and whom to tell, and which tests are repeated
 * after something was put right. That a unit is fit, or that it could not be told, rests on the tests that were done.
 */
import type { NextStep, Tell } from '../../faults/fault.ts';
import { allowedActions } from '../../scenario/scenario.ts';
import type { Verified } from '../../scenario/verify.ts';
import type { TestAction } from '../../verification/testAction.ts';
import type { EntryOf } from '../record/attempt.ts';
import type { DueRepeats } from '../record/repeats.ts';
import { repairedIn, shareDone, shareNamed } from '../record/repeats.ts';
import type { Run } from '../record/run.ts';
import { sittingsOf } from '../record/sitting.ts';
import { truthOf } from '../record/truth.ts';
import type { Expected, PartMark, Rate } from './counted.ts';
import { doneOf, shareOf } from './counted.ts';
import {
  asksSteps,
  conclusionOf,
  isRightVerdict,
  saysNotSound,
  saysSound,
  verdictIsAbout,
} from './verdict.ts';

/** Findings two fifths, next, whom to tell and repeats a fifth each. */
const WITH_REPEATS = { findings: 0.4, next: 0.2, tell: 0.2, repeats: 0.2 } as const;
/** Where no repeat was asked for, the others share it. */
const WITHOUT_REPEATS = { findings: 0.5, next: 0.25, tell: 0.25, repeats: 0 } as const;
/** Where neither next nor whom to tell was to be asked. */
const FINDINGS_ALONE = { findings: 1, next: 0, tell: 0, repeats: 0 } as const;

export interface ReasonsSum {
  /** Null where the verdict is not right: then none holds. */
  readonly findings: Rate | null;
  /** Null where it was not to be asked. */
  readonly next: boolean | null;
  readonly tell: boolean | null;
  /** Share of the tests to repeat that were named, needless ones taken off; null where that was not asked. */
  readonly repeats: number | null;
  /** The tests that the verdict rests on; null where it rests on what was found. */
  readonly rests: Rate | null;
}

/** The sum is null where nothing was concluded. */
export function reasonsMark(run: Run, expected: Expected, repeats: DueRepeats): PartMark<ReasonsSum | null> {
  const conclusion = conclusionOf(run);
  if (conclusion === undefined) return { share: 0, sum: null };
  const { asNow } = expected;
  const due = dueSteps(run, asNow);
  const isAsked = due.next.length > 0;
  const whole = repeats.named === null ? WITHOUT_REPEATS : WITH_REPEATS;
  const weights = isAsked ? whole : FINDINGS_ALONE;
  const found = findingsOf(run, verdictIsAbout(run.scenario, expected), conclusion, repeats);
  const next = conclusion.next !== undefined && due.next.includes(conclusion.next);
  const tell = conclusion.tell !== undefined && due.tell.includes(conclusion.tell);
  const rests = saysNotSound(conclusion.verdict) ? null : doneOf(run, expected);
  const share =
    (rests === null ? 1 : shareOf(rests)) *
    (weights.findings * found.share +
      weights.next * Number(next) +
      weights.tell * Number(tell) +
      weights.repeats * shareNamed(repeats));
  const named = weights.repeats === 0 ? null : shareNamed(repeats);
  const steps = isAsked ? { next, tell } : { next: null, tell: null };
  return { share, sum: { findings: found.sum, ...steps, repeats: named, rests } };
}

function findingsOf(
  run: Run,
  about: Verified,
  { findings, verdict }: EntryOf<'conclusion'>,
  repeats: DueRepeats,
): PartMark<Rate | null> {
  if (!isRightVerdict(run, verdict, about)) return { share: 0, sum: null };
  const broken = allowedActions(run.scenario).flatMap((action) => brokenIn(run, action));
  const cited = findings.filter(({ test, id }) => broken.includes(`${test} ${id}`)).length;
  const sum = { right: cited, of: findings.length };
  // A unit that is not sound needs at least one finding that holds; one that is sound, none against it.
  if (saysNotSound(verdict) && cited === 0) return { share: 0, sum };
  // Fit after a repair rests on the tests that were repeated.
  const repeated = saysSound(verdict) && run.repairs.length > 0 ? shareDone(repeats) : 1;
  return { share: shareOf(sum) * repeated, sum };
}

/** Expectations and limits that what was typed shows to be broken in any sitting of a test, as `test id`. */
function brokenIn(run: Run, action: TestAction): readonly string[] {
  return sittingsOf(run, action.id).flatMap((sitting) => {
    const truth = truthOf(run, action, sitting);
    return [
      ...truth.lines.filter(({ finding }) => finding === 'broken').map(({ id }) => `${action.id} ${id}`),
      ...truth.limits.filter(({ pass }) => !pass).map(({ limit }) => `${action.id} ${limit.id}`),
    ];
  });
}

/**
 * What is to be done next and who is to be told, by what the allowed tests tell of the unit as it is at the end; nothing
 * of either where that is not asked.
 */
export function dueSteps(
  run: Run,
  asNow: Verified,
): { readonly next: readonly NextStep[]; readonly tell: readonly Tell[] } {
  if (!asksSteps(run.scenario, asNow.conclusion === 'not sound')) return { next: [], tell: [] };
  const { repaired, left } = repairedIn(run);
  switch (asNow.conclusion) {
    case 'sound':
      return { next: ['hand-over'], tell: ['client', ...repaired.flatMap((fault) => fault.tell)] };
    case 'could not finish':
      return { next: ['lock-off-and-label'], tell: ['client'] };
    case 'not sound': {
      // Leaving it off and labelled is right after any fault; nothing less is where the fault itself asks for it.
      const next: readonly NextStep[] = ['lock-off-and-label', ...left.map((fault) => fault.next)];
      const tell = left.flatMap((fault) => fault.tell);
      return { next, tell: tell.length > 0 ? tell : ['client', 'installer'] };
    }
  }
}
