/** What keeps a handover from having been signed: then the file that says so is wrong. */
import type { UnsafeId } from '../bench/unsafe.ts';
import { judgeExpectations, judgeLimits } from '../verification/assess.ts';
import type { Papers } from '../verification/testAction.ts';
import type { HandedOver } from './handover.ts';
import type { Problem } from './problem.ts';

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
