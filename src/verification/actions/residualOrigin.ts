/** Test action `residual-origin`: the residual device at the origin, by itself, where the unit has one of its own. */

import type { Seconds } from '../../laws/quantities.ts';
import { NON_TRIPPING_SHARE } from '../../laws/residualLimits.ts';
import type { ResidualDevice } from '../../site/site.ts';
import { PRACTICE } from '../sources.ts';
import { waitFor } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';
import { atOnce } from './residual.ts';

/** Common practice, no source. */
const HELD: Seconds = 2;
/** Long enough for a delayed device, with some to spare: BS EN 61008-1 gives it 0.5 s. */
const ENOUGH: Seconds = 1;

/** Where there is none the action does not apply; its lines are then those of a device of 30 mA. */
export const deviceOf = ({ site }: Papers): Pick<ResidualDevice, 'rated' | 'delay'> =>
  site.circuit.residualDevice ?? { rated: 0.03, delay: 'general' };

export const residualOrigin: Procedure = {
  id: 'residual-origin',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['upstream-device', 'earthing'],
  applies: ({ site, sheet }) => site.circuit.residualDevice !== null && sheet.residual.type !== null,
  steps: (papers) => {
    const { rated } = deviceOf(papers);
    return [
      { ...atOnce('L1', 'sinusoidal', NON_TRIPPING_SHARE * rated, { seconds: HELD }), at: 'origin' },
      { ...atOnce('L1', 'sinusoidal', rated, { seconds: ENOUGH }), at: 'origin' },
      { op: 'reset', what: 'upstream' },
      waitFor(papers.sheet.startUp + 2),
    ];
  },
  untold: () => [
    {
      id: 'own-device',
      toldBy: [
        'residual-half',
        'residual-rated',
        'residual-five',
        'residual-ramp',
        'half-wave',
        'dc-ramp',
        'dc-step',
        'residual-again',
      ],
      source: PRACTICE,
    },
  ],
};
