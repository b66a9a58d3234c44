/** Single tests, and a few in an order of their own, acted out for a cause beside the dictionary; each once. */
import type { Scenario } from '../scenario/scenario.ts';
import type { TestAction } from '../verification/testAction.ts';
import type { Cause } from './cause.ts';
import { keyOf } from './cause.ts';
import { Cells } from './cell.ts';
import type { Row } from './dictionary.ts';
import { actingOut } from './dictionary.ts';
import { splits } from './relations.ts';

export class Trials {
  readonly scenario: Scenario;
  private readonly cells = new Cells();
  private readonly rows = new Map<string, Row>();

  constructor(scenario: Scenario) {
    this.scenario = scenario;
  }

  /** These tests in this order, from the bench as it is found. */
  *row(cause: Cause, tests: readonly TestAction[]): Generator<unknown, Row> {
    const key = `${keyOf(cause.faults)} ${tests.map(({ id }) => id).join()}`;
    const known = this.rows.get(key);
    if (known !== undefined) return known;
    const row = yield* actingOut(this.scenario, cause, tests, this.cells);
    this.rows.set(key, row);
    return row;
  }

  /** The same with what would be read after a stop, had the tests before it been left out. */
  *rowBeyond(cause: Cause, tests: readonly TestAction[]): Generator<unknown, Row> {
    return yield* actingOut(this.scenario, cause, tests, this.cells, true);
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
