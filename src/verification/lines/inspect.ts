/** What test action `inspect` ought to show. */
import { INSPECTED } from '../../site/part.ts';
import { judgeAll, samplesWhen } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import type { Source } from '../sources.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';

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

export const inspect: TestLines = {
  expectations: (papers) => INSPECTED.map((where) => looked(where, papers)),
  figures: () => [],
  limits: () => [],
  stops: [],
};
