/** Test action `finish`: how the unit is left, once more as it should be found. */
import { judgeAll, outletDead, samplesWhen, settledFor, unplugged, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { unplug } from '../offer.ts';
import { rulesFor } from '../rules/rules.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import { pilot, waitFor } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import { peakOf } from './pilotLines.ts';

const settled: When = settledFor(unplugged, 1);
const last = (o: Observed) => samplesWhen(o, settled).slice(-1);

export const finish: TestAction = {
  id: 'finish',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  restsOn: [],
  applies: () => true,
  steps: () => [...unplug, waitFor(2), { op: 'prove-dead', at: 'outlet' }, pilot],
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
  untold: (papers) => [
    {
      id: 'next-test',
      toldBy: [],
      source: rulesFor(papers).regulation('644'),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: [],
};
