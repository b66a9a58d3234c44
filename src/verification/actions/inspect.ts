/** Test action `inspect`: what can be seen, with the cover off after lock-off, then outside. */
import { INSPECTED } from '../../site/part.ts';
import { judgeAll, samplesWhen } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import type { Source } from '../sources.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';

type Where = (typeof INSPECTED)[number];

interface Look {
  readonly should: boolean;
  readonly source: (papers: Papers) => Source;
  readonly of: Expectation['of'];
  readonly points: Expectation['points'];
}

const LOOKS: Readonly<Record<Where, Look>> = {
  enclosure: {
    should: true,
    source: (papers) => rulesFor(papers).regulation('722.512.2; IEC 61851-1:2017 12.4'),
    of: 'unit',
    points: ['mechanical'],
  },
  terminals: {
    should: false,
    source: (papers) => rulesFor(papers).remembered('526.1'),
    of: 'circuit',
    points: ['mechanical', 'supply-wiring', 'protective-conductor'],
  },
  'protective devices': {
    should: true,
    source: (papers) => rulesFor(papers).remembered('531.3.3, 132.14'),
    of: 'circuit',
    points: ['mechanical', 'supply-wiring', 'residual-direct'],
  },
  outlet: {
    should: false,
    source: (papers) => rulesFor(papers).regulation('642.3'),
    of: 'unit',
    points: ['mechanical', 'proximity-retention'],
  },
  cable: {
    should: false,
    source: (papers) => rulesFor(papers).regulation('642.3'),
    of: 'unit',
    points: ['mechanical', 'insulation'],
  },
  position: {
    should: true,
    source: (papers) => rulesFor(papers).regulation('722.512.2.203; IEC 61851-1:2017 11.7'),
    of: 'unit',
    points: ['mechanical'],
  },
  labels: {
    should: true,
    source: (papers) => rulesFor(papers).remembered('514'),
    of: 'circuit',
    points: ['mechanical'],
  },
};

/** Only to be seen with the cover off. */
const BEHIND: readonly Where[] = ['terminals', 'protective devices'];

const looked = (where: Where, papers: Papers): Expectation => ({
  ...LOOKS[where],
  source: LOOKS[where].source(papers),
  id: where.replaceAll(' ', '-'),
  values: { socket: papers.sheet.outlet === 'socket' },
  judge: (o) =>
    judgeAll(
      samplesWhen(
        o,
        ({ cover }, { operation }) =>
          operation.op === 'inspect' && (cover === 'open' || !BEHIND.includes(where)),
      ),
      ({ found }) => found.every((one) => one.where !== where),
    ),
});

export const inspect: TestAction = {
  id: 'inspect',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: [],
  applies: () => true,
  steps: () => [{ op: 'inspect' }],
  expectations: (papers) => INSPECTED.map((where) => looked(where, papers)),
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
  figures: () => [],
  limits: () => [],
  stops: [],
};
