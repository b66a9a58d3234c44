/** Test action `energise`: watched and listened to from switch-on until the unit is ready. */
import { judgeAll, outletDead, outletPairs, samplesWhen, settledFor, unplugged } from '../judging.ts';
import { CIRCUIT, PRACTICE, pilotStandard, SHEET } from '../sources.ts';
import { pilot, voltage, waitFor } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import { oscillating, peakOf, pilotReadings } from './pilotLines.ts';

export const energise: TestAction = {
  id: 'energise',
  stage: 'with power',
  from: 'isolated',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot'],
  cover: 'closed',
  applies: () => true,
  steps: (papers) => [
    { op: 'energise' },
    pilot,
    ...outletPairs(papers).map(([a, b]) => voltage(a, b)),
    waitFor(papers.sheet.startUp + 2),
    { op: 'prove-dead', at: 'outlet' },
    pilot,
  ],
  expectations: (papers) => {
    const ready = settledFor(unplugged, papers.sheet.startUp + 1);
    return [
      {
        id: 'voltage',
        should: false,
        source: pilotStandard('6.3.1'),
        of: 'unit',
        points: ['switching'],
        judge: (o) => outletDead(papers, o, unplugged),
      },
      {
        id: 'contactor',
        should: false,
        source: SHEET,
        of: 'unit',
        points: ['switching'],
        judge: (o) =>
          judgeAll(samplesWhen(o, unplugged), ({ events }) =>
            events.every(({ what }) => what !== 'contactor closed'),
          ),
      },
      {
        id: 'offers-early',
        should: false,
        source: pilotStandard('Table A.4'),
        of: 'unit',
        points: ['pilot'],
        judge: (o) => judgeAll(pilotReadings(o, unplugged), (r) => !oscillating(r)),
      },
      {
        id: 'trips',
        should: false,
        source: PRACTICE,
        of: 'circuit',
        points: ['insulation', 'residual-direct', 'supply-wiring'],
        judge: (o) =>
          judgeAll(samplesWhen(o, unplugged), ({ events }) =>
            events.every(({ what }) => !what.endsWith('tripped')),
          ),
      },
      {
        id: 'ready',
        should: true,
        values: { startUp: papers.sheet.startUp },
        source: SHEET,
        of: 'unit',
        points: ['supply-wiring', 'pilot', 'switching', 'residual-direct'],
        judge: (o) => judgeAll(samplesWhen(o, ready), ({ seen }) => seen.indicator === 'ready'),
      },
      peakOf(papers, 'energise', {
        id: 'twelve-volts',
        should: true,
        source: pilotStandard('Tables A.4 and A.10'),
        of: 'unit',
        points: ['pilot', 'supply-wiring'],
        state: 'A',
        when: ready,
      }),
    ];
  },
  untold: () => [
    {
      id: 'poles',
      toldBy: ['poles-open'],
      ownOnly: true,
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['voltage'],
};
