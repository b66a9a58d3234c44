/** Test action `pfc`: prospective fault current at the origin, everything connected. */
import { linesOf } from '../../site/site.ts';
import { rulesFor } from '../rules/rules.ts';
import type { Procedure } from '../testAction.ts';
import { originLoop } from './originLoop.ts';

export const NEUTRAL = 'incoming.N';
export const EARTH = 'met';

export const pfc: Procedure = {
  id: 'pfc',
  stage: 'with power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['supply', 'earthing'],
  cover: 'closed',
  applies: () => true,
  steps: ({ site }) => [NEUTRAL, EARTH].flatMap((to) => linesOf(site).map((line) => originLoop(line, to))),
  untold: (papers) => [
    {
      id: 'at-outlet',
      toldBy: ['loop'],
      source: rulesFor(papers).regulation('434.5.1'),
    },
  ],
};
