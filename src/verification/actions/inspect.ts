/** Test action `inspect`: what can be seen, with the cover off after lock-off, then outside. */
import { rulesFor } from '../rules/rules.ts';
import type { Procedure } from '../testAction.ts';

export const inspect: Procedure = {
  id: 'inspect',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: [],
  applies: () => true,
  steps: () => [{ op: 'inspect' }],
  untold: (papers) => [
    {
      id: 'inside-devices',
      toldBy: [
        'residual-origin',
        'residual-rated',
        'residual-five',
        'residual-ramp',
        'half-wave',
        'dc-ramp',
        'dc-step',
        'residual-again',
      ],
      of: 'circuit',
      source: rulesFor(papers).regulation('642, 643'),
    },
  ],
};
