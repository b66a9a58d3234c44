/**
 * What is next for the trainee of this device, worked out from what it kept, with the one reason: a goal kept, then
 * what one was sure of and wrong in, then what was left out, then what was done longest ago. Before anything was done it
 * is the first run.
 */

import { suggestedRung } from '../attempt/marks/suggestedRung.ts';
import type { TestOutcome } from '../attempt/marks/summary.ts';
import type { Rung } from '../attempt/record/rung.ts';
import type { AimId } from '../scenario/aims.ts';
import { AIMS, aimOf } from '../scenario/aims.ts';
import type { About } from './about.ts';
import type { DueTopics } from './comesBack.ts';
import { aimAttempts } from './jobResults.ts';
import type { Goal } from './recordText.ts';

export type Why =
  | { readonly what: 'goal'; readonly text: string }
  /** `at`: when it last was so, ms since 1970. */
  | { readonly what: 'sure and wrong'; readonly at: number }
  /** How many of the aim's tests, when it was last done without them. */
  | { readonly what: 'left out'; readonly tests: number; readonly at: number }
  /** How many topics of questions come back by now, and why. */
  | ({ readonly what: 'due' } & DueTopics)
  | { readonly what: 'not tried' }
  /** Whole days since it was done. */
  | { readonly what: 'longest ago'; readonly days: number };

export type Next =
  | { readonly kind: 'first run' }
  | { readonly kind: 'questions'; readonly why: Why }
  | { readonly kind: 'aim'; readonly aim: AimId; readonly rung: Exclude<Rung, 4>; readonly why: Why };

interface Known {
  readonly kept: readonly About[];
  readonly goal: Goal | null;
  /** Of the questions: what comes back by now. */
  readonly due: DueTopics;
  /** Whether the first run was gone through on this device. */
  readonly hadFirstRun: boolean;
  /** ms since 1970 */
  readonly now: number;
}

/** A test when it last was done or due. */
interface Last {
  readonly aim: AimId;
  readonly at: number;
  readonly outcome: TestOutcome;
}

export function nextForYou({ kept, goal, due, hadFirstRun, now }: Known): Next {
  const own = kept.filter(({ concluded, isGuest }) => concluded && !isGuest);
  if (own.length === 0 && !hadFirstRun) return { kind: 'first run' };
  const { aim, why } = chosen(own, goal, now);
  // What is due comes before what was merely not done for long, and after everything that went wrong on a bench.
  if (due.topics > 0 && (why.what === 'not tried' || why.what === 'longest ago'))
    return { kind: 'questions', why: { what: 'due', ...due } };
  return { kind: 'aim', aim, rung: rungFor(own, aim), why };
}

function chosen(
  own: readonly About[],
  goal: Goal | null,
  now: number,
): { readonly aim: AimId; readonly why: Why } {
  const last = lastOfEach(own);
  const aimed = goal === null ? null : goalAim(goal, own);
  if (goal !== null && aimed !== null) return { aim: aimed, why: { what: 'goal', text: goal.text } };
  const wrong = newest(last.filter(({ outcome }) => outcome.sureAndWrong));
  if (wrong !== null) return { aim: wrong.aim, why: { what: 'sure and wrong', at: wrong.at } };
  const notDone = last.filter(({ outcome }) => !outcome.done);
  const left = newest(notDone);
  if (left !== null) {
    const tests = notDone.filter(({ aim, at }) => aim === left.aim && at === left.at).length;
    return { aim: left.aim, why: { what: 'left out', tests, at: left.at } };
  }
  return longestAgo(last, now);
}

/** The aim of the first test that a goal speaks of; null where that was done since, or the goal speaks of none. */
function goalAim({ tests = [], at }: Goal, own: readonly About[]): AimId | null {
  const aim = tests.map(aimOf).find((found) => found !== null) ?? null;
  const isDone = outcomesOf(own).some((one) => one.aim === aim && one.outcome.done && one.at > at);
  return isDone ? null : aim;
}

const outcomesOf = (own: readonly About[]): readonly Last[] =>
  own.flatMap(({ changed, summary }) =>
    (summary?.tests ?? []).flatMap((outcome) => {
      const aim = aimOf(outcome.test);
      return aim === null ? [] : [{ aim, at: changed, outcome }];
    }),
  );

/** In the usual order of the aims. */
function lastOfEach(own: readonly About[]): readonly Last[] {
  const all = outcomesOf(own);
  return AIMS.flatMap(({ tests }) =>
    tests.flatMap((test) => newest(all.filter(({ outcome }) => outcome.test === test)) ?? []),
  );
}

/** The first of those that are equally new. */
const newest = (all: readonly Last[]): Last | null =>
  all.reduce<Last | null>((best, one) => (best === null || one.at > best.at ? one : best), null);

const DAY = 86_400_000;

/** An aim of which nothing was ever done comes before all others. */
function longestAgo(last: readonly Last[], now: number): { readonly aim: AimId; readonly why: Why } {
  const aims = AIMS.map(({ id }) => ({
    aim: id,
    at: newest(last.filter(({ aim, outcome }) => aim === id && outcome.done))?.at ?? null,
  }));
  const never = aims.find(({ at }) => at === null);
  if (never !== undefined) return { aim: never.aim, why: { what: 'not tried' } };
  const [oldest] = aims.toSorted((x, y) => (x.at ?? 0) - (y.at ?? 0)) as [(typeof aims)[number]];
  const days = Math.max(0, Math.floor((now - (oldest.at ?? now)) / DAY));
  return { aim: oldest.aim, why: { what: 'longest ago', days } };
}

/** What the jobs of this aim suggest; the most help where there was none. */
function rungFor(own: readonly About[], aim: AimId): Exclude<Rung, 4> {
  const went = aimAttempts(own)
    .filter((one) => one.aim === aim)
    .toSorted((x, y) => x.about.changed - y.about.changed)
    .flatMap(({ rung, about: { summary } }) => (summary === null ? [] : [{ rung, summary }]));
  const rung = suggestedRung(went)?.rung ?? 1;
  return rung === 4 ? 3 : rung;
}
