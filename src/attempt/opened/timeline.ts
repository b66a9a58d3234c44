/**
 * The course of an attempt over bench time: its tests numbered in order, where something was sure and wrong, and the
 * steps of each in the lockstep. Levels and causes left come from twin.ts and elimination.ts.
 */
import type { Seconds } from '../../laws/quantities.ts';
import type { Debrief, DebriefLine } from '../marks/debrief.ts';
import { differences } from './differences.ts';
import type { Lockstep, Step } from './twin.ts';

export interface TestMark {
  /** From 1, in the order in which the tests were begun. */
  readonly number: number;
  readonly test: string;
  /** Bench time at which its first operation had been done. */
  readonly at: Seconds;
  /** Its first and last step in the lockstep. */
  readonly first: number;
  readonly last: number;
  /** Lines that one was sure of, and wrong. */
  readonly wrong: readonly DebriefLine[];
}

export interface Timeline {
  readonly tests: readonly TestMark[];
  readonly end: Seconds;
}

export function timelineOf(lockstep: Lockstep, sureAndWrong: Debrief['sureAndWrong']): Timeline {
  const { steps } = lockstep;
  const order = [...new Set(steps.flatMap(({ test }) => (test === null ? [] : [test])))];
  const wrong = sureAndWrong.flatMap(({ lines }) => lines);
  return {
    tests: order.map((test, i) => {
      const first = steps.findIndex((step) => step.test === test);
      return {
        number: i + 1,
        test,
        at: (steps[first] as Step).unit.at,
        first,
        last: steps.findLastIndex((step) => step.test === test),
        wrong: wrong.filter((line) => line.test === test),
      };
    }),
    end: steps.at(-1)?.unit.at ?? 0,
  };
}

/**
 * The step of a test to look at first: where something read differs from the twin; else where anything stands
 * otherwise; else where the last thing was read; else its last. Null where nothing was done in it.
 */
export function tellingStep({ steps }: Lockstep, test: string): number | null {
  const own = steps.map((step, i) => ({ step, i })).filter(({ step }) => step.test === test);
  const telling =
    own.find(({ step }) => differences(step.unit, step.twin, []).some(({ kind }) => kind === 'reading')) ??
    own.find(({ step }) => differences(step.unit, step.twin, []).length > 0) ??
    own.findLast(({ step }) => step.unit.met.length > 0) ??
    own.at(-1);
  return telling?.i ?? null;
}
