/** Test action `ze`: the loop outside the installation, its earthing conductor off the main earthing terminal. */
import { linesOf } from '../../site/site.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import type { Procedure } from '../testAction.ts';
import { originLoop } from './originLoop.ts';

export const EARTH = 'earthing';

export const ze: Procedure = {
  id: 'ze',
  stage: 'with power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['supply'],
  cover: 'closed',
  applies: ({ site }) => site.earthing !== 'TT',
  steps: ({ site }) => [
    // Every circuit of the house has this earth: all of it is off before the earth is.
    { op: 'isolate', at: 'main-switch' },
    { op: 'prove-dead', at: 'origin' },
    { op: 'disconnect', what: 'earthing-conductor' },
    ...linesOf(site).map((line) => originLoop(line, EARTH)),
    { op: 'reconnect', what: 'earthing-conductor' },
    { op: 'energise', at: 'main-switch' },
  ],
  untold: (papers) => [
    {
      id: 'conductor-on',
      toldBy: ['inspect', 'make-good', 'loop'],
      of: 'circuit',
      source: rulesFor(papers).regulation('643.7.3'),
    },
    {
      id: 'pen-sound',
      toldBy: [],
      of: 'circuit',
      source: CIRCUIT,
    },
  ],
};
