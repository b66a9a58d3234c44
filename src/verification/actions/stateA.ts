/** Test action `state-a`: nothing connected. */
import { judgeAll, outletDead, samplesWhen, settledFor, unplugged } from '../judging.ts';
import { CIRCUIT, pilotStandard, SHEET } from '../sources.ts';
import { pilot, waitFor } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import { peakOf } from './pilotLines.ts';

export const stateA: TestAction = {
  id: 'state-a',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot'],
  applies: () => true,
  steps: () => [waitFor(1), { op: 'prove-dead', at: 'outlet' }, pilot],
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
  untold: () => [
    {
      id: 'neutral-open',
      toldBy: ['poles-open'],
      ownOnly: true,
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['voltage'],
};
