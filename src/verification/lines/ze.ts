/** What test action `ze` ought to show. */

import { aroundLoop, earthLoop, everyLine, near } from '../actions/originLoop.ts';
import { EARTH } from '../actions/ze.ts';
import type { When } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

/** With it on, bonding and every other path in parallel are measured too, and flatter it. */
const alone: When = ({ removed, disturbed }) => removed.includes('earthing-conductor') && !disturbed;

export const ze: TestLines = {
  expectations: (papers) => {
    const design = earthLoop(papers.site);
    const rules = rulesFor(papers);
    return [
      {
        id: 'as-design',
        should: true,
        values: { design, ...aroundLoop(design) },
        source: rules.regulation('643.7.3'),
        of: 'circuit',
        points: ['supply-wiring', 'protective-conductor'],
        judge: (o) => everyLine(o, papers, EARTH, alone, (r) => near(r, aroundLoop(design))),
      },
      {
        id: 'no-earth',
        should: false,
        source: CIRCUIT,
        of: 'circuit',
        points: ['supply-wiring', 'protective-conductor'],
        judge: (o) => everyLine(o, papers, EARTH, alone, ({ qualifier }) => qualifier === null),
      },
    ];
  },
  figures: (papers) => [
    {
      id: 'ze',
      unit: 'Ω',
      value: earthLoop(papers.site),
      tolerance: 0.05,
      source: rulesFor(papers).regulation('643.7.3'),
    },
  ],
  limits: (papers) => {
    const { external } = rulesFor(papers);
    const { earthing } = papers.site;
    const usual = external[earthing];
    return usual === null
      ? []
      : [
          {
            id: 'usual',
            values: { earthing, usual },
            quantity: 'loop',
            unit: 'Ω',
            limit: usual,
            kind: 'most',
            source: external.source,
            points: ['supply-wiring'],
            applies: (r) =>
              r.quantity === 'loop' &&
              r.between?.includes(EARTH) === true &&
              r.between[0].startsWith('incoming.'),
          },
        ];
  },
  stops: ['no-earth'],
};
