/** Test action `residual-five`: five times the rated residual current. No document asks for it any more. */

import { rulesFor } from '../rules/rules.ts';
import { outletVoltages } from '../steps.ts';
import type { Procedure } from '../testAction.ts';
import { atOnce, oneAfterAnother, testedDevice } from './residual.ts';
import { fixedTest } from './residualFixed.ts';

export const residualFive: Procedure = {
  id: 'residual-five',
  stage: 'protection',
  optional: true,
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['residual-device', 'upstream-device', 'contactor', 'earthing', 'filter'],
  applies: (papers) => testedDevice(papers) !== null,
  steps: (papers) =>
    oneAfterAnother(papers, 'residual', [
      [atOnce('L1', 'sinusoidal', fixedTest(papers, 5).amps), ...outletVoltages(papers)],
    ]),
  untold: (papers) => [
    {
      id: 'asked-for',
      toldBy: [],
      ownOnly: true,
      source: rulesFor(papers).regulation('643.8'),
    },
  ],
};
