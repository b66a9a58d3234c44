/**
 * Whether a scenario can be solved with the tests that it allows: whether what is wrong can be seen, which causes read
 * the same, what would tell those apart, the shortest way, how long it takes, and what is the closest call.
 */
import { toItsEnd, within } from '../bench/toItsEnd.ts';
import type { FaultChoice } from '../faults/catalogue.ts';
import { entryNamed } from '../faults/catalogue.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { applicableActions, papersOf } from '../scenario/scenario.ts';
import { actionNamed } from '../verification/actions.ts';
import type { TestAction } from '../verification/testAction.ts';
import type { Cause } from './cause.ts';
import { besideDesigns, ownFaults, severityOf } from './cause.ts';
import type { Call } from './closest.ts';
import type { Asked, Dictionary, Progress } from './dictionary.ts';
import { lookingUp, testsOf } from './dictionary.ts';
import { fitting, withValue } from './fit.ts';
import type { Support } from './minutes.ts';
import { costOf, minutesByRung, minutesOf } from './minutes.ts';
import { readsTheSame, seenBy, splitBy, toldBeforehand } from './relations.ts';
import type { Row } from './row.ts';
import { ownRowOf } from './row.ts';
import type { Severity } from './severity.ts';
import { sweeping } from './severity.ts';
import { Trials } from './trials.ts';
import type { Demand, Way } from './ways.ts';
import { shortestWay } from './ways.ts';

/** A cause that reads the same as what is wrong in every test that is allowed. */
export interface Lookalike {
  /** Its ids; none: nothing wrong. */
  readonly causes: readonly string[];
  readonly faults: readonly FaultChoice[];
  /** Tests that apply here, allowed or not, which would tell the two apart. */
  readonly splitBy: readonly string[];
  /** The tutor lets it count in full as the cause. */
  readonly accepted: boolean;
}

export interface Fairness {
  /**
   * Nothing is wrong; or what is wrong can be seen, and told apart as far as any test could tell it here: what no test
   * tells apart, or the tutor accepts, counts as found by either name.
   */
  readonly solvable: boolean;
  readonly revealedBy: readonly string[];
  readonly lookalikes: readonly Lookalike[];
  /** Fewest tests; null where what is wrong cannot be seen. */
  readonly shortest: Way | null;
  /** Least time and risk. */
  readonly cheapest: Way | null;
  /** Of all that a faultless trainee does there. */
  readonly minutes: Readonly<Record<Support, number>>;
  readonly closest: Call | null;
  /** Where the tests stop that a faultless trainee does; null: they come to their end. */
  readonly stopped: Row['stopped'];
  /** Of each thing that is wrong and has a size, from which size on it shows. */
  readonly severity: readonly Severity[];
  /** With rows of causes that read the same at sizes between the usual three. */
  readonly dictionary: Dictionary;
}

/** All of it at once. */
export const fairnessOf = (scenario: Scenario, asked: Asked = {}): Fairness =>
  toItsEnd(weighing(scenario, asked));

/** The same in pieces; what comes after the dictionary is the smaller part. */
export function* weighing(scenario: Scenario, asked: Asked = {}): Generator<Progress, Fairness> {
  const trials = new Trials(scenario);
  const dictionary = yield* lookingUp(scenario, asked, trials);
  const { length } = dictionary.rows;
  return yield* within({ done: length, of: length, row: null }, weighed(dictionary, trials));
}

/** Whether it can be solved, and what follows from the same rows. */
interface Solved extends Pick<Fairness, 'solvable' | 'revealedBy' | 'lookalikes'> {
  readonly own: Row;
  readonly isSound: boolean;
  readonly demands: readonly Demand[];
  /** Rows at sizes between those of the dictionary that read as the own one does. */
  readonly fits: readonly Row[];
}

/** By what one job is as good as another. */
export type Compared = Pick<Fairness, 'solvable' | 'revealedBy' | 'lookalikes' | 'minutes'>;

/** Whether a scenario can be solved, and how; nothing of its ways: for whoever makes one, or one like another. */
export function* comparing(scenario: Scenario): Generator<unknown, Compared> {
  const trials = new Trials(scenario);
  const dictionary = yield* lookingUp(scenario, {}, trials);
  const { own, solvable, revealedBy, lookalikes } = yield* solvedBy(dictionary, trials);
  return { solvable, revealedBy, lookalikes, minutes: minutesIn(own, scenario) };
}

/** Of what a faultless trainee does there. */
const minutesIn = (own: Row, scenario: Scenario): Fairness['minutes'] =>
  minutesByRung(
    testsOf(scenario).filter(({ id }) => own.cells.has(id)),
    papersOf(scenario),
  );

function* solvedBy({ scenario, rows }: Dictionary, trials: Trials): Generator<unknown, Solved> {
  const tests = testsOf(scenario);
  const [sound] = rows as readonly [Row, ...Row[]];
  const own = ownRowOf(rows);
  const isSound = own === sound;
  const revealedBy = isSound ? [] : seenBy(own, sound);
  const others = rows.filter((row) => !isSameCause(row.cause, own.cause));
  const fits = yield* fitted(own, others, tests, trials);
  const { demands, alike } = yield* told(own, [...others, ...fits], tests, trials);
  // With all that is wrong and something more that nothing here shows, what is wrong is named right all the same.
  const rivals = isSound ? alike : alike.filter(({ cause }) => !holds(cause, own.cause));
  const lookalikes = yield* splitting(own, rivals, tests, trials);
  const isToldApart = lookalikes.every(({ splitBy, accepted }) => accepted || splitBy.length === 0);
  return {
    solvable: isSound || (revealedBy.length > 0 && isToldApart),
    ...{ own, isSound, revealedBy, lookalikes, demands, fits },
  };
}

