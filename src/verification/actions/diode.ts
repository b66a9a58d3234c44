/** Test action `diode`: a vehicle whose diode is shorted asks for supply. */
import { cleared, unplug, untilOffered } from '../offer.ts';
import { SHEET } from '../sources.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const diode: Procedure = {
  id: 'diode',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['pilot', 'coding'],
  applies: () => true,
  steps: (papers) => [
    { op: 'vehicle', diode: 'shorted' },
    ...untilOffered(papers),
    pilot,
    { op: 'vehicle', state: 'C' },
    waitFor(4),
    ...outletVoltages(papers),
    ...unplug,
    ...cleared(papers, 'diode'),
  ],
  untold: () => [
    {
      id: 'while-charging',
      toldBy: ['diode-in-c'],
      source: SHEET,
    },
  ],
};
