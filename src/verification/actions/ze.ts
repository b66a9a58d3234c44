/** Test action `ze`: the loop outside the installation, its earthing conductor off the main earthing terminal. */
import { linesOf } from '../../site/site.ts';
import type { When } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import type { TestAction } from '../testAction.ts';
import { aroundLoop, earthLoop, everyLine, near, originLoop } from './originLoop.ts';

const EARTH = 'earthing';

/** With it on, bonding and every other path in parallel are measured too, and flatter it. */
const alone: When = ({ removed, disturbed }) => removed.includes('earthing-conductor') && !disturbed;

export const ze: TestAction = {
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
