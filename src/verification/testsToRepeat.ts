/**
 * Which tests are done again after something was put right, from the wiring rules and what each test rests on: a
 * failed test, and every earlier one that the fault may have influenced (BS 7671:2018+A2:2022 643.1); and those that
 * rest on what the hand has moved or replaced, for that is new. Knows nothing of the simulation.
 */
import type { Component } from '../faults/components.ts';
import { COMPONENTS } from '../faults/components.ts';
import type { Family } from '../faults/families.ts';
import { onPapers } from './onPapers.ts';
import type { Papers, TestAction } from './testAction.ts';

/** `not shown`: something that it should have shown it did not, so that it counts as not done. */
export type Outcome = 'as it should' | 'failed' | 'not shown';

export interface DoneTest {
  readonly action: TestAction;
  readonly outcome: Outcome;
}

/** A cause that was, or is to be, put right, as far as these rules look at it. */
export interface PutRight {
  readonly component: Component;
  readonly family: Family;
}

export interface Repeats {
  /** Ids of the tests that have to be done again, in the order in which they were first done. */
  readonly due: readonly string[];
  /** Those that may be: doing them again is neither asked for nor needless. */
  readonly free: readonly string[];
}

/**
 * Of the tests done before the repair. A repair of nothing that is known (a design that was wrong, say) leaves every
 * test that passed free: only whoever alters it can tell.
 */
export function testsToRepeat(
  papers: Papers,
  done: readonly DoneTest[],
  putRight: readonly PutRight[],
): Repeats {
  const isDue = ({ action, outcome }: DoneTest): boolean =>
    outcome !== 'as it should' || putRight.some(({ component }) => action.restsOn.includes(component));
  // What rests on nothing of the installation, as proving dead, may always be done again.
  const isFree = ({ action }: DoneTest): boolean =>
    putRight.length === 0 ||
    action.restsOn.every((component) => COMPONENTS[component] === 'in hand') ||
    putRight.some(({ family }) => pointsOf(action, papers).includes(family));
  const idsOf = (tests: readonly DoneTest[]) => [...new Set(tests.map(({ action }) => action.id))];
  const due = idsOf(done.filter(isDue));
  return { due, free: idsOf(done.filter(isFree)).filter((id) => !due.includes(id)) };
}

/** Every family that a broken line or a failed limit of this test would point to. */
const pointsOf = (action: TestAction, papers: Papers): readonly Family[] => {
  const { expectations, limits } = onPapers(action, papers);
  return [...expectations, ...limits].flatMap(({ points }) => points);
};
