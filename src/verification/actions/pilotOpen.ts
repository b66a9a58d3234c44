/** Test action `pilot-open`: the pilot conductor opens while supplying. */
import { GREATEST_OFF_AFTER_UNPLUGGING } from '../../laws/timing.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import type { Procedure } from '../testAction.ts';
import { type Loss, lossSteps } from './pilotLost.ts';

export const loss: Loss = {
  test: 'pilot-open',
  of: 'pilot-open',
  is: ({ pilot }) => pilot === 'open',
  mended: { pilot: 'sound' },
  greatest: GREATEST_OFF_AFTER_UNPLUGGING,
  source: pilotStandard('6.3.1.2, Table A.6 sequence 2.2'),
};

export const pilotOpen: Procedure = {
  id: 'pilot-open',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: () => true,
  steps: (papers) => lossSteps(papers, loss),
  untold: () => [
    {
      id: 'latches',
      toldBy: ['recovery'],
      source: SHEET,
    },
  ],
};
