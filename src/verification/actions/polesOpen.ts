/** Test action `poles-open`: across every pole of the contactor, dead: the only test that finds a welded neutral pole. */
import { livesOf } from '../../site/site.ts';
import { CIRCUIT } from '../sources.ts';
import { continuity } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const polesOpen: Procedure = {
  id: 'poles-open',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['contactor'],
  applies: () => true,
  steps: ({ site }) => livesOf(site).map((x) => continuity(`supply.${x}`, `outlet.${x}`)),
  untold: () => [
    {
      id: 'closes',
      toldBy: [
        'state-c',
        'c-to-b',
        'state-d',
        'loop',
        'volt-drop',
        'residual-half',
        'recovery',
        'supply-return',
      ],
      source: CIRCUIT,
    },
    {
      id: 'when-live',
      toldBy: [
        'c-to-b',
        'unplug',
        'residual-origin',
        'residual-rated',
        'residual-five',
        'residual-ramp',
        'half-wave',
        'dc-ramp',
        'dc-step',
        'residual-again',
        'pilot-short',
        'pilot-open',
        'diode-in-c',
        'pe-open',
        'stop',
      ],
      source: CIRCUIT,
    },
  ],
};
