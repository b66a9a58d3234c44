/** Test action `residual-again`: the rated current once more, and the test button after it. */
import { PRACTICE } from '../sources.ts';
import { outletVoltages } from '../steps.ts';
import type { Procedure } from '../testAction.ts';
import { atOnce, oneAfterAnother, testedDevice } from './residual.ts';
import { fixedTest } from './residualFixed.ts';

export const residualAgain: Procedure = {
  id: 'residual-again',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['residual-device', 'upstream-device', 'contactor', 'earthing', 'filter'],
  applies: (papers) => testedDevice(papers) !== null,
  steps: (papers) =>
    oneAfterAnother(papers, 'residual', [
      [atOnce('L1', 'sinusoidal', fixedTest(papers, 1).amps)],
      ...(papers.sheet.residual.type === null
        ? []
        : [[{ op: 'press', button: 'residual-test' } as const, ...outletVoltages(papers)]]),
    ]),
  untold: () => [
    {
      id: 'button-time',
      toldBy: [],
      source: PRACTICE,
    },
  ],
};
