/** Test action `state-d`: a vehicle that asks for supply and for ventilation. */

import { GREATEST_VENTILATION } from '../../laws/timing.ts';
import { unplug, untilOffered } from '../offer.ts';
import { CIRCUIT } from '../sources.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const stateD: Procedure = {
  id: 'state-d',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: () => true,
  steps: (papers) => [
    ...untilOffered(papers),
    { op: 'vehicle', state: 'D' },
    waitFor(GREATEST_VENTILATION),
    ...outletVoltages(papers),
    pilot,
    ...unplug,
  ],
  untold: () => [
    {
      id: 'air-moves',
      toldBy: [],
      source: CIRCUIT,
    },
  ],
};
