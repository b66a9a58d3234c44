/** Words of the test action `pilot-open`. */
import type { ActionWords } from '../actionWords.ts';
import { lossLimit, lossLines } from './pilotLost.ts';

export const pilotOpen: ActionWords = {
  title: 'Pilot open while supplying',
  purpose: 'Show that supply goes when the pilot conductor parts.',
  stops: {
    voltage: 'the unit supplies without a pilot: isolate',
  },
  lines: {
    ...lossLines(
      'the pilot is open',
      'The pilot loop proves that a vehicle and its PE are there: open, it proves nothing.',
    ),
    latches: {
      text: 'latches a fault when the pilot opens',
      why: 'It looks as unplugged; some sound units show a fault all the same.',
    },
  },
  limits: {
    opening: lossLimit('time from the pilot’s opening to a dead outlet'),
  },
};
