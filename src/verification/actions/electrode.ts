/** Test action `electrode`: the installation's own earth electrode, taken off the main earthing terminal. */
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import type { Procedure } from '../testAction.ts';

export const electrode: Procedure = {
  id: 'electrode',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['earthing'],
  applies: ({ site }) => site.earthing === 'TT',
  steps: () => [
    // Every circuit of the house has this earth: all of it is off before the earth is.
    { op: 'isolate', at: 'main-switch' },
    { op: 'prove-dead', at: 'origin' },
    { op: 'disconnect', what: 'electrode' },
    { op: 'measure', quantity: 'electrode' },
    { op: 'reconnect', what: 'electrode' },
    { op: 'energise', at: 'main-switch' },
  ],
  untold: (papers) => [
    {
      id: 'stays-so',
      toldBy: [],
      ownOnly: true,
      of: 'circuit',
      values: { stable: rulesFor(papers).electrode.stable },
      source: rulesFor(papers).electrode.stableSource,
    },
    {
      id: 'joined',
      toldBy: ['inspect', 'pe-circuit', 'earths-apart', 'make-good', 'ze', 'loop'],
      of: 'circuit',
      source: CIRCUIT,
    },
  ],
};
