import { peakOf } from '../actions/pilotLines.ts';
import { judgeAll, outletDead, samplesWhen, settledFor, unplugged } from '../judging.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

export const stateA: TestLines = {
  expectations: (papers) => [
    {
      id: 'voltage',
      should: false,
      source: pilotStandard('6.3.1'),
      of: 'unit',
      points: ['switching'],
      judge: (o) => outletDead(papers, o, unplugged),
    },
    peakOf(papers, 'state-a', {
      id: 'high',
      should: true,
      source: pilotStandard('Table A.10'),
      of: 'unit',
      points: ['pilot'],
      state: 'A',
      when: settledFor(unplugged, 0.5),
    }),
    {
      id: 'ready',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['pilot', 'switching', 'residual-direct'],
      judge: (o) =>
        judgeAll(samplesWhen(o, settledFor(unplugged, 1)), ({ seen }) => seen.indicator === 'ready'),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['voltage'],
};
