/** Test action `r1r2-polarity`: line and PE linked at the origin, line by line, measured at the supply terminals. */
import type { OperationInput } from '../../bench/operation.ts';
import { linesOf, livesOf } from '../../site/site.ts';
import { CIRCUIT } from '../sources.ts';
import { continuity } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const r1r2Polarity: Procedure = {
  id: 'r1r2-polarity',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['circuit'],
  applies: () => true,
  steps: ({ site }) => [
    { op: 'null-leads' },
    ...linesOf(site).flatMap((x): OperationInput[] => [
      { op: 'link', between: [`origin.${x}`, 'origin.PE'] },
      ...livesOf(site).map((y) => continuity(`supply.${y}`, 'supply.PE')),
      { op: 'unlink', between: [`origin.${x}`, 'origin.PE'] },
      continuity(`supply.${x}`, 'supply.PE'),
    ]),
  ],
  untold: () => [
    {
      id: 'to-outlet',
      toldBy: ['state-c', 'state-d', 'loop', 'volt-drop'],
      source: CIRCUIT,
    },
    {
      id: 'neutral-arrives',
      toldBy: ['energise', 'state-c', 'loop'],
      ownOnly: true,
      of: 'circuit',
      source: CIRCUIT,
    },
  ],
};