/** What follows from a dictionary of the allowed tests. */
export function* weighed(
  dictionary: Dictionary,
  trials = new Trials(dictionary.scenario),
): Generator<unknown, Fairness> {
  const { scenario } = dictionary;
  const tests = testsOf(scenario);
  const papers = papersOf(scenario);
  const { own, isSound, demands, fits, ...solved } = yield* solvedBy(dictionary, trials);
  const sought = {
    ...{ own, demands, tests },
    seenBy: isSound ? null : solved.revealedBy,
    costOf: (test: string) => costOf(actionNamed(test) as TestAction, papers),
  };
  const shortest = yield* shortestWay(sought, trials, 'tests');
  const cheapest = yield* shortestWay(sought, trials, 'cost');
  const severity: Severity[] = [];
  for (const choice of ownFaults(scenario)) {
    const swept = yield* sweeping(scenario, choice, tests, trials);
    if (swept !== null) severity.push(swept);
  }
  return {
    ...solved,
    ...{ shortest, cheapest, severity },
    dictionary: { ...dictionary, rows: [...dictionary.rows, ...fits] },
    minutes: minutesIn(own, scenario),
    closest: own.closest,
    stopped: own.stopped,
  };
}

/** Minutes of a way at practice, with what it takes to begin and to conclude. */
export const minutesOfWay = (scenario: Scenario, { tests }: Way): number =>
  minutesOf(
    tests.map((id) => actionNamed(id) as TestAction),
    papersOf(scenario),
  );

const isSameCause = (x: Cause, y: Cause): boolean => x.causes.length === y.causes.length && holds(x, y);

/** Whether all of the one is in the other. */
export const holds = (whole: Cause, part: Cause): boolean =>
  part.causes.every((id) => whole.causes.includes(id));

interface Told {
  readonly demands: readonly Demand[];
  readonly alike: readonly Row[];
}

/**
 * Which tests tell each other row from the own one, in their usual order or, where that shows nothing, by themselves;
 * and which rows none tells.
 */
function* told(
  own: Row,
  others: readonly Row[],
  tests: readonly TestAction[],
  trials: Trials,
): Generator<unknown, Told> {
  const demands: Demand[] = [];
  const alike: Row[] = [];
  for (const row of others) {
    if (toldBeforehand(own, row)) continue;
    // A row that ends early would show more in the tests that its trainee never comes to.
    const isWhole = [...own.cells.keys()].every((test) => row.cells.has(test));
    const usual = splitBy(own, isWhole ? row : yield* trials.rowBeyond(row.cause, tests));
    const unreached = tests.filter(({ id }) => !own.cells.has(id));
    const by = usual.length > 0 ? usual : yield* trials.splitAlone(own.cause, row.cause, unreached);
    if (by.length > 0) demands.push({ row, by });
    else alike.push(row);
  }
  return { demands, alike };
}

/** One row of each cause whose readings come to be the same somewhere between the sizes that were tried. */
function* fitted(
  own: Row,
  others: readonly Row[],
  tests: readonly TestAction[],
  trials: Trials,
): Generator<unknown, readonly Row[]> {
  const found: Row[] = [];
  for (const rows of byPlace(others).values()) {
    const [first] = rows as [Row];
    const choice = first.cause.faults.at(-1) as FaultChoice;
    const entry = entryNamed(choice.fault);
    const parameter = entry === undefined ? null : severityOf(entry);
    if (entry?.kind !== 'fault' || parameter === null || rows.length < 2) continue;
    if (rows.some((row) => readsTheSame(own, row))) continue;
    const { name } = parameter;
    const sizeIn = ({ cause }: Row): number => cause.faults.at(-1)?.values[name] ?? parameter.default;
    const at = (value: number): Cause =>
      besideDesigns(trials.scenario, entry, withValue(choice.values, name, value), null);
    const rising = rows.toSorted((x, y) => sizeIn(x) - sizeIn(y));
    const row = yield* fitting(own, rising, { at, sizeIn }, tests, trials);
    if (row !== null) found.push(row);
  }
  return found;
}

/** Rows of the catalogue that differ in their size alone. */
function byPlace(rows: readonly Row[]): ReadonlyMap<string, readonly Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    if (row.cause.of !== 'catalogue') continue;
    const { fault, values } = row.cause.faults.at(-1) as FaultChoice;
    const entry = entryNamed(fault);
    const size = entry === undefined ? null : severityOf(entry);
    const place = Object.entries(values).filter(([name]) => name !== size?.name);
    const key = JSON.stringify([fault, place]);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return groups;
}

/** Each cause once, with what would tell it apart: as it is met on the way through every test, or else by itself. */
function* splitting(
  own: Row,
  alike: readonly Row[],
  tests: readonly TestAction[],
  trials: Trials,
): Generator<unknown, readonly Lookalike[]> {
  const { scenario } = trials;
  const all = applicableActions(scenario).filter(({ id }) => own.sheet?.has(id) !== true);
  const further = all.filter((test) => !tests.includes(test));
  const isOwn = (id: string): boolean => own.cause.causes.includes(id);
  const lookalikes = new Map<string, Lookalike>();
  for (const { cause } of alike) {
    const key = cause.causes.join();
    if (lookalikes.has(key)) continue;
    let by: readonly string[] = [];
    if (further.length > 0) {
      const whole = yield* trials.row(own.cause, all);
      by = splitBy(whole, yield* trials.row(cause, all));
      if (by.length === 0) by = yield* trials.splitAlone(own.cause, cause, further);
    }
    const accepted =
      cause.causes.length > 0 && cause.causes.every((id) => scenario.accept.includes(id) || isOwn(id));
    lookalikes.set(key, { causes: cause.causes, faults: cause.faults, splitBy: by, accepted });
  }
  return [...lookalikes.values()];
}
