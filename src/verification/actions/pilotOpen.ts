/** Test action `pilot-open`: the pilot conductor opens while supplying. */
import { GREATEST_OFF_AFTER_UNPLUGGING } from '../../laws/timing.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import type { TestAction } from '../testAction.ts';
import { type Loss, lossExpectations, lossLimit, lossSteps } from './pilotLost.ts';

const loss: Loss = {
  of: 'pilot-open',
  is: ({ pilot }) => pilot === 'open',
  mended: { pilot: 'sound' },
  greatest: GREATEST_OFF_AFTER_UNPLUGGING,
  source: pilotStandard('6.3.1.2, Table A.6 sequence 2.2'),
};

export const pilotOpen: TestAction = {
  id: 'pilot-open',
  title: 'Pilot open while supplying',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot', 'coding'],
  purpose: 'Show that supply goes when the pilot conductor parts.',
  applies: () => true,
  steps: (papers) => lossSteps(papers, loss),
  expectations: (papers) =>
    lossExpectations(papers, loss, {
      lost: 'the pilot is open',
      why: 'The pilot loop proves that a vehicle and its PE are there: open, it proves nothing.',
    }),
  untold: () => [
    {
      id: 'latches',
      toldBy: ['recovery'],
      text: 'latches a fault when the pilot opens',
      why: 'It looks as unplugged; some sound units show a fault all the same.',
      source: SHEET,
    },
  ],
  figures: () => [],
  limits: () => [lossLimit(loss, 'time from the pilot’s opening to a dead outlet')],
  stops: { voltage: 'the unit supplies without a pilot: isolate' },
};
