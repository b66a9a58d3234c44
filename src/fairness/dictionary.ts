/**
 * The dictionary of a scenario: for nothing wrong and for every cause what each test lets a faultless trainee see.
 *
 * In small pieces of work: it yields after each operation how far it is, and each row as it is done.
 */
import { within } from '../bench/toItsEnd.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { allowedActions, applicableActions } from '../scenario/scenario.ts';
import type { TestAction } from '../verification/testAction.ts';
import type { Cause } from './cause.ts';
import { causesOn } from './cause.ts';
import type { Row } from './row.ts';
import { Trials } from './trials.ts';

export interface Dictionary {
  readonly scenario: Scenario;
  /** The tests that were acted out, by their ids and in their order. */
  readonly tests: readonly string[];
  /** The first is of nothing wrong; the second of what the scenario has, if it has anything. */
  readonly rows: readonly Row[];
}

export interface Progress {
  readonly done: number;
  readonly of: number;
  /** The row that was just finished. */
  readonly row: Row | null;
}

export interface Asked {
  /** Every test that applies, allowed or not. */
  readonly everything?: boolean;
  /** Of the catalogue these causes alone, by their ids: a quick look. */
  readonly only?: readonly string[];
  /** Those of the catalogue that are looked up before the others, by their ids: what read the same a moment ago. */
  readonly first?: readonly string[];
  /** Each cause of the catalogue at its usual size alone: a third of the work. */
  readonly usual?: boolean;
  /** Pairs of causes that are to have rows too, by their ids. */
  readonly pairs?: readonly (readonly [string, string])[];
}

export function* lookingUp(
  scenario: Scenario,
  asked: Asked = {},
  trials = new Trials(scenario),
): Generator<Progress, Dictionary> {
  const causes = firstAmong(asked.first ?? [], causesOn(scenario, asked.pairs)).filter(
    ({ of, causes: ids, size }) =>
      (asked.usual !== true || of !== 'catalogue' || size === 'usual') &&
      (asked.only === undefined || of !== 'catalogue' || ids.some((id) => asked.only?.includes(id) === true)),
  );
  const tests = asked.everything === true ? undoneBefore(scenario, applicableActions) : testsOf(scenario);
  const rows: Row[] = [];
  for (const cause of causes) {
    const row = yield* within({ done: rows.length, of: causes.length, row: null }, trials.row(cause, tests));
    rows.push(row);
    yield { done: rows.length, of: causes.length, row };
  }
  return { scenario, tests: tests.map(({ id }) => id), rows };
}

/** Nothing wrong, and what the scenario has, stay where they are. */
function firstAmong(ids: readonly string[], causes: readonly Cause[]): readonly Cause[] {
  const isEarly = ({ of, causes: its }: Cause): boolean =>
    of !== 'catalogue' || its.some((id) => ids.includes(id));
  return ids.length === 0
    ? causes
    : [...causes.filter(isEarly), ...causes.filter((cause) => !isEarly(cause))];
}

/** What is the trainee's to do: allowed, and not handed over as done. */
export const testsOf = (scenario: Scenario): readonly TestAction[] => undoneBefore(scenario, allowedActions);

function undoneBefore(
  scenario: Scenario,
  among: (scenario: Scenario) => readonly TestAction[],
): readonly TestAction[] {
  const { handover, allowed } = scenario;
  const done = (id: string): boolean =>
    handover !== null &&
    (handover.done === 'others' ? allowed !== 'all' && !allowed.includes(id) : handover.done.includes(id));
  return among(scenario).filter(({ id }) => !done(id));
}
