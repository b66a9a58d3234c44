/**
 * What a tutor is shown of a job's fairness: whether it can be seen, told apart and found without harm, what trainees
 * read, and what each cause that might be taken for another reads. Plain data, so that a worker can hand it to the page.
 */
import { pairOf } from '../bench/reading.ts';
import { within } from '../bench/toItsEnd.ts';
import type { FaultChoice } from '../faults/catalogue.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { applicableActions, papersOf } from '../scenario/scenario.ts';
import type { Verified } from '../scenario/verify.ts';
import { verifyingOnce } from '../scenario/verify.ts';
import { actionNamed } from '../verification/actions.ts';
import type { Expectation, TestAction, Values } from '../verification/testAction.ts';
import type { Place, Shown } from './cell.ts';
import { difference, figureAt } from './cell.ts';
import type { Progress } from './dictionary.ts';
import { lookingUp, testsOf } from './dictionary.ts';
import type { Fairness, Lookalike } from './fairness.ts';
import { minutesOfWay, weighed } from './fairness.ts';
import { costOf } from './minutes.ts';
import { readsTheSame, seenBy } from './relations.ts';
import type { Row } from './row.ts';
import { ownRowOf } from './row.ts';
import { Trials } from './trials.ts';
import type { Way } from './ways.ts';

/** What is known while the dictionary grows. */
export interface SoFar {
  /** Causes done, of so many. */
  readonly done: number;
  readonly of: number;
  /** Null until both nothing wrong and what is wrong were acted out. */
  readonly revealedBy: readonly string[] | null;
  /** Causes that read the same so far. */
  readonly alike: number;
}

export interface FairnessView
  extends Pick<
    Fairness,
    'solvable' | 'revealedBy' | 'lookalikes' | 'minutes' | 'closest' | 'stopped' | 'severity'
  > {
  readonly isSound: boolean;
  /** Tests to do. */
  readonly tests: readonly string[];
  /** Causes that may be there, each once whatever its size. */
  readonly causes: number;
  readonly shortest: { readonly tests: readonly string[]; readonly minutes: number } | null;
  /** Whether the shortest way needs the supply on; `harm`: something critically unsafe is done on it. */
  readonly found: 'before power' | 'with power' | 'harm' | null;
  /** What of it is broken, in a figure or in a line; null where nothing is. */
  readonly shown: ShownLimit | ShownLine | null;
  /** The test, not yet allowed, that would tell most of those apart that read the same. */
  readonly wayOut: { readonly test: string; readonly splits: number } | null;
  /** Where nothing shows it: tests, not yet allowed, that would. */
  readonly wouldShow: readonly string[];
  readonly table: Table;
}

/** What trainees read against a limit, and what they would read if nothing were wrong. */
export interface ShownLimit {
  readonly kind: 'limit';
  readonly test: string;
  readonly id: string;
  readonly values: Values;
  readonly quantity: string;
  readonly unit: string;
  readonly value: number | null;
  readonly sound: number | null;
  readonly limit: number;
  readonly most: boolean;
}

export interface ShownLine extends Pick<Expectation, 'of' | 'should'> {
  readonly kind: 'line';
  readonly test: string;
  readonly id: string;
  readonly values: Values;
}

export interface Column {
  readonly test: string;
  /** Null: no figure tells them apart there, but what is seen, heard or done. */
  readonly of: Pick<Shown, 'name' | 'of'> | null;
  readonly isAllowed: boolean;
}

export interface TableRow {
  /** None: nothing is wrong. */
  readonly causes: readonly string[];
  readonly faults: readonly FaultChoice[];
  readonly of: 'own' | 'alike' | 'sound';
  readonly cells: readonly CellView[];
}

export interface CellView {
  /** The true figure, SI units; null where there is none. */
  readonly value: number | null;
  /** Whether it is told from what is wrong. */
  readonly differs: boolean;
  /** Whether the trainee comes to this test. */
  readonly isReached: boolean;
  /** Lines and limits that it breaks there. */
  readonly broken: number;
}

export interface Table {
  readonly columns: readonly Column[];
  readonly rows: readonly TableRow[];
}

/** More columns than these are not read beside each other. */
const MOST_SEEN = 2;
const MOST_ROWS = 6;

/** In pieces; each yield says what is known so far. With the rows of `trials` that are still true; `first`: causes to look up early. */
export function* viewing(
  scenario: Scenario,
  trials = new Trials(scenario),
  first: readonly string[] = [],
): Generator<SoFar, FairnessView> {
  const looking = lookingUp(scenario, { first }, trials);
  let soFar: SoFar = { done: 0, of: 0, revealedBy: null, alike: 0 };
  const known: { sound: Row | null; own: Row | null } = { sound: null, own: null };
  const alike = new Set<string>();
  let next = looking.next();
  for (; next.done !== true; next = looking.next()) {
    soFar = told(next.value, known, alike, soFar);
    yield soFar;
  }
  const dictionary = next.value;
  const fairness = yield* within(soFar, weighed(dictionary, trials));
  return yield* within(soFar, viewOf(scenario, fairness, trials));
}

