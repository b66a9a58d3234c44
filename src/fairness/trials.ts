/** Single tests, and a few in an order of their own, acted out for a cause beside the dictionary; each once. */
import { fork } from '../bench/fork.ts';
import type { Truth } from '../bench/reading.ts';
import { faultsAmong } from '../faults/catalogue.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { TestAction } from '../verification/testAction.ts';
import type { Cause } from './cause.ts';
import { keyOf } from './cause.ts';
import { Cells } from './cell.ts';
import { splits } from './relations.ts';
import type { Begun, Row } from './row.ts';
import { actingOut, begunWith, rowOfSheet } from './row.ts';

/**
 * All that a row follows from but its cause and its tests: the same text, the same rows. What is handed over is done on
 * the unit as it is, so there what is wrong belongs to it.
 */
function basisOf({ site, unit, rules, clock, seed, faults, handover, allowed, own }: Scenario): string {
  const told = faults.filter((choice) => faultsAmong([choice]).length === 0);
  return JSON.stringify([
    ...[site, unit, rules, clock, seed, handover, own],
    handover === null ? told : [faults, allowed],
  ]);
}

export class Trials {
  readonly scenario: Scenario;
  private readonly cells: Cells;
  private readonly before = new Map<string, Begun | null>();
  /** What stands on the scenario’s own sheet. */
  private like: readonly Truth[] | null = null;
  private readonly rows: Map<string, Row>;

  /** `earlier`: those of the same scenario before its tutor changed it. What the change leaves as it was is kept. */
  constructor(scenario: Scenario, earlier: Trials | null = null) {
    this.scenario = scenario;
    const isKept = earlier !== null && basisOf(earlier.scenario) === basisOf(scenario);
    this.cells = isKept ? earlier.cells : new Cells();
    this.rows = isKept ? earlier.rows : new Map();
  }

  /** These tests in this order, from the bench as it is found. */
  row(cause: Cause, tests: readonly TestAction[]): Generator<unknown, Row> {
    return this.known(cause, tests, false);
  }

  private *known(cause: Cause, tests: readonly TestAction[], goesOn: boolean): Generator<unknown, Row> {
    const key = `${keyOf(cause.faults)} ${tests.map(({ id }) => id).join()} ${goesOn}`;
    const known = this.rows.get(key);
    // The same faults may have been the scenario's own before, and be one of the catalogue's now.
    if (known !== undefined) return known.cause === cause ? known : { ...known, cause };
    const row = yield* this.acted(cause, tests, goesOn);
    this.rows.set(key, row);
    return row;
  }

  /** The same with what would be read after a stop, had the tests before it been left out. */
  rowBeyond(cause: Cause, tests: readonly TestAction[]): Generator<unknown, Row> {
    return this.known(cause, tests, true);
  }

  private *acted(cause: Cause, tests: readonly TestAction[], goesOn: boolean): Generator<unknown, Row> {
    const begun = yield* this.begun(cause);
    return begun === null
      ? rowOfSheet(this.scenario, cause)
      : yield* actingOut(begun, tests, this.cells, goesOn);
  }

  /**
   * What was done before the trainee came is done once a cause, and forked: most of the work, where there is any. A cause
   * of the catalogue is left where its sheet reads otherwise than that of the scenario itself.
   */
  private *begun(cause: Cause): Generator<unknown, Begun | null> {
    if (this.scenario.handover === null) return yield* begunWith(this.scenario, cause, this.cells);
    const key = keyOf(cause.faults);
    const known = this.before.get(key);
    if (known !== undefined) return known && { ...known, world: fork(known.world) };
    const begun = yield* begunWith(
      this.scenario,
      cause,
      this.cells,
      cause.of === 'catalogue' ? this.like : null,
    );
    if (cause.of === 'own' || (cause.of === 'sound' && this.like === null)) this.like = begun?.truths ?? null;
    // Solved positions are large, and few of them are come back to.
    begun?.world.wiring.solved.clear();
    this.before.set(key, begun);
    return begun && { ...begun, world: fork(begun.world) };
  }

  /** Those of the tests that tell the two apart when each is done by itself, with no critically unsafe act in it. */
  *splitAlone(x: Cause, y: Cause, tests: readonly TestAction[]): Generator<unknown, readonly string[]> {
    const split: string[] = [];
    for (const test of tests) {
      const one = yield* this.row(x, [test]);
      const other = yield* this.row(y, [test]);
      if (!one.isUnsafe && !other.isUnsafe && splits(one, other, test.id)) split.push(test.id);
    }
    return split;
  }
}
