/** Test action `earths-apart`: the circuit's own earth against the house's, which meet in the ground alone. */
import { leastApart } from '../../site/expected.ts';
import { isInside, judgeAll } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import { continuity } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import { continuityOf } from './protectivePath.ts';

export const earthsApart: TestAction = {
  id: 'earths-apart',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['earthing'],
  applies: ({ site }) => site.house !== undefined,
  steps: () => [{ op: 'null-leads' }, continuity('met', 'house')],
  expectations: (papers) => [
    {
      id: 'joined',
      should: false,
      values: { least: leastApart(papers.site), declared: papers.site.electrodeResistance ?? 0 },
      source: rulesFor(papers).regulation('722.411.4.1; 411.3.1.1'),
      of: 'circuit',
      points: ['protective-conductor'],
      judge: (o) =>
        judgeAll(continuityOf(o, 'met', 'house'), (r) => isInside(r, { least: leastApart(papers.site) })),
    },
  ],
  untold: () => [
    {
      id: 'own-ohms',
      toldBy: ['electrode'],
      of: 'circuit',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['joined'],
};
