/** Words of the test action `pe-open`. */
import type { ActionWords } from '../actionWords.ts';
import { lossLimit, lossLines } from './pilotLost.ts';

export const peOpen: ActionWords = {
  purpose: 'Show that the unit switches off when the vehicle loses its protective conductor.',
  stops: {
    voltage: 'the unit supplies a vehicle without an earth, so its body may be live: isolate',
  },
  lines: {
    ...lossLines({
      what: 'PE to the vehicle',
      whyOff:
        'The pilot’s current returns through PE, so it stops when PE opens, and the unit notices. If the outlet stayed live, a fault in the vehicle would make its body live.',
      whyDead:
        'A fault in the vehicle has no way back to the supply now, and no device would trip. Whoever touches the body becomes the way back.',
    }),
    'to-the-met': {
      text: 'has its PE connected all the way back to the earthing terminal (MET)',
      why: 'The pilot’s current leaves and returns at the unit. None of it flows between the unit and the earthing terminal, so a break there goes unseen.',
    },
    'some-ohms': {
      text: 'switches off when a joint adds 500 Ω to the vehicle’s PE',
      why: 'Such a joint raises the pilot’s positive peak from 6 V to about 7.3 V. Between 7 and 8 V each maker sets the threshold, and this test opens PE altogether.',
    },
  },
  limits: {
    opening: lossLimit('greatest time from the loss of PE to a dead outlet'),
  },
};
