/* Logs made for tests of the replay: operations alone, with no predictions and no hashes. Judges nothing. */
import type { Attempt } from '../../src/attempt/record/attempt.ts';
import type { OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import { perform } from '../../src/bench/perform.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { benchOf, papersOf } from '../../src/scenario/scenario.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { procedure } from '../../src/verification/procedure.ts';

const attemptWith = (entries: readonly unknown[]): Attempt =>
  ({ format: 1, engine: '', entries }) as unknown as Attempt;

const entryOf = (test: string | null, input: OperationInput) => ({
  kind: 'operation',
  test,
  operation: operation(input),
  at: 0,
  wall: 0,
  hash: '',
});

/** Whole test actions as a faultless trainee does them on this unit. */
export function logOfActions(scenario: Scenario, ids: readonly string[]): Attempt {
  const world = benchOf(scenario);
  return attemptWith(
    ids.flatMap((id) => {
      const action = actionNamed(id);
      if (action === undefined) throw new Error(`no test action "${id}"`);
      return procedure(world, action, papersOf(scenario)).map((step) => {
        perform(world, step);
        return entryOf(id, step);
      });
    }),
  );
}

export const logOf = (test: string | null, inputs: readonly OperationInput[]): Attempt =>
  attemptWith(inputs.map((input) => entryOf(test, input)));
