/**
 * The dictionary of a scenario: for nothing wrong and for every cause what each test lets a faultless trainee see, by
 * acting it all out on the bench. Rows are plain data, so that a page can have them made elsewhere.
 *
 * In small pieces of work: it yields after each operation how far it is, and each row as it is done.
 */
import type { Truth } from '../bench/reading.ts';
import { toItsEnd } from '../bench/toItsEnd.ts';
import type { Onlooker } from '../bench/world.ts';
import type { Seconds } from '../laws/quantities.ts';
import { seconds } from '../laws/quantities.ts';
import type { Beginning, Scenario } from '../scenario/scenario.ts';
import { allowedActions, applicableActions, beginning, papersOf } from '../scenario/scenario.ts';
import type { VerifiedAction } from '../scenario/verify.ts';
import { workingThrough } from '../scenario/verify.ts';
import type { TestAction } from '../verification/testAction.ts';
import type { Cause } from './cause.ts';
import { causesOn } from './cause.ts';
import type { Cell } from './cell.ts';
import { Cells, cellOf } from './cell.ts';
import type { Call } from './closest.ts';
import { closestOf } from './closest.ts';

export interface Row {
  readonly cause: Cause;
  /** The same text for the same papers: where they are not the same, reading them tells two rows apart. */
  readonly papers: string;
  /** What was handed over as done, by test. */
  readonly sheet: ReadonlyMap<string, Cell>;
  /** By test, in the order done; what comes after a stop is not there. */
  readonly cells: ReadonlyMap<string, Cell>;
  /** Where the trainee stopped, and at which broken line. */
  readonly stopped: { readonly action: string; readonly line: string } | null;
  /** Whether something critically unsafe was done on the way, as may be where tests are done out of their order. */
  readonly isUnsafe: boolean;
  /** Of all limits judged the one nearest its reading. */
  readonly closest: Call | null;
}

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
  /** Pairs of causes that are to have rows too, by their ids. */
  readonly pairs?: readonly (readonly [string, string])[];
}

/** All of it at once. */
export const dictionaryOf = (scenario: Scenario, asked: Asked = {}): Dictionary =>
  toItsEnd(lookingUp(scenario, asked));

export function* lookingUp(scenario: Scenario, asked: Asked = {}): Generator<Progress, Dictionary> {
  const causes = causesOn(scenario, asked.pairs);
  const tests = asked.everything === true ? undoneBefore(scenario, applicableActions) : testsOf(scenario);
  const cells = new Cells();
  const rows: Row[] = [];
  for (const cause of causes) {
    const row = yield* withProgress(
      { done: rows.length, of: causes.length },
      actingOut(scenario, cause, tests, cells),
    );
    rows.push(row);
    yield { done: rows.length, of: causes.length, row };
  }
  return { scenario, tests: tests.map(({ id }) => id), rows };
}

function* withProgress<T>(at: Omit<Progress, 'row'>, work: Generator<unknown, T>): Generator<Progress, T> {
  for (;;) {
    const next = work.next();
    if (next.done === true) return next.value;
    yield { ...at, row: null };
  }
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

/** One row: these tests in this order on a bench with this cause, up to where a faultless trainee stops, or beyond. */
export function* actingOut(
  scenario: Scenario,
  cause: Cause,
  tests: readonly TestAction[],
  known = new Cells(),
  goesOn = false,
): Generator<unknown, Row> {
  const papers = papersOf(scenario, cause.faults);
  const recorder = new Recorder();
  const begun = yield* beginning(scenario, [...cause.faults], recorder);
  const sheet = sheetOf(begun, recorder.taken(), known);
  const { world } = begun;
  const cells = new Map<string, Cell>();
  let closest: Call | null = null;
  let isUnsafe = false;
  let began: Seconds[] = [seconds(world.timeline.now)];
  const work = workingThrough(world, tests, papers, goesOn);
  let next = work.next();
  for (; next.done !== true; next = work.next()) {
    yield null;
    if (next.value === null) {
      began.push(seconds(world.timeline.now));
      continue;
    }
    cells.set(next.value.action.id, known.one(cellIn(next.value, recorder.taken(), began)));
    closest = closestOf(next.value, closest);
    isUnsafe ||= next.value.unsafe.some(({ critical }) => critical);
    began = [seconds(world.timeline.now)];
  }
  return { cause, papers: JSON.stringify(papers), sheet, cells, stopped: next.value, isUnsafe, closest };
}

const cellIn = (verified: VerifiedAction, truths: readonly Truth[], began: readonly Seconds[]): Cell => {
  const { samples, prepared, outcomes } = verified.run;
  const refused = outcomes.map((outcome) => outcome.refused);
  return cellOf({ samples, prepared, refused, truths, began }, verified);
};

/** What stands on the sheet of a handover: its readings, no sounds. */
function sheetOf(
  { handedOver }: Beginning,
  truths: readonly Truth[],
  known: Cells,
): ReadonlyMap<string, Cell> {
  const sheet = new Map<string, Cell>();
  let met = 0;
  for (const { action, observed } of handedOver?.tests ?? []) {
    const { samples } = observed;
    const count = samples.reduce((sum, { readings }) => sum + readings.length, 0);
    const own = truths.slice(met, met + count);
    met += count;
    const done = { samples, prepared: 0, refused: [], truths: own, began: null };
    sheet.set(action.id, known.one(cellOf(done, { expectations: [], limits: [] })));
  }
  return sheet;
}

/** Keeps every true value that an instrument met. */
class Recorder implements Onlooker {
  private truths: Truth[] = [];

  moved(): void {
    // Positions are not what a trainee sees.
  }

  met(_: unknown, truth: Truth): void {
    this.truths.push(truth);
  }

  /** Those met since it was last asked. */
  taken(): readonly Truth[] {
    const { truths } = this;
    this.truths = [];
    return truths;
  }
}