function told(
  { done, of, row }: Progress,
  known: { sound: Row | null; own: Row | null },
  alike: Set<string>,
  before: SoFar,
): SoFar {
  if (row === null) return { ...before, done, of };
  if (row.cause.of === 'sound') known.sound = row;
  if (row.cause.of === 'own') known.own = row;
  const own = known.own ?? known.sound;
  if (own !== null && row !== own && isOther(row, own) && readsTheSame(own, row))
    alike.add(row.cause.causes.join());
  const { sound } = known;
  // What is wrong comes second; where nothing is, the second is another cause.
  const isKnown = sound !== null && (known.own !== null || row !== sound);
  const revealedBy = isKnown && known.own !== null && sound !== null ? seenBy(known.own, sound) : [];
  return { done: done + 1, of, revealedBy: isKnown ? revealedBy : null, alike: alike.size };
}

const isOther = (x: Row, y: Row): boolean => x.cause.causes.join() !== y.cause.causes.join();

function* viewOf(scenario: Scenario, fairness: Fairness, trials: Trials): Generator<unknown, FairnessView> {
  const { solvable, revealedBy, lookalikes, minutes, closest, stopped, severity, dictionary } = fairness;
  const [sound] = dictionary.rows as readonly [Row, ...Row[]];
  const own = ownRowOf(dictionary.rows);
  const isSound = own === sound;
  const isUnseen = !isSound && revealedBy.length === 0;
  // What nothing shows reads like most causes: first of all it has to be seen.
  const way = isUnseen ? null : wayOutOf(scenario, lookalikes);
  const wouldShow = isUnseen ? yield* shownBeyond(scenario, { own, sound }, trials) : [];
  const further = way?.test ?? wouldShow[0] ?? null;
  return {
    ...{ solvable, revealedBy, lookalikes, minutes, closest, stopped, severity, isSound },
    tests: dictionary.tests,
    causes: new Set(dictionary.rows.map(({ cause }) => cause.causes.join())).size,
    shortest:
      fairness.shortest === null
        ? null
        : { tests: fairness.shortest.tests, minutes: minutesOfWay(scenario, fairness.shortest) },
    found: isSound ? null : yield* foundOn(fairness.shortest, own, trials),
    shown: isSound ? null : yield* shownOf(scenario),
    wayOut: way,
    wouldShow,
    table: isSound ? { columns: [], rows: [] } : yield* tableOf(fairness, { own, sound }, further, trials),
  };
}

function* foundOn(way: Way | null, own: Row, trials: Trials): Generator<unknown, FairnessView['found']> {
  if (way === null) return null;
  const tests = way.tests.map((id) => actionNamed(id) as TestAction);
  const row = yield* trials.row(own.cause, tests);
  if (row.isUnsafe) return 'harm';
  return tests.every(({ from }) => from === 'isolated') ? 'before power' : 'with power';
}

/** The first limit that is broken, else the first line, as a faultless trainee meets them. */
function* shownOf(scenario: Scenario): Generator<unknown, FairnessView['shown']> {
  const own = yield* verifyingOnce(scenario);
  const sound = yield* verifyingOnce(scenario, { faults: [] });
  for (const { action, limits } of own.actions) {
    const broken = limits.find(({ pass }) => !pass);
    if (broken === undefined) continue;
    const { limit, reading, value } = broken;
    if (value === null) continue;
    return {
      kind: 'limit',
      test: action.id,
      id: limit.id,
      values: limit.values ?? {},
      quantity: limit.quantity,
      unit: limit.unit,
      value,
      sound: valueIn(sound, action.id, limit.id, pairOf(reading) ?? null),
      limit: limit.limit,
      most: limit.kind === 'most',
    };
  }
  for (const { action, expectations } of own.actions) {
    const line = expectations.find(({ finding }) => finding === 'broken')?.expectation;
    if (line === undefined) continue;
    const { id, values = {}, of, should } = line;
    return { kind: 'line', test: action.id, id, values, of, should };
  }
  return null;
}

function valueIn(
  { actions }: Verified,
  test: string,
  id: string,
  between: readonly [string, string] | null,
): number | null {
  const limits = actions.find(({ action }) => action.id === test)?.limits ?? [];
  const same = limits.find(
    ({ limit, reading }) => limit.id === id && String(pairOf(reading) ?? null) === String(between),
  );
  return same?.value ?? null;
}

