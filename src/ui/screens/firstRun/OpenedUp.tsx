/** The unit of the first minute with its cover off, its leads as they stood; beside the first minute, since few ask for it. */
import type { Lockstep } from '../../../attempt/opened/twin.ts';
import type { Papers } from '../../../verification/testAction.ts';
import { OpenedUnit } from '../../drawing/opened/OpenedUnit.tsx';

export { lockstep } from '../../../attempt/opened/twin.ts';

interface Props {
  readonly papers: Papers;
  readonly followed: Lockstep;
}

export function OpenedUp({ papers, followed: { steps } }: Props) {
  const step = steps.at(-1);
  if (step === undefined) return null;
  return (
    <OpenedUnit
      name="This unit, opened"
      papers={papers}
      moment={step.unit}
      operation={step.operation}
      ringed={{ difference: { place: 'pole.L1' }, number: 1 }}
    />
  );
}
