import { oscillating, peakOf, pilotReadings } from '../actions/pilotLines.ts';
import { judgeAll, outletDead, samplesWhen, settledFor, unplugged } from '../judging.ts';
import { PRACTICE, pilotStandard, SHEET } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

export const energise: TestLines = {
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
  figures: () => [],
  limits: () => [],
  stops: ['voltage'],
};
