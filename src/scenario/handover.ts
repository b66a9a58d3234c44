/**
 * A bench that was worked on before: the tests that are handed over as done, carried out on the unit as it is, so that
 * their sheet holds what the instruments truly showed; then the bench is left as the file says. A handover that could
 * not have been signed is a wrong file (handoverFaults.ts).
 */
import { operation } from '../bench/operation.ts';
import type { Outcome } from '../bench/perform.ts';
import type { World } from '../bench/world.ts';
import type { Observed, Sample } from '../verification/observed.ts';
import { observe } from '../verification/observed.ts';
import type { ActionRun } from '../verification/procedure.ts';
import { carryingOut, toEnergised } from '../verification/procedure.ts';
import type { Papers, TestAction } from '../verification/testAction.ts';
import type { Handover } from './schema.ts';

export interface Step {
  readonly sample: Sample;
  readonly outcome: Outcome;
}

export interface HandedOver {
  readonly by: string;
  /** In the order in which they were done, each with what was read, seen and heard. */
  readonly tests: readonly { readonly action: TestAction; readonly observed: Observed }[];
  /** Every operation up to the moment at which the trainee takes over. */
  readonly steps: readonly Step[];
}

/** Carries `actions` out on a new bench, which afterwards is energised and as `left` says; in pieces, one an operation. */
export function* carryingOutHandover(
  world: World,
  { by, left }: Handover,
  actions: readonly TestAction[],
  papers: Papers,
): Generator<null, HandedOver> {
  const tests: { action: TestAction; observed: ActionRun }[] = [];
  for (const action of actions) tests.push({ action, observed: yield* carryingOut(world, action, papers) });
  const made: Step[] = [];
  for (const step of [...toEnergised(world, papers).map(operation), ...left]) {
    made.push(observe(world, step));
    yield null;
  }
  const steps = tests.flatMap(({ observed: { samples, outcomes } }) =>
    samples.flatMap((sample, i): Step[] => {
      const outcome = outcomes[i];
      return outcome === undefined ? [] : [{ sample, outcome }];
    }),
  );
  return { by, tests, steps: [...steps, ...made] };
}
