/** The unit opened and its correct twin after the same actions, side by side, with one difference ringed on both. */
import { memo } from 'react';
import type { Difference } from '../../../attempt/opened/differences.ts';
import type { Step } from '../../../attempt/opened/twin.ts';
import type { Papers } from '../../../verification/testAction.ts';
import { OpenedUnit } from '../../drawing/opened/OpenedUnit.tsx';

interface Props {
  readonly papers: Papers;
  readonly step: Step;
  readonly difference: Difference | null;
  readonly number: number;
}

export const OpenedPair = memo(function OpenedPair({ papers, step, difference, number }: Props) {
  const sides = [
    { name: 'This unit, opened', moment: step.unit, number },
    { name: 'Correct twin, same actions', moment: step.twin, number: null },
  ];
  return (
    <div className="opened-pair">
      {sides.map((side) => (
        <figure key={side.name}>
          <figcaption>{side.name}</figcaption>
          <OpenedUnit
            name={side.name}
            papers={papers}
            moment={side.moment}
            operation={step.operation}
            ringed={difference === null ? null : { difference, number: side.number }}
          />
        </figure>
      ))}
    </div>
  );
});
