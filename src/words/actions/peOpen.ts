/** Words of the test action `pe-open`. */
import type { ActionWords } from '../actionWords.ts';
import { lossLimit, lossLines } from './pilotLost.ts';

export const peOpen: ActionWords = {
  title: 'PE to the vehicle open while supplying',
  purpose: 'Show that supply goes when the vehicle loses its protective conductor.',
  stops: {
    voltage: 'the unit supplies a vehicle without PE: isolate',
  },
  lines: {
    ...lossLines(
      'PE to the vehicle is open',
      'The pilot’s current returns through PE: without it the vehicle’s body is unearthed.',
    ),
    'to-the-met': {
      text: 'has its PE connected back to the main earthing terminal',
      why: 'The pilot returns at the unit: what lies behind it does not matter to this test.',
    },
    'some-ohms': {
      text: 'switches off for a joint of some ohms in PE',
      why: 'That takes hundreds of ohms; a joint is found by measuring.',
    },
  },
  limits: {
    opening: lossLimit('time from the loss of PE to a dead outlet'),
  },
};
