/** Test action `supply-volts`: voltages, earth potential and rotation on the live side of the origin. */
import type { Amps } from '../../laws/quantities.ts';
import { linesOf } from '../../site/site.ts';
import { CIRCUIT, PRACTICE } from '../sources.ts';
import { voltage } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';
import { threeLineSteps } from './threeLines.ts';

/** Switched on for a moment to see what follows it, A per line. A design choice: a kettle or two. */
export const SWITCHED: Amps = 10;

export const incoming = (x: string) => `incoming.${x}`;
export const toNeutral = ({ site }: Papers) =>
  linesOf(site).map((line) => [incoming(line), incoming('N')] as const);
const toEarth = ({ site }: Papers) => linesOf(site).map((line) => [incoming(line), 'met'] as const);

export const supplyVolts: Procedure = {
  id: 'supply-volts',
  stage: 'with power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: ['supply'],
  cover: 'closed',
  applies: () => true,
  steps: (papers) => [
    ...[...toNeutral(papers), ...toEarth(papers)].map(([a, b]) => voltage(a, b)),
    voltage('incoming.N', 'met'),
    { op: 'measure', quantity: 'voltage', between: ['met', 'earth'], tool: 'meter' },
    ...threeLineSteps(papers, 'incoming'),
    { op: 'supply', siteLoad: SWITCHED },
    ...toNeutral(papers).map(([a, b]) => voltage(a, b)),
    { op: 'supply', siteLoad: 0 },
  ],
  untold: ({ site }) => [
    ...(site.earthing === 'TN-C-S'
      ? [
          {
            id: 'pen-whole',
            toldBy: [],
            ownOnly: true,
            of: 'circuit' as const,
            source: CIRCUIT,
          },
        ]
      : []),
    {
      id: 'all-loads',
      toldBy: ['volt-drop'],
      of: 'circuit' as const,
      source: PRACTICE,
    },
  ],
};
