/** Words of the test action `pilot-open`. */
import type { ActionWords } from '../actionWords.ts';
import { lossLimit, lossLines } from './pilotLost.ts';

export const pilotOpen: ActionWords = {
  purpose: 'Show that the unit switches off when the pilot conductor parts.',
  stops: {
    voltage: 'the unit supplies without seeing whether a vehicle is there: isolate',
  },
  lines: {
    ...lossLines({
      what: 'the pilot conductor',
      whyOff:
        'As a connector is pulled, its pilot contact parts first. The supply has to go before the power contacts part, or they draw an arc at the driver’s hand.',
      whyDead:
        'Without the pilot’s current the unit sees neither a vehicle nor its earth. A connector lying on the ground would be live.',
    }),
    latches: {
      text: 'latches a fault when the pilot is shorted to PE',
      why: 'An open pilot rises to 12 V, as at an unplugging. A short brings it to 0 V, which the unit may treat otherwise.',
    },
  },
  limits: {
    opening: lossLimit('greatest time from the pilot’s opening to a dead outlet'),
  },
};
