/** Test action `diode-in-c`: the vehicle's diode shorts while it is supplied, and it asks again. */
import { GREATEST_OFF_AFTER_FAULT } from '../../laws/timing.ts';
import { cleared, unplug, untilSupplied } from '../offer.ts';
import { CIRCUIT } from '../sources.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const diodeInC: Procedure = {
  id: 'diode-in-c',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    { op: 'vehicle', diode: 'shorted' },
    waitFor(GREATEST_OFF_AFTER_FAULT),
    pilot,
    ...(papers.sheet.diodeCheck === 'always' ? outletVoltages(papers) : []),
    { op: 'vehicle', state: 'B' },
    waitFor(1),
    { op: 'vehicle', state: 'C' },
    waitFor(4),
    ...outletVoltages(papers),
    ...unplug,
    ...cleared(papers, 'diode'),
  ],
  untold: () => [
    {
      id: 'other-parts',
      toldBy: ['pilot-short', 'pilot-open', 'diode', 'pe-open'],
      source: CIRCUIT,
    },
  ],
};
