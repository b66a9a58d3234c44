/** Test action `state-c`: a vehicle that asks for supply. */
import { unplug, untilSupplied } from '../offer.ts';
import { CIRCUIT } from '../sources.ts';
import { outletVoltages, pilot } from '../steps.ts';
import type { Procedure } from '../testAction.ts';
import { threeLineSteps } from './threeLines.ts';

export const stateC: Procedure = {
  id: 'state-c',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['circuit', 'contactor', 'pilot', 'coding'],
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    ...outletVoltages(papers),
    ...threeLineSteps(papers, 'outlet'),
    pilot,
    ...unplug,
  ],
  untold: () => [
    {
      id: 'trips',
      toldBy: [
        'residual-origin',
        'residual-rated',
        'residual-five',
        'residual-ramp',
        'half-wave',
        'residual-again',
      ],
      source: CIRCUIT,
    },
  ],
};
