/** Test action `pe-open`: PE to the vehicle opens while supplying. */
import { GREATEST_OFF_AFTER_EARTH_LOSS } from '../../laws/timing.ts';
import { CIRCUIT, pilotStandard } from '../sources.ts';
import type { TestAction } from '../testAction.ts';
import { type Loss, lossExpectations, lossLimit, lossSteps } from './pilotLost.ts';

const loss: Loss = {
  of: 'earth-open',
  is: ({ earth }) => earth === 'open',
  mended: { earth: 'sound' },
  greatest: GREATEST_OFF_AFTER_EARTH_LOSS,
  source: pilotStandard('6.3.1.2, A.4.8'),
};

export const peOpen: TestAction = {
  id: 'pe-open',
  title: 'PE to the vehicle open while supplying',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot', 'coding'],
  purpose: 'Show that supply goes when the vehicle loses its protective conductor.',
  applies: () => true,
  steps: (papers) => lossSteps(papers, loss),
  expectations: (papers) =>
    lossExpectations(papers, loss, {
      lost: 'PE to the vehicle is open',
      why: 'The pilot’s current returns through PE: without it the vehicle’s body is unearthed.',
    }),
  untold: () => [
    {
      id: 'to-the-met',
      toldBy: ['inspect', 'pe-circuit', 'make-good', 'ze', 'state-c', 'loop'],
      text: 'has its PE connected back to the main earthing terminal',
      why: 'The pilot returns at the unit: what lies behind it does not matter to this test.',
      source: CIRCUIT,
    },
    {
      id: 'some-ohms',
      toldBy: [],
      text: 'switches off for a joint of some ohms in PE',
      why: 'That takes hundreds of ohms; a joint is found by measuring.',
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: () => [lossLimit(loss, 'time from the loss of PE to a dead outlet')],
  stops: { voltage: 'the unit supplies a vehicle without PE: isolate' },
};
