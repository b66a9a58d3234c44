/** Test action `pilot-open`: the pilot conductor opens while supplying. */
import { GREATEST_OFF_AFTER_UNPLUGGING } from '../../laws/timing.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import type { TestAction } from '../testAction.ts';
import { type Loss, lossExpectations, lossLimit, lossSteps } from './pilotLost.ts';

const loss: Loss = {
  test: 'pilot-open',
  of: 'pilot-open',
  is: ({ pilot }) => pilot === 'open',
  mended: { pilot: 'sound' },
  greatest: GREATEST_OFF_AFTER_UNPLUGGING,
  source: pilotStandard('6.3.1.2, Table A.6 sequence 2.2'),
};

export const pilotOpen: TestAction = {
  id: 'pilot-open',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: () => true,
  steps: (papers) => lossSteps(papers, loss),
  expectations: (papers) => lossExpectations(papers, loss),
  untold: () => [
    {
      id: 'latches',
      toldBy: ['recovery'],
      source: SHEET,
    },
  ],
  figures: () => [],
  limits: () => [lossLimit(loss)],
  stops: ['voltage'],
};
