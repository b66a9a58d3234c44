/** Test action `inspect`: what can be seen, with the cover off after lock-off, then outside. */
import { INSPECTED } from '../../site/part.ts';
import { judgeAll, samplesWhen } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import type { Source } from '../sources.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';

type Where = (typeof INSPECTED)[number];

interface Look {
  readonly should: boolean;
  readonly text: (papers: Papers) => string;
  readonly why: string;
  readonly source: (papers: Papers) => Source;
  readonly of: Expectation['of'];
  readonly points: Expectation['points'];
}

const socket = ({ sheet }: Papers): boolean => sheet.outlet === 'socket';

const LOOKS: Readonly<Record<Where, Look>> = {
  enclosure: {
    should: true,
    text: () => 'is whole, dry, tight at its glands, and IP44 or better out of doors',
    why: 'Water inside is shock and corrosion to come.',
    source: (papers) => rulesFor(papers).regulation('722.512.2; IEC 61851-1:2017 12.4'),
    of: 'unit',
    points: ['mechanical'],
  },
  terminals: {
    should: false,
    text: () => 'shows loose, heated or corroded terminals',
    why: 'A joint that is not tight heats under load, and burns in time.',
    source: (papers) => rulesFor(papers).remembered('526.1'),
    of: 'circuit',
    points: ['mechanical', 'supply-wiring', 'protective-conductor'],
  },
  'protective devices': {
    should: true,
    text: () => 'has the devices that its papers name, and none in the neutral alone or in PE',
    why: 'What the design rests on has to be what is fitted.',
    source: (papers) => rulesFor(papers).remembered('531.3.3, 132.14'),
    of: 'circuit',
    points: ['mechanical', 'supply-wiring', 'residual-direct'],
  },
  outlet: {
    should: false,
    text: (papers) =>
      socket(papers)
        ? 'shows damaged contacts, a slack lid, a bent lock pin or a missing shutter at its socket'
        : 'shows a cracked connector or burnt contacts',
    why: 'Fingers and rain reach what should be closed in.',
    source: (papers) => rulesFor(papers).regulation('642.3'),
    of: 'unit',
    points: ['mechanical', 'proximity-retention'],
  },
  cable: {
    should: false,
    text: (papers) =>
      socket(papers)
        ? 'has a cable that is cut, crushed or strained'
        : 'has a tether that is cut, crushed or hangs by its conductors',
    why: 'The protective conductor may be what parts first.',
    source: (papers) => rulesFor(papers).regulation('642.3'),
    of: 'unit',
    points: ['mechanical', 'insulation'],
  },
  position: {
    should: true,
    text: () => 'is guarded against vehicles or out of their way, its outlet 0.5 to 1.5 m up',
    why: 'It would be run into, or stooped for in the wet.',
    source: (papers) => rulesFor(papers).regulation('722.512.2.203; IEC 61851-1:2017 11.7'),
    of: 'unit',
    points: ['mechanical'],
  },
  labels: {
    should: true,
    text: () => 'has its circuit, its earthing and its test notice labelled',
    why: 'The next one to isolate goes by the labels.',
    source: (papers) => rulesFor(papers).remembered('514'),
    of: 'circuit',
    points: ['mechanical'],
  },
};

/** Only to be seen with the cover off. */
const BEHIND: readonly Where[] = ['terminals', 'protective devices'];

const looked = (where: Where, papers: Papers): Expectation => ({
  ...LOOKS[where],
  id: where.replaceAll(' ', '-'),
  text: LOOKS[where].text(papers),
  source: LOOKS[where].source(papers),
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
  title: 'Inspection, inside and outside',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: [],
  purpose: 'See what no instrument shows, before any is used.',
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
      text: 'has devices that work',
      why: 'They are there and of the right type; whether they act is a test.',
      source: rulesFor(papers).regulation('642, 643'),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: {},
};