/** Of the tests that would tell something apart the one that tells most; of those that tell as much the cheapest. */
function wayOutOf(scenario: Scenario, lookalikes: readonly Lookalike[]): FairnessView['wayOut'] {
  const open = lookalikes.filter(({ accepted }) => !accepted);
  const papers = papersOf(scenario);
  const splits = new Map<string, number>();
  for (const { splitBy } of open) for (const test of splitBy) splits.set(test, (splits.get(test) ?? 0) + 1);
  const [best] = [...splits].toSorted(
    ([x, nx], [y, ny]) =>
      ny - nx || costOf(actionNamed(x) as TestAction, papers) - costOf(actionNamed(y) as TestAction, papers),
  );
  return best === undefined ? null : { test: best[0], splits: best[1] };
}

function* shownBeyond(
  scenario: Scenario,
  { own, sound }: { readonly own: Row; readonly sound: Row },
  trials: Trials,
): Generator<unknown, readonly string[]> {
  const all = applicableActions(scenario).filter(({ id }) => own.sheet?.has(id) !== true);
  const done = testsOf(scenario).map(({ id }) => id);
  const whole = yield* trials.row(own.cause, all);
  return seenBy(whole, yield* trials.row(sound.cause, all)).filter((test) => !done.includes(test));
}

function* tableOf(
  { dictionary: { rows, scenario }, revealedBy, lookalikes }: Fairness,
  { own, sound }: { readonly own: Row; readonly sound: Row },
  /** A test that is not allowed yet, whose column stands beside the others. */
  further: string | null,
  trials: Trials,
): Generator<unknown, Table> {
  const told = revealedBy.length === 0 ? [] : lookalikes;
  const alike = told.slice(0, MOST_ROWS).map(({ causes, faults }) => {
    const key = JSON.stringify(faults);
    return (
      rows.find(
        ({ cause }) => cause.causes.join() === causes.join() && JSON.stringify(cause.faults) === key,
      ) ?? own
    );
  });
  const shown = [own, ...alike, ...(alike.includes(sound) ? [] : [sound])];
  const seen = revealedBy.slice(0, MOST_SEEN).map((test) => columnOf(test, own, [sound], true));
  const split = further === null ? null : yield* beyond(scenario, shown, further, trials);
  const columns = [
    ...seen,
    ...(split === null ? [] : [columnOf(split.test, split.rows[0] as Row, split.rows.slice(1), false)]),
  ];
  return {
    columns: columns.map(({ column }) => column),
    rows: shown.map((row, i) => ({
      causes: row.cause.causes,
      faults: row.cause.faults,
      of: row === own ? 'own' : row === sound ? 'sound' : 'alike',
      cells: columns.map(({ column, place }) => {
        const [one, its] = column.isAllowed ? [own, row] : [split?.rows[0] as Row, split?.rows[i] as Row];
        return cellView(one, its, column.test, place);
      }),
    })),
  };
}

/** What these read in a test that is not allowed yet: on the way through every test or, where that is not come to, alone. */
function* beyond(
  scenario: Scenario,
  rows: readonly Row[],
  test: string,
  trials: Trials,
): Generator<unknown, { readonly test: string; readonly rows: readonly Row[] }> {
  const done = testsOf(scenario);
  const own = rows[0] as Row;
  const all = applicableActions(scenario).filter(({ id }) => own.sheet?.has(id) !== true);
  const whole: Row[] = [];
  for (const { cause } of rows) whole.push(yield* trials.row(cause, all));
  if (whole.every(({ cells }) => cells.has(test)) && done.length < all.length) return { test, rows: whole };
  const alone: Row[] = [];
  for (const { cause } of rows) alone.push(yield* trials.row(cause, [actionNamed(test) as TestAction]));
  return { test, rows: alone };
}

interface Placed {
  readonly column: Column;
  readonly place: Place | null;
}

function columnOf(test: string, own: Row, others: readonly Row[], isAllowed: boolean): Placed {
  const cell = own.cells.get(test);
  for (const { cells } of others) {
    const other = cells.get(test);
    const apart = cell === undefined || other === undefined ? null : difference(cell, other);
    if (apart?.what === 'figure')
      return {
        column: { test, of: { name: apart.x.name, of: apart.x.of }, isAllowed },
        place: apart.place,
      };
  }
  return { column: { test, of: null, isAllowed }, place: null };
}

function cellView(own: Row, row: Row, test: string, place: Place | null): CellView {
  const cell = row.cells.get(test);
  const its = own.cells.get(test);
  const figure = cell === undefined || place === null ? undefined : figureAt(cell, place);
  return {
    value: figure?.true ?? null,
    differs: cell !== undefined && its !== undefined && difference(its, cell) !== null,
    isReached: cell !== undefined,
    broken: cell?.broken.length ?? 0,
  };
}
