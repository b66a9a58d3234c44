/** Test action `ze`: the loop outside the installation, its earthing conductor off the main earthing terminal. */
import { linesOf } from '../../site/site.ts';
import type { When } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT } from '../sources.ts';
import type { TestAction } from '../testAction.ts';
import { earthLoop, everyLine, near, originLoop } from './originLoop.ts';

const EARTH = 'earthing';

/** With it on, bonding and every other path in parallel are measured too, and flatter it. */
const alone: When = ({ removed, disturbed }) => removed.includes('earthing-conductor') && !disturbed;

export const ze: TestAction = {
  id: 'ze',
  title: 'External loop impedance, Ze',
  stage: 'with power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['supply'],
  cover: 'closed',
  purpose: 'Measure the distributor’s earth by itself, before anything is trusted to it.',
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
        text: `reads within 0.05 Ω of the ${design} Ω in its papers`,
        why: 'Every loop and every device of the design rests on that figure.',
        source: rules.regulation('643.7.3'),
        of: 'circuit',
        points: ['supply-wiring', 'protective-conductor'],
        judge: (o) =>
          everyLine(o, papers, EARTH, alone, (r) => near(r, { least: 0.9 * design, greatest: design })),
      },
      {
        id: 'no-earth',
        should: false,
        text: 'leaves the test current without a way back',
        why: 'Then the distributor’s earth is not there at all.',
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
      text: 'has its earthing conductor joined to the main earthing terminal',
      why: 'It was off for this; the loop with everything connected tells.',
      source: rulesFor(papers).regulation('643.7.3'),
    },
    {
      id: 'pen-sound',
      toldBy: [],
      of: 'circuit',
      text: 'keeps its PEN conductor whole from now on',
      why: 'It is whole today.',
      source: CIRCUIT,
    },
  ],
  figures: (papers) => [
    {
      id: 'ze',
      text: 'reads about',
      unit: 'Ω',
      value: earthLoop(papers.site),
      tolerance: 0.05,
      why: 'The figure in the papers.',
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
            text: 'usual upper figure that distributors declare',
            quantity: 'loop',
            unit: 'Ω',
            limit: usual,
            kind: 'most',
            sum: `${earthing}: ${usual.toFixed(2)} Ω`,
            source: external.source,
            points: ['supply-wiring'],
            applies: (r) =>
              r.quantity === 'loop' &&
              r.between?.includes(EARTH) === true &&
              r.between[0].startsWith('incoming.'),
          },
        ];
  },
  stops: { 'no-earth': 'the distributor’s earth is not there: do not energise, tell the distributor' },
};
