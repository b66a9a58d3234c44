/** What test action `earths-apart` ought to show. */
import { leastApart } from '../../site/expected.ts';
import { isInside, judgeAll } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import type { TestLines } from '../testAction.ts';
import { continuityOf } from './protectivePath.ts';

export const earthsApart: TestLines = {
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
  figures: () => [],
  limits: () => [],
  stops: ['joined'],
};
