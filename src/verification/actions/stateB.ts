/** Test action `state-b`: a vehicle connected that does not ask. */
import { unplug, untilOffered } from '../offer.ts';
import { pilotStandard } from '../sources.ts';
import { pilot } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const stateB: Procedure = {
  id: 'state-b',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: () => true,
  steps: (papers) => [...untilOffered(papers), pilot, { op: 'prove-dead', at: 'outlet' }, ...unplug],
  untold: () => [
    {
      id: 'diode',
      toldBy: ['diode', 'diode-in-c'],
      source: pilotStandard('Table A.4 note c'),
    },
  ],
};
