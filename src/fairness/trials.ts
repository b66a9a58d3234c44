/** Single tests, and a few in an order of their own, acted out for a cause beside the dictionary; each once. */
import { fork } from '../bench/fork.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { TestAction } from '../verification/testAction.ts';
import type { Cause } from './cause.ts';
import { keyOf } from './cause.ts';
import { Cells } from './cell.ts';
import { splits } from './relations.ts';
import type { Begun, Row } from './row.ts';
import { actingOut, begunWith } from './row.ts';

export class Trials {
  readonly scenario: Scenario;
  private readonly cells = new Cells();
  private readonly before = new Map<string, Begun>();
  private readonly rows = new Map<string, Row>();

  constructor(scenario: Scenario) {
    this.scenario = scenario;
  }

  /** These tests in this order, from the bench as it is found. */
  *row(cause: Cause, tests: readonly TestAction[]): Generator<unknown, Row> {
    const key = `${keyOf(cause.faults)} ${tests.map(({ id }) => id).join()}`;
    const known = this.rows.get(key);
    if (known !== undefined) return known;
    const row = yield* actingOut(yield* this.begun(cause), tests, this.cells);
    this.rows.set(key, row);
    return row;
  }

  /** The same with what would be read after a stop, had the tests before it been left out. */
  *rowBeyond(cause: Cause, tests: readonly TestAction[]): Generator<unknown, Row> {
    return yield* actingOut(yield* this.begun(cause), tests, this.cells, true);
  }

  /** What was done before the trainee came is done once a cause, and forked: most of the work, where there is any. */
  private *begun(cause: Cause): Generator<unknown, Begun> {
    if (this.scenario.handover === null) return yield* begunWith(this.scenario, cause, this.cells);
    const key = keyOf(cause.faults);
    const begun = this.before.get(key) ?? (yield* begunWith(this.scenario, cause, this.cells));
    // Solved positions are large, and few of them are come back to.
    if (!this.before.has(key)) begun.world.wiring.solved.clear();
    this.before.set(key, begun);
    return { ...begun, world: fork(begun.world) };
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
