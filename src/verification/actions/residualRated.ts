/** Test action `residual-rated`: the rated residual current, at both angles, on each line. */
import { linesOf } from '../../site/site.ts';
import { CIRCUIT } from '../sources.ts';
import { outletVoltages, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';
import { atOnce, oneAfterAnother, testedDevice } from './residual.ts';
import { fixedTest } from './residualFixed.ts';

export const residualRated: Procedure = {
  id: 'residual-rated',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['residual-device', 'upstream-device', 'contactor', 'earthing', 'filter'],
  applies: (papers) => testedDevice(papers) !== null,
  steps: (papers) => {
    const { amps } = fixedTest(papers, 1);
    return oneAfterAnother(
      papers,
      'residual',
      linesOf(papers.site).flatMap((line, i) => [
        [
          atOnce(line, 'sinusoidal', amps, { angle: 0 }),
          ...(i === 0 ? [waitFor(10), ...outletVoltages(papers)] : []),
        ],
        [atOnce(line, 'sinusoidal', amps, { angle: 180 })],
      ]),
    );
  },
  untold: () => [
    {
      id: 'neutral-open',
      toldBy: [],
      ownOnly: true,
      source: CIRCUIT,
    },
  ],
};
