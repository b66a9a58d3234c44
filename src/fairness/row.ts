/**
 * A row of the dictionary: what tests let a faultless trainee see of one cause, by acting them out on the bench. Plain
 * data, so that a page can have it made elsewhere.
 */
import type { Truth } from '../bench/reading.ts';
import type { Onlooker, World } from '../bench/world.ts';
import type { FaultChoice } from '../faults/catalogue.ts';
import type { Seconds } from '../laws/quantities.ts';
import { seconds } from '../laws/quantities.ts';
import type { Beginning, Scenario } from '../scenario/scenario.ts';
import { beginning, papersOf } from '../scenario/scenario.ts';
import type { VerifiedAction } from '../scenario/verify.ts';
import { workingThrough } from '../scenario/verify.ts';
import type { Papers, TestAction } from '../verification/testAction.ts';
import type { Cause } from './cause.ts';
import type { Cell, Cells } from './cell.ts';
import { areAlike, cellOf } from './cell.ts';
import type { Call } from './closest.ts';
import { closestOf } from './closest.ts';

export interface Row {
  readonly cause: Cause;
  /** The same text for the same papers: where they are not the same, reading them tells two rows apart. */
  readonly papers: string;
  /** What was handed over as done, by test; null: it reads otherwise than that of the scenario itself, and was left there. */
  readonly sheet: ReadonlyMap<string, Cell> | null;
  /** By test, in the order done; what comes after a stop is not there. */
  readonly cells: ReadonlyMap<string, Cell>;
  /** Where the trainee stopped, and at which broken line. */
  readonly stopped: { readonly action: string; readonly line: string } | null;
  /** Whether something critically unsafe was done on the way, as may be where tests are done out of their order. */
  readonly isUnsafe: boolean;
  /** Of all limits judged the one nearest its reading. */
  readonly closest: Call | null;
}

/** A bench with a cause as the trainee finds it. */
export interface Begun {
  readonly cause: Cause;
  readonly papers: Papers;
  readonly world: World;
  readonly sheet: NonNullable<Row['sheet']>;
  /** What the instruments met meanwhile. */
  readonly truths: readonly Truth[];
}

/** As the trainee finds it, and what the instruments of those before met on it. */
export interface RecordedBeginning extends Beginning {
  readonly truths: readonly Truth[];
}

/**
 * With everything that was done before. Where that is to read as `like` did, and does not, it is left at the first
 * reading that differs, and there is none: the sheet tells.
 */
export function beginningLike(
  scenario: Scenario,
  faults: readonly FaultChoice[],
  like: null,
): Generator<unknown, RecordedBeginning>;
export function beginningLike(
  scenario: Scenario,
  faults: readonly FaultChoice[],
  like: readonly Truth[] | null,
): Generator<unknown, RecordedBeginning | null>;
export function* beginningLike(
  scenario: Scenario,
  faults: readonly FaultChoice[],
  like: readonly Truth[] | null,
): Generator<unknown, RecordedBeginning | null> {
  const recorder = new Recorder(like);
  const work = beginning(scenario, faults, recorder);
  let next = work.next();
  for (; next.done !== true; next = work.next()) {
    if (recorder.isUnlike) return null;
    yield null;
  }
  const { world, handedOver } = next.value;
  // What comes after the handover is nobody’s record here.
  world.onlooker = null;
  return { world, handedOver, truths: recorder.taken() };
}

/** The same with its papers and its sheet. */
export function* begunWith(
  scenario: Scenario,
  cause: Cause,
  known: Cells,
  like: readonly Truth[] | null = null,
): Generator<unknown, Begun | null> {
  const begun = yield* beginningLike(scenario, cause.faults, like);
  if (begun === null) return null;
  const { world, truths } = begun;
  return {
    cause,
    papers: papersOf(scenario, cause.faults),
    world,
    sheet: sheetOf(begun, truths, known),
    truths,
  };
}

/** The row of a cause with which the sheet reads otherwise: none of its tests need be done. */
export const rowOfSheet = (scenario: Scenario, cause: Cause): Row => ({
  cause,
  papers: JSON.stringify(papersOf(scenario, cause.faults)),
  sheet: null,
  cells: new Map(),
  stopped: null,
  isUnsafe: false,
  closest: null,
});

/** One row: these tests in this order on this bench, which is used up, up to where a faultless trainee stops, or beyond. */
export function* actingOut(
  { cause, papers, world, sheet }: Begun,
  tests: readonly TestAction[],
  known: Cells,
  goesOn = false,
): Generator<unknown, Row> {
  const recorder = new Recorder();
  world.onlooker = recorder;
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
  /** Something was met that is told from what should have been met there. */
  isUnlike = false;
  private readonly like: readonly Truth[] | null;
  private truths: Truth[] = [];

  constructor(like: readonly Truth[] | null = null) {
    this.like = like;
  }

  moved(): void {
    // Positions are not what a trainee sees.
  }

  met(_: unknown, truth: Truth): void {
    const other = this.like?.[this.truths.length];
    if (other !== undefined && !areAlike(truth, other)) this.isUnlike = true;
    this.truths.push(truth);
  }

  /** Those met since it was last asked. */
  taken(): readonly Truth[] {
    const { truths } = this;
    this.truths = [];
    return truths;
  }
}

/** The row of what the scenario has; that of nothing wrong, the first, where it has nothing. */
export const ownRowOf = (rows: readonly Row[]): Row =>
  rows.find(({ cause }) => cause.of === 'own') ?? (rows[0] as Row);
