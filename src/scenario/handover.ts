/**
 * A bench that was worked on before: the tests that are handed over as done, carried out on the unit as it is, so that
 * their sheet holds what the instruments truly showed; then the bench is left as the file says. A handover that could
 * not have been signed is a wrong file.
 */
import { operation } from '../bench/operation.ts';
import type { Outcome } from '../bench/perform.ts';
import type { UnsafeId } from '../bench/unsafe.ts';
import type { World } from '../bench/world.ts';
import { judgeExpectations, judgeLimits } from '../verification/assess.ts';
import type { Observed, Sample } from '../verification/observed.ts';
import { observe } from '../verification/observed.ts';
import type { ActionRun } from '../verification/procedure.ts';
import { carryingOut, toEnergised } from '../verification/procedure.ts';
import type { Papers, TestAction } from '../verification/testAction.ts';
import type { Problem } from './problems.ts';
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

/**
 * In which order it was done the file does not say: what came first may be the very test that is to be done again.
 */
const OF_THE_ORDER: readonly UnsafeId[] = ['loop-earth-not-shown', 'residual-earth-not-shown'];

/** Why it cannot have been signed: a test that fails on this unit, or an unsafe act. Empty where it can. */
export function handoverFaults({ tests, steps }: HandedOver, papers: Papers): readonly Problem[] {
  const failed = tests.flatMap(({ action, observed }): Problem[] => {
    const isLacking = judgeExpectations(action, papers, observed).some(({ finding }) => finding !== 'met');
    const outside = judgeLimits(action, papers, observed).some(({ pass }) => !pass);
    return isLacking || outside
      ? [
          {
            path: 'handover.done',
            message: `"${action.id}" fails on this unit, or does not show all that it should: it cannot have been signed`,
          },
        ]
      : [];
  });
  const acts = steps.flatMap(({ outcome }) => outcome.unsafe).filter(({ id }) => !OF_THE_ORDER.includes(id));
  const unsafe = [...new Set(acts.map(({ id }) => id))];
  return [
    ...failed,
    ...unsafe.map((act) => ({ path: 'handover.left', message: { id: 'unsafe-handover', act } as const })),
  ];
}
