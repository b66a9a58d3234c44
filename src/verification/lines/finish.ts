/** What test action `finish` ought to show. */
import { peakOf } from '../actions/pilotLines.ts';
import { judgeAll, outletDead, samplesWhen, settledFor, unplugged, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

const settled: When = settledFor(unplugged, 1);
const last = (o: Observed) => samplesWhen(o, settled).slice(-1);

export const finish: TestLines = {
  expectations: (papers) => [
    {
      id: 'voltage',
      should: false,
      source: pilotStandard('6.3.1'),
      of: 'unit',
      points: ['switching'],
      judge: (o) => outletDead(papers, o, settled),
    },
    {
      id: 'ready',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['pilot', 'switching', 'residual-direct'],
      judge: (o) => judgeAll(last(o), ({ seen }) => seen.indicator === 'ready'),
    },
    peakOf(papers, 'finish', {
      id: 'twelve-volts',
      should: true,
      source: pilotStandard('Table A.10'),
      of: 'unit',
      points: ['pilot'],
      state: 'A',
      when: settled,
    }),
    {
      id: 'plug',
      should: false,
      source: pilotStandard('Table A.6 sequence 2.1'),
      of: 'unit',
      points: ['proximity-retention'],
      judge: (o) => judgeAll(last(o), ({ seen }) => seen.plug === 'out'),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: [],
};
