/** Test action `pe-open`: PE to the vehicle opens while supplying. */
import { GREATEST_OFF_AFTER_EARTH_LOSS } from '../../laws/timing.ts';
import { CIRCUIT, pilotStandard } from '../sources.ts';
import type { Procedure } from '../testAction.ts';
import { type Loss, lossSteps } from './pilotLost.ts';

export const loss: Loss = {
  test: 'pe-open',
  of: 'earth-open',
  is: ({ earth }) => earth === 'open',
  mended: { earth: 'sound' },
  greatest: GREATEST_OFF_AFTER_EARTH_LOSS,
  source: pilotStandard('6.3.1.2, A.4.8'),
};

export const peOpen: Procedure = {
  id: 'pe-open',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: () => true,
  steps: (papers) => lossSteps(papers, loss),
  untold: () => [
    {
      id: 'to-the-met',
      toldBy: ['inspect', 'pe-circuit', 'make-good', 'ze', 'state-c', 'loop'],
      source: CIRCUIT,
    },
    {
      id: 'some-ohms',
      toldBy: [],
      source: CIRCUIT,
    },
  ],
};
